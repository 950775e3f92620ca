/**
 * Text and bytes put one behind the other. Memory is had in large blocks and each result is a part of one, since many buffers
 * of their own cost more than what is written into them.
 */

const BLOCK = 1024 * 1024
/** Bytes that one UTF-16 unit takes at most in UTF-8. */
const BYTES_PER_UNIT = 3

export class ByteWriter {
  private block = Buffer.allocUnsafeSlow(BLOCK)
  private start = 0
  private end = 0

  /** Puts a text behind what is there, in UTF-8. */
  text(text: string): void {
    this.makeRoom(text.length * BYTES_PER_UNIT)
    this.end += this.block.write(text, this.end)
  }

  /** Puts bytes behind what is there. */
  copy(bytes: Uint8Array): void {
    this.makeRoom(bytes.length)
    this.block.set(bytes, this.end)
    this.end += bytes.length
  }

  /** All that was put since the last time. It stays as it is; kept for long, it keeps its whole block. */
  take(): Buffer {
    const taken = this.block.subarray(this.start, this.end)
    this.start = this.end
    return taken
  }

  private makeRoom(more: number): void {
    if (this.end + more <= this.block.length) return
    const begun = this.block.subarray(this.start, this.end)
    this.block = Buffer.allocUnsafeSlow(Math.max(BLOCK, 2 * (begun.length + more)))
    this.block.set(begun)
    this.start = 0
    this.end = begun.length
  }
}
