import { PUMP_ROOM, withValues } from '../measure/signs.js'
import type { Abroad } from './abroad-signs.js'

/**
 * The same for the tables of the United States, Australia and Korea and for the named geometries. All signs are invented; their sizes lie
 * inside the limits of the table unless a change says otherwise.
 */

type Json = Record<string, unknown>

const from = (values: Json): Json => withValues(PUMP_ROOM, values)
const braille = (key: string) => `braille.0.${key}`
const letters = (key: string) => `lettering.0.${key}`

/** The panel of the pump room is 150 mm high. */
const MIDDLE_AT_60_INCHES = 60 * 25.4 - 150 / 2
const DOT_RADIUS = 1.55 / 2
const LAST_BASELINE = 70
const below = (gap: number): Json => ({ [braille('origin')]: { x: 20, y: LAST_BASELINE + gap + DOT_RADIUS } })

const SIZES = { dotBaseDiameter: 1.55, dotHeight: 0.7, dotSpacing: 2.4, cellSpacing: 6.9, lineSpacing: 10.1 }
/** Every size of the braille read at two places, where one of them may differ. */
const readTwice = (second: Partial<typeof SIZES> = {}): Json => ({
  measured: Object.entries({ ...SIZES }).map(([size, value]) => ({
    quantity: `braille.${size}`,
    values: [value, { ...SIZES, ...second }[size as keyof typeof SIZES]],
    unit: 'mm',
  })),
})
const reading = (quantity: string, value: number, unit: string) => ({ quantity, values: [value], unit })

export const MET: Record<string, Abroad> = {
  'us-adaag-1991': {
    sign: from({
      'installation.panelBottomHeight': MIDDLE_AT_60_INCHES,
      'installation.nearestApproach': 70,
      measured: [reading('sign.gloss', 15, 'gloss-units'), reading('sign.illuminance', 200, 'lx')],
    }),
    open: ['dot-base-diameter', 'dot-spacing', 'cell-spacing', 'line-spacing'].map((row) => `A4.30.4/${row}`),
    fails: [
      { row: '4.30.4/relief', values: { [letters('relief')]: 0.7 } },
      { row: '4.30.4/style', values: { [letters('typeface.style')]: 'script' } },
      { row: '4.30.5/finish', values: { 'panel.finish': 'glossy' } },
      { row: '4.30.6/reach', values: { 'installation.nearestApproach': 80 } },
      { row: 'A4.30.5/gloss', values: { measured: [reading('sign.gloss', 20, 'gloss-units')] } },
    ],
  },
  'us-a117.1-2003': {
    sign: PUMP_ROOM,
    open: [],
    fails: [
      { row: '703.3.7.2/stroke-thickness-min', values: { [letters('strokeThickness')]: 1.9 } },
      { row: '703.4.5/braille-lowest-baseline', values: { 'installation.panelBottomHeight': 1170 } },
      { row: '703.4.1/contracted', values: { ...saidUncontracted() } },
    ],
  },
  'us-ca-2019': {
    sign: from({ [braille('dotSpacing')]: 2.54, [braille('cellSpacing')]: 7.62, ...below(11) }),
    open: ['11B.703.2/unread-clause', '11B.703.4/unread-clause'],
    fails: [
      { row: '11B.703.3.1/cell-spacing', values: { [braille('cellSpacing')]: 7.64 } },
      { row: '11B.703.3.2/character-clearance', values: below(13) },
      {
        row: '11B.703.3.2/alignment',
        values: { [braille('origin')]: undefined, [braille('alignment')]: 'flush-right' },
      },
      { row: '11B.703.2.4/proportion', values: { [letters('characterProportion')]: 0.58 } },
    ],
  },
  'au-ncc-2022': {
    sign: from({
      'panel.edge': 'rounded',
      'installation.wallColour': '#333333',
      'installation.door.edgeToArchitrave': 100,
      [letters('wordSpacing')]: 14,
      [letters('alignment')]: 'flush-left',
      [braille('code')]: 'ueb-uncontracted',
      [braille('lines')]: ['PUMP ROOM', '12'],
      ...below(8),
    }),
    open: ['S15C6/locator'],
    fails: [
      { row: 'S15C6/capitals-kept', values: { [braille('lines')]: ['pump room', '12'] } },
      { row: 'S15C3/word-spacing', values: { [letters('wordSpacing')]: 9 } },
      { row: 'S15C4.a/contrast', values: { 'installation.wallColour': '#dddddd' } },
      { row: 'S15C2.a/lowest-tactile', values: { 'installation.panelBottomHeight': 1100 } },
    ],
  },
  'au-aba': {
    sign: from({ [braille('dotHeight')]: SIZES.dotHeight, ...readTwice() }),
    open: [],
    fails: [
      { row: 'introduction/variation', values: readTwice({ cellSpacing: 6.7 }) },
      { row: 'distances/cell-spacing', values: readTwice({ cellSpacing: 7.1 }) },
    ],
  },
  'kr-2020': {
    sign: PUMP_ROOM,
    open: ['regulations/national-code'],
    fails: [
      { row: '7/cell-spacing', values: { [braille('cellSpacing')]: 7.1 } },
      { row: '7/cell-spacing-pvc', values: { [braille('cellSpacing')]: 7.4, [braille('carrier')]: 'pvc' } },
    ],
  },
  'marburg-medium': {
    sign: from({
      [braille('dotBaseDiameter')]: 1.6,
      [braille('dotSpacing')]: 2.5,
      [braille('cellSpacing')]: 6,
      [braille('lineSpacing')]: 10,
    }),
    open: [],
    fails: [{ row: 'table/line-spacing', values: { [braille('lineSpacing')]: 10.1 } }],
  },
}

/** A word whose contractions are written out. */
function saidUncontracted(): Json {
  return {
    [letters('text')]: 'HEATING',
    [letters('lines')]: ['HEATING'],
    [braille('lines')]: ['heating'],
    [braille('code')]: 'ueb-uncontracted',
  }
}
