import { FEATURES } from './features.js'
import data from './references.json' with { type: 'json' }

/**
 * What characters look like in many typefaces: made from open faces by tests/recognise/letters/references.test.ts. Each
 * reference is a point in the space of linear discriminants, where the scatter within a class is about one along each axis.
 */
export interface References {
  /** Rows of the projection, one after another; `offset` is what the mean of all references projects to. */
  rows: Float64Array
  offset: Float64Array
  dimensions: number
  /** The points by their first axes, which tell most, and by the others: each one point after another. */
  heads: Float32Array
  tails: Float32Array
  /** The characters, and for each reference which of them it is. */
  labels: string[]
  labelled: Uint8Array
  manners: Map<string, Manner>
}

interface Reference {
  label: string
  face: number
  /** In heights of the face's I over its baseline, and its width. */
  top: number
  bottom: number
  width: number
}

/** How a character usually lies on its line, in heights of the capital I: mean and standard deviation over the faces. */
export interface Manner {
  top: Spread
  bottom: Spread
  /** Width over what the face's other characters let expect. */
  width: Spread
}

export interface Spread {
  mean: number
  deviation: number
}

export interface ReferenceFile {
  faces: string[]
  labels: string[]
  dimensions: number
  /** Little-endian numbers in base64: int16 rows and offset, int8 points, bytes and int16 of the records. */
  rowStep: number
  rows: string
  offsetStep: number
  offset: string
  pointStep: number
  points: string
  /** Which character each point is. */
  label: string
  /** Of every glyph that was looked at, which character of which face it is, and its extents. */
  mannerLabel: string
  face: string
  extentStep: number
  extents: string
}

/** Axes that are looked at first: the discriminants stand by how much they tell. */
export const HEAD = 8

/** Faces differ at least so much more than the few that the references hold. Shares of the height of I. */
const LEAST_DEVIATION = 0.02
/** Where marks stand is more a matter of taste. */
const LEAST_DEVIATION_OF_MARKS = 0.05
/** As a logarithm. */
const LEAST_WIDTH_DEVIATION = 0.07

let known: References | undefined

/** The references, read on first use. */
export function references(): References {
  known ??= decode(data)
  return known
}

export function decode(file: ReferenceFile): References {
  const points = scaled(new Int8Array(bytesOf(file.points)), file.pointStep)
  const labels = new Uint8Array(bytesOf(file.label))
  const faces = new Uint8Array(bytesOf(file.face))
  const extents = scaled(int16(file.extents), file.extentStep)
  const records = Array.from(new Uint8Array(bytesOf(file.mannerLabel)), (label, i) => ({
    label: file.labels[label],
    face: faces[i],
    top: extents[3 * i],
    bottom: extents[3 * i + 1],
    width: extents[3 * i + 2],
  }))
  return {
    rows: scaled(int16(file.rows), file.rowStep),
    offset: scaled(int16(file.offset), file.offsetStep),
    dimensions: file.dimensions,
    heads: part(points, file.dimensions, 0, HEAD),
    tails: part(points, file.dimensions, HEAD, file.dimensions),
    labels: file.labels,
    labelled: labels,
    manners: mannersOf(records),
  }
}

function part(points: Float64Array, dimensions: number, from: number, to: number): Float32Array {
  const size = to - from
  const count = points.length / dimensions
  return Float32Array.from(
    { length: count * size },
    (_, i) => points[Math.floor(i / size) * dimensions + from + (i % size)],
  )
}

function bytesOf(base64: string): ArrayBuffer {
  const buffer = Buffer.from(base64, 'base64')
  return new Uint8Array(buffer).buffer
}

function int16(base64: string): Int16Array {
  const view = new DataView(bytesOf(base64))
  return Int16Array.from({ length: view.byteLength / 2 }, (_, i) => view.getInt16(2 * i, true))
}

const scaled = (values: Int8Array | Int16Array, step: number): Float64Array =>
  Float64Array.from(values, (v) => v * step)

/** Where a shape with these features lies among the references. */
export function project({ rows, offset, dimensions }: References, features: Float64Array): Float64Array {
  const point = new Float64Array(dimensions)
  for (let d = 0; d < dimensions; d++) {
    let sum = -offset[d]
    const start = d * FEATURES
    for (let i = 0; i < FEATURES; i++) sum += rows[start + i] * features[i]
    point[d] = sum
  }
  return point
}

function mannersOf(records: readonly Reference[]): Map<string, Manner> {
  const byLabel = new Map<string, Reference[]>()
  for (const r of records) byLabel.set(r.label, [...(byLabel.get(r.label) ?? []), r])
  const usual = new Map([...byLabel].map(([label, rs]) => [label, mean(rs.map((r) => Math.log(r.width)))]))
  const over = (r: Reference) => Math.log(r.width) - (usual.get(r.label) ?? 0)
  const condensed = new Map<number, number>()
  for (const face of new Set(records.map((r) => r.face)))
    condensed.set(face, mean(records.filter((r) => r.face === face).map(over)))
  return new Map(
    [...byLabel].map(([label, rs]) => [
      label,
      {
        top: spread(
          rs.map((r) => r.top),
          leastOf(label),
        ),
        bottom: spread(
          rs.map((r) => r.bottom),
          leastOf(label),
        ),
        width: spread(
          rs.map((r) => Math.log(r.width) - (condensed.get(r.face) ?? 0)),
          LEAST_WIDTH_DEVIATION,
        ),
      },
    ]),
  )
}

const leastOf = (label: string) => (/[A-Za-z0-9]/.test(label) ? LEAST_DEVIATION : LEAST_DEVIATION_OF_MARKS)

const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length

function spread(values: readonly number[], least: number): Spread {
  const middle = mean(values)
  const variance = mean(values.map((v) => (v - middle) ** 2))
  return { mean: middle, deviation: Math.max(least, Math.sqrt(variance)) }
}
