import { BAR, CHARACTERS, shapeOf } from '../../../src/recognise/letters/characters.js'
import { featuresOf, fullnessOf } from '../../../src/recognise/letters/features.js'
import { boxOfInk } from '../../../src/recognise/letters/ink.js'
import type { ReferenceFile } from '../../../src/recognise/letters/references.js'
import { CAPITAL, type Face } from './faces.js'
import { formsOf } from './forms.js'
import { discriminants } from './train.js'

/** The references as they are shipped, made from the outlines of typefaces. */

const DIMENSIONS = 40
const SHRINKAGE = 0.2
/** A shape that fills so much of its box is a bar. */
const FULL = 0.97
const INT8 = 127
const INT16 = 32767
/** Extents are kept in these parts of the height of I. */
const EXTENT_STEP = 0.0005

interface Sample {
  label: string
  shape: string
  face: number
  features: Float64Array
  extents: [top: number, bottom: number, width: number]
}

function samplesOf(faces: readonly Face[]): Sample[] {
  return faces.flatMap((face, index) =>
    formsOf(face).flatMap(({ label, ink }): Sample[] => {
      const box = boxOfInk(ink)
      if (!box) return []
      const shape = fullnessOf(ink, box) > FULL ? BAR : shapeOf(label)
      const extents: Sample['extents'] = [-box.y / CAPITAL, -(box.y + box.height) / CAPITAL, box.width / CAPITAL]
      return [{ label, shape, face: index, features: featuresOf(ink, box), extents }]
    }),
  )
}

/**
 * A reference that lies this near to another of the same character adds nothing: condensed as in P. E. Hart, "The condensed
 * nearest neighbor rule", IEEE Trans. Inf. Theory 14, 1968, by distance.
 */
const SAME = 1.2

function condensed(points: readonly number[][], labels: readonly string[]): number[] {
  const kept: number[] = []
  points.forEach((point, i) => {
    const near = (j: number) => point.reduce((sum, v, d) => sum + (v - points[j][d]) ** 2, 0) < SAME ** 2
    if (!kept.some((j) => labels[j] === labels[i] && near(j))) kept.push(i)
  })
  return kept
}

export function makeReferences(faces: readonly Face[]): ReferenceFile {
  const samples = samplesOf(faces)
  const { mean, rows } = discriminants(
    samples.map((s) => s.features),
    samples.map((s) => s.shape),
    SHRINKAGE,
    DIMENSIONS,
  )
  const flat = rows.flat()
  const rowStep = stepOf(flat, INT16)
  const offset = rows.map((row) => row.reduce((sum, v, i) => sum + v * mean[i], 0))
  const offsetStep = stepOf(offset, INT16)
  const all = samples.map((s) => rows.map((row, d) => row.reduce((sum, v, i) => sum + v * s.features[i], -offset[d])))
  const kept = condensed(
    all,
    samples.map((s) => s.label),
  )
  const points = kept.flatMap((i) => all[i])
  const pointStep = stepOf(points, INT8)
  return {
    faces: faces.map((f) => f.name),
    labels: CHARACTERS,
    dimensions: DIMENSIONS,
    rowStep,
    rows: int16(flat, rowStep),
    offsetStep,
    offset: int16(offset, offsetStep),
    pointStep,
    points: base64(Int8Array.from(points, (v) => Math.round(v / pointStep))),
    label: base64(Uint8Array.from(kept, (i) => CHARACTERS.indexOf(samples[i].label))),
    mannerLabel: base64(Uint8Array.from(samples, (s) => CHARACTERS.indexOf(s.label))),
    face: base64(Uint8Array.from(samples, (s) => s.face)),
    extentStep: EXTENT_STEP,
    extents: int16(
      samples.flatMap((s) => s.extents),
      EXTENT_STEP,
    ),
  }
}

/** Six digits, so that the last bits of a float do not make another file. */
const stepOf = (values: readonly number[], most: number): number =>
  Number((values.reduce((a, v) => Math.max(a, Math.abs(v)), 0) / most).toPrecision(6))

function int16(values: readonly number[], step: number): string {
  const view = new DataView(new ArrayBuffer(values.length * 2))
  values.forEach((v, i) => view.setInt16(2 * i, Math.max(-INT16, Math.min(INT16, Math.round(v / step))), true))
  return base64(new Uint8Array(view.buffer))
}

const base64 = (bytes: Int8Array | Uint8Array): string =>
  Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('base64')
