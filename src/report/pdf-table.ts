import { plain } from './markup.js'
import { BOLD, printable, REGULAR } from './pdf-fonts.js'
import { HEAD_GROUND, INK, LINK, MARGIN, RULE, SMALL } from './pdf-ink.js'

/**
 * Tables of the printed sheets, tagged with their heads (ISO 32000-1, 14.8.4.3.4). The head stands again on each sheet, there
 * without a tag, so that it is read once. A row that no sheet can hold is written cell under cell, so that no word is lost.
 */

export interface Column {
  head: string
  /** A share of the width, all columns together 1. */
  share: number
}

/** A text, or one that leads to the place of that name. */
export type Cell = string | { text: string; to: string }

const PADDING = 3
const LINE_WIDTH = 0.5

type Doc = PDFKit.PDFDocument
type Parent = PDFKit.PDFStructureElement
/** The library's elements with the direction in which a head counts, and its links with their element, which its types lack. */
type Options = PDFKit.Mixins.StructureElementOptions & { scope?: 'Row' | 'Column' }
type LinkOptions = PDFKit.Mixins.AnnotationOption & { structParent: Parent }

/** @param parent the part of the document that it stands in @param leastHeight of each row, in points: room to write by hand */
export function writeTable(
  doc: Doc,
  parent: Parent,
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
  leastHeight: number,
): void {
  const width = doc.page.width - 2 * MARGIN
  const widths = columns.map(({ share }) => share * width)
  const table = doc.struct('Table')
  parent.add(table)
  const heads = columns.map(({ head }) => head)
  const headHeight = heightOf(doc, heads, widths, BOLD)
  const floor = doc.page.height - MARGIN
  const mostHeight = floor - MARGIN - headHeight

  const first = heightOf(doc, rows[0] ?? [], widths, REGULAR)
  if (doc.y + headHeight + Math.max(leastHeight, Math.min(first, mostHeight)) > floor) doc.addPage()
  writeRow(doc, heads, widths, headHeight, { table, isHead: true })
  for (const row of rows) {
    const height = Math.max(leastHeight, heightOf(doc, row, widths, REGULAR))
    if (height > mostHeight) {
      writeStacked(doc, heads, row, table)
      continue
    }
    if (doc.y + height > floor) {
      doc.addPage()
      writeRow(doc, heads, widths, headHeight, { isHead: true })
    }
    writeRow(doc, row, widths, height, { table, isHead: false })
  }
  table.end()
  doc.x = MARGIN
}

const textOf = (cell: Cell): string => printable(plain(typeof cell === 'string' ? cell : cell.text))

function heightOf(doc: Doc, cells: readonly Cell[], widths: readonly number[], font: string): number {
  doc.font(font).fontSize(SMALL)
  const heights = cells.map((cell, i) => doc.heightOfString(textOf(cell), { width: (widths[i] ?? 0) - 2 * PADDING }))
  return Math.max(0, ...heights) + 2 * PADDING
}

/** @param table undefined where the row says again what was said before */
function writeRow(
  doc: Doc,
  cells: readonly Cell[],
  widths: readonly number[],
  height: number,
  { table, isHead }: { table?: Parent; isHead: boolean },
): void {
  const { y } = doc
  doc.markContent('Artifact', { type: 'Layout' })
  frame(doc, widths, y, height, isHead)
  if (!table) cells.forEach((cell, i) => writeCell(doc, cell, left(widths, i), y, widths[i] ?? 0, BOLD))
  doc.endMarkedContent()
  if (table) {
    const row = doc.struct('TR')
    table.add(row)
    cells.forEach((cell, i) => {
      const isHeadCell = isHead || i === 0
      const options: Options = isHeadCell ? { scope: isHead ? 'Column' : 'Row' } : {}
      const element = doc.struct(isHeadCell ? 'TH' : 'TD', options)
      row.add(element)
      const font = isHead ? BOLD : REGULAR
      const width = widths[i] ?? 0
      doc.y = y
      fill(doc, element, cell, width - 2 * PADDING, () => writeCell(doc, cell, left(widths, i), y, width, font))
    })
    row.end()
  }
  doc.x = MARGIN
  doc.y = y + height
}

/** The content of a cell, inside a link where it leads somewhere. @param most how wide its text may be */
function fill(doc: Doc, element: Parent, cell: Cell, most: number, write: () => void): void {
  if (typeof cell === 'string') element.add(write)
  else {
    const link = doc.struct('Link')
    element.add(link)
    const top = doc.y
    link.add(write)
    const options: LinkOptions = { structParent: link, Contents: new String(textOf(cell)) as string }
    const width = Math.min(most, doc.widthOfString(textOf(cell)))
    doc.goTo(doc.x, top, width, doc.y - top, cell.to, options)
    link.end()
  }
  element.end()
}

const left = (widths: readonly number[], i: number): number => widths.slice(0, i).reduce((sum, w) => sum + w, MARGIN)

function writeCell(doc: Doc, cell: Cell, x: number, y: number, width: number, font: string): void {
  const ink = typeof cell === 'string' ? INK : LINK
  const options = { width: width - 2 * PADDING, lineGap: 0 }
  doc
    .font(font)
    .fontSize(SMALL)
    .fillColor(ink)
    .text(textOf(cell), x + PADDING, y + PADDING, options)
}

function frame(doc: Doc, widths: readonly number[], y: number, height: number, isHead: boolean): void {
  const width = widths.reduce((sum, w) => sum + w, 0)
  if (isHead) doc.rect(MARGIN, y, width, height).fill(HEAD_GROUND)
  doc.lineWidth(LINE_WIDTH).rect(MARGIN, y, width, height)
  for (let i = 1; i < widths.length; i++) doc.moveTo(left(widths, i), y).lineTo(left(widths, i), y + height)
  doc.stroke(RULE)
}

function writeStacked(doc: Doc, heads: readonly string[], cells: readonly Cell[], table: Parent): void {
  const row = doc.struct('TR')
  table.add(row)
  cells.forEach((cell, i) => {
    const write = () => {
      doc
        .font(BOLD)
        .fontSize(SMALL)
        .fillColor(INK)
        .text(`${heads[i] ?? ''}: `, MARGIN, undefined, { continued: true })
      doc.font(REGULAR).text(textOf(cell))
    }
    const element = doc.struct(i === 0 ? 'TH' : 'TD', (i === 0 ? { scope: 'Row' } : {}) as Options)
    row.add(element)
    element.add(write)
    element.end()
    doc.y += PADDING
  })
  row.end()
}
