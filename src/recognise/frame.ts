import { determinant, type Matrix } from '../geometry/matrix.js'
import type { Point } from '../geometry/point.js'
import type { Lie } from '../sign/sign.js'

/** How a line of characters lies on the sheet. */
export interface Frame {
  /** Along the baseline in reading direction, a unit vector. */
  along: Point
  /** Millimetres per em along the baseline and square to it. */
  emAlong: number
  emAcross: number
  /** How far the uprights lean from the square to the baseline, in degrees. */
  shear: number
  mirrored: boolean
}

/** The frame of text of a size under a matrix, or undefined when nothing is left of it. */
export function frameOf({ a, b, c, d, e, f }: Matrix, fontSize: number): Frame | undefined {
  const scale = Math.hypot(a, b)
  const area = determinant({ a, b, c, d, e, f })
  if (!(scale > 0) || !(Math.abs(area) > 0) || !(fontSize > 0)) return undefined
  return {
    along: { x: a / scale, y: b / scale },
    emAlong: scale * fontSize,
    emAcross: (Math.abs(area) / scale) * fontSize,
    shear: (Math.atan2(a * c + b * d, Math.abs(area)) * 180) / Math.PI,
    mirrored: area < 0,
  }
}

/** Direction of a frame, in degrees clockwise as seen, 0 to 360. */
export const angleOf = ({ along }: Pick<Frame, 'along'>): number =>
  ((Math.atan2(along.y, along.x) * 180) / Math.PI + 360) % 360

/** How a line of that frame lies, the mirror taken away. */
export const lieOf = ({ along, mirrored }: Pick<Frame, 'along' | 'mirrored'>): Lie => ({
  rotation: angleOf({ along: mirrored ? { x: -along.x, y: along.y } : along }),
  mirrored,
})

/** The unit vector at so many degrees clockwise as seen. */
export const directionAt = (degrees: number): Point => ({
  x: Math.cos((degrees * Math.PI) / 180),
  y: Math.sin((degrees * Math.PI) / 180),
})

/** How far along a direction a point lies, and how far down when that direction is read as a line. */
export const alongLine = (p: Point, along: Point): number => p.x * along.x + p.y * along.y
export const downLine = (p: Point, along: Point): number => p.y * along.x - p.x * along.y

/** Whether two directions differ by no more than some degrees. */
export function sameDirection(a: number, b: number, degrees: number): boolean {
  const apart = Math.abs(a - b) % 360
  return Math.min(apart, 360 - apart) <= degrees
}
