import { inverse, Matrix } from 'ml-matrix'

/**
 * Linear regression that a few wrong observations cannot pull away: Huber's M-estimator by iteratively reweighted least
 * squares. P. J. Huber, "Robust estimation of a location parameter", Ann. Math. Statist. 35, 1964; P. W. Holland and
 * R. E. Welsch, "Robust regression using iteratively reweighted least-squares", Comm. Statist. A6, 1977 (the tuning
 * constant). Each observation is a vector (a point in the plane, say) that shares one row of the design and one weight.
 */
export interface Fit {
  /** One row per column of the design, one column per component of an observation. */
  parameters: number[][]
  /** Length of each observation's residual vector. */
  residuals: number[]
  weights: number[]
  /** Robust standard deviation of one component of an observation's error. */
  sigma: number
  /** Unscaled covariance of the parameters, (XᵀWX)⁻¹: times sigma² it is the covariance of one component. */
  covariance: number[][]
}

/** 95 % efficiency under Gaussian errors (Holland and Welsch, table 1: 1.345 for one component). */
const TUNING_ONE = 1.345
/**
 * For a residual vector of two components the squared length of Gaussian noise is chi-square with two degrees of freedom;
 * this is the length beyond which as many lie as beyond TUNING_ONE of one component: sqrt(-2 ln 0.1786).
 */
const TUNING_TWO = 1.856

/** Median of |e| of one Gaussian component, and of the length of two, in standard deviations. */
const MEDIAN_ONE = 0.6745
const MEDIAN_TWO = 1.1774

const MOST_ITERATIONS = 30
const CONVERGED = 1e-10

/**
 * Fits `observations` ≈ `design` · parameters.
 * @param design n rows of p numbers, n ≥ p.
 * @param observations n vectors of one or two components.
 * @param noiseFloor Smallest standard deviation to believe, in the unit of the observations: rounding is never zero.
 * @returns undefined when the design does not determine the parameters.
 */
export function robustFit(design: number[][], observations: number[][], noiseFloor: number): Fit | undefined {
  const n = design.length
  const p = design[0]?.length ?? 0
  const components = observations[0]?.length ?? 0
  if (n < p || p === 0) return undefined
  const occupied = design.map(occupiedColumns)
  const tuning = components === 1 ? TUNING_ONE : TUNING_TWO
  const median = components === 1 ? MEDIAN_ONE : MEDIAN_TWO
  let weights = new Array<number>(n).fill(1)
  let before: number[] | undefined
  for (let iteration = 0; ; iteration++) {
    const { normal, moments } = equations(design, occupied, observations, weights)
    const covariance = invert(new Matrix(normal))
    if (!covariance) return undefined
    const parameters = covariance.mmul(new Matrix(moments))
    const residuals = lengthsOfErrors(design, occupied, observations, parameters.to2DArray())
    // A fit with few spare observations leaves residuals smaller than the errors: divide by the degrees of freedom.
    const spare = Math.sqrt(n / Math.max(n - p, 1))
    const sigma = Math.max((medianOf(residuals) / median) * spare, noiseFloor)
    const now = parameters.to1DArray()
    const settled =
      before !== undefined && now.every((v, i) => Math.abs(v - before![i]) <= CONVERGED * (1 + Math.abs(v)))
    const reweighted = residuals.map((r) => Math.min(1, (tuning * sigma) / Math.max(r, Number.MIN_VALUE)))
    // Where nothing weighs less than before, the next fit is this one.
    const same = iteration === 0 && reweighted.every((w) => w === 1)
    if (settled || same || iteration >= MOST_ITERATIONS) {
      return { parameters: parameters.to2DArray(), residuals, weights, sigma, covariance: covariance.to2DArray() }
    }
    before = now
    weights = reweighted
  }
}

type Rows = readonly (readonly number[])[]

function occupiedColumns(row: readonly number[]): number[] {
  const columns: number[] = []
  for (let column = 0; column < row.length; column++) if (row[column] !== 0) columns.push(column)
  return columns
}

/** The normal equations XᵀWX and XᵀWY; only the occupied columns of each row count. */
function equations(design: Rows, occupied: Rows, observations: Rows, weights: readonly number[]) {
  const zeros = (columns: number) => design[0].map(() => new Array<number>(columns).fill(0))
  const [normal, moments] = [zeros(design[0].length), zeros(observations[0].length)]
  for (let i = 0; i < design.length; i++)
    for (const a of occupied[i]) {
      const weighted = weights[i] * design[i][a]
      for (const b of occupied[i]) normal[a][b] += weighted * design[i][b]
      for (let k = 0; k < observations[i].length; k++) moments[a][k] += weighted * observations[i][k]
    }
  return { normal, moments }
}

function lengthsOfErrors(design: Rows, occupied: Rows, observations: Rows, parameters: Rows): number[] {
  return observations.map((observed, i) => {
    let square = 0
    for (let k = 0; k < observed.length; k++) {
      let error = observed[k]
      for (const a of occupied[i]) error -= design[i][a] * parameters[a][k]
      square += error * error
    }
    return Math.sqrt(square)
  })
}

/** Below this reciprocal condition the parameters are not told apart by the observations. */
const SINGULAR = 1e-10

function invert(normal: Matrix): Matrix | undefined {
  try {
    const result = inverse(normal)
    const condition = normal.norm('frobenius') * result.norm('frobenius')
    return Number.isFinite(condition) && 1 / condition > SINGULAR ? result : undefined
  } catch {
    return undefined
  }
}

/** The middle value (the mean of the two middle ones); NaN for none. */
export function medianOf(values: ArrayLike<number>): number {
  const sorted = values.length > FEW ? new Float64Array(values).sort() : insertionSorted(values)
  const half = sorted.length >> 1
  return sorted.length % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2
}

/** So few numbers are sorted sooner than the sort of the language is called. */
const FEW = 24

function insertionSorted(values: ArrayLike<number>): number[] {
  const sorted: number[] = []
  for (let i = 0; i < values.length; i++) {
    const value = values[i]
    let at = i
    for (; at > 0 && sorted[at - 1] > value; at--) sorted[at] = sorted[at - 1]
    sorted[at] = value
  }
  return sorted
}
