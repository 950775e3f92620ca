import { parse } from 'secure-json-parse'
import type { IntakeProblem } from '../../report/set/evidence.js'
import { SignDescription } from '../../sign/description.js'
import { faultsOf } from '../../sign/faults.js'
import { claimOfEntry, type Claim } from './claim.js'
import { UPLOAD_LIMITS } from './limits.js'
import { problem } from './problem.js'
import { SubmittalSign } from './submittal-json.js'
import type { LooseFile } from './unpack.js'

/**
 * A JSON file of an upload: one description, one sign, an array of them, or `{ "signs": […] }`. Each sign stands for itself: what is
 * wrong with one is a problem with its place, and the others are read.
 */

/** Faults of one sign that are written out; more of them help nobody. */
const FAULTS_SHOWN = 5
/** Signs of one file that cannot be read are listed one by one up to this many. */
const PROBLEMS_LISTED = 1_000

export function claimsInJson({ name, bytes }: LooseFile): { claims: Claim[]; problems: IntakeProblem[] } {
  const read = readJson(bytes)
  if ('why' in read) return { claims: [], problems: [problem(name, read.why)] }
  const { entries, base, why } = entriesOf(read.value)
  const problems = why === null ? [] : [problem(name, why)]
  const claims: Claim[] = []
  const faulty: IntakeProblem[] = []
  entries.slice(0, UPLOAD_LIMITS.signs).forEach((value, index) => {
    const place = base === null ? null : index + 1
    const parsed = signOf(value, base === null ? '' : `${base}/${index}`)
    if ('entry' in parsed) claims.push(claimOfEntry(name, entries.length === 1 ? null : place, parsed.entry))
    else faulty.push(problem(name, `holds a sign that cannot be read. ${parsed.faults}`))
  })
  problems.push(...faulty.slice(0, PROBLEMS_LISTED))
  if (faulty.length > PROBLEMS_LISTED)
    problems.push(problem(name, `holds ${faulty.length - PROBLEMS_LISTED} more signs that cannot be read.`))
  if (entries.length > UPLOAD_LIMITS.signs)
    problems.push(problem(name, `lists ${entries.length} signs; the first ${UPLOAD_LIMITS.signs} are read.`))
  return { claims, problems }
}

/** Keys that would reach a prototype are refused. */
function readJson(bytes: Uint8Array): { value: unknown } | { why: string } {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    return { value: parse(text, { protoAction: 'error', constructorAction: 'error' }) as unknown }
  } catch (error) {
    const forbidden = error instanceof Error && /forbidden prototype/u.test(error.message)
    return {
      why: forbidden ? 'holds a key that is not accepted: “__proto__” or “constructor”.' : 'is not JSON in UTF-8.',
    }
  }
}

interface Entries {
  entries: unknown[]
  /** JSON Pointer of the list of entries; null where the file itself is the only one. */
  base: string | null
  why: string | null
}

function entriesOf(value: unknown): Entries {
  if (Array.isArray(value)) return { entries: value, base: '', why: value.length > 0 ? null : 'lists no signs.' }
  if (!isObject(value)) return { entries: [], base: '', why: 'holds no sign.' }
  if (!('signs' in value)) {
    const isSign = ['use', 'sign', 'drawing'].some((key) => key in value)
    return isSign ? { entries: [value], base: null, why: null } : { entries: [], base: '', why: 'holds no sign.' }
  }
  if (!Array.isArray(value.signs)) return { entries: [], base: '', why: 'has “signs” that are no list.' }
  const others = Object.keys(value).filter((key) => key !== 'signs')
  const why = value.signs.length === 0 ? 'lists no signs.' : others.length > 0 ? NOT_READ : null
  return { entries: value.signs, base: '/signs', why }
}

const NOT_READ =
  'holds more than “signs”; the rest of it was not read. Give a name, standards and options with the submittal.'

/** A description has a use; an entry of a submittal has a description under `sign`. */
function signOf(value: unknown, pointer: string): { entry: SubmittalSign } | { faults: string } {
  const bare = isObject(value) && 'use' in value
  const schema = bare ? SignDescription : SubmittalSign
  const parsed = schema.safeParse(value)
  if (!parsed.success) return { faults: sentences(faultsOf(parsed.error, schema, pointer)) }
  return { entry: bare ? { sign: parsed.data as SignDescription } : parsed.data }
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

function sentences(faults: { detail: string; pointer?: string }[]): string {
  const shown = faults
    .slice(0, FAULTS_SHOWN)
    .map(({ detail, pointer }) => (pointer ? `At ${pointer}: ${detail}` : detail))
  const more = faults.length - shown.length
  return [...shown, ...(more > 0 ? [`There are ${more} more faults.`] : [])].join(' ')
}
