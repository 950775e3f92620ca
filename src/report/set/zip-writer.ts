import { createHash } from 'node:crypto'
import { deflateSync, Zip, ZipPassThrough } from 'fflate'

/** A zip that is written file by file, so that no more than one file of it is held at a time, with a digest of each. */

export interface WrittenFile {
  name: string
  bytes: number
  sha256: string
}

/** What a zip without its extension for large files can count (APPNOTE.TXT, 4.4.22 and 4.4.24). */
const MOST_FILES = 0xfffe
const MOST_BYTES = 0xfffffffe
/** What is compressed already is kept as it is. */
const COMPRESSED = /\.(png|pdf|bcf|zip|jpe?g|xlsx|gz)$/i

/** Half the time of the usual level for files a twentieth larger. */
const LEVEL = 3
const DEFLATED = 8

/** A file that comes in one piece, which takes less time than compressing it as a stream; in script, so that the bytes are the same everywhere. */
class DeflatedFile extends ZipPassThrough {
  override compression = DEFLATED

  protected override process(bytes: Uint8Array<ArrayBuffer>, isLast: boolean): void {
    this.ondata(null, deflateSync(bytes, { level: LEVEL }), isLast)
  }
}

export class ZipWriter {
  readonly files: WrittenFile[] = []
  private chunks: Uint8Array[] = []
  private written = 0
  private readonly zip = new Zip((error, chunk) => {
    if (error) throw error
    this.chunks.push(chunk)
    this.written += chunk.length
  })

  /** @param date of all files, a local time without a zone, so that the bytes are the same in every zone */
  constructor(private readonly date: string) {}

  /**
   * Puts one file behind the others.
   * @param name with forward slashes
   * @throws {RangeError} when a zip cannot hold it
   */
  add(name: string, content: Uint8Array | string): void {
    const bytes = typeof content === 'string' ? Buffer.from(content) : content
    if (this.files.length >= MOST_FILES) throw new RangeError(`A zip holds ${MOST_FILES} files at most.`)
    if (this.written + bytes.length > MOST_BYTES) throw new RangeError(`A zip holds ${MOST_BYTES} bytes at most.`)
    const file = COMPRESSED.test(name) ? new ZipPassThrough(name) : new DeflatedFile(name)
    file.mtime = this.date
    this.zip.add(file)
    file.push(bytes, true)
    this.files.push({ name, bytes: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') })
  }

  end(): void {
    this.zip.end()
  }

  /** What was written since the last time. */
  take(): Uint8Array[] {
    const taken = this.chunks
    this.chunks = []
    return taken
  }
}
