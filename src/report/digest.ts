import { createHash } from 'node:crypto'
import type { CheckInput } from '../check.js'
import type { Translator } from '../braille/translator.js'
import { canonicalJson } from '../standards/load.js'
import type { Requirement } from '../standards/standard.js'
import { VERSION } from '../version.js'

/** Digests: who asked the same question gets the same id. SHA-256 (FIPS 180-4) over a canonical text. */

const ID_DIGITS = 32
/** Hexadecimal digits of the sign's part of a fingerprint, and of each of the other two. */
const SIGN_DIGITS = 12
const PART_DIGITS = 8

const hash = (data: string | Uint8Array): string => createHash('sha256').update(data).digest('hex')

/**
 * `chk_` and a digest of the input, the options, the standards' digests, the braille engine and this version.
 * @param input its sign as the schema gives it, with the keys in the schema's order
 */
export function reportId(
  input: CheckInput,
  standards: readonly { id: string; digest: string }[],
  translator: Translator,
): string {
  const { engine, version, digest } = translator.identity
  const question = [
    input.drawing ? hash(input.drawing) : null,
    ...(input.program ? [hash(input.program)] : []),
    input.sign ?? null,
    canonicalJson(input.options),
    standards.map((standard) => [standard.id, standard.digest]),
    [engine, version, digest],
    VERSION,
  ]
  return `chk_${hash(JSON.stringify(question)).slice(0, ID_DIGITS)}`
}

/** Digests of rows and of lists of places, which are the same few on every sign. */
const known = new Map<string, string>()
const MOST_KNOWN = 5000

function knownDigest(text: string): string {
  const before = known.get(text)
  if (before !== undefined) return before
  const found = hash(text).slice(0, PART_DIGITS)
  if (known.size >= MOST_KNOWN) known.clear()
  known.set(text, found)
  return found
}

/**
 * Names the findings of one sign for waivers and for comparing two reports: the first part of a fingerprint is the
 * requirement, the second the sign, the third the offending parts.
 * @param sign what tells one sign from another: its mark
 */
export function fingerprinter(sign: string): (requirement: Requirement, elements: readonly string[]) => string {
  const name = hash(sign).slice(0, SIGN_DIGITS)
  return ({ requirement }, elements) => {
    const places = elements.length > 1 ? JSON.stringify([...new Set(elements)].sort()) : (elements[0] ?? '')
    return knownDigest(requirement) + name + knownDigest(places)
  }
}
