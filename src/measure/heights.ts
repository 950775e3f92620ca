import type { Polyline } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import {
  isKnown,
  type Basis,
  type BrailleBlock,
  type Fact,
  type Known,
  type Place,
  type Sign,
  type Unknown,
} from '../sign/sign.js'
import { basisOf, gapOf, INSTALLATION_POINTER, installationPlace, type Ask } from './facts.js'
import { extentOfOutlines, frameOf, type Frame } from './frame.js'
import { letteringIn, type Numbered } from './lettering.js'
import type { Gap } from './measurement.js'
import { HEIGHT_ASK, lowerEdge } from './panel-edges.js'
import { baselineAsk } from './placing.js'
import type { Found, Subject } from './quantity.js'

/**
 * Heights above the finish floor. They follow from the height of the panel's lower edge and from where things are on the panel.
 */

/** Something on the panel that has a height: a baseline, or an edge. */
export interface Level {
  /** Above the panel's lower edge. */
  up: Known<number> | Unknown
  /** Between which heights it lies when it is not known: those of the line's outlines. */
  between?: [number, number]
  places: Place[]
  /** What would make it known. */
  ask?: Ask
}

export type Choice = (heights: number[]) => number
export const lowest: Choice = (heights) => Math.min(...heights)
export const highest: Choice = (heights) => Math.max(...heights)

/** The baselines of these characters and of this braille; a braille baseline runs through the centres of dots 3 and 6. */
export function baselines(sign: Sign, lettering: Numbered[], blocks: BrailleBlock[]): Level[] {
  const frame = frameOf(sign)
  const edge = lowerEdge(sign)
  const all: Level[] = []
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
): Level {
  const places = [line.place]
  if (!isKnown(line.baseline)) {
    const extent = extentOfOutlines(outlines, frame)
    const between: Pick<Level, 'between'> =
      extent && isKnown(edge) ? { between: [edge.value - extent.bottom, edge.value - extent.top] } : {}
    return { up: line.baseline, ...between, places, ask: ask(line.baseline) }
  }
  return levelAt(frame.of(line.baseline.value).y, line.baseline, edge, places)
}

/** @param y in the frame */
export function levelAt(y: number, from: { basis: Basis }, edge: Known<number> | Unknown, places: Place[]): Level {
  if (!isKnown(edge)) return { up: edge, places, ask: HEIGHT_ASK }
  return { up: { value: edge.value - y, basis: basisOf(from, edge) }, places }
}

const BOTTOM_ASK: Ask = {
  pointer: `${INSTALLATION_POINTER}/panelBottomHeight`,
  ask: 'How high above the finish floor is the lower edge of the panel?',
  unit: 'mm',
}

/** The height above the floor of the panel's lower edge, or the gap. */
export function panelBottom(sign: Sign): Known<number> | Gap {
  const { panelBottomHeight } = sign.installation
  return isKnown(panelBottomHeight) ? panelBottomHeight : gapOf(panelBottomHeight, installationPlace(sign), BOTTOM_ASK)
}

/** The extreme of several heights above the floor. */
export function extreme(sign: Sign, all: Level[], pick: Choice): Found {
  const bottom = panelBottom(sign)
  const gaps: Gap[] = 'reason' in bottom ? [bottom] : []
  const known = all.flatMap((level) => (isKnown(level.up) ? [{ up: level.up, level }] : []))
  const chosen = known.length > 0 ? pick(known.map(({ up }) => up.value)) : undefined
  for (const { up, between, places, ask } of all) {
    const matters = !between || chosen === undefined || pick([chosen, ...between]) !== chosen
    if (!isKnown(up) && matters) gaps.push(gapOf(up, places[0] ?? installationPlace(sign), ask))
  }
  if (chosen === undefined || 'reason' in bottom) return { observations: [], gaps }
  const at = known.filter(({ up }) => up.value === chosen)
  const basis = basisOf(bottom, ...at.map(({ up }) => up))
  const places = at.flatMap(({ level }) => level.places)
  const context = { panelBottomHeight: bottom.value }
  return { observations: [{ value: bottom.value + chosen, basis, places, context }], gaps }
}

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
