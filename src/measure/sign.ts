import { CONTROL_SIDES, isKnown, JAMBS, type Lettering, type Place, type Sign } from '../sign/sign.js'
import { INSTALLATION_POINTER, installationPlace, nothing, take } from './facts.js'
import { roleOf, saidToBeRaisedOnly, STANDS_IN } from './role.js'
import { mayDesignateRoom } from './meaning.js'
import type { Gap } from './measurement.js'
import type { Found, Quantities, Quantity, Subject } from './quantity.js'

/**
 * What a sign provides at all, and matters that no drawing, description or gauge of one sign decides: they are named, so that
 * a person judges them, and never passed in silence (2010 ADA Standards 216, 307, 407, 502, 703, 810).
 */

const placesOf = (sign: Sign, lettering: Lettering[]): Place[] =>
  lettering.length > 0 ? lettering.map((l) => l.place) : [sign.panel.place]

const judgement = (why: string, places: Place[]): Found => ({
  observations: [],
  gaps: [{ reason: 'needs-judgement', why, places }],
})

/** Text is designated by raised characters, or by a pictogram whose descriptor is asked for elsewhere. */
function tactileCharacters({ sign }: Subject): Found {
  const raised = sign.lettering.filter((l) => l.part !== 'visual')
  const places = placesOf(sign, raised)
  if (raised.length > 0) return { observations: [{ value: true, basis: 'declared', places }], gaps: [] }
  if (sign.lettering.length === 0 && sign.pictograms.some(mayDesignateRoom))
    return nothing('The sign has a pictogram and no characters; the row on its text descriptor decides.')
  const { approach } = sign.installation
  if (isKnown(approach) && approach.value === 'exterior')
    return judgement('an exterior sign that is not at the door of the space it names need not be tactile', places)
  return {
    observations: [{ value: false, basis: 'declared', places, remark: 'The sign has no raised characters.' }],
    gaps: [],
  }
}

/** Characters for sight: the raised ones, or a set of their own on this sign or on another. */
function visualCharacters({ sign }: Subject): Found {
  const seen = sign.lettering.filter((l) => roleOf(l, sign) !== 'raised')
  if (sign.lettering.length === 0) return nothing('The sign has no characters.')
  const elsewhere = saidToBeRaisedOnly(sign)
  if (elsewhere) return judgement('another sign may carry the characters for sight', [elsewhere.place])
  const remark = seen.every((l) => l.part === 'raised') ? { remark: STANDS_IN } : {}
  return { observations: [{ value: true, basis: 'declared', places: placesOf(sign, seen), ...remark }], gaps: [] }
}

/** At a station at least one sign is tactile; that it is this one cannot be told from the sign. */
function stationTactile(subject: Subject): Found {
  const found = tactileCharacters(subject)
  return found.observations.some(({ value }) => value === false)
    ? judgement('at least one sign at each entrance must be tactile; whether it is this one is seen at the station', [
        subject.sign.panel.place,
      ])
    : found
}

/** A matter for a person: never measured, always named. */
function matter(
  method: string,
  why: string,
  applies: (sign: Sign) => string | undefined = () => undefined,
  unit: Quantity['unit'] = 'truth',
): Quantity {
  return {
    unit,
    method,
    couldBe: [],
    doubt: 'more',
    take: ({ sign }) => {
      const because = applies(sign)
      return because === undefined ? judgement(why, [sign.panel.place]) : nothing(because)
    },
  }
}

function bothJambs({ sign }: Subject): Found {
  const { jambs } = sign.installation
  const place = installationPlace(sign)
  const pointer = `${INSTALLATION_POINTER}/jambs`
  const ask = 'Do both jambs of the entrance carry the designation, or one?'
  if (!isKnown(jambs)) return take(jambs, place, { pointer, ask, choices: [...JAMBS] })
  return { observations: [{ value: jambs.value === 'both', basis: jambs.basis, places: [place] }], gaps: [] }
}

