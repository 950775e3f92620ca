import type { Polyline } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import {
  isKnown,
  SIDES,
  type BrailleBlock,
  type Fact,
  type Known,
  type Place,
  type Sign,
  type Unknown,
} from '../sign/sign.js'
import { floorSpace } from './floor-space.js'
import {
  basisOf,
  gapOf,
  INSTALLATION_POINTER,
  installationPlace,
  nothing,
  PANEL_POINTER,
  take,
  type Ask,
} from './facts.js'
import { extentOfBox, extentOfOutlines, frameOf, type Frame } from './frame.js'
import type { Gap, Observation } from './measurement.js'
import { letteringIn, noLettering, raisedLettering, type Numbered } from './lettering.js'
import { baselineAsk } from './placing.js'
import type { Found, Quantities, Subject } from './quantity.js'

/**
 * Where the sign is mounted.
 *
 * Datum: heights run from the finish floor to a baseline: the lowest tactile one, braille included, and the highest raised one
 * (2010 ADA Standards 703.4.1 and the Access Board's guide to chapter 7, which dimensions the minimum to the braille).
 * They follow from the height of the panel's lower edge and from where the baselines are on the panel.
 */

/** Beyond this turn from upright the drawing's height is not the panel's. */
const QUARTER_TURN = 90

interface Baseline {
  /** Above the panel's lower edge. */
  up: Known<number> | Unknown
  /** Between which heights it lies when it is not known: those of the line's outlines. */
  between?: [number, number]
  observation: Pick<Observation, 'places'>
  /** What would make it known. */
  ask?: Ask
}

/** The distance from the panel's lower edge up to each baseline of these characters and of this braille. */
function baselines(sign: Sign, lettering: Numbered[], blocks: BrailleBlock[]): Baseline[] {
  const frame = frameOf(sign)
  const edge = lowerEdge(sign, frame)
  const all: Baseline[] = []
  for (const { lettering: set, n } of lettering) {
    const ask = (unknown: Unknown) => baselineAsk(unknown, set.place, 'lettering', n)
    for (const line of set.lines) all.push(baselineOf(line, line.outlines, edge, frame, ask))
  }
  blocks.forEach((block, n) => {
    const ask = (unknown: Unknown) => baselineAsk(unknown, block.place, 'braille', n)
    for (const line of block.lines) all.push(baselineOf(line, [], edge, frame, ask))
  })
  return all
}

function baselineOf(
  line: { place: Place; baseline: Fact<Point> },
  outlines: Polyline[],
  edge: Known<number> | Unknown,
  frame: Frame,
  ask: (unknown: Unknown) => Ask,
): Baseline {
  const observation = { places: [line.place] }
  if (!isKnown(line.baseline)) {
    const extent = extentOfOutlines(outlines, frame)
    const between: Pick<Baseline, 'between'> =
      extent && isKnown(edge) ? { between: [edge.value - extent.bottom, edge.value - extent.top] } : {}
    return { up: line.baseline, ...between, observation, ask: ask(line.baseline) }
  }
  if (!isKnown(edge)) return { up: edge, observation, ask: HEIGHT_ASK }
  const value = edge.value - frame.of(line.baseline.value).y
  return { up: { value, basis: basisOf(line.baseline, edge) }, observation }
}

const HEIGHT_ASK: Ask = { pointer: `${PANEL_POINTER}/height`, ask: 'How high is the panel?', unit: 'mm' }

/** The panel's lower edge as the reader has it, in the frame. */
function lowerEdge(sign: Sign, frame: Frame): Known<number> | Unknown {
  const { panel } = sign
  if (frame.rotation % QUARTER_TURN !== 0) return { unknown: 'unreadable', why: 'the sign is drawn at an angle' }
  if (!panel.place.box) return panel.height
  const { top, bottom } = extentOfBox(panel.place.box, frame)
  // A described height wins over the drawn one; the panel's top is where it is drawn.
  if (isKnown(panel.height) && panel.height.basis === 'declared')
    return { value: top + panel.height.value, basis: basisOf(panel.height) }
  return { value: bottom, basis: 'drawn' }
}

