import { unionOfBoxes, type Box } from '../../geometry/box.js'
import type { Matrix } from '../../geometry/matrix.js'
import type { Blob } from './blobs.js'
import { boxOfInk, mapInk, type Ink } from './ink.js'

/** How the characters lie: the direction of their baselines, and how far their stems lean to the right of it. Degrees. */
export interface Lie {
  /** Clockwise as seen, from the drawing's x axis to the reading direction. */
  rotation: number
  slant: number
  /** Drawn for reading from the other side. */
  mirrored: boolean
}

/** Ink as seen by the reader: x along the baseline, y down, stems upright. Millimetres along and across the baseline. */
export interface Part {
  ink: Ink
  box: Box
  /** Indices of the blobs that it is made of. */
  blobs: number[]
}

/** Characters on one line, from its beginning. */
export type Row = Part[]

/** Two parts are in one row when they share this much of the lower one's height. */
const SHARED_HEIGHT = 0.4
/** The point over an i or under a question mark: its height and its distance from the rest, in shares of the rest's height. */
const POINT_HEIGHT = 0.4
const POINT_DISTANCE = 0.35
/** It is no farther away than so many of its own heights. */
const POINT_REACH = 1.6
/** So few parts, so much lower than a row and so near to it are marks of the row: shares of its height. */
const MOST_STRAYS = 2
const STRAY_HEIGHT = 0.45
const STRAY_REACH = 0.3
/** Pieces of one character lie over each other by this share of the narrower one's width. */
const OVER = 0.6

const radians = (degrees: number) => (degrees * Math.PI) / 180

/** From the drawing to the reader's view. */
export function viewOf({ rotation, slant, mirrored }: Lie): Matrix {
  const [cos, sin] = [Math.cos(radians(rotation)), Math.sin(radians(rotation))]
  const lean = Math.tan(radians(slant))
  const side = mirrored ? -1 : 1
  const [b, d] = [-side * sin, side * cos]
  return { a: cos + b * lean, b, c: sin + d * lean, d, e: 0, f: 0 }
}

/** From the reader's view back to the drawing. */
export function viewBack({ rotation, slant, mirrored }: Lie): Matrix {
  const [cos, sin] = [Math.cos(radians(rotation)), Math.sin(radians(rotation))]
  const lean = Math.tan(radians(slant))
  const side = mirrored ? -1 : 1
  return { a: cos, b: sin, c: -lean * cos - side * sin, d: -lean * sin + side * cos, e: 0, f: 0 }
}

/** Rows from the top, as seen by one who reads in this direction. */
export function rowsOf(blobs: readonly Blob[], lie: Lie): Row[] {
  const view = viewOf(lie)
  const parts = blobs.flatMap(({ ink }, i): Part[] => {
    const seen = mapInk(ink, view)
    const box = boxOfInk(seen)
    return box ? [{ ink: seen, box, blobs: [i] }] : []
  })
  const rows: Band[] = []
  for (const part of withPoints(parts).sort((a, b) => b.box.height - a.box.height)) {
    const { y, height } = part.box
    const row = rows.find((r) => Math.min(r.bottom, y + height) - Math.max(r.top, y) >= SHARED_HEIGHT * height)
    if (row) row.parts.push(part)
    else rows.push({ top: y, bottom: y + height, parts: [part] })
  }
  rows.sort((a, b) => a.top - b.top)
  return withStrays(rows).map(({ parts: row }) => stacked(row.sort((a, b) => a.box.x - b.box.x)))
}

interface Band {
  top: number
  bottom: number
  parts: Part[]
}

/** Marks that hang below their row or stand above it, so that they would be a row of their own: put into it. */
function withStrays(rows: Band[]): Band[] {
  const isStray = (row: Band) => row.parts.length <= MOST_STRAYS
  const home = (stray: Band) =>
    rows.find((row) => {
      const height = row.bottom - row.top
      if (row === stray || stray.bottom - stray.top > STRAY_HEIGHT * height) return false
      if (stray.bottom < row.top - STRAY_REACH * height || stray.top > row.bottom + STRAY_REACH * height) return false
      return stray.parts.every((p) => row.parts.some((q) => -overlap(p.box, q.box) < height / 2))
    })
  const homes = new Map(rows.filter(isStray).map((row) => [row, home(row)]))
  for (const [stray, row] of homes) if (row && !homes.get(row)) row.parts.push(...stray.parts)
  return rows.filter((row) => {
    const to = homes.get(row)
    return !to || homes.get(to) !== undefined
  })
}

/** Small parts put together with what they are the point of: above it or under it, and near. */
function withPoints(parts: readonly Part[]): Part[] {
  const bySize = [...parts].sort((a, b) => a.box.height - b.box.height)
  const swallowed = new Set<Part>()
  const points = new Map<Part, Part[]>()
  let first = 0
  for (const small of bySize) {
    let nearest: { part: Part; gap: number } | undefined
    // They stand by height: what is too low for this one is so for all that follow.
    while (first < bySize.length && small.box.height > POINT_HEIGHT * bySize[first].box.height) first++
    for (let i = first; i < bySize.length; i++) {
      const big = bySize[i]
      if (big === small || swallowed.has(big)) continue
      if (overlap(small.box, big.box) < OVER * Math.min(small.box.width, big.box.width)) continue
      const gap = Math.max(big.box.y - small.box.y - small.box.height, small.box.y - big.box.y - big.box.height)
      if (gap < 0 || gap > Math.min(POINT_DISTANCE * big.box.height, POINT_REACH * small.box.height)) continue
      if (!nearest || gap < nearest.gap) nearest = { part: big, gap }
    }
    if (!nearest) continue
    swallowed.add(small)
    points.set(nearest.part, [...(points.get(nearest.part) ?? []), small])
  }
  return parts.filter((p) => !swallowed.has(p)).map((p) => joined([p, ...(points.get(p) ?? [])]))
}

/** Parts of a row that stand one over the other put together: a colon, an equals sign. */
function stacked(row: Row): Row {
  const result: Row = []
  for (const part of row) {
    const last = result.at(-1)
    const apart = last && (last.box.y + last.box.height <= part.box.y || part.box.y + part.box.height <= last.box.y)
    if (last && apart && overlap(last.box, part.box) >= OVER * Math.min(last.box.width, part.box.width))
      result[result.length - 1] = joined([last, part])
    else result.push(part)
  }
  return result
}

export function joined(parts: readonly Part[]): Part {
  if (parts.length === 1) return parts[0]
  return {
    ink: { layers: parts.flatMap((p) => p.ink.layers) },
    box: unionOfBoxes(parts.map((p) => p.box)) ?? parts[0].box,
    blobs: parts.flatMap((p) => p.blobs),
  }
}

const overlap = (a: Box, b: Box): number => Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)
