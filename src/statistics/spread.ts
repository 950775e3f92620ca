/** Mean and standard deviation of independent readings (JCGM 100:2008, 4.2.1 and 4.2.2). */
export interface Spread {
  count: number
  mean: number
  /** Of one reading, with the number of readings less one below the line. */
  standardDeviation: number
}

/** Relative spread that is nothing but the rounding of the arithmetic. */
const ROUNDING = 1e-12

/**
 * @param values in one unit, 2 or more
 * @throws {RangeError} for fewer than 2 values
 */
export function spreadOf(values: readonly number[]): Spread {
  const count = values.length
  if (count < 2) throw new RangeError(`a spread takes two readings, not ${count}`)
  const mean = values.reduce((sum, value) => sum + value, 0) / count
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0)
  const standardDeviation = Math.sqrt(squares / (count - 1))
  return { count, mean, standardDeviation: standardDeviation > ROUNDING * Math.abs(mean) ? standardDeviation : 0 }
}

/** How many standard deviations the mean lies inside (+) or outside (-) the nearer limit. */
export const distanceFrom = (
  { mean, standardDeviation }: Spread,
  { min = -Infinity, max = Infinity }: { min?: number | undefined; max?: number | undefined },
): number => Math.min(mean - min, max - mean) / standardDeviation
