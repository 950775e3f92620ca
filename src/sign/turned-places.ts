import type { Point } from '../geometry/point.js'
import { moveBox } from './merge.js'
import { isKnown, missing, type Assumption, type Place, type Sign, type Unread } from './sign.js'

/**
 * Places of a description beside a drawing that shows the sign turned or mirrored. They are counted along the panel's own edges and not along
 * those of the drawing: they are left out, and what is drawn tells where things are.
 */

/** Degrees by which a sign may be drawn askew and count as upright: what a fit of few dots is sure to. Our own figure. */
const UPRIGHT_WITHIN = 1

const WHY = 'the sign is drawn turned or mirrored, and places of the description are not laid on such a drawing'

/** Whether a reader has another right and down than the drawing. */
export function isDrawnTurned({ panel, lettering, braille }: Sign): boolean {
  const byTouch = [...lettering].sort((a, b) => Number(a.part === 'visual') - Number(b.part === 'visual'))
  const lie = byTouch.find((set) => set.lie)?.lie ?? braille.find(({ lines }) => lines.length > 0)
  const off = lie ? Math.abs(((lie.rotation + 540) % 360) - 180) : 0
  return Math.max(off, Math.abs(panel.turned?.rotation ?? 0)) > UPRIGHT_WITHIN || lie?.mirrored === true
}

/**
 * The description without its places. A border that is drawn keeps its drawn place; one that is not drawn may be anywhere.
 * @param corner of the drawn panel, from which described places would be counted
 */
export function withoutPlaces(described: Sign, drawn: Sign, corner: Point): Sign {
  const back = { x: -corner.x, y: -corner.y }
  const undrawn = described.borders.slice(drawn.borders.length)
  return {
    ...described,
    lettering: described.lettering.map((set) => ({
      ...set,
      lines: set.lines.map((line) => ({ ...line, place: unplaced(line.place), baseline: missing(WHY) })),
    })),
    braille: described.braille.map((block) => ({
      ...block,
      place: unplaced(block.place),
      lines: block.lines.map((line) => ({ ...line, place: unplaced(line.place), dots: [], baseline: missing(WHY) })),
    })),
    pictograms: described.pictograms.map((one) => ({ ...one, place: unplaced(one.place), field: missing(WHY) })),
    borders: drawn.borders
      .slice(0, described.borders.length)
      .map(({ box }, i) => ({ ...described.borders[i], box: moveBox(box, back) })),
    unread: [
      ...described.unread,
      ...undrawn.map(({ place }): Unread => ({ place: unplaced(place), why: WHY, couldBe: ['border'] })),
    ],
    assumptions: [...described.assumptions, ...(saysPlaces(described) ? [LEFT_OUT] : [])],
  }
}

const LEFT_OUT: Assumption = {
  about: 'conflict',
  text: 'The sign is drawn turned or mirrored: places that the description gives are left out, and those of the drawing are judged.',
}

const saysPlaces = ({ lettering, braille, pictograms, borders }: Sign): boolean =>
  [...lettering, ...braille].some(({ lines }) => lines.some(({ baseline }) => isKnown(baseline))) ||
  pictograms.some(({ field }) => isKnown(field)) ||
  borders.length > 0

const unplaced = ({ box: _, ...place }: Place): Place => place
