import { LIMITS } from './limits.js'
import type { Spot } from './refuse.js'

/** The marks of plain XML, read off a text from left to right; see plain.ts. */

/** Thrown inside to give up. */
export class NotPlain extends Error {}

export function giveUp(): never {
  throw new NotPlain()
}

/** A name with at most one colon; the same text gives the same object. */
export interface Name {
  prefix: string
  local: string
  /** The prefix that an attribute of this name declares: `''` for `xmlns` itself. */
  declares?: string
}

const codeOf = (character: string): number => character.charCodeAt(0)
const [LESS, GREATER, SLASH, EQUALS, COLON] = ['<', '>', '/', '=', ':'].map(codeOf)
const [SINGLE_QUOTE, DOUBLE_QUOTE] = ["'", '"'].map(codeOf)
const [SPACE, TAB, RETURN, FEED] = [' ', '\t', '\r', '\n'].map(codeOf)
const isBlank = (code: number): boolean => code === SPACE || code === FEED || code === TAB || code === RETURN

/** For each ASCII code whether a name may hold it, and whether one may start with it. No colon. */
const STARTS = 2
const NAME_CODES = Uint8Array.from({ length: 128 }, (_, code) => {
  const character = String.fromCharCode(code)
  return /[A-Za-z_]/.test(character) ? STARTS : /[\d.-]/.test(character) ? 1 : 0
})

const COMMENT = '<!--'
const CDATA = '<![CDATA['
const CDATA_END = ']]>'

/** The five entities that every XML text has (XML 1.0, 4.6); any other gives up. */
const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" }
const expand = (text: string): string =>
  text.includes('&') ? text.replace(/&(?:([a-z]+);)?/g, (_, name?: string) => ENTITIES[name ?? ''] ?? giveUp()) : text

export class PlainText {
  private at = 0
  private line = 1
  private lineStart = 0
  /** The first line break that was not passed yet. */
  private nextBreak: number
  /** No tag that was begun reaches beyond this: the next `<`. */
  private tagLimit = 0
  private readonly names = new Map<string, Name>()

  constructor(private readonly text: string) {
    this.nextBreak = this.breakAfter(0)
  }

  get atEnd(): boolean {
    return this.at >= this.text.length
  }

  startsWith(mark: string): boolean {
    return this.text.startsWith(mark, this.at)
  }

  /** Moves past what the sticky pattern matches here, if it does. */
  skip(pattern: RegExp): boolean {
    pattern.lastIndex = this.at
    const found = pattern.test(this.text)
    if (found) this.at = pattern.lastIndex
    return found
  }

  /** Whether there were any. */
  skipBlanks(): boolean {
    const start = this.at
    while (isBlank(this.text.charCodeAt(this.at))) this.at++
    return this.at > start
  }

  skipComment(): boolean {
    if (!this.startsWith(COMMENT)) return false
    const end = this.text.indexOf('--', this.at + COMMENT.length)
    if (end < 0 || this.text.charCodeAt(end + 2) !== GREATER) giveUp()
    this.at = end + 3
    return true
  }

  /** Moves past blanks when nothing but blanks stands before the next tag. Whether that was so. */
  skipBlanksToTag(): boolean {
    const start = this.at
    this.skipBlanks()
    if (this.text.charCodeAt(this.at) === LESS) return true
    this.at = start
    return false
  }

  /** The text before the next tag. */
  upToTag(): string {
    const start = this.at
    this.at = this.text.indexOf('<', start)
    if (this.at < 0) giveUp()
    const piece = this.text.slice(start, this.at)
    if (piece.includes(CDATA_END)) giveUp()
    return expand(piece.includes('\r') ? piece.replaceAll('\r\n', '\n') : piece)
  }

  cdata(): string {
    const start = this.at + CDATA.length
    const end = this.text.indexOf(CDATA_END, start)
    if (end < 0) giveUp()
    this.at = end + CDATA_END.length
    return this.text.slice(start, end).replaceAll('\r\n', '\n')
  }

  /** Moves past the `<` of a tag. Where it stands. */
  startTag(): Spot {
    const start = this.at
    if (this.text.charCodeAt(start) !== LESS) giveUp()
    while (this.nextBreak < start) {
      this.line++
      this.lineStart = this.nextBreak + 1
      this.nextBreak = this.breakAfter(this.lineStart)
    }
    this.at = start + 1
    const next = this.text.indexOf('<', this.at)
    this.tagLimit = next < 0 ? this.text.length : next
    return { line: this.line, column: start - this.lineStart + 1 }
  }

  /** The name in an end tag; moves past that tag. */
  endTag(): Name {
    this.at += '</'.length
    const name = this.name()
    this.skipBlanks()
    if (this.text.charCodeAt(this.at) !== GREATER) giveUp()
    this.at++
    return name
  }

  /** How the tag ends here; undefined where blanks part it from its next attribute. */
  tagEnds(): 'open' | 'closed' | undefined {
    const parted = this.skipBlanks()
    const code = this.text.charCodeAt(this.at)
    if (code === GREATER) {
      this.at++
      return 'open'
    }
    if (code === SLASH) {
      if (this.text.charCodeAt(this.at + 1) !== GREATER) giveUp()
      this.at += 2
      return 'closed'
    }
    return parted ? undefined : giveUp()
  }

  name(): Name {
    const { text } = this
    const start = this.at
    let colon = -1
    if (NAME_CODES[text.charCodeAt(start)] !== STARTS) giveUp()
    for (let end = start + 1; ; end++) {
      const code = text.charCodeAt(end)
      if (NAME_CODES[code] > 0) continue
      if (code === COLON && colon < 0 && NAME_CODES[text.charCodeAt(end + 1)] === STARTS) colon = end
      else {
        this.at = end
        break
      }
    }
    const written = text.slice(start, this.at)
    const known = this.names.get(written)
    if (known) return known
    const name = nameOf(written, colon - start)
    this.names.set(written, name)
    return name
  }

  /** The value of an attribute whose name was just read. */
  value(): string {
    const { text } = this
    this.skipBlanks()
    if (text.charCodeAt(this.at) !== EQUALS) giveUp()
    this.at++
    this.skipBlanks()
    const quote = text.charCodeAt(this.at)
    if (quote !== DOUBLE_QUOTE && quote !== SINGLE_QUOTE) giveUp()
    const start = this.at + 1
    const end = text.indexOf(quote === DOUBLE_QUOTE ? '"' : "'", start)
    if (end < 0 || end > this.tagLimit || end - start > LIMITS.attributeLength) giveUp()
    this.at = end + 1
    const value = text.slice(start, end)
    // XML 1.0, 3.3.3: blanks of any kind count as spaces.
    return NEEDS_WORK.test(value) ? expand(value.replace(/\r\n|[\t\n]/g, ' ')) : value
  }

  private breakAfter(index: number): number {
    const found = this.text.indexOf('\n', index)
    return found < 0 ? Infinity : found
  }
}

const NEEDS_WORK = /[&\t\n\r]/

/** @param colon where its colon stands; below 0 when it has none */
function nameOf(written: string, colon: number): Name {
  if (written === 'xmlns') return { prefix: '', local: written, declares: '' }
  if (colon <= 0) return { prefix: '', local: written }
  const name: Name = { prefix: written.slice(0, colon), local: written.slice(colon + 1) }
  return name.prefix === 'xmlns' ? { ...name, declares: name.local } : name
}
