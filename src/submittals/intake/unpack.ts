import type { IntakeProblem } from '../../report/set/evidence.js'
import type { UploadedFile } from '../upload.js'
import { kindOf } from './kind.js'
import { RATIO_HOLDS_FROM, UPLOAD_LIMITS } from './limits.js'
import { shownFileName, shownName } from './names.js'
import { problem, tooLarge } from './problem.js'
import { containerKind } from './container.js'
import { openZip, ZipFault, type Zip } from './zip.js'

/** From the files of an upload to single files of known kind: zips are opened, whatever is of no use becomes a problem. */

/** A file that is of use, under its shown name: `set.zip/H-204.svg` when it lay in a zip. */
export interface LooseFile extends UploadedFile {
  kind: 'drawing' | 'json' | 'schedule'
}

/** What all files of an upload may take together, and have taken. */
interface Taken {
  files: number
  entries: number
  unpacked: number
  json: number
}

/** @param nameOf the shown name of a file that was uploaded */
export async function unpack(
  uploaded: UploadedFile[],
  nameOf = shownFileName,
): Promise<{ files: LooseFile[]; problems: IntakeProblem[] }> {
  const taken: Taken = { files: 0, entries: 0, unpacked: 0, json: 0 }
  const files: LooseFile[] = []
  const problems: IntakeProblem[] = []
  const refuse = (file: string, why: string) => void problems.push(problem(file, why))

  /** @param inside whether the file lay in a zip, in which no other is opened */
  const sort = async (name: string, bytes: Uint8Array, inside: boolean): Promise<void> => {
    const found = kindOf(bytes)
    if (found.kind === null) return refuse(name, found.why)
    if (found.kind === 'zip') return openContainer(name, bytes, inside)
    take({ name, bytes, kind: found.kind === 'text' ? 'schedule' : found.kind })
  }

  const take = (file: LooseFile): void => {
    const limit = UPLOAD_LIMITS[file.kind]
    if (file.bytes.length > limit) return refuse(file.name, tooLarge(file.bytes.length, limit))
    if (file.kind === 'json') {
      if (taken.json + file.bytes.length > UPLOAD_LIMITS.allJson) return refuse(file.name, tooMuchJson)
      taken.json += file.bytes.length
    }
    files.push(file)
  }

  const openContainer = async (name: string, bytes: Uint8Array, inside: boolean): Promise<void> => {
    const zip = await openZip(bytes, UPLOAD_LIMITS.entries - taken.entries)
    taken.entries += zip.entries
    const found = containerKind(zip.files.map((file) => file.name))
    if (found.kind === null) return refuse(name, found.why)
    // Its reader holds it against limits of its own before it unpacks any part.
    if (found.kind === 'workbook') return take({ name, bytes, kind: 'schedule' })
    if (inside) return refuse(name, 'is a zip inside a zip, which is not opened. Pack the files in one zip.')
    return openAll(name, bytes, zip)
  }

  const openAll = async (name: string, bytes: Uint8Array, zip: Zip): Promise<void> => {
    for (const entry of zip.refused) refuse(shownName(`${name}/${entry.name}`), entry.why)
    refuseBomb(zip, bytes.length)
    // The zip itself counts no more.
    taken.files--
    if (taken.files + zip.files.length > UPLOAD_LIMITS.files) throw new ZipFault(tooManyFiles)
    if (taken.unpacked + zip.unpacked > UPLOAD_LIMITS.unpacked) throw new ZipFault(tooMuchUnpacked)
    taken.files += zip.files.length
    taken.unpacked += zip.unpacked
    for (const file of zip.files) {
      const inner = shownName(`${name}/${file.name}`)
      await guarded(inner, async () => sort(inner, await zip.read(file), true))
    }
    if (zip.files.length === 0 && zip.refused.length === 0) refuse(name, 'holds no files.')
  }

  /** What is wrong with one file never loses the others. */
  const guarded = async (name: string, work: () => Promise<void>): Promise<void> => {
    try {
      await work()
    } catch (error) {
      if (!(error instanceof ZipFault)) throw error
      refuse(name, error.message)
    }
  }

  for (const { name, bytes } of uploaded) {
    const shown = nameOf(name)
    taken.files++
    if (taken.files > UPLOAD_LIMITS.files) refuse(shown, tooManyFiles)
    else await guarded(shown, () => sort(shown, bytes, false))
  }
  return { files, problems }
}

const tooManyFiles = `is left out: at most ${UPLOAD_LIMITS.files} files are read of one upload. Send it in parts.`
const tooMuchJson = `is left out: at most ${UPLOAD_LIMITS.allJson} bytes of JSON are read of one upload. Send it in parts.`
const tooMuchUnpacked = `is left out: the zips of one upload may unpack to ${UPLOAD_LIMITS.unpacked} bytes. Send it in parts.`

/** @throws {ZipFault} for a zip that unpacks to so much more than its size that it can be no set of signs. */
function refuseBomb({ unpacked }: Zip, size: number): void {
  if (unpacked > RATIO_HOLDS_FROM && unpacked > size * UPLOAD_LIMITS.ratio)
    throw new ZipFault(`says that it unpacks to more than ${UPLOAD_LIMITS.ratio} times its size; it is not opened.`)
}
