import { pdfkit } from '../libraries.js'
import { plain } from './markup.js'
import { BOLD, printable, REGULAR } from './pdf-fonts.js'
import { BODY, FOOT, GAP, HEAD, INK, MARGIN, QUIET, SIZES, SMALL } from './pdf-ink.js'
import { writeTable, type Cell, type Column } from './pdf-table.js'

/**
 * Sheets of paper that are written from top to bottom, each thing with its tag (ISO 32000-1, 14.8), so that a screen reader
 * reads it in the order in which it was written. The same writing gives the same bytes: the file holds no date.
 */

/** A heading stands on a new sheet when less than this is left under it. */
const LEAST_UNDER_HEADING = { 1: 0, 2: 150, 3: 72, 4: 60 } as const
/** Characters of a name at the head of a sheet, where another stands beside it. */
const MOST_HEAD = 48

type Level = 1 | 2 | 3 | 4
type Parent = PDFKit.PDFStructureElement

/** A part of its own, as of one sign in a set. */
export interface Part {
  name: string
  /** Stands at the head of its sheets. */
  head: string
  /** The bookmark under which its own stands. */
  under: string
  /** The name of its place, for links. */
  place: string
}

/**
 * What the library keeps of a sheet until the end, which its types lack: an array for each stroke and word. A sheet that is full is put
 * together into one, which takes a fraction of the memory.
 */
interface PageContent {
  buffer: Uint8Array[]
}

export class Paper {
  private readonly doc: PDFKit.PDFDocument
  private readonly root: Parent
  private parent: Parent
  /** How many levels lower headings are than they say. */
  private depth = 0
  private readonly groups = new Map<string, PDFKit.PDFOutline>()
  private sheetHead = ''
  /** The sheet that was written last. */
  private before?: PageContent
  /** What stands at the head of each sheet. */
  private readonly heads: string[] = []

  /** @param name of the document, at the head of its sheets too @param foot stands under each sheet, before its number */
  constructor(
    private readonly name: string,
    private readonly foot: string,
  ) {
    const title = printable(plain(name))
    this.doc = new (pdfkit())({
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
    this.doc.on('pageAdded', () => this.sheetAdded())
    this.doc.addPage().font(REGULAR).fontSize(BODY).fillColor(INK)
    this.root = this.doc.struct('Document')
    this.doc.addStructure(this.root)
    this.parent = this.root
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
    const own = (level + this.depth) as Level
    if (this.room.height < LEAST_UNDER_HEADING[own]) this.doc.addPage()
    else if (own > 1 && this.doc.y > MARGIN) this.doc.y += own === 2 ? 3 * GAP : GAP
    if (own < 3 && this.depth === 0) this.bookmark(text)
    this.write(`H${own}`, this.parent, () => this.doc.font(BOLD).fontSize(SIZES[own]).text(words, MARGIN))
    this.doc.y += GAP
  }

  private sheetAdded(): void {
    this.heads.push(this.sheetHead)
    this.before?.buffer.splice(0, Infinity, Buffer.concat(this.before.buffer))
    this.before = this.doc.page.content as unknown as PageContent
  }

  private bookmark(text: string, under?: string): void {
    const { outline } = this.doc
    const above = under === undefined ? outline : (this.groups.get(under) ?? outline.addItem(under))
    if (under !== undefined) this.groups.set(under, above)
    above.addItem(shortened(text))
  }

  /** @param label stands before the text in bold letters */
  paragraph(text: string, label = ''): void {
    this.write('P', this.parent, () => this.words(text, label, MARGIN))
    this.doc.y += GAP
  }

  list(items: readonly { text: string; label?: string }[]): void {
    const list = this.doc.struct('L')
    this.parent.add(list)
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

  /** The first cell of each row is its head. */
  table(columns: readonly Column[], rows: readonly (readonly Cell[])[], leastHeight = 0): void {
    writeTable(this.doc, this.parent, columns, rows, leastHeight)
    this.doc.font(REGULAR).fontSize(BODY).fillColor(INK)
    this.doc.y += 2 * GAP
  }

  /** On sheets of its own: what `write` writes, its headings one level lower. */
  part({ name, head, under, place }: Part, write: () => void): void {
    this.startSheet(head)
    const element = this.doc.struct('Sect')
    this.root.add(element)
    this.parent = element
    this.doc.addNamedDestination(place, 'XYZ', MARGIN, this.doc.y, null)
    this.bookmark(name, under)
    this.lower(() => {
      this.heading(1, name)
      write()
    })
    this.parent = this.root
    element.end()
  }

  /** The headings that `write` writes stand one level lower than they say. */
  lower(write: () => void): void {
    this.depth++
    write()
    this.depth--
  }

  /** Goes on on a new sheet. @param head stands at the head of the sheets from here on */
  startSheet(head: string): void {
    this.sheetHead = head
    this.doc.addPage()
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
    this.parent.add(figure)
    this.doc.font(REGULAR).fontSize(BODY).fillColor(INK)
    this.doc.x = MARGIN
    this.doc.y = y + height + GAP
  }

  /** Ends the document. @returns all its bytes */
  finish(): Buffer {
    this.root.end()
    const { start, count } = this.doc.bufferedPageRange()
    for (let i = start; i < start + count; i++) this.edgesOf(i, count)
    this.doc.end()
    const parts: Buffer[] = []
    for (let part = this.doc.read() as Buffer | null; part !== null; part = this.doc.read() as Buffer | null)
      parts.push(part)
    return Buffer.concat(parts)
  }

  /** The lines above and under the text of a sheet, which no reader needs to hear on each. */
  private edgesOf(page: number, count: number): void {
    const { doc } = this
    doc.switchToPage(page)
    doc.markContent('Artifact', { type: 'Pagination' })
    doc.font(REGULAR).fontSize(SMALL).fillColor(QUIET)
    const end = doc.page.width - MARGIN
    const options = { lineBreak: false, baseline: 'alphabetic' } as const
    const atEnd = (text: string, y: number) => doc.text(text, end - doc.widthOfString(text), y, options)
    if (page > 0) {
      doc.text(shortened(this.name), MARGIN, HEAD, options)
      atEnd(shortened(this.heads[page] ?? ''), HEAD)
    }
    doc.text(this.foot, MARGIN, doc.page.height - FOOT, options)
    atEnd(`${page + 1} of ${count}`, doc.page.height - FOOT)
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

/** A name that fits beside another at the head of a sheet or into a list of bookmarks. */
function shortened(text: string): string {
  const characters = Array.from(printable(plain(text)))
  return characters.length > MOST_HEAD ? `${characters.slice(0, MOST_HEAD - 1).join('')}…` : characters.join('')
}
