import { createHash } from 'node:crypto'
import type { CheckInput } from '../check.js'
import type { Translator } from '../braille/translator.js'
import { canonicalJson } from '../standards/catalogue.js'
import { VERSION } from '../version.js'

/** Digests: who asked the same question gets the same id. SHA-256 (FIPS 180-4) over a canonical text. */

const ID_DIGITS = 32
const FINGERPRINT_DIGITS = 16

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

/**
 * Names a finding for waivers and for comparing two reports.
 * @param sign what tells one sign from another: its mark or, without one, its words
 * @param elements our names of the offending parts
 */
export function fingerprint(requirement: string, sign: string, elements: readonly string[]): string {
  const parts = canonicalJson([requirement, sign, [...new Set(elements)].sort()])
  return createHash('sha256').update(parts).digest('hex').slice(0, FINGERPRINT_DIGITS)
}
