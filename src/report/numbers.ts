import type { NumberUnit } from '../sign/quantities.js'

/**
 * Numbers in texts. Digits are chosen so that a text never contradicts its verdict: a value that fails is shown beyond
 * its limit and a value that passes is not, however close it lies.
 */

export const MILLIMETRES_PER_INCH = 25.4

/** What a report keeps of a JSON number: enough for every comparison, without the noise of float64. */
const KEPT = 1e9
const MOST_DECIMALS = 6
/** Ends are shown exactly if this many decimals do: 1/32 inch takes five, in inches and in millimetres. */
const MOST_EXACT_DECIMALS = 5
const EXACT = 1e-9

export interface Ends {
  min?: number
  max?: number
}

/** Rounds away float64 noise; keeps the order of any two numbers. Not finite: null. */
export function kept(value: number | undefined): number | null {
  if (value === undefined || !Number.isFinite(value)) return null
  const rounded = Math.round(value * KEPT) / KEPT
  return Number.isFinite(rounded) ? rounded + 0 : value
}

/** `value` with a fixed number of decimals, never "-0". */
export function fixed(value: number, decimals: number): string {
  const text = value.toFixed(decimals)
  return text.startsWith('-') && Number(text) === 0 ? text.slice(1) : text
}

const side = (value: number, { min, max }: Ends): number =>
  min !== undefined && value < min ? -1 : max !== undefined && value > max ? 1 : 0

const mapped = ({ min, max }: Ends, change: (end: number) => number): Ends => ({
  min: min === undefined ? undefined : change(min),
  max: max === undefined ? undefined : change(max),
})

/** Ends as they are shown. Almost all come from the tables, so they are few and come again and again. */
const shownEnds = new Map<number, string[]>()
const MOST_ENDS = 1000

/** An end as it is shown: exactly, where that takes few decimals, else with at least as many as the value. */
function shownEnd(end: number, decimals: number, least: number): string {
  const known = shownEnds.get(end) ?? []
  const place = decimals * (MOST_DECIMALS + 1) + least
  const before = known[place]
  if (before !== undefined) return before
  if (shownEnds.size >= MOST_ENDS) shownEnds.clear()
  shownEnds.set(end, known)
  return (known[place] = writeEnd(end, decimals, least))
}

function writeEnd(end: number, decimals: number, least: number): string {
  for (let exact = least, scale = 10 ** least; exact <= MOST_EXACT_DECIMALS; exact++, scale *= 10)
    if (Math.abs(Math.round(end * scale) - end * scale) < EXACT * scale) return fixed(end, exact)
  return fixed(end, Math.max(decimals, least))
}

/**
 * The fewest decimals, from `least` up, with which `value` is seen on its side of the limit as it is shown.
 * @param outside whether the text says that the value is outside its limit; a value that passed within the arithmetic
 *   noise of a drawing is then shown as equal to the end, or with `least` decimals where no number of them does that.
 * @param endLeast the fewest decimals of the ends
 */
export function decimalsFor(value: number, ends: Ends, outside: boolean, least: number, endLeast = least): number {
  for (let decimals = least; decimals <= MOST_DECIMALS; decimals++) {
    const shownAt = (end: number) => Number(shownEnd(end, decimals, endLeast))
    const seen = side(Number(value.toFixed(decimals)), mapped(ends, shownAt))
    if (outside ? seen !== 0 && seen === side(value, ends) : seen === 0) return decimals
  }
  return outside ? MOST_DECIMALS : least
}

/** How numbers of a quantity are written: lengths in mm and inches, shares in percent, others as a plain factor or in a unit of their own. */
export type Notation = 'length' | 'percent' | 'to-one' | 'times' | NumberUnit

const FORMS: Record<Exclude<Notation, 'length'>, { factor: number; least: number; form: (n: string) => string }> = {
  percent: { factor: 100, least: 1, form: (n) => `${n} %` },
  'to-one': { factor: 1, least: 2, form: (n) => `${n}:1` },
  times: { factor: 1, least: 2, form: (n) => `${n} times` },
  count: { factor: 1, least: 0, form: (n) => n },
  lx: { factor: 1, least: 0, form: (n) => `${n} lx` },
  'gloss-units': { factor: 1, least: 0, form: (n) => `${n} gloss units` },
}

