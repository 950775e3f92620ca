import { PUMP_ROOM } from '../measure/signs.js'
import { letters, WITH_PICTOGRAM } from './settings.js'

/** For what is true of a sign or not: what a description says in either case. All words are invented. */

type Json = Record<string, unknown>

export interface Truth {
  yes?: Json
  no?: Json
  /** Why no description makes it true, or false. */
  never?: string
}

const BY_PERSON: Truth = { never: 'a person judges it' }

const said = (raised: string, braille: string, code?: string): Json => ({
  [letters(0, 'text')]: raised,
  [letters(0, 'lines')]: [raised],
  'braille.0.lines': [braille],
  ...(code && { 'braille.0.code': code }),
})
const PAINTED: Json = { [letters(0, 'part')]: 'visual', braille: [] }
const FIELD = { x: 10, y: 10, width: 160, height: 160 }
const OVER_THE_TEXT = { x: 10, y: 150, width: 160, height: 200 }
const CONTROL = (word: string): Json => ({
  pictograms: [{ meaning: 'door open' }],
  lettering: [],
  braille: [{ ...(PUMP_ROOM.braille as Json[])[0], lines: undefined, text: word }],
})
/** The largest triangle in a circle of 12 inches has edges of 12 · √3 / 2 = 10.392 inches (geometry of the inscribed triangle). */
const onCircle = (edge: number): Json => ({
  pictograms: [
    { meaning: 'toilet', shape: 'triangle-in-circle', circleDiameter: 12 * 25.4, triangleEdge: edge * 25.4 },
  ],
})

export const TRUTHS: Record<string, Truth> = {
  'sign.tactileCharacters': { yes: {}, no: PAINTED },
  'sign.braille': { yes: {}, no: { braille: [] } },
  'sign.readByTouch': { yes: {}, no: PAINTED },
  'sign.brailleAndRelief': { yes: {}, never: 'another system may serve blind people' },
  'sign.visualCharacters': { yes: {}, never: 'another sign may carry the characters for sight' },
  'sign.stationTactileCharacters': { yes: {}, never: 'another sign of the station may be the tactile one' },
  'sign.roundedEdges': { yes: { 'panel.edge': 'rounded' }, no: { 'panel.edge': 'square' } },
  'sign.bothJambs': { yes: { 'installation.jambs': 'both' }, no: { 'installation.jambs': 'one' } },
  'sign.leftOfControl': {
    yes: { 'installation.controlSide': 'left' },
    never: 'an existing panel without room may have it elsewhere',
  },
  'sign.star': {
    yes: { pictograms: [{ meaning: 'star' }] },
    never: 'whether this is the main entry level is not told',
  },
  'braille.controlWords': { yes: CONTROL('open'), no: CONTROL('close') },
  'braille.repeatsRaisedText': { yes: {}, no: { braille: [] } },
  'braille.wording': { yes: {}, no: { 'braille.0.lines': ['pump room', '21'] } },
  'braille.contracted': {
    yes: said('HEATING', 'heating', 'ueb-contracted'),
    no: said('HEATING', 'heating', 'ueb-uncontracted'),
  },
  'braille.uncontracted': {
    yes: said('HEATING', 'heating', 'ueb-uncontracted'),
    no: said('HEATING', 'heating', 'ueb-contracted'),
  },
  'braille.capitals': { yes: {}, no: { 'braille.0.lines': ['Pump Room', '12'] } },
  'braille.capitalsKept': { yes: said('Pumps', 'Pumps'), no: said('Pumps', 'pumps') },
  'raised.case': { yes: {}, no: said('Pumps', 'pumps') },
  'raised.horizontal': { yes: {}, never: 'the lines of a description run level' },
  'pictogram.fieldClear': { yes: WITH_PICTOGRAM, no: { ...WITH_PICTOGRAM, 'pictograms.0.field': OVER_THE_TEXT } },
  'pictogram.descriptor': {
    yes: { ...WITH_PICTOGRAM, 'pictograms.0.field': FIELD },
    no: { ...WITH_PICTOGRAM, [letters(0, 'part')]: 'visual' },
  },
  'symbol.triangleInCircle': { yes: onCircle(10.392), no: onCircle(10.393) },
  'symbol.shape': BY_PERSON,
  'braille.nationalCode': BY_PERSON,
  'sign.edges': BY_PERSON,
  'sign.parkingIdentification': BY_PERSON,
  'sign.unreadClause': BY_PERSON,
  'sign.locator': BY_PERSON,
  'sign.middleOfCharacters': BY_PERSON,
  'sign.contrastWithoutFigure': BY_PERSON,
  'sign.pictogramUnderstood': BY_PERSON,
  'sign.symbolColours': BY_PERSON,
}
