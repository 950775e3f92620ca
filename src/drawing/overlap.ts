import { boxesOverlap, type Box } from '../geometry/box.js'
import type { Contour, Polyline } from '../geometry/outline.js'
import { edgesWithin, type Edge } from './edges.js'
import { grown } from './edges.js'
import { EDGE, type Region } from './region.js'

/**
 * The overlap of two areas, as far as their outlines do not meet: its outline is then made of those contours of each that lie
 * in the other.
 */
export interface Overlap {
  /** Contours of the first area, to be filled by its rule. */
  own: Contour[]
  /** Contours of the second, to be filled by its rule. */
  other: Contour[]
  /** Contours of both that bound one area together, each once: `evenodd`. Then the two others are empty. */
  both: Contour[]
  /** Boxes of contours of the first area that the second cuts. */
  cut: Box[]
}

/** When more contours are cut, what lies beside them is not told apart from them. */
const MOST_CUT = 100

/** A contour with what is needed of it often. */
interface Candidate {
  contour: Contour
  polyline: Polyline
  box: Box
}

export function overlapOf(first: Region, second: Region): Overlap {
  const own = sorted(first, second)
  const other = sorted(second, first)
  const cut = own.met.map(({ box }) => box)
  if (cut.length > MOST_CUT) return { own: [], other: [], both: [], cut: [...cut, ...own.inside.map(({ box }) => box)] }
  const isCut = ({ box }: Candidate) => own.met.some((met) => boxesOverlap(grown(met.box, EDGE), box))
  const kept = own.inside.filter((candidate) => !isCut(candidate))
  cut.push(...own.inside.filter(isCut).map(({ box }) => box))
  const taken = other.inside
  if (kept.length === 0 || taken.length === 0)
    return { own: kept.map(contourOf), other: taken.map(contourOf), both: [], cut }
  const both = [
    ...kept.filter((candidate) => bounds(first, candidate)),
    ...taken.filter((candidate) => bounds(second, candidate)),
  ]
  return { own: [], other: [], both: both.map(contourOf), cut }
}

const contourOf = ({ contour }: Candidate): Contour => contour

/** The contours of `region` near the other area: those that meet its outline, and those of the rest that lie in it. */
function sorted(region: Region, { edges, box }: Region): { met: Candidate[]; inside: Candidate[] } {
  const meeting = new Set(edgesWithin(region.edges, box, edges, EDGE).map(({ of }) => of))
  const reach = grown(box, EDGE)
  const met: Candidate[] = []
  const inside: Candidate[] = []
  region.count?.(region.contours.length)
  region.contours.forEach((contour, i) => {
    const own = region.boxes[i]
    if (!own || !boxesOverlap(reach, grown(own, EDGE))) return
    const polyline = region.polylines[i]
    const candidate = { contour, polyline, box: own }
    if (meeting.has(i)) met.push(candidate)
    else if (edges.contains(polyline[0])) inside.push(candidate)
  })
  return { met, inside }
}

/** Whether a contour has the area on one side only; one that lies in it with the same sense bounds nothing. */
function bounds({ edges }: Region, { polyline }: Candidate): boolean {
  let longest: Edge | undefined
  let length = 0
  polyline.forEach((from, i) => {
    const to = polyline[(i + 1) % polyline.length]
    const own = Math.hypot(to.x - from.x, to.y - from.y)
    if (own > length) [longest, length] = [{ from, to }, own]
  })
  if (!longest) return false
  const { from, to } = longest
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }
  const aside = { x: ((from.y - to.y) / length) * (EDGE / 2), y: ((to.x - from.x) / length) * (EDGE / 2) }
  return (
    edges.contains({ x: middle.x + aside.x, y: middle.y + aside.y }) !==
    edges.contains({ x: middle.x - aside.x, y: middle.y - aside.y })
  )
}
