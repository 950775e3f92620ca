import { isKnown } from '../sign/sign.js'
import { pointerOf, take } from './facts.js'
import { heightOfBaseline, type Height } from './heights.js'
import { eachLettering, HEIGHT_METHOD, letteringIn, QUESTIONS } from './lettering.js'
import type { Gap, Observation } from './measurement.js'
import type { Quantities, Subject } from './quantity.js'

/**
 * The height of characters for sight, with what its limit hangs on: the height of the baseline above the floor and the distance to what
 * stops a reader coming nearer, both in millimetres (2010 ADA Standards, Table 703.5.5).
 */

const isHeight = (baseline: Height | Gap[]): baseline is Height => !Array.isArray(baseline)

type Beside = Pick<Observation, 'context' | 'limitGaps'>

/** @param baselines those that the characters may stand on, or what keeps one from being known; then none is. */
function besideHeights(baselines: (Height | Gap[])[], { sign }: Subject): Beside {
  const { viewingDistance } = sign.installation
  const known = baselines.filter(isHeight)
  const limitGaps = baselines.flatMap((baseline) => (isHeight(baseline) ? [] : baseline))
  const heights = known.map(({ value }) => value)
  const context = {
    ...(known.length === baselines.length && {
      baselineHeight: Math.min(...heights),
      baselineHeightTo: Math.max(...heights),
      baselineDrawn: known.some(({ basis }) => basis === 'drawn'),
    }),
    ...(isKnown(viewingDistance) && { viewingDistance: viewingDistance.value }),
  }
  return { context, limitGaps }
}

export const VISUAL_HEIGHT: Quantities = {
  'visual.characterHeight': {
    unit: 'mm',
    method: HEIGHT_METHOD,
    couldBe: ['lettering'],
    doubt: 'more',
    take: (subject) =>
      eachLettering((lettering, n) => {
        const { place, characterHeight } = lettering
        const pointer = pointerOf(place, 'lettering', n, 'characterHeight')
        const found = take(characterHeight, place, { pointer, ask: QUESTIONS.characterHeight, unit: 'mm' })
        const beside = besideHeights([heightOfBaseline(subject, n)], subject)
        return { ...found, observations: found.observations.map((o) => ({ ...o, ...beside })) }
      })(subject),
    beside: (subject) =>
      besideHeights(
        letteringIn(subject).map(({ n }) => heightOfBaseline(subject, n)),
        subject,
      ),
  },
}
