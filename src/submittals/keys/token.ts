import { createHash, randomInt, timingSafeEqual } from 'node:crypto'

/**
 * What a client sends: `fingertrue_<id>_<secret>`. The prefix lets scanners of published code find a key that was leaked, the id
 * finds its row, and the secret is kept as a digest only. There are no signs in it but letters, digits and underscores, so that
 * a double click selects it whole.
 */

const PREFIX = 'fingertrue'
const ALPHABET = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz'
const ID_LENGTH = 12
/** In base 62: 256 bits of chance. */
const SECRET_LENGTH = 43

const WHOLE = new RegExp(`^${PREFIX}_([0-9A-Za-z]{${ID_LENGTH}})_([0-9A-Za-z]{${SECRET_LENGTH}})$`, 'u')

/** Each letter with the same chance, from the system's generator. */
const chance = (length: number): string => Array.from({ length }, () => ALPHABET[randomInt(ALPHABET.length)]).join('')

export const newKeyId = (): string => chance(ID_LENGTH)
export const newSecret = (): string => chance(SECRET_LENGTH)

export const tokenOf = (id: string, secret: string): string => `${PREFIX}_${id}_${secret}`

/** @returns undefined for what no key of ours looks like */
export function readToken(token: string): { id: string; secret: string } | undefined {
  const [, id, secret] = WHOLE.exec(token) ?? []
  return id !== undefined && secret !== undefined ? { id, secret } : undefined
}

/** SHA-256 (FIPS 180-4), hexadecimal. */
export const digestOf = (secret: string): string => createHash('sha256').update(secret).digest('hex')

/** In the same time for any secret, so that the time of an answer tells nothing of the digest. */
export const isSecretOf = (secret: string, digest: string): boolean => {
  const [given, kept] = [Buffer.from(digestOf(secret), 'hex'), Buffer.from(digest, 'hex')]
  return given.length === kept.length && timingSafeEqual(given, kept)
}
