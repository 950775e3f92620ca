import * as zlib from 'node:zlib'
import { strToU8, zipSync } from 'fflate'
import { crc32 } from '../../../src/submittals/intake/crc-32.js'
import { readUpload } from '../../../src/submittals/intake/read-upload.js'
import type { Schedule, Upload, UploadedFile } from '../../../src/submittals/upload.js'

/** Uploads for the tests of the intake. Zips are written by fflate, or byte by byte (PKWARE APPNOTE 4.3) where one must lie. */

/** An invented drawing: a letter-sized plate, enough to be told from other files. */
export const SVG =
  '<svg xmlns="http://www.w3.org/2000/svg" width="210mm" height="150mm"><rect width="9" height="9"/></svg>'

/** An invented description with something to check. */
export const described = (text: string, more: object = {}) => ({
  use: 'permanent-room' as const,
  lettering: [{ text }],
  ...more,
})

export const file = (name: string, content: string | Uint8Array): UploadedFile => ({
  name,
  bytes: typeof content === 'string' ? strToU8(content) : content,
})

export const json = (name: string, value: unknown): UploadedFile => file(name, JSON.stringify(value))

export const zip = (name: string, entries: Record<string, string | Uint8Array>): UploadedFile =>
  file(
    name,
    zipSync(
      Object.fromEntries(
        Object.entries(entries).map(([key, value]) => [key, typeof value === 'string' ? strToU8(value) : value]),
      ),
    ),
  )

/**
 * A schedule for these tests, its cells parted by bare commas: mark, drawing, text, door. The product's own reader is tested beside
 * its code and once here.
 */
export async function plainSchedule({ name, bytes }: UploadedFile): Promise<Schedule> {
  const lines = new TextDecoder().decode(bytes).trim().split('\n').slice(1)
  const rows = lines.map((line, index) => {
    const [mark = '', drawing = '', text = '', door = ''] = line.split(',')
    const sign = { use: 'permanent-room' as const, ...(text !== '' && { lettering: [{ text }] }) }
    return { row: index + 2, mark: mark || null, location: null, door: door || null, drawing: drawing || null, sign }
  })
  const doors = rows.flatMap(({ door, row }) => (door === null ? [] : [{ door, location: null, file: name, row }]))
  return { rows, doors, problems: [] }
}

export const schedule = (...rows: string[]): UploadedFile =>
  file('schedule.csv', ['mark,drawing,text,door', ...rows].join('\n'))

export const read = (...files: UploadedFile[]): Promise<Upload> => readUpload(files, plainSchedule)

/** Node.js has one since 20.15; ours is held against it in kind.test.ts. */
const checkSum = typeof zlib.crc32 === 'function' ? zlib.crc32 : crc32

export interface RawEntry {
  name: string | Uint8Array
  content?: Uint8Array
  /** What the directory says, where it is not the truth. */
  says?: number
  crc?: number
  method?: number
  flags?: number
  madeBy?: number
  attributes?: number
  /** Data as it lies in the zip, where it is not the content deflated. */
  packed?: Uint8Array
}

/** @param count what the end of the directory says of the number of its entries */
export function rawZip(entries: RawEntry[], count = entries.length): Uint8Array {
  const locals: Buffer[] = []
  const directory: Buffer[] = []
  let offset = 0
  for (const entry of entries) {
    const name = Buffer.from(entry.name)
    const content = entry.content ?? strToU8(SVG)
    const method = entry.method ?? 8
    const packed = Buffer.from(entry.packed ?? (method === 8 ? zlib.deflateRawSync(content) : content))
    const shared = Buffer.alloc(26)
    shared.writeUInt16LE(20, 0)
    shared.writeUInt16LE(entry.flags ?? 0, 2)
    shared.writeUInt16LE(method, 4)
    shared.writeUInt32LE(entry.crc ?? checkSum(content), 10)
    shared.writeUInt32LE(packed.length, 14)
    shared.writeUInt32LE(entry.says ?? content.length, 18)
    shared.writeUInt16LE(name.length, 22)
    locals.push(Buffer.from('PK\x03\x04', 'latin1'), shared, name, packed)
    const before = Buffer.from([0x50, 0x4b, 1, 2, 20, entry.madeBy ?? 0])
    const rest = Buffer.alloc(14)
    rest.writeUInt32LE((entry.attributes ?? 0) >>> 0, 6)
    rest.writeUInt32LE(offset, 10)
    directory.push(before, shared, rest, name)
    offset += 4 + shared.length + name.length + packed.length
  }
  const listed = Buffer.concat(directory)
  const end = Buffer.alloc(22)
  end.write('PK\x05\x06', 'latin1')
  end.writeUInt16LE(count, 8)
  end.writeUInt16LE(count, 10)
  end.writeUInt32LE(listed.length, 12)
  end.writeUInt32LE(offset, 16)
  return Buffer.concat([...locals, listed, end])
}
