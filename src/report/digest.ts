import { createHash } from 'node:crypto'
import type { CheckInput } from '../check.js'
import type { Translator } from '../braille/translator.js'
import { canonicalJson } from '../standards/catalogue.js'
import type { Requirement } from '../standards/standard.js'
import { VERSION } from '../version.js'

/** Digests: who asked the same question gets the same id. SHA-256 (FIPS 180-4) over a canonical text. */

const ID_DIGITS = 32
/** Hexadecimal digits of each half of a fingerprint. */
const FINGERPRINT_DIGITS = 12

/** `chk_` and a digest of the input, the options, the standards' digests, the braille engine and this version. */
export function reportId(
  input: CheckInput,
  standards: readonly { id: string; digest: string }[],
  translator: Translator,
): string {
  const hash = createHash('sha256')
  const question = {
    drawing: input.drawing ? createHash('sha256').update(input.drawing).digest('hex') : null,
    sign: input.sign ?? null,
    options: input.options,
    standards: standards.map(({ id, digest }) => [id, digest]),
    engine: translator.identity,
    version: VERSION,
  }
  return `chk_${hash.update(canonicalJson(question)).digest('hex').slice(0, ID_DIGITS)}`
}

const short = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, FINGERPRINT_DIGITS)

/** The digest of each row of a table, taken once. */
const rows = new WeakMap<Requirement, string>()

/**
 * Names the findings of one sign for waivers and for comparing two reports: half of a fingerprint is the requirement, half
 * the sign and the offending parts.
 * @param sign what tells one sign from another: its mark
 */
export function fingerprinter(sign: string): (requirement: Requirement, elements: readonly string[]) => string {
  const places = new Map<string, string>()
  return (requirement, elements) => {
    const row = rows.get(requirement) ?? short(requirement.requirement)
    rows.set(requirement, row)
    const key = canonicalJson([sign, [...new Set(elements)].sort()])
    const place = places.get(key) ?? short(key)
    places.set(key, place)
    return row + place
  }
}
