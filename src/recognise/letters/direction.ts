import { boxOfLoops } from '../../geometry/loop.js'
import type { LetterOutline } from './blobs.js'
import type { Lie } from './rows.js'

/**
 * Which ways the lines may run: straight edges of letters are mostly along the baseline or square to it (E, H, T, L, serifs),
 * so the lengths of straight edges heaped by direction show the baseline's direction and the slant of the stems.
 */

/** An edge is straight when it is at least so long, as a share of its contour's diagonal. */
const STRAIGHT = 0.1
/** Width of a heap, degrees. */
const HEAP = 0.5
/** A heap counts when it holds this share of all straight edges. */
const LEAST_SHARE = 0.12
/** A direction that was given, or a straight one, is taken as exactly that of a heap so near. Degrees. */
const SNAP = 2.5
/** Stems lean at most so much. Degrees. */
const MOST_SLANT = 35
/** Stems that lean less are upright. Degrees; drawing programs write few decimals. */
const LEAST_SLANT = 0.3
const MOST_PEAKS = 4
/** The edges of a letter of usual size, written with three decimals of a millimetre, are turned by as much. Degrees. */
const AS_GOOD_AS_STRAIGHT = 0.003
const ROUNDING = 1e-9

interface Heap {
  /** 0 to 180. */
  angle: number
  share: number
}

/** Ways in which the lettering may lie, the likeliest first. @param hint direction in degrees, when something else tells it */
export function liesOf(outlines: readonly LetterOutline[], hint: number | undefined, mirrored: boolean): Lie[] {
  const heaps = heapsOf(outlines)
  const rotations: number[] = []
  const add = (rotation: number) => {
    const near = heaps.find((h) => Math.abs(apart(h.angle, rotation)) <= SNAP)
    const snapped = straight(turned(rotation + (near ? apart(near.angle, rotation) : 0)))
    if (!rotations.some((r) => Math.abs(((r - snapped + 540) % 360) - 180) < HEAP)) rotations.push(snapped)
  }
  if (hint !== undefined) add(hint)
  for (const rotation of [0, 90, 270, 180]) add(rotation)
  for (const { angle } of heaps.slice(0, MOST_PEAKS)) for (const turn of [0, 180]) add(angle + turn)
  // Seen from the other side, stems lean the other way.
  return rotations.flatMap((rotation) =>
    slantsOf(heaps, rotation).map((slant) => ({ rotation, slant: mirrored ? -slant : slant, mirrored })),
  )
}

/** A direction that is as good as straight, made so. */
function straight(degrees: number): number {
  const quarter = 90 * Math.round(degrees / 90)
  return Math.abs(degrees - quarter) <= AS_GOOD_AS_STRAIGHT ? quarter % 360 : degrees
}

/** Degrees from 0 to 360; what rounding makes of nearly 360 is 0. */
const turned = (degrees: number): number => {
  const turn = ((degrees % 360) + 360) % 360
  return turn > 360 - ROUNDING ? 0 : turn
}

/** How far the direction `to` is turned from the line at `from`, in degrees, −90 to 90. */
const apart = (to: number, from: number): number => {
  const turn = (((to - from) % 180) + 180) % 180
  return turn > 90 ? turn - 180 : turn
}

/** Slants to try under a direction: that of the heap of stems, or none. */
function slantsOf(heaps: readonly Heap[], rotation: number): number[] {
  const stems = heaps
    .map((h) => ({ slant: apart(h.angle, rotation + 90), share: h.share }))
    .filter(({ slant }) => Math.abs(slant) <= MOST_SLANT)
    .sort((a, b) => b.share - a.share)
  const main = stems.at(0)
  if (!main || Math.abs(main.slant) < LEAST_SLANT) return [0]
  const upright = stems.find((s) => Math.abs(s.slant) < LEAST_SLANT)
  const mirrored = stems.find((s) => Math.abs(s.slant + main.slant) < HEAP)
  // Legs of A, V and W lean to both sides alike; stems do not.
  return upright || mirrored ? [0, main.slant] : [main.slant, 0]
}

function heapsOf(outlines: readonly LetterOutline[]): Heap[] {
  const count = Math.round(180 / HEAP)
  const lengths = new Float64Array(count)
  const moments = new Float64Array(count)
  let all = 0
  for (const { corners } of outlines) {
    const box = boxOfLoops([corners])
    if (!box) continue
    const least = STRAIGHT ** 2 * (box.width ** 2 + box.height ** 2)
    let ax = corners[corners.length - 2]
    let ay = corners[corners.length - 1]
    for (let i = 0; i < corners.length; i += 2) {
      const bx = corners[i]
      const by = corners[i + 1]
      const across = bx - ax
      const down = by - ay
      const square = across * across + down * down
      if (square >= least) {
        const length = Math.sqrt(square)
        const angle = ((Math.atan2(down, across) * 180) / Math.PI + 180) % 180
        const bin = Math.round(angle / HEAP) % count
        lengths[bin] += length
        moments[bin] += length * apart(angle, bin * HEAP)
        all += length
      }
      ax = bx
      ay = by
    }
  }
  const heaps: Heap[] = []
  lengths.forEach((length, bin) => {
    const [before, after] = [(bin + count - 1) % count, (bin + 1) % count]
    if (length === 0 || lengths[before] > length || lengths[after] >= length) return
    const weight = lengths[before] + length + lengths[after]
    const shift = moments[before] + moments[bin] + moments[after] + HEAP * (lengths[after] - lengths[before])
    if (weight >= LEAST_SHARE * all)
      heaps.push({ angle: (bin * HEAP + shift / weight + 180) % 180, share: weight / all })
  })
  return heaps.sort((a, b) => b.share - a.share)
}
