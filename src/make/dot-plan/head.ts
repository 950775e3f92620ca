import type { Point } from '../../geometry/point.js'
import type { Head } from './schema.js'

/**
 * Which parts of the head are low, and where they reach, while it sets one dot. Worked out from the motion alone: down from `lift`,
 * the last piece of the way sideways if there is an approach, to the depth of the dot, and straight up again. A part is low when its
 * lower end is nearer to the surface than `lift`: over a dot that was laid before it may not stand then. Lengths in millimetres.
 */

/** What a low part sweeps over, as seen from the dot that is set: all within `radius` of the piece from `from` to `to`. */
export interface LowPart {
  name: 'tip' | 'body'
  from: Point
  to: Point
  radius: number
  /** Height of its lower end above the surface where it is lowest. */
  height: number
}

/** Where the sideways piece begins, as seen from the dot; the dot itself without an approach. */
export function entryOf({ approach }: Head): Point {
  if (!approach) return { x: 0, y: 0 }
  const radians = (approach.angle * Math.PI) / 180
  return { x: approach.length * Math.cos(radians), y: approach.length * Math.sin(radians) }
}

/** Height of the tip's end above the surface when it sets a dot. */
export const settingHeight = ({ lift, plunge }: Head): number => lift - plunge

/** The parts that are low at some time while a dot is set: always the tip, and the body where it hangs low enough. */
export function lowParts(head: Head): LowPart[] {
  const { tipDiameter, bodyDiameter, bodyClearance, lift, approach, offset } = head
  const set = settingHeight(head)
  const entry = entryOf(head)
  const tip: LowPart = { name: 'tip', from: { x: 0, y: 0 }, to: entry, radius: tipDiameter / 2, height: set }
  const body = set + bodyClearance
  if (body >= lift) return [tip]
  // The sideways piece slants down by the height of the approach: the body is low on the last share of it.
  const share = approach ? Math.min(1, (lift - body) / approach.height) : 0
  const middle = offset ?? { x: 0, y: 0 }
  const to = { x: middle.x + share * entry.x, y: middle.y + share * entry.y }
  return [tip, { name: 'body', from: middle, to, radius: bodyDiameter / 2, height: body }]
}

/**
 * Whether a low part reaches over a laid dot.
 * @param dx the laid dot's middle from the dot that is set
 * @param dotRadius of the laid dot's base
 */
export function reachesOver({ from, to, radius }: LowPart, dx: number, dy: number, dotRadius: number): boolean {
  const reach = radius + dotRadius
  const [ax, ay] = [to.x - from.x, to.y - from.y]
  const [px, py] = [dx - from.x, dy - from.y]
  const square = ax * ax + ay * ay
  const t = square > 0 ? Math.min(1, Math.max(0, (px * ax + py * ay) / square)) : 0
  const [x, y] = [px - t * ax, py - t * ay]
  return x * x + y * y < reach * reach
}

/** Farthest from the dot that is set that a laid dot can be and still be under a low part. */
export const farthestReach = (parts: readonly LowPart[], dotRadius: number): number =>
  Math.max(...parts.map(({ from, to, radius }) => radius + dotRadius + Math.max(size(from), size(to))))

const size = ({ x, y }: Point): number => Math.hypot(x, y)