/** The extreme of the baselines' heights above the floor. */
function extreme(sign: Sign, all: Baseline[], pick: (heights: number[]) => number): Found {
  const { panelBottomHeight } = sign.installation
  const place = installationPlace(sign)
  const gaps: Gap[] = []
  if (!isKnown(panelBottomHeight)) {
    const pointer = `${INSTALLATION_POINTER}/panelBottomHeight`
    gaps.push(
      gapOf(panelBottomHeight, place, {
        pointer,
        ask: 'How high above the finish floor is the lower edge of the panel?',
        unit: 'mm',
      }),
    )
  }
  const known = all.flatMap((baseline) => (isKnown(baseline.up) ? [{ up: baseline.up, baseline }] : []))
  const chosen = known.length > 0 ? pick(known.map(({ up }) => up.value)) : undefined
  for (const { up, between, observation, ask } of all) {
    const matters = !between || chosen === undefined || pick([chosen, ...between]) !== chosen
    if (!isKnown(up) && matters) gaps.push(gapOf(up, observation.places[0] ?? place, ask))
  }
  if (chosen === undefined || !isKnown(panelBottomHeight)) return { observations: [], gaps }
  const at = known.filter(({ up }) => up.value === chosen)
  const basis = basisOf(panelBottomHeight, ...at.map(({ up }) => up))
  const places = at.flatMap(({ baseline }) => baseline.observation.places)
  const context = { panelBottomHeight: panelBottomHeight.value }
  return { observations: [{ value: panelBottomHeight.value + chosen, basis, places, context }], gaps }
}

const NO_TACTILE = 'The sign has nothing to read by touch.'

function tactile(sign: Sign, pick: (heights: number[]) => number, braille: boolean): Found {
  const lettering = raisedLettering(sign)
  const raised = lettering.some(({ lettering: { lines } }) => lines.length > 0)
  const all = baselines(sign, lettering, braille || !raised ? sign.braille : [])
  return all.length > 0 ? extreme(sign, all, pick) : nothing(NO_TACTILE)
}

const lowest = (heights: number[]) => Math.min(...heights)
const highest = (heights: number[]) => Math.max(...heights)

/** A height above the floor. */
export type Height = Pick<Known<number>, 'value' | 'basis'>

/** The height above the floor of a lettering's highest baseline, for limits that hang on it, or what keeps it from being known. */
export function heightOfBaseline({ sign, scope }: Pick<Subject, 'sign' | 'scope'>, n: number): Height | Gap[] {
  const only = letteringIn({ sign, scope }).filter((l) => l.n === n)
  const { observations, gaps } = extreme(sign, baselines(sign, only, []), highest)
  const [observation] = observations
  return gaps.length === 0 && typeof observation?.value === 'number'
    ? { value: observation.value, basis: observation.basis }
    : gaps
}

function side({ sign }: Subject): Found {
  const fact = sign.installation.side
  const pointer = `${INSTALLATION_POINTER}/side`
  return take(fact, installationPlace(sign), { pointer, ask: 'Where at the door is the sign?', choices: [...SIDES] })
}

export const INSTALLATION: Quantities = {
  'installation.lowestBaseline': {
    unit: 'mm',
    method: 'From the finish floor up to the lowest baseline that is read by touch, braille included.',
    couldBe: ['braille', 'lettering'],
    doubt: 'more',
    take: ({ sign }) => tactile(sign, lowest, true),
  },
  'installation.highestBaseline': {
    unit: 'mm',
    method: 'From the finish floor up to the baseline of the highest raised characters.',
    couldBe: ['lettering'],
    doubt: 'more',
    take: ({ sign }) => tactile(sign, highest, false),
  },
  'visual.heightAboveFloor': {
    unit: 'mm',
    method: 'From the finish floor up to the lowest baseline of the characters.',
    couldBe: ['lettering'],
    doubt: 'more',
    take: ({ sign, scope }) => {
      const all = baselines(sign, letteringIn({ sign, scope }), [])
      return all.length > 0 ? extreme(sign, all, lowest) : nothing(noLettering({ sign, scope }))
    },
  },
  'installation.side': {
    unit: 'kind',
    method: 'The place of the sign at its door.',
    couldBe: [],
    doubt: 'more',
    take: side,
  },
  'installation.floorSpace': {
    unit: 'mm',
    method:
      'Side of the largest square on the floor, centred on the text, that stays beyond the arc of the door from closed to 45 degrees.',
    couldBe: [],
    doubt: 'more',
    take: ({ sign }) => floorSpace(sign),
  },
}
