/** A drawing taken apart, so that the same marks can be put on another page: its root, and what stands in it. */

/** Millimetres to the unit, by definition (CSS Values and Units 4, 6.2: an inch is 2.54 cm, 96 px, 72 pt, 6 pc). */
export const UNITS = { mm: 1, cm: 10, Q: 0.25, in: 25.4, pt: 25.4 / 72, pc: 25.4 / 6, px: 25.4 / 96 } as const
export type Unit = keyof typeof UNITS

export interface Sheet {
  /** Attributes of the root, without its size. */
  attributes: string
  /** Millimetres. */
  width: number
  height: number
  /** User units. */
  box: { x: number; y: number; width: number; height: number }
  inside: string
}

const ROOT = /<svg([^>]*)>([\s\S]*)<\/svg>/u
const SIZE = /^([\d.]+)(\D*)$/u

/** @throws when the drawing does not say its size, or its page and its viewBox are not of one shape. */
export function sheetOf(drawing: string): Sheet {
  const [, written = '', inside = ''] = ROOT.exec(drawing) ?? []
  const attribute = (name: string) => new RegExp(`\\s${name}="([^"]*)"`, 'u').exec(written)?.[1] ?? ''
  const size = (name: string): { value: number; mm: number } => {
    const [, value, unit] = SIZE.exec(attribute(name)) ?? []
    return { value: Number(value), mm: Number(value) * UNITS[(unit || 'px') as Unit] }
  }
  const [width, height] = [size('width'), size('height')]
  const viewBox = attribute('viewBox') || `0 0 ${width.value} ${height.value}`
  const [x, y, w, h] = viewBox.split(/[\s,]+/u).map(Number)
  const stretched = (width.mm * h) / (height.mm * w) - 1
  if (!(Math.abs(stretched) < 1e-5)) throw new Error(`no drawing of one scale: ${written}`)
  const attributes = written.replace(/\s(?:width|height|viewBox)="[^"]*"/gu, '')
  return { attributes, width: width.mm, height: height.mm, box: { x, y, width: w, height: h }, inside }
}

/** @param unit in which the root says its size */
export function drawingOf({ attributes, width, height, box, inside }: Sheet, unit: Unit = 'mm'): string {
  const written = (mm: number) => `${mm / UNITS[unit]}${unit}`
  const viewBox = `viewBox="${box.x} ${box.y} ${box.width} ${box.height}"`
  return `<svg${attributes} width="${written(width)}" height="${written(height)}" ${viewBox}>${inside}</svg>`
}

const wrapped = (inside: string, transform: string): string => `<g transform="${transform}">${inside}</g>`

/** The same page with user units that are `factor` times as small. */
export const inUnitsOf = (sheet: Sheet, factor: number): Sheet => ({
  ...sheet,
  box: {
    x: sheet.box.x * factor,
    y: sheet.box.y * factor,
    width: sheet.box.width * factor,
    height: sheet.box.height * factor,
  },
  inside: wrapped(sheet.inside, `scale(${factor})`),
})

/** The same page, with everything on it moved, and the page with it. User units. */
export const movedWithPage = (sheet: Sheet, x: number, y: number): Sheet => ({
  ...sheet,
  box: { ...sheet.box, x: sheet.box.x + x, y: sheet.box.y + y },
  inside: wrapped(sheet.inside, `translate(${x} ${y})`),
})

/** A larger page, with more on each side. Shares of the page's width. */
export function enlarged(sheet: Sheet, left: number, top: number, right: number, bottom: number): Sheet {
  const { x, y, width, height } = sheet.box
  const mm = sheet.width / width
  const box = {
    x: x - left * width,
    y: y - top * width,
    width: width * (1 + left + right),
    height: height + width * (top + bottom),
  }
  return { ...sheet, width: box.width * mm, height: box.height * mm, box }
}

/** Everything turned about the middle of the page, on a page that has room for it. */
export function turned(sheet: Sheet, degrees: number): Sheet {
  const { x, y, width, height } = sheet.box
  const spare = (Math.hypot(width, height) - Math.min(width, height)) / 2 / width
  const large = enlarged(sheet, spare, spare, spare, spare)
  return { ...large, inside: wrapped(sheet.inside, `rotate(${degrees} ${x + width / 2} ${y + height / 2})`) }
}

/** Where another element may stand at the root: first, or last. */
export function withElement(sheet: Sheet, element: (sheet: Sheet) => string, where: number): Sheet {
  const { inside } = sheet
  const more = element(sheet)
  return { ...sheet, inside: where % 2 === 0 ? more + inside : inside + more }
}

/** Elements of one kind without content that stand next to each other: dots, and the characters of a line. */
const RUN = /(?:<(circle|path|use|polygon)\b[^>]*\/>\s*)(?:<\1\b[^>]*\/>\s*)+/gu
const ELEMENT = /<[^>]*\/>\s*/gu

/** @param next whole numbers by which to choose */
export function shuffled(sheet: Sheet, next: () => number): Sheet {
  const inside = sheet.inside.replace(RUN, (run) => {
    const left = run.match(ELEMENT) ?? []
    const order: string[] = []
    while (left.length > 0) order.push(...left.splice(next() % left.length, 1))
    return order.join('')
  })
  return { ...sheet, inside }
}
