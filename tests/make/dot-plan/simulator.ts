/**
 * Replays a plan as a machine would run it and tells where a part of the head stands over a dot that was laid before, lower than the lift.
 * It shares no code with the planner: the motion is cut into short steps, and at each the tip and the body are discs at their heights.
 * The rule is that of the trade's plan: no part of the head stands over a laid dot at less than the lift height.
 */

export interface SimulatedHead {
  tipDiameter: number
  bodyDiameter: number
  bodyClearance: number
  lift: number
  plunge: number
  offset?: { x: number; y: number }
  approach?: { angle: number; length: number; height: number }
}

export interface Collision {
  /** Place in the sequence of the dot that is set, and of the laid dot under the head. */
  setting: number
  over: number
  part: 'tip' | 'body'
}

const STEPS = 24
const NOISE = 1e-9

type Position = [x: number, y: number, z: number]

/** All positions of the tip's end while one dot is set, from the lift down and up again. */
function motion([x, y]: readonly [number, number], head: SimulatedHead): Position[] {
  const bottom = head.lift - head.plunge
  const corners: Position[] = []
  if (head.approach) {
    const { angle, length, height } = head.approach
    const sx = x + length * Math.cos((angle / 180) * Math.PI)
    const sy = y + length * Math.sin((angle / 180) * Math.PI)
    corners.push([sx, sy, head.lift], [sx, sy, bottom + height])
  } else corners.push([x, y, head.lift])
  corners.push([x, y, bottom], [x, y, head.lift])
  return corners.slice(1).flatMap((to, i) => {
    const from = corners[i]
    return Array.from({ length: STEPS + 1 }, (_, k): Position => {
      const t = k / STEPS
      return [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1]), from[2] + t * (to[2] - from[2])]
    })
  })
}

/** @param dotDiameter of the bases of laid dots */
export function collisions(
  sequence: readonly [number, number][],
  head: SimulatedHead,
  dotDiameter: number,
): Collision[] {
  const found = new Map<string, Collision>()
  const { x: ox, y: oy } = head.offset ?? { x: 0, y: 0 }
  sequence.forEach((dot, setting) => {
    for (const [x, y, z] of motion(dot, head)) {
      const parts = [
        { part: 'tip' as const, x, y, z, radius: head.tipDiameter / 2 },
        { part: 'body' as const, x: x + ox, y: y + oy, z: z + head.bodyClearance, radius: head.bodyDiameter / 2 },
      ]
      for (const { part, ...at } of parts) {
        if (at.z >= head.lift - NOISE) continue
        for (let over = 0; over < setting; over++) {
          const [lx, ly] = sequence[over]
          if (Math.hypot(lx - at.x, ly - at.y) < at.radius + dotDiameter / 2 - NOISE)
            found.set(`${setting} ${over}`, { setting, over, part })
        }
      }
    }
  })
  return [...found.values()]
}
