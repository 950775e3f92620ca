/**
 * The check sum of zip files: CRC-32 as ISO 3309 and ITU-T V.42 define it, by table (PKWARE APPNOTE 4.4.7). The one of Node.js came
 * only within version 20.
 */

/** The generator polynomial, its bits in reverse. */
const POLYNOMIAL = 0xedb88320
const BITS = 8

const TABLE = Uint32Array.from({ length: 1 << BITS }, (_, byte) => {
  let rest = byte
  for (let bit = 0; bit < BITS; bit++) rest = rest & 1 ? (rest >>> 1) ^ POLYNOMIAL : rest >>> 1
  return rest
})

export function crc32(bytes: Uint8Array): number {
  let rest = ~0
  for (const byte of bytes) rest = (rest >>> BITS) ^ TABLE[(rest ^ byte) & (TABLE.length - 1)]
  return ~rest >>> 0
}
