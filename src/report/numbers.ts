/**
 * Numbers in texts. Digits are chosen so that a text never contradicts its verdict: a value that fails is shown beyond
 * its limit and a value that passes is not, however close it lies.
 */

export const MILLIMETRES_PER_INCH = 25.4

/** Decimals that a report keeps in its JSON numbers: enough for every comparison, without the noise of float64. */
const KEPT_DECIMALS = 9
const MOST_DECIMALS = 6

export interface Ends {
  min?: number
  max?: number
}

/** Rounds away float64 noise; keeps the order of any two numbers. Not finite: null. */
export function kept(value: number | undefined): number | null {
  if (value === undefined || !Number.isFinite(value)) return null
  const rounded = Number(value.toFixed(KEPT_DECIMALS))
  return rounded === 0 ? 0 : rounded
}

/** `value` with a fixed number of decimals, never "-0". */
export function fixed(value: number, decimals: number): string {
  const text = value.toFixed(decimals)
  return Number(text) === 0 ? text.replace('-', '') : text
}

const side = (value: number, { min, max }: Ends): number =>
  min !== undefined && value < min ? -1 : max !== undefined && value > max ? 1 : 0

const roundedEnds = ({ min, max }: Ends, decimals: number): Ends => ({
  min: min === undefined ? undefined : Number(min.toFixed(decimals)),
  max: max === undefined ? undefined : Number(max.toFixed(decimals)),
})

/**
 * The fewest decimals, from `least` up, with which `value` is seen on its side of the limit.
 * @param outside whether the text says that the value is outside its limit; a value that passed within the arithmetic
 *   noise of a drawing is then shown as equal to the end.
 */
export function decimalsFor(value: number, ends: Ends, outside: boolean, least: number): number {
  for (let decimals = least; decimals <= MOST_DECIMALS; decimals++) {
    const seen = side(Number(value.toFixed(decimals)), roundedEnds(ends, decimals))
    if (outside ? seen !== 0 && seen === side(value, ends) : seen === 0) return decimals
  }
  return outside ? MOST_DECIMALS : least
}

const scaled = ({ min, max }: Ends, factor: number): Ends => ({
  min: min === undefined ? undefined : min * factor,
  max: max === undefined ? undefined : max * factor,
})

/** How numbers of a quantity are written: lengths in mm and inches, shares in percent, others as a plain factor. */
export type Notation = 'length' | 'percent' | 'to-one' | 'times'

const FORMS: Record<Exclude<Notation, 'length'>, { factor: number; least: number; write: (n: string) => string }> = {
  percent: { factor: 100, least: 1, write: (n) => `${n} %` },
  'to-one': { factor: 1, least: 2, write: (n) => `${n}:1` },
  times: { factor: 1, least: 2, write: (n) => `${n} times` },
}

const LEAST_DECIMALS_MM = 2
const LEAST_DECIMALS_IN = 3

/** A value and its limit, both written with the same digits. */
export interface Written {
  value: string
  min?: string
  max?: string
  /** How far the value lies outside, if it does. */
  excess?: string
}

/**
 * Writes a value beside its limit.
 * @param value in millimetres or as a ratio
 * @param outside see `decimalsFor`
 */
export function write(value: number, ends: Ends, notation: Notation, outside: boolean): Written {
  if (notation === 'length') return writeLength(value, ends, outside)
  const { factor, least, write: form } = FORMS[notation]
  const shown = scaled(ends, factor)
  const decimals = decimalsFor(value * factor, shown, outside, least)
  return {
    value: form(fixed(value * factor, decimals)),
    min: shown.min === undefined ? undefined : form(fixed(shown.min, decimals)),
    max: shown.max === undefined ? undefined : form(fixed(shown.max, decimals)),
  }
}

function writeLength(value: number, ends: Ends, outside: boolean): Written {
  const inches = value / MILLIMETRES_PER_INCH
  const endsInches = scaled(ends, 1 / MILLIMETRES_PER_INCH)
  const mm = decimalsFor(value, ends, outside, LEAST_DECIMALS_MM)
  const inch = decimalsFor(inches, endsInches, outside, LEAST_DECIMALS_IN)
  const both = (length: number) => `${fixed(length, mm)} mm (${fixed(length / MILLIMETRES_PER_INCH, inch)} in)`
  const where = side(value, ends)
  const end = where < 0 ? ends.min : ends.max
  return {
    value: both(value),
    min: ends.min === undefined ? undefined : both(ends.min),
    max: ends.max === undefined ? undefined : both(ends.max),
    excess: where === 0 || end === undefined ? undefined : `${fixed(Math.abs(value - end), mm)} mm`,
  }
}

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
