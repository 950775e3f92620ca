import type { Place, Sign } from '../sign/sign.js'
import type { Found, Quantities, Subject } from './quantity.js'

/**
 * Whether a sign is read by touch at all, where a code leaves open by what. Datum: raised characters are those not meant for sight alone;
 * whether a pictogram is raised is not part of a description (Regulation (EU) 1300/2014, annex, 2.3: raised pictograms, raised
 * characters or braille; Orden TMA/851/2021, article 44.1: braille and high relief, or another system).
 */

const raisedPlaces = ({ lettering }: Sign): Place[] => lettering.filter((l) => l.part !== 'visual').map((l) => l.place)
const braillePlaces = ({ braille }: Sign): Place[] => braille.map((block) => block.place)

const seen = (value: boolean, places: Place[], remark?: string): Found => ({
  observations: [{ value, basis: 'declared', places, ...(remark !== undefined && { remark }) }],
  gaps: [],
})

const judgement = (why: string, places: Place[]): Found => ({
  observations: [],
  gaps: [{ reason: 'needs-judgement', why, places }],
})

function hasBraille({ sign }: Subject): Found {
  const places = braillePlaces(sign)
  return places.length > 0 ? seen(true, places) : seen(false, [sign.panel.place], 'The sign has no braille.')
}

function readByTouch({ sign }: Subject): Found {
  const places = [...raisedPlaces(sign), ...braillePlaces(sign)]
  if (places.length > 0) return seen(true, places)
  if (sign.pictograms.length > 0)
    return judgement(
      'whether the pictograms are raised is not part of a description',
      sign.pictograms.map((pictogram) => pictogram.place),
    )
  return seen(false, [sign.panel.place], 'The sign has no raised characters and no braille.')
}

function brailleAndRelief({ sign }: Subject): Found {
  const [raised, braille] = [raisedPlaces(sign), braillePlaces(sign)]
  if (raised.length > 0 && braille.length > 0) return seen(true, [...raised, ...braille])
  return judgement(
    'the sign lacks braille or raised characters, and whether another system serves blind people is not seen on it',
    [sign.panel.place],
  )
}

export const TOUCH: Quantities = {
  'sign.braille': {
    unit: 'truth',
    method: 'Whether the sign has braille.',
    couldBe: ['braille'],
    doubt: 'no',
    take: hasBraille,
  },
  'sign.readByTouch': {
    unit: 'truth',
    method: 'Whether the sign has raised characters or braille.',
    couldBe: ['lettering', 'braille'],
    doubt: 'no',
    take: readByTouch,
  },
  'sign.brailleAndRelief': {
    unit: 'truth',
    method: 'Whether the sign has raised characters and braille.',
    couldBe: ['lettering', 'braille'],
    doubt: 'no',
    take: brailleAndRelief,
  },
}
