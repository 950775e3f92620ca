import { FEATURES } from './features.js'
import data from './references.json' with { type: 'json' }

/**
 * What characters look like in many typefaces: made from open faces by tests/recognise/letters/references.test.ts. Each
 * reference is a point in the space of linear discriminants, where the scatter within a class is about one along each axis.
 */
export interface References {
  /** Columns of the projection, one after another; `offset` is what the mean of all references projects to. */
  columns: Float64Array
  offset: Float64Array
  dimensions: number
  /** One point after another, those of one character together. */
  points: Float32Array
  classes: Class[]
}

/** The references of one character. */
export interface Class {
  label: string
  manner: Manner
  /** Numbers of its first point and of the one after its last. */
  from: number
  to: number
  /** The middle of its points, and how far the farthest of them is from there. */
  middle: Float32Array
  radius: number
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
  const { dimensions } = file
  const faces = new Uint8Array(bytesOf(file.face))
  const extents = scaled(int16(file.extents), file.extentStep)
  const records = Array.from(new Uint8Array(bytesOf(file.mannerLabel)), (label, i) => ({
    label: file.labels[label],
    face: faces[i],
    top: extents[3 * i],
    bottom: extents[3 * i + 1],
    width: extents[3 * i + 2],
  }))
  const rows = scaled(int16(file.rows), file.rowStep)
  const columns = rows.map((_, i) => rows[(i % dimensions) * FEATURES + Math.floor(i / dimensions)])
  const offset = scaled(int16(file.offset), file.offsetStep)
  return { columns, offset, dimensions, ...classesOf(file, mannersOf(records)) }
}

/** The points in the order of their characters. */
function classesOf(file: ReferenceFile, manners: Map<string, Manner>): Pick<References, 'points' | 'classes'> {
  const { dimensions } = file
  const read = scaled(new Int8Array(bytesOf(file.points)), file.pointStep)
  const labelled = new Uint8Array(bytesOf(file.label))
  const points = new Float32Array(read.length)
  const classes: Class[] = []
  let to = 0
  file.labels.forEach((label, number) => {
    const from = to
    labelled.forEach((of, i) => {
      if (of === number) points.set(read.subarray(i * dimensions, (i + 1) * dimensions), to++ * dimensions)
    })
    const manner = manners.get(label)
    if (manner && to > from) classes.push({ label, manner, from, to, ...ballRound(points, dimensions, from, to) })
  })
  return { points, classes }
}

function ballRound(
  points: Float32Array,
  dimensions: number,
  from: number,
  to: number,
): Pick<Class, 'middle' | 'radius'> {
  const middle = new Float32Array(dimensions)
  for (let i = from; i < to; i++)
    for (let d = 0; d < dimensions; d++) middle[d] += points[i * dimensions + d] / (to - from)
  let radius = 0
  for (let i = from; i < to; i++)
    radius = Math.max(radius, Math.hypot(...middle.map((m, d) => points[i * dimensions + d] - m)))
  return { middle, radius: radius + ROUNDING }
}

/** Far more than single precision takes away from a distance. */
const ROUNDING = 1e-3

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
export function project({ columns, offset, dimensions }: References, features: Float64Array): Float64Array {
  const point = offset.map((v) => -v)
  for (let i = 0; i < FEATURES; i++) {
    const feature = features[i]
    if (feature === 0) continue
    const start = i * dimensions
    for (let d = 0; d < dimensions; d++) point[d] += columns[start + d] * feature
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
