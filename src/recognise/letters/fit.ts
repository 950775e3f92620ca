import { medianOf } from '../../geometry/fit.js'
import type { Likeness, Look } from './look.js'
import type { Manner } from './references.js'

/**
 * Characters of one line read together. How high the capitals are and where the baseline runs is not known beforehand: each
 * character that stands for itself proposes it, and the proposal under which the whole line fits best wins. Costs are squared
 * deviations in standard deviations, of the look and of the place of top, bottom and width.
 */
export interface Scale {
  /** Height of the capital I, millimetres. */
  height: number
  /** Down the reader's view, millimetres. */
  baseline: number
  /** Logarithm of how much wider than usual the characters are; undefined when too few tell. */
  widening?: number
}

export interface Option {
  label: string
  cost: number
  distance: number
}

/** A line under one scale. */
export interface FittedLine {
  scale: Scale
  /** What fits each character best. */
  best: (Option | undefined)[]
  cost: number
  /** What each character may be, the most fitting first. */
  options: () => Option[][]
}

/** A look with the variance of its distances. */
interface Weighed extends Look {
  variance: number
}

/**
 * Variance of the distance of a character from the most similar reference, along all axes together: at least this, and more
 * for a face unlike all references, which shows in how far away the nearest of them is.
 */
const LOOK_VARIANCE = 4
const UNLIKE_FACE = 0.2
/** A line is no worse for a character that fits nothing than for one that fits so badly. */
const WORST = 60
/** How much more than the references' faces a new face differs, in standard deviations. */
const NEW_FACE = 1.3
/** Characters lower than this say little about the size of the line. Heights of I. */
const TELLING = 0.5
const MOST_WIDTH_COST = 16
/** Characters from which the width of a face is judged. */
const ENOUGH_WIDTHS = 3
const LOOKS_THAT_PROPOSE = 4
/** Of a long line so many characters propose, evenly spread. */
const MOST_PROPOSERS = 40
const REFINEMENTS = 2
/** An option that costs so much more than another has a probability next to nothing. */
const BEYOND_ALL = 60
/** Proposals that are refined; ones alike by this share of the height count as one. */
const MOST_PROPOSALS = 5
const ALIKE = 0.04

/** The ways in which a line can be read, the best fitting first; none when no character says how large the line is. */
export function fitLine(looks: readonly Look[]): FittedLine[] {
  const weighed = looks.map(({ box, likenesses }): Weighed => {
    return { box, likenesses, variance: LOOK_VARIANCE + UNLIKE_FACE * likenesses[0].distance ** 2 }
  })
  const stride = Math.ceil(looks.length / MOST_PROPOSERS)
  const some = weighed.filter((_, i) => i % stride === 0)
  const coarse = proposals(some)
    .map((scale) => ({ scale, cost: totalOf(bestUnder(some, scale)) }))
    .sort((a, b) => a.cost - b.cost)
  const chosen: Scale[] = []
  for (const { scale } of coarse) {
    if (chosen.length >= MOST_PROPOSALS) break
    if (!chosen.some((s) => alike(s, scale))) chosen.push(scale)
  }
  const fits = chosen.map((scale) => fitAt(weighed, scale)).sort((a, b) => a.cost - b.cost)
  return fits.filter((fit, i) => !fits.slice(0, i).some((better) => alike(better.scale, fit.scale)))
}

const alike = (a: Scale, b: Scale) =>
  Math.abs(a.height - b.height) <= ALIKE * a.height && Math.abs(a.baseline - b.baseline) <= ALIKE * a.height

function fitAt(looks: readonly Weighed[], start: Scale): FittedLine {
  let scale = start
  let best = bestUnder(looks, scale)
  for (let i = 0; i < REFINEMENTS; i++) {
    scale = refined(looks, best, scale)
    best = bestUnder(looks, scale)
  }
  return { scale, best: best.map(optionOf), cost: totalOf(best), options: () => optionsUnder(looks, scale) }
}

