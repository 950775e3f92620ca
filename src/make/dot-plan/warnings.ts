import { isKnown, type Sign } from '../../sign/sign.js'
import type { Point } from '../../geometry/point.js'
import type { Box } from '../../geometry/box.js'
import { lowParts, settingHeight } from './head.js'
import type { Known } from './assume.js'
import type { Pair, Precedence } from './precedence.js'
import type { Cartridge, PlanWarning, WarningKind } from './schema.js'
import { dotsAtWalls, wallsOf } from './walls.js'

/** What no order of the dots can mend: said, and left to the person at the machine. */

/** So many dots of one warning are named; `count` says how many there are. */
const MOST_NAMED = 40

interface Planned {
  known: Known
  dots: Point[]
  /** Place of each dot in the sequence. */
  places: Int32Array
  precedence: Precedence
  givenUp: Pair[]
  cartridges: readonly Cartridge[]
  hasGroups: boolean
  sign: Sign | undefined
  panel: Box | undefined
}

export function warningsOf(planned: Planned): PlanWarning[] {
  return [...betweenDots(planned), ...besideDots(planned), ...ofCartridges(planned)]
}

function betweenDots({ known, places, precedence, givenUp }: Planned): PlanWarning[] {
  const { head, dot } = known
  const pairs = (kind: WarningKind, list: readonly Pair[], text: (pairs: string) => string) =>
    warning(
      kind,
      list.length,
      text(list.length === 1 ? 'One pair of dots' : `${list.length} pairs of dots`),
      namedPairs(list, places),
    )
  const byTip = precedence.either.filter(({ part }) => part === 'tip')
  const byBody = precedence.either.filter(({ part }) => part === 'body')
  const body = settingHeight(head) + head.bodyClearance
  const crush = body < dot.height ? 'which touches them' : `above them, but lower than the lift of ${head.lift} mm`
  return [
    ...pairs(
      'dots-merge',
      precedence.merging,
      (many) => `${many} stand nearer to one another than a base is wide (${dot.baseDiameter} mm): they run together.`,
    ),
    ...pairs(
      'tip-over-dot',
      byTip,
      (many) => `${many} stand so near that the tip meets the first when it sets the second, whichever is set first.`,
    ),
    ...pairs(
      'body-over-dot',
      byBody,
      (many) =>
        `${many} stand so near that the body of the head comes to ${millimetres(body)} mm over the first when it sets the second, whichever is set first: ${crush}. A tip that reaches farther below the body would mend it.`,
    ),
    ...pairs(
      'ring',
      givenUp.filter(({ first, second }) => places[first] > places[second]),
      (many) =>
        `${many} lie in rings in which each dot would have to be set before the next: no order keeps the head off all of them. For these pairs it stands over a laid dot.`,
    ),
  ]
}

function besideDots({ known, dots, places, sign, panel }: Planned): PlanWarning[] {
  const { head, dot } = known
  const parts = lowParts(head)
  const atWalls = sign ? dotsAtWalls(dots, wallsOf(sign), parts) : []
  const margin = Math.max(dot.baseDiameter, head.tipDiameter) / 2
  const atEdge = panel ? dots.flatMap((point, i) => (toEdge(point, panel) < margin ? i : [])) : []
  const highest = sign
    ? Math.max(
        0,
        ...sign.lettering.map(({ part, relief }) => (part !== 'visual' && isKnown(relief) ? relief.value : 0)),
      )
    : 0
  const unread = sign?.unread.filter(({ couldBe }) => couldBe.includes('braille')) ?? []
  const named = (list: readonly number[]) => list.slice(0, MOST_NAMED).map((i) => places[i])
  return [
    ...warning(
      'near-wall',
      atWalls.length,
      `${count(atWalls.length, 'dot')} so near to a raised character or border that the head meets its wall. Move the braille away, or use a smaller tip.`,
      named(atWalls),
    ),
    ...warning(
      'near-edge',
      atEdge.length,
      `${count(atEdge.length, 'dot')} nearer to the edge of the panel than half the tip or half a dot.`,
      named(atEdge),
    ),
    ...warning(
      'below-surface',
      head.plunge > head.lift ? dots.length : 0,
      `The plunge of ${head.plunge} mm is more than the lift of ${head.lift} mm: the tip goes ${millimetres(head.plunge - head.lift)} mm below the surface. For a head that sets dots on the surface this is wrong.`,
      [],
    ),
    ...warning(
      'lift-below-letters',
      highest > head.lift ? dots.length : 0,
      `The raised characters stand ${millimetres(highest)} mm high, more than the lift of ${head.lift} mm: on its way from dot to dot the tip may meet them.`,
      [],
    ),
    ...warning(
      'unread',
      unread.length,
      `${unread.length === 1 ? 'One part of the sign was' : `${unread.length} parts of the sign were`} seen that may be braille, but not read: their dots are not in the plan.`,
      [],
    ),
  ]
}

function ofCartridges({ cartridges, hasGroups }: Planned): PlanWarning[] {
  const cut = cartridges.filter(({ after }) => after === 'dot')
  const places = cut.slice(0, MOST_NAMED).map(({ to }) => to)
  const times = cut.length === 1 ? 'once' : `${cut.length} times`
  return hasGroups
    ? warning('split-in-cell', cut.length, `The cartridge has to be changed ${times} in the middle of a cell.`, places)
    : warning(
        'split-unknown',
        cut.length,
        `The cartridge is changed ${times} where the way to the next dot is long: which dots make a word is not known.`,
        places,
      )
}

const warning = (kind: WarningKind, number: number, text: string, dots: number[]): PlanWarning[] =>
  number > 0 ? [{ kind, count: number, text, dots }] : []

const namedPairs = (list: readonly Pair[], places: Int32Array): number[] =>
  list.slice(0, MOST_NAMED / 2).flatMap(({ first, second }) => [places[first], places[second]])

const count = (number: number, noun: string): string =>
  number === 1 ? `One ${noun} stands` : `${number} ${noun}s stand`

/** For people: no more digits than a machine keeps. */
const millimetres = (value: number): string => String(Number(value.toFixed(3)))

/** How far inside the panel a point is; less than nothing outside. */
const toEdge = ({ x, y }: Point, box: Box): number =>
  Math.min(x - box.x, y - box.y, box.x + box.width - x, box.y + box.height - y)
