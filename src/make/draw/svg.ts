import type { Contour } from '../../geometry/outline.js'
import type { Point } from '../../geometry/point.js'
import type { Box } from '../../geometry/box.js'
import type { Content } from './content.js'
import type { Frame } from './margins.js'

/** The drawing as SVG at true scale: one user unit is one millimetre, and each kind of part is a group that says what it is. */

export interface Look {
  title: string
  part: string
  panel: { width: number; height: number; colour: string }
  frame: Frame | undefined
  ink: string
}

const DECIMALS = 4

const number = (value: number): string => String(Number(value.toFixed(DECIMALS)))
const pair = ({ x, y }: Point): string => `${number(x)} ${number(y)}`

const ESCAPES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }
const escaped = (text: string): string => text.replace(/[&<>"]/gu, (character) => ESCAPES[character] ?? character)

function pathData(contours: readonly Contour[]): string {
  return contours
    .map(({ start, segments }) => {
      const rest = segments.map((s) =>
        s.kind === 'line' ? `L${pair(s.to)}` : `C${pair(s.c1)} ${pair(s.c2)} ${pair(s.to)}`,
      )
      return `M${pair(start)}${rest.join('')}Z`
    })
    .join('')
}

const rect = ({ x, y, width, height }: Box, attributes: string): string =>
  `<rect x="${number(x)}" y="${number(y)}" width="${number(width)}" height="${number(height)}" ${attributes}/>`

export function writeSvg(content: Content, look: Look): string {
  const { panel, frame, ink } = look
  const { width, height } = panel
  const lines = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${number(width)}mm" height="${number(height)}mm" viewBox="0 0 ${number(width)} ${number(height)}">`,
    `  <title>${escaped(look.title)}</title>`,
    `  ${rect({ x: 0, y: 0, width, height }, `id="panel" data-part="panel" fill="${escaped(panel.colour)}"`)}`,
    ...(frame ? [`  ${rect(middleOfFrame(panel, frame), frameAttributes(frame, ink))}`] : []),
    ...(content.field ? [`  ${rect(content.field, 'id="pictogram-field" data-part="ignore" fill="none"')}`] : []),
    ...lettering(content, look),
    ...braille(content, ink),
    '</svg>',
  ]
  return `${lines.join('\n')}\n`
}

const middleOfFrame = ({ width, height }: Look['panel'], { inset, width: thick }: Frame): Box => {
  const from = inset + thick / 2
  return { x: from, y: from, width: width - 2 * from, height: height - 2 * from }
}

const frameAttributes = ({ width }: Frame, ink: string): string =>
  `id="border" data-part="border" fill="none" stroke="${escaped(ink)}" stroke-width="${number(width)}"`

function lettering({ lines }: Content, { part, ink }: Look): string[] {
  const groups = lines.map(({ text, characters }, i) => {
    const paths = characters.map(({ contours }) => `      <path d="${pathData(contours)}"/>`)
    return `    <g id="line-${i + 1}" data-part="${part}" aria-label="${escaped(text)}">\n${paths.join('\n')}\n    </g>`
  })
  return [`  <g id="lettering" data-part="${part}" fill="${escaped(ink)}">`, ...groups, '  </g>']
}

function braille({ braille: block }: Content, ink: string): string[] {
  if (!block) return []
  const radius = number(block.diameter / 2)
  const groups = block.lines.map(({ cells, dots }, i) => {
    const circles = dots.map(({ x, y }) => `      <circle cx="${number(x)}" cy="${number(y)}" r="${radius}"/>`)
    return `    <g id="braille-line-${i + 1}" data-part="braille" aria-label="${cells}">\n${circles.join('\n')}\n    </g>`
  })
  return [`  <g id="braille" data-part="braille" fill="${escaped(ink)}">`, ...groups, '  </g>']
}
