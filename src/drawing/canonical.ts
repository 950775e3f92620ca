import type { Element, Gated } from './gate.js'

/** Writes the canonical text and keeps beside it what its numbers stand for. */
export class Canonical {
  depth = 0
  /** UTF-16 units of all texts that are kept. */
  textLength = 0
  private readonly elements: Element[] = []
  private readonly texts: string[] = []
  private readonly pieces: string[] = []
  /** The depth of the outermost open `text` element, 0 outside of any: only there do blanks alone matter. */
  private wordsFrom = 0

  get count(): number {
    return this.elements.length
  }

  get inWords(): boolean {
    return this.wordsFrom > 0
  }

  open(element: Element): void {
    this.depth++
    if (this.wordsFrom === 0 && element.name === 'text') this.wordsFrom = this.depth
    this.pieces.push(`<e n="${this.elements.length}">`)
    this.elements.push(element)
  }

  text(piece: string): void {
    if (this.depth === 0 || (this.wordsFrom === 0 && BLANK.test(piece))) return
    this.textLength += piece.length
    this.pieces.push(`<t n="${this.texts.length}"/>`)
    this.texts.push(piece)
  }

  close(): void {
    if (this.wordsFrom === this.depth) this.wordsFrom = 0
    this.depth--
    this.pieces.push('</e>')
  }

  finish(): Gated {
    return { canonical: this.pieces.join(''), elements: this.elements, texts: this.texts }
  }
}

const BLANK = /^[ \t\r\n]*$/
