import { aboutFile, UnreadableSchedule, type Complaint } from './grid.js'

/**
 * Bytes of a CSV file as text. Programs write a byte order mark for UTF-8 and UTF-16 (The Unicode Standard, 23.8); where there
 * is none, it is UTF-8 or, failing that, the encoding of western Windows (WHATWG Encoding Standard, windows-1252).
 */
export function decodeText(bytes: Uint8Array): { text: string; complaints: Complaint[] } {
  const marked = MARKS.find(({ mark }) => mark.every((byte, place) => bytes[place] === byte))
  if (marked) return { text: decode(bytes, marked.encoding), complaints: [] }
  try {
    return { text: decode(bytes, 'utf-8'), complaints: [] }
  } catch (error) {
    if (!(error instanceof UnreadableSchedule)) throw error
  }
  return {
    text: decodeWindows(bytes),
    complaints: [
      aboutFile(
        'The file is not UTF-8. It was read as Windows-1252: look at its accented letters, or save it as UTF-8.',
      ),
    ],
  }
}

const MARKS = [
  { mark: [0xef, 0xbb, 0xbf], encoding: 'utf-8' },
  { mark: [0xff, 0xfe], encoding: 'utf-16le' },
  { mark: [0xfe, 0xff], encoding: 'utf-16be' },
] as const

function decode(bytes: Uint8Array, encoding: string): string {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes)
  } catch {
    throw new UnreadableSchedule(`The file begins like ${encoding.toUpperCase()} and is not. Save it as UTF-8.`)
  }
}

/** Bytes 80 to 9f of the index of windows-1252 (WHATWG Encoding Standard); some releases of Node take them for Latin-1. */
const WINDOWS = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ'
const FIRST_OF_WINDOWS = 0x80

const decodeWindows = (bytes: Uint8Array): string =>
  Buffer.from(bytes)
    .toString('latin1')
    .replace(/[\u0080-\u009f]/g, (byte) => WINDOWS[byte.charCodeAt(0) - FIRST_OF_WINDOWS] ?? byte)
