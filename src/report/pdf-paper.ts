import PDFDocument from 'pdfkit'
import { plain } from './markup.js'
import { BOLD, printable, REGULAR } from './pdf-fonts.js'

/**
 * Sheets of paper that are written from top to bottom, each thing with its tag (ISO 32000-1, 14.8), so that a screen reader
 * reads it in the order in which it was written. The same writing gives the same bytes: the file holds no date.
 */

/** Points: A4, whose printed part fits on Letter too. */
const MARGIN = 54
const FOOT = 36
const SIZES = { 1: 20, 2: 14, 3: 11 } as const
const BODY = 9.5
const SMALL = 8
const GAP = 5
/** A heading stands on a new sheet when less than this is left under it. */
const LEAST_UNDER_HEADING = { 1: 0, 2: 150, 3: 90 } as const
const INK = '#1f2933'
const QUIET = '#4a5563'
const RULE = '#9aa5b1'
const HEAD_GROUND = '#eef1f4'

type Parent = PDFKit.PDFStructureElement

/** The library's cells with the direction in which a head counts, which its types lack. */
interface Cell extends PDFKit.Mixins.CellOptions {
  scope?: 'Row' | 'Column'
}

/** And its tables with the part of the document that they stand in. */
interface TableOptions extends PDFKit.Mixins.TableOptions {
  structParent: Parent
}

export interface Column {
  head: string
  /** A share of the width, all columns together 1. */
  share: number
}

export class Paper {
  private readonly doc: PDFKit.PDFDocument
  private readonly root: Parent

  /** @param name of the document @param foot stands under each sheet, before its number */
  constructor(
    name: string,
    private readonly foot: string,
  ) {
    const title = printable(plain(name))
    this.doc = new PDFDocument({
      size: 'A4',
      margin: MARGIN,
      pdfVersion: '1.7',
      tagged: true,
      lang: 'en',
      displayTitle: true,
      bufferPages: true,
      autoFirstPage: false,
      // The library takes a date for the identity of the file, which is the same for the same report.
      info: { Title: title, Subject: foot, Creator: 'Fingertrue', CreationDate: new Date(0) },
    })
    delete this.doc.info.CreationDate
    // The library would write the same into a second, XML, form, with that date and without escaping a client's words.
    this.doc.endMetadata = () => undefined
    this.doc.addPage().font(REGULAR).fontSize(BODY).fillColor(INK)
    this.root = this.doc.struct('Document')
    this.doc.addStructure(this.root)
  }

  /** Height and width that are left on this sheet, in points. */
  get room(): { width: number; height: number } {
    const { width, height } = this.doc.page
    return { width: width - 2 * MARGIN, height: height - MARGIN - this.doc.y }
  }

  /** Goes on on a new sheet when less than `height` points are left on this one. */
  keep(height: number): void {
    if (this.room.height < height) this.doc.addPage()
  }

  heading(level: 1 | 2 | 3, text: string): void {
    const words = printable(plain(text))
    if (this.room.height < LEAST_UNDER_HEADING[level]) this.doc.addPage()
    else if (level > 1) this.doc.y += level === 2 ? 3 * GAP : GAP
    if (level < 3) this.doc.outline.addItem(words)
    this.write(`H${level}`, this.root, () => this.doc.font(BOLD).fontSize(SIZES[level]).text(words, MARGIN))
    this.doc.y += GAP
  }

  /** @param label stands before the text in bold letters */
  paragraph(text: string, label = ''): void {
    this.write('P', this.root, () => this.words(text, label, MARGIN))
    this.doc.y += GAP
  }

  list(items: readonly { text: string; label?: string }[]): void {
    const list = this.doc.struct('L')
    this.root.add(list)
    for (const { text, label = '' } of items) {
      const item = this.doc.struct('LI')
      list.add(item)
      this.write('LBody', item, () => this.words(text, label === '' ? '• ' : `• ${label} `, MARGIN))
      item.end()
      this.doc.y += GAP / 2
    }
    list.end()
    this.doc.y += GAP
  }

  /** Rows of short texts of ours: a row never takes more than a sheet. The first cell of each row is its head. */
  table(columns: readonly Column[], rows: readonly (readonly string[])[], leastHeight = 0): void {
    const { width } = this.room
    const cell = (text: string): Cell => ({ text: printable(plain(text)) })
    const options: TableOptions = {
      columnStyles: columns.map(({ share }) => share * width),
      rowStyles: (row) => ({ minHeight: row === 0 ? 0 : leastHeight, borderColor: RULE, border: 0.5, padding: 3 }),
      defaultStyle: { textColor: INK },
      structParent: this.root,
    }
    const table = this.doc.fontSize(SMALL).table(options)
    const head: Cell = { type: 'TH', scope: 'Column', font: { src: BOLD }, backgroundColor: HEAD_GROUND }
    const rowHead: Cell = { type: 'TH', scope: 'Row' }
    table.row(columns.map((column) => ({ ...cell(column.head), ...head })))
    for (const [first = '', ...rest] of rows) table.row([{ ...cell(first), ...rowHead }, ...rest.map(cell)])
    table.end()
    this.doc.fontSize(BODY).fillColor(INK)
    this.doc.x = MARGIN
    this.doc.y += 2 * GAP
  }

  /**
   * A picture of `height` points over the whole width.
   * @param alternative says to who does not see it what it shows
   * @param paint draws it, its top left corner at the place given
   */
  figure(height: number, alternative: string, paint: (doc: PDFKit.PDFDocument, x: number, y: number) => void): void {
    const { y } = this.doc
    const bbox = [MARGIN, y, this.doc.page.width - MARGIN, y + height]
    const options = { alt: printable(plain(alternative)), bbox, placement: 'Block' }
    const figure = this.doc.struct('Figure', options, [() => paint(this.doc, MARGIN, y)])
    this.root.add(figure)
    this.doc.font(REGULAR).fontSize(BODY).fillColor(INK)
    this.doc.x = MARGIN
    this.doc.y = y + height + GAP
  }

  /** Ends the document. @returns all its bytes */
  finish(): Buffer {
    this.root.end()
    const { start, count } = this.doc.bufferedPageRange()
    for (let i = start; i < start + count; i++) this.footOf(i, count)
    this.doc.end()
    const parts: Buffer[] = []
    for (let part = this.doc.read() as Buffer | null; part !== null; part = this.doc.read() as Buffer | null)
      parts.push(part)
    return Buffer.concat(parts)
  }

  private footOf(page: number, count: number): void {
    const { doc } = this
    doc.switchToPage(page)
    doc.markContent('Artifact', { type: 'Pagination' })
    const at = doc.page.height - FOOT
    const options = { lineBreak: false, baseline: 'alphabetic' } as const
    doc.font(REGULAR).fontSize(SMALL).fillColor(QUIET).text(this.foot, MARGIN, at, options)
    const number = `${page + 1} of ${count}`
    doc.text(number, doc.page.width - MARGIN - doc.widthOfString(number), at, options)
    doc.endMarkedContent()
  }

  private words(text: string, label: string, x: number): void {
    const { doc } = this
    doc.fontSize(BODY)
    if (label !== '') doc.font(BOLD).text(printable(plain(label)), x, undefined, { continued: true })
    else doc.x = x
    doc.font(REGULAR).text(printable(plain(text)))
  }

  private write(tag: string, parent: Parent, write: () => void): void {
    this.doc.fillColor(INK)
    parent.add(this.doc.struct(tag, {}, [write]))
    this.doc.font(REGULAR).fontSize(BODY)
    this.doc.x = MARGIN
  }
}
