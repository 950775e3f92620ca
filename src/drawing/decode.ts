import { Refusal } from '../refusal.js'
import { LIMITS } from './limits.js'
import { malformed, quote, type Spot } from './refuse.js'

/**
 * Bytes to text. The encoding is taken from the byte order mark, else from how the first `<` is written, else from the XML
 * declaration, else it is UTF-8 (XML 1.0, appendix F). Bytes that do not fit the encoding are refused, never replaced.
 */

/** Encodings that keep ASCII in its place, so that the declaration itself can be read before they are known. */
const ACCEPTED = /^(utf-?8|us-ascii|ascii|iso-?8859-\d{1,2}|latin-?1|windows-125\d|cp125\d|koi8-[ru]|macintosh)$/
const UTF_16 = /^(utf-?16(le|be)?|(iso-10646-)?ucs-2)$/

/** Files that are sent under the name of a drawing, known by their first bytes. */
const NOT_DRAWINGS: [magic: number[], name: string][] = [
  [[0x1f, 0x8b], 'a gzip-compressed file (.svgz). Unpack it and send the SVG'],
  [[0x25, 0x50, 0x44, 0x46], 'a PDF. Export the drawing as SVG'],
  [[0x50, 0x4b], 'a ZIP archive. Unpack it and send the SVG'],
  [[0x89, 0x50, 0x4e, 0x47], 'a PNG picture. Send the vector drawing as SVG'],
  [[0xff, 0xd8, 0xff], 'a JPEG picture. Send the vector drawing as SVG'],
]

/** How far into a file its XML declaration is looked for, in bytes. */
const DECLARATION_LENGTH = 256

const startsWith = (bytes: Uint8Array, magic: readonly number[]): boolean => magic.every((b, i) => bytes[i] === b)

/**
 * The text of a drawing, without its byte order mark.
 * @throws {Refusal} `too-large`, or `malformed-drawing` when it is another kind of file or its bytes are not what they claim.
 */
export function decode(bytes: Uint8Array): string {
  if (bytes.length > LIMITS.bytes) {
    const detail = `The drawing has ${bytes.length} bytes; at most ${LIMITS.bytes} are read.`
    throw new Refusal('too-large', detail, [], { limit: LIMITS.bytes, actual: bytes.length })
  }
  if (bytes.length === 0) throw malformed('The drawing is empty. Send an SVG file.')
  for (const [magic, name] of NOT_DRAWINGS) if (startsWith(bytes, magic)) throw malformed(`This is ${name}.`)
  const encoding = encodingOf(bytes)
  const text = decodeAs(encoding, bytes)
  const nul = text.indexOf('\0')
  if (nul >= 0) throw malformed('The drawing holds a NUL character. Save it as SVG in UTF-8.', spotAt(text, nul))
  return text
}

/** Reads ASCII as itself, whatever else the bytes are. */
const ASCII = new TextDecoder('latin1')

function encodingOf(bytes: Uint8Array): string {
  if (startsWith(bytes, [0xff, 0xfe, 0, 0]) || startsWith(bytes, [0, 0, 0xfe, 0xff])) throw utf32()
  if (startsWith(bytes, [0x3c, 0, 0, 0]) || startsWith(bytes, [0, 0, 0, 0x3c])) throw utf32()
  if (startsWith(bytes, [0xff, 0xfe]) || startsWith(bytes, [0x3c, 0])) return 'utf-16le'
  if (startsWith(bytes, [0xfe, 0xff]) || startsWith(bytes, [0, 0x3c])) return 'utf-16be'
  if (startsWith(bytes, [0xef, 0xbb, 0xbf])) return 'utf-8'
  const start = ASCII.decode(bytes.subarray(0, DECLARATION_LENGTH))
  const declared = /^\s*<\?xml[^>]*?\sencoding\s*=\s*["']([\w.:-]{1,40})["']/.exec(start)?.[1]?.toLowerCase() ?? 'utf-8'
  // A file that was converted without its declaration: it starts with a one-byte "<", so it cannot be UTF-16.
  if (UTF_16.test(declared)) return 'utf-8'
  if (!ACCEPTED.test(declared))
    throw malformed(`The encoding ${quote(declared)} is not read. Save the drawing in UTF-8.`)
  return declared
}

const utf32 = (): Refusal => malformed('The encoding UTF-32 is not read. Save the drawing in UTF-8.')

function decodeAs(encoding: string, bytes: Uint8Array): string {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes)
  } catch (error) {
    if (error instanceof RangeError)
      throw malformed(`The encoding ${quote(encoding)} is not read. Save the drawing in UTF-8.`)
    throw malformed(`The drawing holds bytes that are not ${encoding.toUpperCase()}.`, firstBadSpot(encoding, bytes))
  }
}

/** Where decoding first put a replacement character. */
function firstBadSpot(encoding: string, bytes: Uint8Array): Spot {
  const text = new TextDecoder(encoding).decode(bytes)
  return spotAt(text, Math.max(0, text.indexOf('\ufffd')))
}

function spotAt(text: string, index: number): Spot {
  const lines = text.slice(0, index).split('\n')
  return { line: lines.length, column: lines[lines.length - 1].length + 1 }
}
