import { CONTROL_SIDES } from '../sign/sign.js'
import { INSTALLATION_POINTER, installationPlace, nothing, take } from './facts.js'
import type { Quantities } from './quantity.js'

/** Where the characters and the braille of a control stand at it, as one who faces it has them (decree 398/2009 Sb., annex 1, 3.2.1). */
export const CONTROL_SIDE: Quantities = {
  'installation.controlSide': {
    unit: 'kind',
    method: 'The place of the characters and the braille at their control.',
    couldBe: [],
    doubt: 'more',
    take: ({ sign }) => {
      if (sign.use !== 'elevator-car-control') return nothing('The sign is not at a control.')
      const pointer = `${INSTALLATION_POINTER}/controlSide`
      const ask = 'Where do the characters and the braille stand at their control?'
      return take(sign.installation.controlSide, installationPlace(sign), { pointer, ask, choices: [...CONTROL_SIDES] })
    },
  },
}
