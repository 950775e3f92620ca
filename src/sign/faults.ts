import { z } from 'zod'
import type { Fault } from '../refusal.js'

/** Turns what zod found wrong into faults for people: what, where as a JSON Pointer, and what was probably meant. */

type Issue = z.core.$ZodIssue

/** More faults than these help nobody. */
const MOST_FAULTS = 50

/** At most this share of a name may differ for another name to be offered instead. */
const LIKENESS = 0.4

/**
 * @param schema the schema that was not met, to know the keys that are known
 * @param base JSON Pointer of the value that was validated
 */
export function faultsOf(error: z.ZodError, schema: z.ZodType, base = ''): Fault[] {
  return error.issues
    .slice(0, MOST_FAULTS)
    .flatMap((issue) => faultsOfIssue(issue, schema, []))
    .slice(0, MOST_FAULTS)
    .map(({ detail, path }) => ({ detail, pointer: base + pointerOf(path) }))
}

/** RFC 6901. */
export const pointerOf = (path: readonly PropertyKey[]): string =>
  path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('')

interface PathFault {
  detail: string
  path: PropertyKey[]
}

function faultsOfIssue(issue: Issue, schema: z.ZodType, above: PropertyKey[]): PathFault[] {
  const path = [...above, ...issue.path]
  if (issue.code === 'unrecognized_keys') {
    const known = keysAt(schema, path)
    return issue.keys.slice(0, MOST_FAULTS).map((key) => ({ detail: unknownKey(key, known), path: [...path, key] }))
  }
  if (issue.code === 'invalid_union') {
    const meant = issue.errors.filter((errors) => !errors.some((e) => e.path.length === 0 && e.code === 'invalid_type'))
    const [only] = meant
    if (only && meant.length === 1) return only.flatMap((inner) => faultsOfIssue(inner, schema, path))
  }
  return [{ detail: sentence(issue, path), path }]
}

function unknownKey(key: string, known: string[]): string {
  const near = nearest(key, known)
  return near === undefined ? `“${key}” is not known here.` : `“${key}” is not known here; did you mean “${near}”?`
}

function sentence(issue: Issue, path: PropertyKey[]): string {
  const name = typeof path.at(-1) === 'string' ? `“${String(path.at(-1))}”` : 'This'
  const text =
    issue.code === 'invalid_type' && issue.input === undefined && isAbsent(issue) ? 'is missing' : issue.message
  return `${name} ${said(text)}.`
}

const isAbsent = (issue: Issue): boolean => issue.message.endsWith('received undefined')

/** zod's own texts made to follow the name of the value. */
const said = (message: string): string =>
  message
    .replace(/\.$/u, '')
    .replace(/^Invalid input: expected number, received NaN$/u, 'is not a number')
    .replace(/^Invalid input: expected/u, 'is wrong: expected')
    .replace(
      /^Invalid option: expected one of.*/u,
      (text) => `must be one of${text.slice(text.lastIndexOf(' of') + 3).replaceAll('|', ', ')}`,
    )
    .replace(/^Invalid (?:input|option): /u, 'is wrong: ')
    .replace(/^Too (small|big): expected \w+ to (?:be|have)/u, 'is too $1: it must be')
    .replace(/^expected/u, 'is wrong: expected')
    .replace(/^Invalid input$/u, 'is not of the kind that is expected here')

/** The keys that an object schema at this path knows; none when it cannot be told. */
function keysAt(schema: z.ZodType, path: readonly PropertyKey[]): string[] {
  let here: z.core.$ZodType[] = unwrapped(schema)
  for (const key of path) {
    here = here.flatMap((type) => {
      if (type instanceof z.ZodArray) return unwrapped(type.element)
      const next = type instanceof z.ZodObject ? (type.shape as Record<string, z.ZodType>)[String(key)] : undefined
      return next ? unwrapped(next) : []
    })
  }
  return here.flatMap((type) => (type instanceof z.ZodObject ? Object.keys(type.shape) : []))
}

function unwrapped(type: z.core.$ZodType): z.core.$ZodType[] {
  if (type instanceof z.ZodOptional || type instanceof z.ZodDefault) return unwrapped(type.def.innerType)
  if (type instanceof z.ZodUnion) return type.options.flatMap(unwrapped)
  return [type]
}

/** The known name that is nearest by edit distance, if near enough to be a slip of the fingers. */
export function nearest(name: string, known: readonly string[]): string | undefined {
  const ranked = known
    .map((candidate) => ({ candidate, distance: editDistance(name.toLowerCase(), candidate.toLowerCase()) }))
    .sort((a, b) => a.distance - b.distance)
  const best = ranked[0]
  return best && best.distance <= LIKENESS * best.candidate.length ? best.candidate : undefined
}

/** Levenshtein 1966, by rows (Wagner and Fischer 1974). Long names are not compared. */
function editDistance(a: string, b: string): number {
  const longest = 40
  if (a.length > longest) return Infinity
  let row = Array.from({ length: b.length + 1 }, (_, i) => i)
  for (let i = 1; i <= a.length; i++) {
    const next = [i]
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1
      next.push(Math.min(at(row, j) + 1, at(next, j - 1) + 1, at(row, j - 1) + change))
    }
    row = next
  }
  return at(row, b.length)
}

const at = (row: number[], index: number): number => row[index] ?? Infinity
