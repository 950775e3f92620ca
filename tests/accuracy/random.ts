/** Numbers in a fixed order that look random, so that every run makes the same drawings. */
export interface Random {
  /** Evenly between two bounds. */
  between(least: number, most: number): number
  /** Gaussian, of mean 0 and standard deviation 1. */
  normal(): number
}

/**
 * The generator of S. K. Park and K. W. Miller, "Random number generators: good ones are hard to find", Comm. ACM 31,
 * 1988, with their later multiplier (Comm. ACM 36, 1993); normal numbers by G. E. P. Box and M. E. Muller, Ann. Math.
 * Statist. 29, 1958.
 */
const MULTIPLIER = 48271
const MODULUS = 2147483647

export function seeded(seed: number): Random {
  const next = () => (seed = (seed * MULTIPLIER) % MODULUS) / MODULUS
  return {
    between: (least, most) => least + (most - least) * next(),
    normal: () => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next()),
  }
}