/** Large lengths are shown with one decimal less. */
const LARGE_MM = 100
const leastDecimals = (millimetres: number) => (Math.abs(millimetres) < LARGE_MM ? { mm: 2, in: 3 } : { mm: 1, in: 2 })

/** A value and its limit, with digits that fit each other. */
export interface Written {
  value: string
  min?: string
  max?: string
  /** How far the value lies outside, if it does. */
  excess?: string
}

/**
 * Writes a value beside its limit. The result is shared and not to be changed.
 * @param value in millimetres or as a ratio
 * @param outside see `decimalsFor`
 */
export function write(value: number, ends: Ends, notation: Notation, outside: boolean): Written {
  const before = written.get(value)
  const same = before?.find(
    (one) => one.notation === notation && one.outside === outside && one.min === ends.min && one.max === ends.max,
  )
  if (same) return same.text
  const text = writeAnew(value, ends, notation, outside)
  if (!before && written.size >= MOST_WRITTEN) written.clear()
  if (before && before.length >= MOST_FOR_A_VALUE) before.length = 0
  const one = { notation, outside, min: ends.min, max: ends.max, text }
  if (before) before.push(one)
  else written.set(value, [one])
  return text
}

/** Values as they were written: a shop's signs have the same few sizes. */
const written = new Map<number, { notation: Notation; outside: boolean; min?: number; max?: number; text: Written }[]>()
const MOST_WRITTEN = 2000
const MOST_FOR_A_VALUE = 20

function writeAnew(value: number, ends: Ends, notation: Notation, outside: boolean): Written {
  if (notation === 'length') return writeLength(value, ends, outside)
  const { factor, least, form } = FORMS[notation]
  const shown = mapped(ends, (end) => end * factor)
  const decimals = decimalsFor(value * factor, shown, outside, least, 0)
  const end = (of: number | undefined) => (of === undefined ? undefined : form(shownEnd(of, decimals, 0)))
  return { value: form(fixed(value * factor, decimals)), min: end(shown.min), max: end(shown.max) }
}

function writeLength(value: number, ends: Ends, outside: boolean): Written {
  const least = leastDecimals(value)
  const inches = (length: number) => length / MILLIMETRES_PER_INCH
  const mm = decimalsFor(value, ends, outside, least.mm)
  const inch = decimalsFor(inches(value), mapped(ends, inches), outside, least.in)
  const end = (of: number | undefined) =>
    of === undefined ? undefined : `${shownEnd(of, mm, least.mm)} mm (${shownEnd(inches(of), inch, least.in)} in)`
  const where = side(value, ends)
  const crossed = where < 0 ? ends.min : where > 0 ? ends.max : undefined
  const shown = fixed(value, mm)
  return {
    value: `${shown} mm (${fixed(inches(value), inch)} in)`,
    min: end(ends.min),
    max: end(ends.max),
    excess: crossed === undefined ? undefined : `${between(shown, shownEnd(crossed, mm, least.mm))} mm`,
  }
}

const decimalsOf = (text: string): number =>
  text.length - 1 - (text.includes('.') ? text.indexOf('.') : text.length - 1)

/** The distance of two numbers as they are shown, so that a reader who adds up comes to the same. */
const between = (a: string, b: string): string =>
  fixed(Math.abs(Number(a) - Number(b)), Math.max(decimalsOf(a), decimalsOf(b)))

/** Rounds up to `decimals`, forgiving float64 noise. */
export const roundUp = (value: number, decimals: number): number => {
  const scale = 10 ** decimals
  return Math.ceil(value * scale - 1e-6) / scale
}

/** Rounds down to `decimals`, forgiving float64 noise. */
export const roundDown = (value: number, decimals: number): number => {
  const scale = 10 ** decimals
  return Math.floor(value * scale + 1e-6) / scale
}
