import { inflateRawSync } from 'node:zlib'
import { fromBufferPromise, type Entry, type ZipFile } from 'yauzl'
import { crc32 } from './crc-32.js'
import { UPLOAD_LIMITS } from './limits.js'
import { DEFLATED, sortEntry } from './zip-entry.js'

/** Zip files: their directory is read first and as a whole, then one file after the other, none for more than the directory says. */

export interface PackedFile {
  name: string
  entry: Entry
}

export interface Zip {
  /** How many the directory lists, of whatever kind. */
  entries: number
  files: PackedFile[]
  /** Entries that are not read, each with the words that follow its name. */
  refused: { name: string; why: string }[]
  /** Bytes that the files say they unpack to, all together. */
  unpacked: number
  /** @throws {ZipFault} when its data is not what the directory says. */
  read(file: PackedFile): Promise<Uint8Array>
}

/** A zip, or a file of one, that cannot be read; the message follows its name. */
export class ZipFault extends Error {}

const DAMAGED = 'is damaged: its directory cannot be read. Pack the files again.'
const NOT_AS_SAID = 'is damaged: its data is not what the zip says of it. Pack it again.'

/** How an entry of the directory begins (PKWARE APPNOTE 4.3.12). */
const ENTRY_SIGNATURE = 0x02014b50

/**
 * @param most entries that it may have
 * @throws {ZipFault} when the directory cannot be read to its end, or lists more.
 */
export async function openZip(bytes: Uint8Array, most: number): Promise<Zip> {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const zip = await open(buffer)
  if (zip.entryCount > most)
    throw new ZipFault(
      `lists too much: the zips of one upload may have ${UPLOAD_LIMITS.entries} entries. Send it in parts.`,
    )
  const files: PackedFile[] = []
  const refused: Zip['refused'] = []
  for (const entry of await entriesOf(zip, buffer)) {
    const sorted = sortEntry(entry)
    if ('take' in sorted) files.push({ name: sorted.name, entry: sorted.take })
    if ('refuse' in sorted) refused.push({ name: sorted.name, why: sorted.refuse })
  }
  const twice = namesGivenTwice(files)
  for (const name of twice) refused.push({ name, why: 'stands in the zip more than once; none of these is read.' })
  const single = files.filter(({ name }) => !twice.has(name))
  const unpacked = single.reduce((sum, { entry }) => sum + entry.uncompressedSize, 0)
  return {
    entries: zip.entryCount,
    files: single,
    refused,
    unpacked,
    read: ({ entry }) => readEntry(zip, buffer, entry),
  }
}

/** Names are not decoded by the reader, which would give up the whole zip for one that it does not like. */
async function open(buffer: Buffer): Promise<ZipFile> {
  try {
    return await fromBufferPromise(buffer, { decodeStrings: false, validateEntrySizes: false })
  } catch {
    throw new ZipFault(DAMAGED)
  }
}

/** All entries, or none: of a directory that breaks off, or goes on after its end, nobody knows what it lacks. */
async function entriesOf(zip: ZipFile, buffer: Buffer): Promise<Entry[]> {
  const entries: Entry[] = []
  try {
    for await (const entry of zip.eachEntry()) entries.push(entry)
  } catch (error) {
    const encrypted = error instanceof Error && error.message.includes('encryption')
    throw new ZipFault(encrypted ? 'is encrypted. Pack the files without a password.' : DAMAGED)
  }
  const end = Number(zip.readEntryCursor)
  if (end + 4 <= buffer.length && buffer.readUInt32LE(end) === ENTRY_SIGNATURE) throw new ZipFault(DAMAGED)
  return entries
}

function namesGivenTwice(files: PackedFile[]): Set<string> {
  const seen = new Set<string>()
  return new Set(files.map(({ name }) => name).filter((name) => seen.has(name) || !seen.add(name)))
}

/** The content in memory of its own, so that it can move to another thread without the zip. */
async function readEntry(zip: ZipFile, buffer: Buffer, entry: Entry): Promise<Uint8Array> {
  const content = await unpack(zip, buffer, entry)
  if (content.length !== entry.uncompressedSize || crc32(content) !== entry.crc32) throw new ZipFault(NOT_AS_SAID)
  return content
}

async function unpack(zip: ZipFile, buffer: Buffer, entry: Entry): Promise<Uint8Array> {
  const { compressedSize, uncompressedSize, compressionMethod } = entry
  if (compressionMethod !== DEFLATED && compressedSize !== uncompressedSize) throw new ZipFault(NOT_AS_SAID)
  try {
    const { fileDataStart } = await zip.readLocalFileHeaderPromise(entry, { minimal: true })
    const packed = buffer.subarray(fileDataStart, fileDataStart + compressedSize)
    if (compressionMethod !== DEFLATED) return new Uint8Array(packed)
    // The least that the limit takes is one byte; the length is compared afterwards.
    return new Uint8Array(inflateRawSync(packed, { maxOutputLength: Math.max(1, uncompressedSize) }))
  } catch {
    throw new ZipFault(NOT_AS_SAID)
  }
}
