import { Readable } from 'node:stream'
import { fromBufferPromise, type Entry, type ZipFile } from 'yauzl'
import { UnreadableSchedule } from './grid.js'

/**
 * The parts of a workbook that hold cells (ECMA-376, part 1, 12.3), inflated under limits, so that no library meets a zip that
 * nobody has measured. Macros, pictures, links and settings are not even inflated.
 */

/** Entries of the zip; a workbook of many sheets has some dozens. */
export const MOST_ENTRIES = 1_000
/** Bytes of all parts together once inflated: twenty thousand full rows stay below. */
export const MOST_INFLATED = 48 * 1024 * 1024
/** How many times larger a part may be than its compressed bytes. Sheets of programs stay below a tenth of it (our measurement). */
export const HIGHEST_RATIO = 300
/** Parts below this are small whatever their ratio. */
const RATIO_COUNTS_FROM = 1024 * 1024

const HOLDS_CELLS =
  /^xl\/(?:workbook\.xml|_rels\/workbook\.xml\.rels|styles\w*\.xml|sharedStrings\w*\.xml|worksheets\/[^/]+\.xml)$/

/** @throws {UnreadableSchedule} for what is no zip or goes beyond a limit. */
export async function unpackWorkbook(bytes: Uint8Array): Promise<Map<string, Uint8Array>> {
  const zip = await opened(bytes)
  if (zip.entryCount > MOST_ENTRIES)
    throw new UnreadableSchedule(
      `The workbook is a zip with ${zip.entryCount} entries; at most ${MOST_ENTRIES} are read.`,
    )
  const parts = new Map<string, Uint8Array>()
  let left = MOST_INFLATED
  try {
    for await (const entry of zip.eachEntry()) {
      if (!HOLDS_CELLS.test(entry.fileName)) continue
      if (parts.has(entry.fileName)) throw new UnreadableSchedule('The workbook holds one of its parts twice.')
      const part = await inflated(zip, entry, left)
      left -= part.length
      parts.set(entry.fileName, part)
    }
  } catch (error) {
    if (error instanceof UnreadableSchedule) throw error
    throw new UnreadableSchedule(DAMAGED)
  }
  return parts
}

const DAMAGED = 'The workbook is damaged: it cannot be unpacked. Save it again as XLSX, or as CSV.'

async function opened(bytes: Uint8Array): Promise<ZipFile> {
  try {
    return await fromBufferPromise(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength))
  } catch {
    throw new UnreadableSchedule(DAMAGED)
  }
}

async function inflated(zip: ZipFile, entry: Entry, left: number): Promise<Uint8Array> {
  if (entry.isEncrypted()) throw new UnreadableSchedule('The workbook is encrypted. Save it without a password.')
  const { uncompressedSize, compressedSize } = entry
  const swollen = uncompressedSize > RATIO_COUNTS_FROM && uncompressedSize > compressedSize * HIGHEST_RATIO
  if (uncompressedSize > left || swollen)
    throw new UnreadableSchedule(
      `The workbook grows beyond what is read when it is unpacked (${MOST_INFLATED} bytes, ${HIGHEST_RATIO} times its size).`,
    )
  // yauzl ends the stream with an error at the first byte more than the entry declares.
  const chunks: Uint8Array[] = []
  for await (const chunk of Readable.from(await zip.openReadStreamPromise(entry))) chunks.push(chunk as Uint8Array)
  return Buffer.concat(chunks)
}
