import type { ReportBox } from './place-schema.js'
import { BOLD, printable, REGULAR } from './pdf-fonts.js'

/** Paints the sign and its marks of a drawing that `reportSvg` made on paper: it knows what that writes, no more. */

type Attributes = Record<string, string>

const ELEMENT = /<(rect|path|text)((?: [\w-]+="[^"]*")*)(?:\/>|>([^<]*)<\/text>)/g
const ATTRIBUTE = / ([\w-]+)="([^"]*)"/g
const ENTITY = /&(amp|lt|gt|quot|#39);/g
const CHARACTERS: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" }

/** What a drawing holds for a sheet that has words of its own. */
export interface DrawnSign {
  markup: string
  /** What the markup takes up, in the sign's own millimetres. */
  box: ReportBox
  /** What the drawing shows, for those who do not see it. */
  description: string
}

const SIGN = /^<g data-box="([^"]*)"[^>]*>\n([^]*?)\n<\/g>$/m
const DESCRIPTION = /<desc [^>]*>([^<]*)<\/desc>/

/** @returns undefined when nothing on the sign has a place, so that there is nothing to paint */
export function signIn(drawing: string): DrawnSign | undefined {
  const [, numbers = '', markup = ''] = SIGN.exec(drawing) ?? []
  const [x, y, width, height] = numbers.split(' ').map(Number)
  if (x === undefined || y === undefined || !(width && height)) return undefined
  return { markup, box: { x, y, width, height }, description: unescaped(DESCRIPTION.exec(drawing)?.[1] ?? '') }
}

const unescaped = (text: string): string => text.replace(ENTITY, (_, name: string) => CHARACTERS[name] ?? '')

/** @param doc whose axes are those of the markup */
export function paintMarkup(doc: PDFKit.PDFDocument, markup: string): void {
  for (const [, name = '', list = '', content = ''] of markup.matchAll(ELEMENT)) {
    const attributes: Attributes = {}
    for (const [, key = '', value = ''] of list.matchAll(ATTRIBUTE)) attributes[key] = value
    doc.save()
    if (name === 'text') paintText(doc, attributes, content)
    else paintShape(doc, name, attributes)
    doc.restore()
  }
}

const number = (attributes: Attributes, name: string): number => Number(attributes[name] ?? 0)
const paint = (value: string | undefined): string | undefined => (value === 'none' ? undefined : value)

function paintShape(doc: PDFKit.PDFDocument, name: string, attributes: Attributes): void {
  const [fill, stroke] = [paint(attributes.fill), paint(attributes.stroke)]
  if (fill === undefined && stroke === undefined) return
  if (name === 'path') doc.path(attributes.d ?? '')
  else {
    const [x, y, width, height] = ['x', 'y', 'width', 'height'].map((key) => number(attributes, key))
    doc.roundedRect(x ?? 0, y ?? 0, width ?? 0, height ?? 0, number(attributes, 'rx'))
  }
  doc.lineWidth(number(attributes, 'stroke-width'))
  const [dash, space] = (attributes['stroke-dasharray'] ?? '').split(' ').map(Number)
  if (dash !== undefined && space !== undefined) doc.dash(dash, { space })
  const rule = attributes['fill-rule'] === 'evenodd' ? 'even-odd' : 'non-zero'
  if (fill !== undefined && stroke !== undefined) doc.fillAndStroke(fill, stroke, rule)
  else if (fill !== undefined) doc.fill(fill, rule)
  else doc.stroke(stroke)
}

function paintText(doc: PDFKit.PDFDocument, attributes: Attributes, content: string): void {
  const text = printable(unescaped(content))
  doc.font(attributes['font-weight'] === 'bold' ? BOLD : REGULAR).fontSize(number(attributes, 'font-size'))
  doc.fillColor(attributes.fill ?? '#000000').fillOpacity(Number(attributes['fill-opacity'] ?? 1))
  const natural = doc.widthOfString(text)
  const wanted = 'textLength' in attributes ? number(attributes, 'textLength') : natural
  const x = number(attributes, 'x') - (attributes['text-anchor'] === 'middle' ? wanted / 2 : 0)
  const horizontalScaling = natural > 0 ? (100 * wanted) / natural : 100
  // The library's types lack the scaling.
  const options = { lineBreak: false, baseline: 'alphabetic', horizontalScaling } as const
  doc.text(text, x, number(attributes, 'y'), options)
}
