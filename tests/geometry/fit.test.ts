import { describe, expect, it } from 'vitest'
import { medianOf, robustFit } from '../../src/geometry/fit.js'

const seeded = (seed: number) => () => (seed = (seed * 48271) % 2147483647) / 2147483647

describe('robust least squares', () => {
  // F. J. Anscombe, "Graphs in Statistical Analysis", The American Statistician 27, 1973: the third set is a line,
  // y = 4.0 + 0.346 x to three digits (4.005, 0.345), and one outlier that pulls ordinary least squares to y = 3.00 + 0.500 x.
  it('follows the line of the third of Anscombe’s sets and not its outlier', () => {
    const x = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5]
    const y = [7.46, 6.77, 12.74, 7.11, 7.81, 8.84, 6.08, 5.39, 8.15, 6.42, 5.73]
    const fit = robustFit(x.map((v) => [1, v]), y.map((v) => [v]), 1e-6) // prettier-ignore
    if (!fit) throw new Error('no fit')
    expect(fit.parameters[0][0]).toBeCloseTo(4.0, 1)
    expect(fit.parameters[1][0]).toBeCloseTo(0.345, 2)
    expect(fit.residuals[2]).toBeGreaterThan(4)
    expect(fit.weights[2]).toBeLessThan(0.01)
  })

  it('gives up where the design does not tell the parameters apart', () => {
    expect(robustFit([[1, 1], [1, 1], [1, 1]], [[1], [2], [3]], 1e-6)).toBeUndefined() // prettier-ignore
    expect(robustFit([[1, 1]], [[1]], 1e-6)).toBeUndefined()
  })

  // Cramér–Rao bound: with Gaussian noise no unbiased estimate of a linear model's parameters has a variance below
  // sigma² (XᵀX)⁻¹. Huber's estimate is meant to reach it within a factor 1/0.95 in variance, 1.03 in deviation
  // (Holland and Welsch 1977).
  it('comes within 1.15 of the Cramér–Rao bound for the steps of a lattice, and knows its own uncertainty', () => {
    const next = seeded(5)
    const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next())
    const places = Array.from({ length: 15 }, (_, cell) => [0, 1, 2].map((k) => [1, cell, (cell + k) % 2, k])).flat()
    const sigma = 0.02
    const rounds = 300
    const error = [0, 0, 0, 0]
    let told = 0
    const bound = robustFit(places, places.map(() => [0, 0]), 1e-3) // prettier-ignore
    if (!bound) throw new Error('no bound')
    for (let round = 0; round < rounds; round++) {
      const observed = places.map(([, cell, column, row]) => [
        6.9 * cell + 2.4 * column + sigma * normal(),
        2.4 * row + sigma * normal(),
      ])
      const fit = robustFit(places, observed, 1e-6)
      if (!fit) throw new Error('no fit')
      ;[0, 6.9, 2.4, 0].forEach((truth, i) => (error[i] += (fit.parameters[i][0] - truth) ** 2))
      told += fit.sigma
    }
    // Found with this seed: 1.04, 1.05, 0.96 and 0.97 for origin, cell, column and row step.
    error.forEach((sum, i) => {
      const ratio = Math.sqrt(sum / rounds) / (sigma * Math.sqrt(bound.covariance[i][i]))
      expect(ratio, `parameter ${i}`).toBeLessThan(1.15)
      expect(ratio, `parameter ${i}`).toBeGreaterThan(0.85)
    })
    expect(told / rounds / sigma).toBeGreaterThan(0.85)
    expect(told / rounds / sigma).toBeLessThan(1.15)
  })
})

describe('median', () => {
  it('is the middle value, or the mean of the middle two', () => {
    expect(medianOf([3, 1, 2])).toBe(2)
    expect(medianOf([4, 1, 3, 2])).toBe(2.5)
    expect(medianOf([])).toBeNaN()
  })
})
