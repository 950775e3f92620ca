import { createHash } from 'node:crypto'

/** Digits of a UUID that tell the version and the variant: RFC 9562, 4.1 and 4.2. */
const VERSION_BYTE = 6
const VERSION_5 = 0x50
const VARIANT_BYTE = 8
const VARIANT = 0x80
const BYTES = 16

/**
 * The UUID of a name in a namespace, version 5 (RFC 9562, 5.5): the same name always has the same one. In lower case, as BCF wants it.
 * @param namespace a UUID itself
 */
export function nameUuid(namespace: string, name: string): string {
  const space = Buffer.from(namespace.replaceAll('-', ''), 'hex')
  const bytes = createHash('sha1').update(space).update(name).digest().subarray(0, BYTES)
  bytes[VERSION_BYTE] = ((bytes[VERSION_BYTE] ?? 0) & 0x0f) | VERSION_5
  bytes[VARIANT_BYTE] = ((bytes[VARIANT_BYTE] ?? 0) & 0x3f) | VARIANT
  const digits = bytes.toString('hex')
  return digits.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5')
}
