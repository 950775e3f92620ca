import type { Finding } from './finding-schema.js'
import { fixed, write, type Ends } from './numbers.js'
import { kindWords, notationFor } from './quantities.js'

/** A finding in the cells of a table: what was measured, and by how much it keeps or misses its limit. */

/** A margin is told in the fewest of these decimals that show it, so that a miss never reads as none. */
const DECIMALS = { least: 3, most: 9 }
const MOST_CHARACTERS = 60

/** The single value that decided, or the value where it is a kind or a yes or no. */
export function measuredInShort({ measured, limit, quantity, margin }: Finding): string {
  if (measured === null) return 'nothing measured'
  const { value, unit, min, max, count } = measured
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value === 'string') {
    const words = kindWords(value)
    return words.length > MOST_CHARACTERS ? `${words.slice(0, MOST_CHARACTERS)}…` : words
  }
  const ends: Ends = { min: limit.min ?? undefined, max: limit.max ?? undefined }
  const worst = nearest([min ?? value, max ?? value], ends)
  const isOutside = margin !== null && margin < 0 && outside(worst, ends) > 0
  const written = write(worst, ends, notationFor(quantity, unit), isOutside).value
  return count > 1 ? `${written}, the worst of ${count}` : written
}

const outside = (value: number, { min, max }: Ends): number =>
  Math.max(min === undefined ? -Infinity : min - value, max === undefined ? -Infinity : value - max)

/** Of the least and the greatest value the one that lies farther outside, or nearer to an end. */
const nearest = ([low, high]: [number, number], ends: Ends): number =>
  outside(high, ends) > outside(low, ends) ? high : low

const FACTORS: Partial<Record<string, { factor: number; unit: string }>> = {
  length: { factor: 1, unit: ' mm' },
  percent: { factor: 100, unit: ' percentage points' },
}

/** "-0.521 mm": outside where it is negative; a dash where there is none. */
export function marginInShort({ margin, limit, quantity }: Finding): string {
  if (margin === null || limit.unit === 'kind' || limit.unit === 'truth') return '–'
  const { factor, unit } = FACTORS[notationFor(quantity, limit.unit)] ?? { factor: 1, unit: '' }
  const shown = margin * factor
  let decimals = DECIMALS.least
  while (decimals < DECIMALS.most && Number(shown.toFixed(decimals)) === 0 && shown !== 0) decimals++
  return `${shown > 0 ? '+' : ''}${fixed(shown, decimals)}${unit}`
}
