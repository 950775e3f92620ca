import { PUMP_ROOM, TWO_SETS, withValues } from '../measure/signs.js'

/**
 * For each table of Europe, Canada, Brazil and Dubai a sign that meets every row that can be decided, and changes that break one. All
 * signs are invented; their sizes lie inside the limits of the table unless a change says otherwise.
 */

type Json = Record<string, unknown>

export interface Abroad {
  sign: Json
  /** Rows that stay open on it: a person's to judge. */
  open: string[]
  /** What breaks a row: values at dotted paths. */
  fails: { row: string; values: Json }[]
}

const from = (values: Json, base: Json = PUMP_ROOM): Json => withValues(base, values)
const letters = (key: string) => `lettering.0.${key}`
const braille = (key: string) => `braille.0.${key}`

/** Half the height of the panel of the pump room below 1500 mm. */
const MIDDLE_AT_1500 = 1500 - 150 / 2

const IN_LOWER_LEFT = { [braille('origin')]: { x: 20, y: 110 } }
const UNCONTRACTED = { [braille('code')]: 'ueb-uncontracted' }
const SIGHT_ONLY = { lettering: [(TWO_SETS.lettering as Json[])[0]], braille: [] }
const SYMBOL = { meaning: 'wheelchair', field: { x: 10, y: 10, width: 120, height: 120 } }
const ON_GREY = { [letters('colour')]: '#888888' }

