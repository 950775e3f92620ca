import { cephes } from '../libraries.js'

/**
 * The special functions that the distributions are made of, from the Cephes library (S. L. Moshier, Methods and Programs for
 * Mathematical Functions, 1989) as WebAssembly.
 */

/** Below e to this power nothing is left to tell from zero; a little farther Cephes throws instead of answering so. */
const LEAST_EXPONENT = -600

export const logGamma = (a: number): number => cephes().lgam(a)

/** Area under the standard normal density to the left of `z`. */
export const normalArea = (z: number): number => cephes().ndtr(z)

/** The `z` with the area `p` to its left, for 0 < p < 1. */
export const normalAreaInverse = (p: number): number => cephes().ndtri(p)

/** Whether x^a e^-x / Γ(a), the factor before either incomplete gamma function, is as good as zero. */
const vanishes = (a: number, x: number): boolean => a * Math.log(x) - x - cephes().lgam(a) < LEAST_EXPONENT

/** The regularised lower incomplete gamma function P(a, x) (DLMF 8.2.4), for a > 0. */
export function lowerGamma(a: number, x: number): number {
  if (x <= 0) return 0
  return vanishes(a, x) ? (x > a ? 1 : 0) : cephes().igam(a, x)
}

/** The regularised upper incomplete gamma function Q(a, x) (DLMF 8.2.4), for a > 0. */
export function upperGamma(a: number, x: number): number {
  if (x <= 0) return 1
  return vanishes(a, x) ? (x > a ? 0 : 1) : cephes().igamc(a, x)
}