function proposals(looks: readonly Look[]): Scale[] {
  const scales: Scale[] = []
  for (const { box, likenesses } of looks) {
    for (const { manner } of likenesses.slice(0, LOOKS_THAT_PROPOSE)) {
      const height = box.height / (manner.top.mean - manner.bottom.mean)
      if (box.height < TELLING * height) continue
      const scale = { height, baseline: box.y + box.height + height * manner.bottom.mean }
      if (!scales.some((s) => alike(s, scale))) scales.push(scale)
    }
  }
  return scales
}

interface Costed {
  likeness: Likeness
  cost: number
}

const optionOf = (costed: Costed | undefined): Option | undefined =>
  costed && { label: costed.likeness.label, distance: costed.likeness.distance, cost: costed.cost }

function bestUnder(looks: readonly Weighed[], scale: Scale): (Costed | undefined)[] {
  return looks.map((look) => {
    let best: Likeness | undefined
    let least = Infinity
    for (const likeness of look.likenesses) {
      const unlike = likeness.distance ** 2 / look.variance
      // They stand by rising distance.
      if (unlike >= least) break
      const cost = unlike + placeCost(look, likeness.manner, scale)
      if (cost >= least) continue
      best = likeness
      least = cost
    }
    return best && { likeness: best, cost: least }
  })
}

function optionsUnder(looks: readonly Weighed[], scale: Scale): Option[][] {
  return looks.map((look) => {
    const options: Option[] = []
    let least = Infinity
    for (const { label, distance, manner } of look.likenesses) {
      const unlike = distance ** 2 / look.variance
      if (unlike > least + BEYOND_ALL) break
      const cost = unlike + placeCost(look, manner, scale)
      if (cost > least + BEYOND_ALL) continue
      least = Math.min(least, cost)
      options.push({ label, distance, cost })
    }
    return options.sort((a, b) => a.cost - b.cost)
  })
}

function placeCost({ box }: Look, { top, bottom, width }: Manner, { height, baseline, widening }: Scale): number {
  const up = (y: number) => (baseline - y) / height
  const above = (up(box.y) - top.mean) / (NEW_FACE * top.deviation)
  const below = (up(box.y + box.height) - bottom.mean) / (NEW_FACE * bottom.deviation)
  if (widening === undefined) return above ** 2 + below ** 2
  const wide = (Math.log(box.width / height) - width.mean - widening) / (NEW_FACE * width.deviation)
  return above ** 2 + below ** 2 + Math.min(MOST_WIDTH_COST, wide ** 2)
}

const totalOf = (best: readonly (Costed | undefined)[]): number =>
  best.reduce((sum, one) => sum + Math.min(WORST, one?.cost ?? WORST), 0)

/** The scale that fits the most fitting reading best: weighted least squares over tops and bottoms. */
function refined(looks: readonly Look[], fitting: readonly (Costed | undefined)[], scale: Scale): Scale {
  const widenings: number[] = []
  let [w, wx, wy, wxx, wxy] = [0, 0, 0, 0, 0]
  looks.forEach(({ box }, i) => {
    const best = fitting[i]
    if (!best || best.cost >= WORST) return
    const { manner } = best.likeness
    if (box.height > TELLING * scale.height) widenings.push(Math.log(box.width / scale.height) - manner.width.mean)
    for (const [y, { mean, deviation }] of [
      [box.y, manner.top],
      [box.y + box.height, manner.bottom],
    ] as const) {
      const weight = 1 / deviation ** 2
      w += weight
      wx += weight * mean
      wy += weight * y
      wxx += weight * mean ** 2
      wxy += weight * mean * y
    }
  })
  const widening = widenings.length >= ENOUGH_WIDTHS ? medianOf(widenings) : undefined
  const height = (wx * wy - w * wxy) / (w * wxx - wx ** 2)
  return height > 0 && Number.isFinite(height)
    ? { height, baseline: (wy + height * wx) / w, widening }
    : { ...scale, widening }
}
