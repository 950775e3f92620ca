import type { Declared } from './cascade.js'
import { parseFontShorthand, parseFontWeight, parseFontSize } from './font.js'
import { parseLength, type LengthContext } from './length.js'
import { parseNumber } from './numbers.js'

/** Computed values of the inherited properties that decide what is painted (SVG 1.1, appendix N; CSS Cascading 3, 7). */
export interface Style {
  color: string
  fill: string
  fillOpacity: number
  fillRule: 'nonzero' | 'evenodd'
  clipRule: 'nonzero' | 'evenodd'
  stroke: string
  strokeOpacity: number
  /** User units. */
  strokeWidth: number
  strokeLinecap: 'butt' | 'round' | 'square'
  strokeLinejoin: 'miter' | 'round' | 'bevel'
  strokeDasharray: string
  visible: boolean
  markerStart: string
  markerMid: string
  markerEnd: string
  fontFamily: string
  /** User units. */
  fontSize: number
  fontStyle: string
  fontWeight: number
  letterSpacing: number
  wordSpacing: number
  textAnchor: 'start' | 'middle' | 'end'
  writingMode: string
  direction: string
  /** Blanks of live text are kept. */
  preserveSpace: boolean
}

/** `medium` (CSS Fonts 4, 2.5: what a browser takes when nothing is said), in px. */
export const MEDIUM_FONT_SIZE = 16

export const INITIAL_STYLE: Style = {
  color: 'black',
  fill: 'black',
  fillOpacity: 1,
  fillRule: 'nonzero',
  clipRule: 'nonzero',
  stroke: 'none',
  strokeOpacity: 1,
  strokeWidth: 1,
  strokeLinecap: 'butt',
  strokeLinejoin: 'miter',
  strokeDasharray: 'none',
  visible: true,
  markerStart: 'none',
  markerMid: 'none',
  markerEnd: 'none',
  fontFamily: '',
  fontSize: MEDIUM_FONT_SIZE,
  fontStyle: 'normal',
  fontWeight: 400,
  letterSpacing: 0,
  wordSpacing: 0,
  textAnchor: 'start',
  writingMode: 'horizontal-tb',
  direction: 'ltr',
  preserveSpace: false,
}

/** A number from 0 to 1 or a percentage; undefined for anything else. */
export function parseOpacity(text: string | undefined): number | undefined {
  if (text === undefined) return undefined
  const percent = /^(.*)%\s*$/.exec(text)
  const value = parseNumber(percent ? percent[1] : text)
  return value === undefined ? undefined : Math.min(1, Math.max(0, percent ? value / 100 : value))
}

/**
 * The style of an element from what is declared for it and from its parent's style. A value that is not understood leaves
 * the inherited one, as CSS drops what it cannot read; paints are kept as written, to be understood when they are used.
 */
export function computeStyle(declared: Declared, parent: Style, lengths: Omit<LengthContext, 'fontSize'>): Style {
  const shorthand = declared.has('font') ? parseFontShorthand(declared.get('font') ?? '') : undefined
  const fontSizeText = declared.get('font-size') ?? shorthand?.size
  const fontSize =
    parseFontSize(fontSizeText, parent.fontSize, { ...lengths, fontSize: parent.fontSize }) ?? parent.fontSize
  const own: LengthContext = { ...lengths, fontSize }

  /** `read` gives undefined for what it does not understand. */
  function value<K extends keyof Style>(
    property: string,
    key: K,
    read: (text: string) => Style[K] | undefined,
  ): Style[K] {
    const text = declared.get(property)?.trim()
    if (text === undefined || text === 'inherit' || text === 'unset') return parent[key]
    if (text === 'initial') return INITIAL_STYLE[key]
    return read(text) ?? parent[key]
  }
  const text = (written: string): string => written
  const oneOf =
    <T extends string>(...words: T[]) =>
    (written: string): T | undefined =>
      words.find((word) => word === written)
  const spacing = (written: string) => (written === 'normal' ? 0 : parseLength(written, 'x', own))
  const width = (written: string) => atLeastZero(parseLength(written, 'diagonal', own))
  const rule = oneOf('nonzero', 'evenodd')
  const marker = declared.get('marker')
  const markerAt = (property: string, key: 'markerStart' | 'markerMid' | 'markerEnd') =>
    declared.has(property) || marker === undefined ? value(property, key, text) : value('marker', key, text)

  return {
    color: value('color', 'color', (written) => (/^currentcolor$/i.test(written) ? undefined : written)),
    fill: value('fill', 'fill', text),
    fillOpacity: value('fill-opacity', 'fillOpacity', parseOpacity),
    fillRule: value('fill-rule', 'fillRule', rule),
    clipRule: value('clip-rule', 'clipRule', rule),
    stroke: value('stroke', 'stroke', text),
    strokeOpacity: value('stroke-opacity', 'strokeOpacity', parseOpacity),
    strokeWidth: value('stroke-width', 'strokeWidth', width),
    strokeLinecap: value('stroke-linecap', 'strokeLinecap', oneOf('butt', 'round', 'square')),
    strokeLinejoin: value('stroke-linejoin', 'strokeLinejoin', joinOf),
    strokeDasharray: value('stroke-dasharray', 'strokeDasharray', text),
    visible: value('visibility', 'visible', (written) =>
      written === 'visible' ? true : /^(hidden|collapse)$/.test(written) ? false : undefined,
    ),
    markerStart: markerAt('marker-start', 'markerStart'),
    markerMid: markerAt('marker-mid', 'markerMid'),
    markerEnd: markerAt('marker-end', 'markerEnd'),
    fontFamily: declared.has('font-family')
      ? value('font-family', 'fontFamily', text)
      : (shorthand?.family ?? parent.fontFamily),
    fontSize,
    fontStyle: declared.has('font-style')
      ? value('font-style', 'fontStyle', text)
      : (shorthand?.style ?? parent.fontStyle),
    fontWeight: parseFontWeight(declared.get('font-weight') ?? shorthand?.weight, parent.fontWeight),
    letterSpacing: value('letter-spacing', 'letterSpacing', spacing),
    wordSpacing: value('word-spacing', 'wordSpacing', spacing),
    textAnchor: value('text-anchor', 'textAnchor', oneOf('start', 'middle', 'end')),
    writingMode: value('writing-mode', 'writingMode', text),
    direction: value('direction', 'direction', text),
    preserveSpace: value('white-space', 'preserveSpace', (written) => /^(pre|pre-wrap|break-spaces)$/.test(written)),
  }
}

const atLeastZero = (value: number | undefined): number | undefined =>
  value !== undefined && value >= 0 ? value : undefined

const joinOf = (written: string): Style['strokeLinejoin'] | undefined => {
  if (written === 'round' || written === 'bevel') return written
  return /^(miter|miter-clip|arcs)$/.test(written) ? 'miter' : undefined
}
