import { domeOf } from '../../geometry/dome.js'
import type { Box } from '../../geometry/box.js'
import type { Point } from '../../geometry/point.js'
import { Refusal } from '../../refusal.js'
import { isKnown, type Fact, type Sign } from '../../sign/sign.js'
import { known } from './assume.js'
import { CAUTIONS } from './cautions.js'
import { splitOf } from './cartridges.js'
import { dotsOfSign, type Groups } from './groups.js'
import { entryOf, lowParts } from './head.js'
import { lowestTravel } from './lowest.js'
import { nearestIndex } from './neighbours.js'
import { orderOf } from './order.js'
import { indexOf, precedenceOf } from './precedence.js'
import { withoutRings } from './rings.js'
import { MOST_DOTS, type DotPlan, type PlanSettings } from './schema.js'
import { planSeconds } from './time.js'
import { warningsOf } from './warnings.js'
import { placesIn, Ways } from './way.js'

/** Dots to lay, and what is known of the sign that they are on. */
export interface PlanInput {
  dots: Point[]
  groups?: Groups | undefined
  sign?: Sign | undefined
  of: DotPlan['zero']['of']
}

/**
 * The dots of a sign whose places are known.
 * @throws {Refusal} `no-tactile-elements` or `invalid-description` when there are none
 */
export function inputOfSign(sign: Sign, isDrawn: boolean): PlanInput {
  const { dots, groups } = dotsOfSign(sign)
  if (dots.length === 0)
    throw isDrawn
      ? new Refusal(
          'no-tactile-elements',
          'The drawing holds no braille that could be read, so there are no dots to set.',
        )
      : new Refusal('invalid-description', 'The description does not say where its dots are.', [
          {
            detail: 'Give braille with its text, origin, dot spacing and cell spacing, or send points or a drawing.',
            pointer: '/sign/braille',
          },
        ])
  return { dots, groups, sign, of: isDrawn && !sign.panel.place.box ? 'drawing' : 'panel' }
}

/**
 * The order in which a head sets the dots, and what it takes: see docs/dot-plans.md.
 * @throws {Refusal} `invalid-description` when the head cannot set them, `too-complex` when there are too many
 */
export function planDots({ dots, groups, sign, of }: PlanInput, settings: PlanSettings): DotPlan {
  if (dots.length > MOST_DOTS)
    throw new Refusal('too-complex', 'There are more dots than are planned at once.', [], {
      limit: MOST_DOTS,
      actual: dots.length,
    })
  const needed = known(settings, largest(sign, 'dotBaseDiameter'), largest(sign, 'dotHeight'))
  const { head, machine, dot } = needed
  const places = { x: Float64Array.from(dots, ({ x }) => x), y: Float64Array.from(dots, ({ y }) => y) }
  const ways = new Ways(places, entryOf(head))
  const index = nearestIndex(ways)
  const wanted = precedenceOf(places, lowParts(head), dot.baseDiameter, indexOf(places))
  const { precedence, givenUp } = withoutRings(wanted)
  const seconds = (order: Int32Array) => planSeconds(order, ways, head, machine)
  const { order, baseline, baselineAllowed } = orderOf(ways, precedence, dot.baseDiameter, index, seconds)
  const each = needed.isDomeKnown ? domeOf(dot.baseDiameter, dot.height).volume : null
  const volume = (count: number) => (each === null ? null : each * count)
  const cartridges = splitOf(order, ways, groups, settings.cartridge?.dots).map(({ from, to, after }) => {
    const count = to - from + 1
    return { from, to, dots: count, volume: volume(count), after }
  })
  const travel = ways.along(order)
  const travelLowerBound = Math.min(travel, lowestTravel(ways, index, travel))
  const panel = panelBox(sign)
  return {
    dots: dots.length,
    sequence: Array.from(order, (i): [number, number] => [dots[i].x, dots[i].y]),
    cartridges,
    seconds: seconds(order),
    travel,
    travelLowerBound,
    travelGap: travelLowerBound > 0 ? travel / travelLowerBound - 1 : null,
    baselineTravel: ways.along(baseline),
    baselineSeconds: seconds(baseline),
    baselineAllowed,
    volume: volume(dots.length),
    zero: zeroOf(of, panel),
    head: { ...head, offset: head.offset ?? null, approach: head.approach ?? null },
    machine: { ...machine, acceleration: machine.acceleration ?? null },
    dot,
    assumptions: [...needed.assumptions, ...aboutDots(sign)],
    warnings: warningsOf({
      known: needed,
      dots,
      places: placesIn(order),
      precedence,
      givenUp,
      cartridges,
      hasGroups: groups !== undefined,
      sign,
      panel,
    }),
    cautions: [...CAUTIONS],
  }
}

function largest(sign: Sign | undefined, name: 'dotBaseDiameter' | 'dotHeight'): number | undefined {
  const facts: Fact<number>[] = sign?.braille.map((block) => block[name]) ?? []
  const values = facts.flatMap((fact) => (isKnown(fact) ? (fact.max ?? fact.value) : []))
  return values.length > 0 && values.length === facts.length ? Math.max(...values) : undefined
}

export function panelBox(sign: Sign | undefined): Box | undefined {
  if (!sign) return undefined
  const { place, width, height } = sign.panel
  if (place.box) return place.box
  return isKnown(width) && isKnown(height) ? { x: 0, y: 0, width: width.value, height: height.value } : undefined
}

const CORNERS = {
  panel: 'the panel’s top left corner',
  drawing: 'the drawing’s top left corner, since no panel was found in it',
  points: 'the place from which the points are measured',
}

/** What the reading of a sign assumed that says nothing of its dots. */
const BESIDE_THE_POINT = ['use', 'border', 'pictogram', 'borders', 'pictograms']

const aboutDots = (sign: Sign | undefined): DotPlan['assumptions'] => [
  ...(sign?.assumptions ?? [])
    .filter(({ about }) => !BESIDE_THE_POINT.includes(about))
    .map(({ about, text }) => ({ about, text })),
  ...notLookedAt(sign),
]

/** Where nothing is warned of because it was not known. */
function notLookedAt(sign: Sign | undefined): DotPlan['assumptions'] {
  const raised = sign?.lettering.filter(({ part }) => part !== 'visual') ?? []
  const isHidden =
    raised.some(({ lines }) => lines.every(({ outlines }) => outlines.length === 0)) ||
    sign?.unread.some(({ couldBe }) => couldBe.includes('lettering') || couldBe.includes('border')) === true
  return [
    ...(!sign || isHidden ? [{ about: 'walls', text: sign ? SOME_WALLS : NO_WALLS }] : []),
    ...(panelBox(sign) ? [] : [{ about: 'panel', text: NO_EDGE }]),
  ]
}

const NO_WALLS = 'Only the dots are known: whether the head meets a raised character or a border was not looked at.'
const SOME_WALLS =
  'The outlines of some raised characters or borders are not known: whether the head meets these was not looked at.'
const NO_EDGE = 'The edge of the panel is not known: whether dots lie too near to it was not looked at.'

function zeroOf(of: DotPlan['zero']['of'], panel: Box | undefined): DotPlan['zero'] {
  const [x, y] = of === 'panel' && panel ? [panel.x, panel.y] : [0, 0]
  const text =
    `Set X and Y to zero at ${CORNERS[of]}: X runs to the right, Y up, so that what lies below has a negative Y. ` +
    'Set Z to zero where the tip just touches the surface that the dots stand on, not a letter, with the head that sets the dots.'
  return { x, y, of, text }
}
