import { CholeskyDecomposition, EigenvalueDecomposition, Matrix, inverse } from 'ml-matrix'

/**
 * Linear discriminants: the directions in which classes lie apart compared with how much each class scatters.
 * R. A. Fisher, "The use of multiple measurements in taxonomic problems", 1936; C. R. Rao, 1948 (several classes); the
 * scatter within classes shrunk towards a multiple of the identity as in J. H. Friedman, "Regularized discriminant
 * analysis", J. Am. Stat. Assoc. 84, 1989.
 */
export interface Discriminants {
  mean: number[]
  /** One row per direction, scaled so that the scatter within classes is one along each. */
  rows: number[][]
}

export function discriminants(
  vectors: readonly Float64Array[],
  classes: readonly string[],
  shrinkage: number,
  count: number,
): Discriminants {
  const size = vectors[0].length
  const mean = meanOf(vectors)
  const within = Matrix.zeros(size, size)
  const between = Matrix.zeros(size, size)
  const groups = new Map<string, Float64Array[]>()
  vectors.forEach((v, i) => {
    const group = groups.get(classes[i])
    if (group) group.push(v)
    else groups.set(classes[i], [v])
  })
  for (const group of groups.values()) {
    const middle = meanOf(group)
    const rows = new Matrix(group.map((v) => Array.from(v, (x, i) => x - middle[i])))
    within.add(rows.transpose().mmul(rows))
    const off = Matrix.columnVector(middle.map((x, i) => x - mean[i]))
    between.add(off.mmul(off.transpose()))
  }
  within.div(vectors.length - groups.size)
  between.div(groups.size)
  const ridge = (within.trace() / size) * shrinkage
  within.mul(1 - shrinkage).add(Matrix.eye(size, size).mul(ridge))
  const lower = new CholeskyDecomposition(within).lowerTriangularMatrix
  const whiten = inverse(lower)
  const { realEigenvalues: values, eigenvectorMatrix } = new EigenvalueDecomposition(
    symmetric(whiten.mmul(between).mmul(whiten.transpose())),
  )
  const order = values.map((_, i) => i).sort((a, b) => values[b] - values[a])
  const rows = order.slice(0, count).map((i) => {
    const row = Matrix.rowVector(eigenvectorMatrix.getColumn(i)).mmul(whiten).to1DArray()
    // An eigenvector has no sign of its own: the largest component is made positive.
    const largest = row.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0)
    return largest < 0 ? row.map((v) => -v) : row
  })
  return { mean, rows }
}

function symmetric(m: Matrix): Matrix {
  return Matrix.add(m, m.transpose()).div(2)
}

function meanOf(vectors: readonly Float64Array[]): number[] {
  const sum = new Array<number>(vectors[0].length).fill(0)
  for (const v of vectors) for (let i = 0; i < v.length; i++) sum[i] += v[i]
  return sum.map((s) => s / vectors.length)
}
