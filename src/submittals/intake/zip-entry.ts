import { getFileNameLowLevel, type Entry } from 'yauzl'
import { LARGEST_FILE } from './limits.js'
import { shownName } from './names.js'
import { tooLarge } from './problem.js'

/** One entry of a zip's directory: under which name it is kept, whether it is passed over, or why it is not read. */

export type Sorted = { name: string } & ({ take: Entry } | { refuse: string } | { skip: true })

/** Of the general purpose flags (PKWARE APPNOTE 4.4.4): the name is UTF-8. */
const NAME_IS_UTF8 = 0x800

/** Compression methods (APPNOTE 4.4.5) that are read. */
export const STORED = 0
export const DEFLATED = 8

/** `version made by` (APPNOTE 4.4.2): attributes are those of Unix, with the type of the file in their upper half (stat.h). */
const UNIX = 3
const TYPE_MASK = 0xf000
const REGULAR = 0x8000
const FOLDER = 0x4000
const LINK = 0xa000

/** What systems leave in a folder for themselves. */
const LEFT_BY_SYSTEMS = /^(?:__macosx|thumbs\.db|desktop\.ini|\..+)$/iu

export function sortEntry(entry: Entry): Sorted {
  const written = nameOf(entry)
  const segments = written.split('/')
  const name = shownName(written)
  if (segments.includes('..') || /^(?:\/|[a-z]:)/iu.test(written))
    return { name, refuse: 'has a name that leads out of its folder. Pack the files again, with plain names.' }
  if (segments.some((segment) => LEFT_BY_SYSTEMS.test(segment))) return { name, skip: true }
  const type = entry.versionMadeBy >>> 8 === UNIX ? (entry.externalFileAttributes >>> 16) & TYPE_MASK : 0
  if (type === FOLDER || written.endsWith('/'))
    return isBlank(entry) ? { name, skip: true } : { name, refuse: 'is a folder with content of its own.' }
  if (type === LINK) return { name, refuse: 'is a link to another file. Pack the file itself.' }
  if (type !== 0 && type !== REGULAR) return { name, refuse: 'is no file but a device or a pipe.' }
  if (entry.isEncrypted()) return { name, refuse: 'is encrypted. Pack the files without a password.' }
  if (entry.compressionMethod !== STORED && entry.compressionMethod !== DEFLATED)
    return { name, refuse: 'is packed by a method that is not read here. Pack the files with “deflate”.' }
  if (entry.uncompressedSize > LARGEST_FILE) return { name, refuse: tooLarge(entry.uncompressedSize, LARGEST_FILE) }
  return { name, take: entry }
}

/** Nothing, stored or deflated: what is deflated ends with an empty block of two bytes (RFC 1951, 3.2.3 and 3.2.6). */
const isBlank = ({ uncompressedSize, compressedSize }: Entry): boolean => uncompressedSize === 0 && compressedSize <= 2

/** The name with `/` between folders. Many writers put UTF-8 without saying so; what is no UTF-8 is code page 437 (APPNOTE D.1). */
function nameOf({ generalPurposeBitFlag, fileNameRaw, extraFields }: Entry): string {
  const flags = isUtf8(fileNameRaw) ? generalPurposeBitFlag | NAME_IS_UTF8 : generalPurposeBitFlag
  return getFileNameLowLevel(flags, fileNameRaw, extraFields, false).replaceAll('\\', '/')
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    return true
  } catch {
    return false
  }
}
