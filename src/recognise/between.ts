import type { Between } from '../sign/sign.js'

/** The neighbouring characters that are least and most far apart, the first of each. At least one pair is needed. */
export function betweenOf(pairs: readonly { distance: number; pair: [string, string] }[]): Between {
  const least = pairs.reduce((a, b) => (b.distance < a.distance ? b : a))
  const most = pairs.reduce((a, b) => (b.distance > a.distance ? b : a))
  return { least: least.pair, most: most.pair }
}
