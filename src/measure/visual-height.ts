import { isKnown } from '../sign/sign.js'
import { pointerOf, take } from './facts.js'
import { heightOfBaseline } from './installation.js'
import { eachLettering, HEIGHT_METHOD, QUESTIONS } from './lettering.js'
import type { Quantities } from './quantity.js'

/**
 * The height of characters for sight, with what its limit hangs on: the height of the baseline above the floor and the distance to what
 * stops a reader coming nearer, both in millimetres (2010 ADA Standards, Table 703.5.5). With nothing in the way the
 * Access Board's guide to chapter 7 takes the first distance row.
 */

const NOTHING_IN_THE_WAY =
  'No viewing distance is given; the first distance row of the table is taken, as when nothing stops a reader coming near.'

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
        const baselineHeight = heightOfBaseline(subject, n)
        const { viewingDistance } = subject.sign.installation
        const context = {
          ...(baselineHeight !== undefined && { baselineHeight }),
          ...(isKnown(viewingDistance) && { viewingDistance: viewingDistance.value }),
        }
        const remark = isKnown(viewingDistance) ? {} : { remark: NOTHING_IN_THE_WAY }
        return { ...found, observations: found.observations.map((o) => ({ ...o, context, ...remark })) }
      })(subject),
  },
}
