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
  strokeDashoffset: string
  paintOrder: string
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
  /** Of what refers to the marker or clone that this stands in: what `context-fill` and `context-stroke` mean. */
  context?: Style
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
  strokeDashoffset: '0',
  paintOrder: 'normal',
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

const atLeastZero = (value: number | undefined): number | undefined =>
  value !== undefined && value >= 0 ? value : undefined

const joinOf = (written: string): Style['strokeLinejoin'] | undefined => {
  if (written === 'round' || written === 'bevel') return written
  return /^(miter|miter-clip|arcs)$/.test(written) ? 'miter' : undefined
}

const VISIBILITY: ReadonlyMap<string, boolean> = new Map([
  ['visible', true],
  ['hidden', false],
  ['collapse', false],
])

/** What a property does to a style; `lengths` are those of the element itself. Undefined values are not understood. */
type Setter = (style: Style, written: string, lengths: LengthContext) => void

/** A setter that reads a value, and leaves the inherited one when it cannot. */
const setter =
  <K extends keyof Style>(key: K, read: (written: string, lengths: LengthContext) => Style[K] | undefined): Setter =>
  (style, written, lengths) => {
    if (written === 'inherit' || written === 'unset') return
    style[key] = (written === 'initial' ? INITIAL_STYLE[key] : read(written, lengths)) ?? style[key]
  }

const asWritten = (written: string): string => written
const oneOf =
  <T extends string>(...words: T[]) =>
  (written: string): T | undefined =>
    words.find((word) => word === written)
const spacing = (written: string, lengths: LengthContext) =>
  written === 'normal' ? 0 : parseLength(written, 'x', lengths)
const fillRule = oneOf('nonzero', 'evenodd')

const SETTERS: ReadonlyMap<string, Setter> = new Map<string, Setter>([
  ['color', setter('color', (written) => (/^currentcolor$/i.test(written) ? undefined : written))],
  ['fill', setter('fill', asWritten)],
  ['fill-opacity', setter('fillOpacity', parseOpacity)],
  ['fill-rule', setter('fillRule', fillRule)],
  ['clip-rule', setter('clipRule', fillRule)],
  ['stroke', setter('stroke', asWritten)],
  ['stroke-opacity', setter('strokeOpacity', parseOpacity)],
  ['stroke-width', setter('strokeWidth', (written, lengths) => atLeastZero(parseLength(written, 'diagonal', lengths)))],
  ['stroke-linecap', setter('strokeLinecap', oneOf('butt', 'round', 'square'))],
  ['stroke-linejoin', setter('strokeLinejoin', joinOf)],
  ['stroke-dasharray', setter('strokeDasharray', asWritten)],
  ['stroke-dashoffset', setter('strokeDashoffset', asWritten)],
  ['paint-order', setter('paintOrder', asWritten)],
  ['visibility', setter('visible', (written) => VISIBILITY.get(written))],
  ['marker-start', setter('markerStart', asWritten)],
  ['marker-mid', setter('markerMid', asWritten)],
  ['marker-end', setter('markerEnd', asWritten)],
  ['font-family', setter('fontFamily', asWritten)],
  ['font-style', setter('fontStyle', asWritten)],
  ['letter-spacing', setter('letterSpacing', spacing)],
  ['word-spacing', setter('wordSpacing', spacing)],
  ['text-anchor', setter('textAnchor', oneOf('start', 'middle', 'end'))],
  ['writing-mode', setter('writingMode', asWritten)],
  ['direction', setter('direction', asWritten)],
  ['white-space', setter('preserveSpace', (written) => /^(pre|pre-wrap|break-spaces)$/.test(written))],
])

/**
 * The style of an element from what is declared for it and from its parent's style. A value that is not understood leaves
 * the inherited one, as CSS drops what it cannot read; paints are kept as written, to be understood when they are used.
 */
export function computeStyle(declared: Declared, parent: Style, viewport: Omit<LengthContext, 'fontSize'>): Style {
  const style = { ...parent }
  setFont(style, declared, parent, viewport)
  const marker = declared.get('marker')?.trim()
  if (marker !== undefined) style.markerStart = style.markerMid = style.markerEnd = marker
  const lengths: LengthContext = { ...viewport, fontSize: style.fontSize }
  for (const [property, written] of declared) SETTERS.get(property)?.(style, written.trim(), lengths)
  return style
}

/** The shorthand first, so that the single properties win over it. The family and the style come with the others. */
function setFont(style: Style, declared: Declared, parent: Style, viewport: Omit<LengthContext, 'fontSize'>): void {
  const shorthand = declared.has('font') ? parseFontShorthand(declared.get('font') ?? '') : undefined
  if (shorthand) {
    style.fontFamily = shorthand.family
    style.fontStyle = shorthand.style
  }
  const size = declared.get('font-size') ?? shorthand?.size
  style.fontSize = parseFontSize(size, { ...viewport, fontSize: parent.fontSize }) ?? parent.fontSize
  style.fontWeight = parseFontWeight(declared.get('font-weight') ?? shorthand?.weight, parent.fontWeight)
}