export const ABROAD: Record<string, Abroad> = {
  'es-tma-851-2021': {
    sign: from({ use: 'informational', ...IN_LOWER_LEFT, 'installation.viewingDistance': 1000 }),
    open: ['41.1.d/contrast-judged', '44.1/national-code'],
    fails: [
      { row: '44.1.a/left-offset', values: { [braille('origin')]: { x: 50, y: 110 } } },
      { row: '44.1.a/bottom-offset', values: { [braille('origin')]: { x: 20, y: 95 } } },
      { row: '41.2.b/character-height', values: { 'installation.viewingDistance': 2000 } },
    ],
  },
  'eu-tsi-prm': {
    sign: from({ use: 'elevator-landing' }),
    open: ['4.2.1.2.3/national-code', '4.2.1.10/contrast-judged'],
    fails: [
      { row: '4.2.1.10/read-by-touch', values: SIGHT_ONLY },
      {
        row: '4.2.1.2.3/lowest-tactile',
        values: { use: 'transit-station', 'installation.panelBottomHeight': 1300 },
      },
      {
        row: '4.2.1.2.3/highest-tactile',
        values: { use: 'transit-station', 'installation.panelBottomHeight': 1600 },
      },
      {
        row: 'N.2/frame-height',
        values: { use: 'symbol-of-accessibility', 'installation.viewingDistance': 30_000, pictograms: [SYMBOL] },
      },
    ],
  },
  'ca-cnib': {
    sign: from({
      ...UNCONTRACTED,
      'installation.panelBottomHeight': MIDDLE_AT_1500,
      'installation.clearWall': 80,
      'installation.door.edgeToJamb': 150,
    }),
    open: [],
    fails: [
      { row: 'panels/jamb-distance', values: { 'installation.door.edgeToJamb': 100 } },
      { row: 'panels/clear-wall', values: { 'installation.clearWall': 70 } },
      { row: 'panels/side', values: { 'installation.side': 'hinge' } },
      { row: 'print/relief', values: { [letters('relief')]: 1.6 } },
      {
        row: 'print/uncontracted',
        values: { [letters('text')]: 'HEATING', [letters('lines')]: ['HEATING'], [braille('lines')]: ['⠓⠂⠞⠬'] },
      },
    ],
  },
  'ca-csa-b651-2004': {
    sign: from(UNCONTRACTED),
    open: [],
    fails: [
      { row: 'tactile/relief', values: { [letters('relief')]: 0.7 } },
      { row: 'tactile/repeated-in-braille', values: { braille: [] } },
      { row: 'characters/stroke-thickness', values: { [letters('strokeThickness')]: 4.2 } },
      { row: 'characters/reflectance-contrast', values: { [letters('colour')]: '#999999' } },
      { row: 'table1/character-height', values: { ...TWO_SETS, 'installation.viewingDistance': 750 } },
    ],
  },
  'no-tek17': {
    sign: from({
      [letters('characterHeight')]: 26,
      [letters('strokeThickness')]: 3.4,
      [letters('baselineSpacing')]: 36,
      'installation.panelBottomHeight': MIDDLE_AT_1500,
      'installation.wallColour': '#444444',
      measured: [{ quantity: 'sign.illuminance', values: [350], unit: 'lx' }],
    }),
    open: ['signs/national-code'],
    fails: [
      { row: '12.18.2/contrast', values: ON_GREY },
      { row: 'wall/contrast', values: { 'installation.wallColour': '#cccccc' } },
      { row: 'signs/relief', values: { [letters('relief')]: 0.8 } },
      { row: 'signs/dot-height', values: { [braille('dotHeight')]: 0.5 } },
      { row: 'signs/alignment', values: { [braille('alignment')]: 'centred' } },
      { row: 'signs/illuminance', values: { measured: [{ quantity: 'sign.illuminance', values: [200], unit: 'lx' }] } },
      { row: 'signs/character-height', values: { [letters('characterHeight')]: 14 } },
    ],
  },
  'de-din-32975': {
    sign: PUMP_ROOM,
    open: [],
    fails: [
      { row: 'signs/contrast', values: { [letters('colour')]: '#777777' } },
      { row: 'signs/lighter-reflectance', values: { 'panel.colour': '#aaaaaa', [letters('colour')]: '#000000' } },
    ],
  },
  'de-din-32976': {
    sign: from({
      [braille('dotBaseDiameter')]: 1.5,
      [braille('dotHeight')]: 0.65,
      [braille('dotSpacing')]: 2.7,
      [braille('cellSpacing')]: 6.6,
      [braille('lineSpacing')]: 10.8,
    }),
    open: ['guideline/national-code'],
    fails: [
      { row: '3.3/dot-height', values: { [braille('dotHeight')]: 0.45 } },
      { row: 'guideline/dot-shape', values: { [braille('dotShape')]: 'flat' } },
    ],
  },
  'ch-vaboev': {
    sign: from({ use: 'informational', 'installation.viewingDistance': 600 }),
    open: ['4.1/contrast-judged', '6.1/national-code'],
    fails: [
      { row: '5.4/character-height', values: { 'installation.viewingDistance': 1000 } },
      { row: 'SN640075.13.5/contrast', values: ON_GREY },
    ],
  },
  'dk-association': {
    sign: from({
      'installation.panelBottomHeight': MIDDLE_AT_1500,
      measured: [{ quantity: 'sign.gloss', values: [20], unit: 'gloss-units' }],
    }),
    open: ['4.3.6/national-code'],
    fails: [
      { row: '4.3.1/relief', values: { [letters('relief')]: 0.7 } },
      { row: '4.3.1/character-height', values: { [letters('characterHeight')]: 51 } },
      { row: '4.3.1/gloss', values: { measured: [{ quantity: 'sign.gloss', values: [60], unit: 'gloss-units' }] } },
      { row: '4.3.6/braille-highest', values: { 'installation.panelBottomHeight': 1600 } },
    ],
  },
  'cz-398-2009': {
    sign: from({
      use: 'elevator-car-control',
      [braille('dotBaseDiameter')]: 1.6,
      [braille('dotHeight')]: 0.5,
      [braille('dotSpacing')]: 2.5,
      [braille('cellSpacing')]: 6,
      'installation.controlSide': 'right',
    }),
    open: ['SONS/national-code'],
    fails: [
      { row: 'SONS/dot-height', values: { [braille('dotHeight')]: 0.6 } },
      { row: 'SONS/cell-spacing', values: { [braille('cellSpacing')]: 6.9 } },
      { row: 'A1.3.2.1/control-side', values: { 'installation.controlSide': 'left' } },
    ],
  },
  'br-nbr-9050-2020': {
    sign: from({}),
    open: ['5.4.1/national-code'],
    fails: [
      { row: '5.4.1/lowest-tactile', values: { 'installation.panelBottomHeight': 1100 } },
      { row: '5.4.1/highest-tactile', values: { 'installation.panelBottomHeight': 1550 } },
      { row: '5.4.1/repeated-in-braille', values: { braille: [] } },
    ],
  },
  'ae-dubai': {
    sign: from(IN_LOWER_LEFT),
    open: ['14.3.11/national-code'],
    fails: [
      { row: '14.3.11/left-offset', values: { [braille('origin')]: { x: 5, y: 110 } } },
      { row: '14.3.11/bottom-offset', values: { [braille('origin')]: { x: 20, y: 95 } } },
    ],
  },
}
