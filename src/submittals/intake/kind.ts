/** What a file is, told by its bytes: its name and what a client calls it say nothing. */

export type Kind = 'drawing' | 'zip' | 'json' | 'text'

/** A file that is of use, or the words that follow its name and say why it is not. */
export type KindOrReason = { kind: Kind } | { kind: null; why: string }

/** Files that are sent beside drawings and schedules, by their first bytes (the magic numbers of `file(1)`). */
const REFUSED: [magic: number[], why: string][] = [
  [[0x1f, 0x8b], 'is compressed with gzip (.svgz). Unpack it and send the SVG.'],
  [[0x25, 0x50, 0x44, 0x46], 'is a PDF. Export the drawing as SVG.'],
  [[0x89, 0x50, 0x4e, 0x47], 'is a PNG picture. Send the vector drawing as SVG.'],
  [[0xff, 0xd8, 0xff], 'is a JPEG picture. Send the vector drawing as SVG.'],
  [[0x47, 0x49, 0x46, 0x38], 'is a GIF picture. Send the vector drawing as SVG.'],
  [[0x49, 0x49, 0x2a, 0x00], 'is a TIFF picture. Send the vector drawing as SVG.'],
  [[0x4d, 0x4d, 0x00, 0x2a], 'is a TIFF picture. Send the vector drawing as SVG.'],
  [[0xd0, 0xcf, 0x11, 0xe0], 'is an old Office document. Save a schedule as XLSX or CSV.'],
  [[0x52, 0x61, 0x72, 0x21], 'is a RAR archive. Pack the files as ZIP.'],
  [[0x37, 0x7a, 0xbc, 0xaf], 'is a 7z archive. Pack the files as ZIP.'],
  [[0x41, 0x43, 0x31, 0x30], 'is a DWG drawing. Export it as SVG.'],
  [[0x4d, 0x5a], 'is a program. Send drawings, schedules or descriptions.'],
  [[0x7f, 0x45, 0x4c, 0x46], 'is a program. Send drawings, schedules or descriptions.'],
]

/** A file, an empty archive, a part of a divided one (PKWARE APPNOTE 4.3.7, 4.3.16, 8.5.4). */
const ZIP: number[][] = [
  [0x50, 0x4b, 3, 4],
  [0x50, 0x4b, 5, 6],
  [0x50, 0x4b, 7, 8],
]

/** Bytes from the start of a file that are looked at as text. */
const LOOKED_AT = 65_536

const UNKNOWN =
  'is of no kind that is read here: drawings (SVG), schedules (CSV, XLSX), descriptions (JSON) and zips of these.'

const startsWith = (bytes: Uint8Array, magic: readonly number[]): boolean => magic.every((b, i) => bytes[i] === b)

export function kindOf(bytes: Uint8Array): KindOrReason {
  if (bytes.length === 0) return { kind: null, why: 'is empty.' }
  if (ZIP.some((magic) => startsWith(bytes, magic))) return { kind: 'zip' }
  const refused = REFUSED.find(([magic]) => startsWith(bytes, magic))
  if (refused) return { kind: null, why: refused[1] }
  const text = beginning(bytes)
  if (text.startsWith('<')) return kindOfMarkup(text)
  if (text === '' && bytes.length <= LOOKED_AT) return { kind: null, why: 'is empty.' }
  if (/^[[{]/u.test(text)) return { kind: 'json' }
  return isBinary(text) ? { kind: null, why: UNKNOWN } : { kind: 'text' }
}

/** Its beginning as text, without blanks and byte order mark. Whoever reads the file decides whether its encoding is accepted. */
const beginning = (bytes: Uint8Array): string =>
  new TextDecoder(encodingOf(bytes)).decode(bytes.subarray(0, LOOKED_AT)).trimStart()

/** By the byte order mark, or by how `<` is written (XML 1.0, appendix F). */
function encodingOf(bytes: Uint8Array): string {
  if (startsWith(bytes, [0xff, 0xfe]) || startsWith(bytes, [0x3c, 0])) return 'utf-16le'
  if (startsWith(bytes, [0xfe, 0xff]) || startsWith(bytes, [0, 0x3c])) return 'utf-16be'
  return 'utf-8'
}

const isBinary = (text: string): boolean => /\p{Cc}/u.test(text.replace(/[\t\n\v\f\r]+/gu, ' '))

/** Markup is a drawing unless its root is plainly another one: what is wrong with a drawing is told when it is read. */
function kindOfMarkup(text: string): KindOrReason {
  const root = rootOf(text)
  if (root === undefined || /^(?:[^:]*:)?svg$/u.test(root)) return { kind: 'drawing' }
  if (/^html$/iu.test(root) || /<!doctype\s+html\b/iu.test(text))
    return { kind: null, why: 'is a web page. Send the drawing alone, as SVG.' }
  return { kind: null, why: 'is XML but no SVG drawing. Export the drawing as SVG.' }
}

/** The name of the first element; undefined where the text before it does not end. */
function rootOf(text: string): string | undefined {
  let at = 0
  while (at >= 0) {
    const rest = text.slice(at, at + LONGEST_ROOT)
    const blanks = /^\s+/u.exec(rest)?.[0].length ?? 0
    if (blanks > 0) at += blanks
    else if (rest.startsWith('<?')) at = after(text, '?>', at)
    else if (rest.startsWith('<!--')) at = after(text, '-->', at)
    else if (/^<!doctype/iu.test(rest)) at = afterDoctype(text, at)
    else return /^<([^\s<>/!?]+)[\s/>]/u.exec(rest)?.[1]
  }
  return undefined
}

const LONGEST_ROOT = 100

function after(text: string, end: string, from: number): number {
  const found = text.indexOf(end, from)
  return found < 0 ? -1 : found + end.length
}

function afterDoctype(text: string, from: number): number {
  const bracket = text.indexOf('[', from)
  const end = text.indexOf('>', from)
  if (bracket < 0 || (end >= 0 && end < bracket)) return after(text, '>', from)
  const close = text.indexOf(']', bracket)
  return close < 0 ? -1 : after(text, '>', close)
}