/** Where an existing panel has no room, as near to the control as there is room will do: that is for a person. */
function leftOfControl({ sign }: Subject): Found {
  const { controlSide } = sign.installation
  const place = installationPlace(sign)
  const pointer = `${INSTALLATION_POINTER}/controlSide`
  const ask = 'Where do the characters and the braille stand at their control?'
  if (!isKnown(controlSide)) return take(controlSide, place, { pointer, ask, choices: [...CONTROL_SIDES] })
  if (controlSide.value === 'left')
    return { observations: [{ value: true, basis: controlSide.basis, places: [place] }], gaps: [] }
  return judgement(
    'they do not stand to the left; an existing panel without room there may have them as near as possible',
    [place],
  )
}

const STAR = /[\u2605\u2606\u22c6\u2736\u272d-\u2730]/u

/** A star beside the floor number: needed at the main entry level only. */
function star({ sign }: Subject): Found {
  const drawn = sign.pictograms.filter((p) => /\bstar\b/iu.test(p.meaning ?? '')).map((p) => p.place)
  const written = sign.lettering
    .filter((l) => l.part !== 'visual' && isKnown(l.text) && STAR.test(l.text.value))
    .map((l) => l.place)
  const places = [...drawn, ...written]
  if (places.length > 0) return { observations: [{ value: true, basis: 'declared', places }], gaps: [] }
  const gap: Gap = {
    reason: 'needs-judgement',
    why: 'a tactile star is needed if this is the main entry level',
    places: [sign.panel.place],
  }
  return { observations: [], gaps: [gap] }
}

/** How high the lower edge of the sign is. */
function headroom({ sign }: Subject): Found {
  const pointer = `${INSTALLATION_POINTER}/panelBottomHeight`
  const ask = 'How high above the finish floor is the lower edge of the panel?'
  return take(sign.installation.panelBottomHeight, installationPlace(sign), { pointer, ask, unit: 'mm' })
}

const raisedOnly = (sign: Sign) =>
  sign.lettering.some((l) => l.part !== 'visual') ? undefined : 'The sign has no raised characters.'

export const SIGN: Quantities = {
  'sign.tactileCharacters': {
    unit: 'truth',
    method: 'Whether the sign has raised characters.',
    couldBe: ['lettering'],
    doubt: 'no',
    take: tactileCharacters,
  },
  'sign.visualCharacters': {
    unit: 'truth',
    method: 'Whether the sign has characters for sight.',
    couldBe: ['lettering'],
    doubt: 'no',
    take: visualCharacters,
  },
  'sign.stationTactileCharacters': {
    unit: 'truth',
    method: 'Whether the sign has raised characters.',
    couldBe: ['lettering'],
    doubt: 'no',
    take: stationTactile,
  },
  'sign.edges': matter('By touch.', 'edges are felt on the finished sign', raisedOnly),
  'sign.parkingIdentification': matter(
    'By sight.',
    'the clause on the parking sign itself is not in our table; hold the sign against 502.6',
  ),
  'sign.bothJambs': {
    unit: 'truth',
    method: 'Whether both jambs of the entrance carry the designation.',
    couldBe: [],
    doubt: 'more',
    take: bothJambs,
  },
  'sign.star': {
    unit: 'truth',
    method: 'Whether there is a star.',
    couldBe: ['lettering', 'pictogram'],
    doubt: 'no',
    take: star,
  },
  'sign.unreadClause': matter(
    'By sight, with the code in hand.',
    'the clause was not read in a source of this edition; hold the sign against the code itself',
  ),
  'sign.middleOfCharacters': matter(
    'From the floor up to the middle of the characters.',
    'the height of the middle of the characters is measured at the entrance',
    raisedOnly,
  ),
  'sign.locator': matter('By touch.', 'a description has no place for a locator', raisedOnly),
  'sign.leftOfControl': {
    unit: 'truth',
    method: 'Whether the characters and the braille stand to the left of their control.',
    couldBe: [],
    doubt: 'more',
    take: leftOfControl,
  },
  'installation.overhang': matter(
    'From the post to the edge of the sign.',
    'only a sign on posts in a circulation path is concerned',
    () => undefined,
    'mm',
  ),
  'installation.headroom': {
    unit: 'mm',
    method: 'From the floor up to the lower edge of the sign.',
    couldBe: [],
    doubt: 'more',
    take: headroom,
  },
}
