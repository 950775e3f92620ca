import type { Requirement } from '../../src/standards/standard.js'
import { contrastSettingFor } from './contrast-settings.js'

/** What a description says when a quantity has a certain value. Sizes beside the value are invented and lie inside every limit. */

type Json = Record<string, unknown>

export interface Setting {
  /** What the sign needs beside, for the quantity to be there. */
  base?: Json
  /** @param end which end of the limit the value is at: a line has two edges */
  set: (value: number, end: 'min' | 'max') => Json
  /** Quantities that hang on the same values, whose rows may flip too. */
  couples?: string[]
  /** Inside its limit the row stays open, since a description does not tell enough. */
  isOpenInside?: true
  /** How far from the end the cases are; by default 0.01 for lengths, 0.001 for ratios, 1 for figures in units of their own. */
  step?: number
}

/** The sign of the tests: characters of this height and stroke; two lines with their baselines; two lines of braille below. */
const HEIGHT = 20
const STROKE = 2.6
const PANEL_HEIGHT = 150
const BASELINES = { first: 40, last: 70 }
const TEXT_LEFT = 20
const DOT_RADIUS = 1.55 / 2
const BRAILLE_TOP = 95
/** Line spacing and twice the dot spacing: from the first row of dots to the last. */
const TWO_LINES = 10.1 + 2 * 2.4
const ONE_CELL = 2 * 2.4

export const letters = (n: number, key: string) => `lettering.${n}.${key}`
const braille = (key: string) => (value: number) => ({ [`braille.0.${key}`]: value })
const own = (n: number, key: string) => (value: number) => ({ [letters(n, key)]: value })
const share = (n: number, key: string, of: number) => (value: number) => ({ [letters(n, key)]: value * of })

/** Characters of another height with stroke, gaps, lines and braille that keep their shares and distances. */
const scaled = (height: number): Json => ({
  [letters(0, 'characterHeight')]: height,
  [letters(0, 'strokeThickness')]: 0.13 * height,
  [letters(0, 'baselineSpacing')]: 1.5 * height,
  [letters(0, 'baseline')]: { x: TEXT_LEFT, y: 60 },
  'braille.0.origin': { x: TEXT_LEFT, y: 60 + 1.5 * height + 20 },
  panel: { width: 600, height: 220, finish: 'matte', colour: '#ffffff' },
})

const FRAME_WIDTH = 2
const frame = (box: Json): Json => ({ borders: [{ box, width: FRAME_WIDTH, raised: true }] })
const frameBelow = (clear: number): Json =>
  frame({ x: -100, y: -100, width: 600, height: 100 + BRAILLE_TOP + TWO_LINES + DOT_RADIUS + clear + FRAME_WIDTH })
const frameLeft = (clear: number): Json =>
  frame({ x: TEXT_LEFT - clear - FRAME_WIDTH, y: -100, width: 600, height: 600 })

const FIELD = { x: 10, y: 10, width: 160, height: 160 }
/** Room above the text for a pictogram. */
export const WITH_PICTOGRAM: Json = {
  panel: { width: 260, height: 400, finish: 'matte', colour: '#ffffff' },
  pictograms: [{ meaning: 'pump', field: FIELD, colour: '#000000', fieldColour: '#ffffff' }],
  [letters(0, 'baseline')]: { x: TEXT_LEFT, y: 220 },
  'braille.0.origin': { x: TEXT_LEFT, y: 280 },
}
const SYMBOL: Json = {
  ...WITH_PICTOGRAM,
  pictograms: [{ meaning: 'wheelchair', field: FIELD, colour: '#000000', fieldColour: '#ffffff' }],
}
const field = (sides: Json) => ({ 'pictograms.0.field': { ...FIELD, ...sides } })

/** How far above the panel's lower edge the point lies whose height a row is about. */
const ABOVE_PANEL: Record<string, (end: 'min' | 'max') => number> = {
  'installation.lowestBaseline': () => PANEL_HEIGHT - (BRAILLE_TOP + TWO_LINES),
  'installation.highestBaseline': () => PANEL_HEIGHT - BASELINES.first,
  'installation.raisedLowestBaseline': () => PANEL_HEIGHT - BASELINES.last,
  'installation.brailleBaselineLowest': () => PANEL_HEIGHT - (BRAILLE_TOP + TWO_LINES),
  'installation.brailleBaselineHighest': () => PANEL_HEIGHT - (BRAILLE_TOP + ONE_CELL),
  'installation.brailleHighest': () => PANEL_HEIGHT - (BRAILLE_TOP - DOT_RADIUS),
  'installation.lowestTactile': () => PANEL_HEIGHT - (BRAILLE_TOP + TWO_LINES + DOT_RADIUS),
  'installation.highestTactile': () => PANEL_HEIGHT - (BASELINES.first - HEIGHT),
  'installation.topHeight': () => PANEL_HEIGHT - (BASELINES.first - HEIGHT),
  // one line: its baseline is the lower edge, its top the upper one
  'installation.tactileLine': (end) => PANEL_HEIGHT - (end === 'min' ? BASELINES.first : BASELINES.first - HEIGHT),
  'installation.centreHeight': () => PANEL_HEIGHT / 2,
  'installation.headroom': () => 0,
  'visual.heightAboveFloor': () => PANEL_HEIGHT - BASELINES.last,
}

function height(name: string): Setting | undefined {
  const above = ABOVE_PANEL[name]
  return above && { set: (value, end) => ({ 'installation.panelBottomHeight': value - above(end) }) }
}

const SYMBOL_SIZES = {
  meaning: 'toilet',
  shape: 'triangle-in-circle',
  triangleEdge: 200,
  circleDiameter: 304.8,
  thickness: 6.35,
}
const symbolOf = (shape: string): Json => ({ pictograms: [{ ...SYMBOL_SIZES, shape }] })

/** Settings that are the same for every row. */
const SETTINGS: Record<string, Setting> = {
  'braille.dotBaseDiameter': { set: braille('dotBaseDiameter'), couples: ['braille.domeRadius'] },
  'braille.dotHeight': { set: braille('dotHeight'), couples: ['braille.domeRadius'] },
  'braille.dotSpacing': { set: braille('dotSpacing') },
  'braille.cellSpacing': { set: braille('cellSpacing') },
  'braille.lineSpacing': { set: braille('lineSpacing') },
  // a spherical cap 0.75 mm high: r = (d²/4 + h²) / 2h
  'braille.domeRadius': {
    set: (r) => ({ 'braille.0.dotHeight': 0.75, 'braille.0.dotBaseDiameter': 2 * Math.sqrt(2 * r * 0.75 - 0.75 ** 2) }),
    couples: ['braille.dotBaseDiameter'],
    step: 0.001,
  },
  // every size was read twice; the readings of one differ by the share from their mean
  'braille.variation': {
    set: (share) => ({
      measured: [
        { quantity: 'braille.dotSpacing', values: [2.4 * (1 - share), 2.4 * (1 + share)], unit: 'mm' },
        ...Object.entries({ dotBaseDiameter: 1.55, dotHeight: 0.75, cellSpacing: 6.9, lineSpacing: 10.1 }).map(
          ([size, value]) => ({ quantity: `braille.${size}`, values: [value, value], unit: 'mm' }),
        ),
      ],
    }),
  },
  'braille.characterClearance': {
    set: (clear) => ({ 'braille.0.origin': { x: TEXT_LEFT, y: BASELINES.last + clear + DOT_RADIUS } }),
    couples: ['braille.textGap'],
  },
  'braille.textGap': {
    set: (gap) => ({ 'braille.0.origin': { x: TEXT_LEFT, y: BASELINES.last + gap + DOT_RADIUS } }),
    couples: ['braille.characterClearance'],
  },
  'braille.borderClearance': { base: frameBelow(15), set: frameBelow },
  'braille.leftOffset': { set: (offset) => ({ 'braille.0.origin': { x: offset + DOT_RADIUS, y: BRAILLE_TOP } }) },
  'braille.bottomOffset': {
    set: (offset) => ({
      'braille.0.origin': { x: TEXT_LEFT, y: PANEL_HEIGHT - offset - DOT_RADIUS - TWO_LINES },
    }),
  },
  // a description gives the left end only: inside the limit the right end leaves the row open; the braille starts at the same place
  'raised.borderClearance': {
    base: frameLeft(15),
    set: frameLeft,
    couples: ['braille.borderClearance'],
    isOpenInside: true,
  },
  'pictogram.fieldHeight': { base: WITH_PICTOGRAM, set: (side) => field({ height: side }) },
  'pictogram.fieldWidth': { base: WITH_PICTOGRAM, set: (side) => field({ width: side }) },
  'sign.pictogramUnderstood': { base: { pictograms: SYMBOL.pictograms }, set: () => ({}) },
  'sign.symbolColours': { base: { pictograms: SYMBOL.pictograms }, set: () => ({}) },
  'symbol.shape': { base: { pictograms: SYMBOL.pictograms }, set: () => ({}) },
  'symbol.triangleEdge': { base: symbolOf('triangle'), set: (edge) => ({ 'pictograms.0.triangleEdge': edge }) },
  'symbol.circleDiameter': {
    base: symbolOf('triangle-in-circle'),
    set: (diameter) => ({ 'pictograms.0.circleDiameter': diameter }),
  },
  'symbol.thickness': { base: symbolOf('circle'), set: (thickness) => ({ 'pictograms.0.thickness': thickness }) },
  'border.width': {
    base: { borders: [{ box: { x: 1, y: 1, width: 258, height: 148 }, width: 6, raised: false }] },
    set: (width) => ({ 'borders.0.width': width }),
  },
  'sign.width': { set: (width) => ({ 'panel.width': width }) },
  'installation.floorSpace': { set: (side) => ({ 'installation.door.latchToTextCentre': side / 2 }) },
  'installation.architraveDistance': { set: (distance) => ({ 'installation.door.edgeToArchitrave': distance }) },
  'installation.jambDistance': { set: (distance) => ({ 'installation.door.edgeToJamb': distance }) },
  'installation.clearWall': { set: (distance) => ({ 'installation.clearWall': distance }) },
  'installation.reach': { set: (distance) => ({ 'installation.nearestApproach': distance }) },
}

/** Settings of characters, by what follows the family's name. */
const characters = (n: number): Record<string, Setting> => ({
  characterHeight: { set: n === 0 ? scaled : own(n, 'characterHeight') },
  proportion: { set: own(n, 'characterProportion') },
  relief: { set: own(n, 'relief') },
  strokeThickness: {
    set: share(n, 'strokeThickness', HEIGHT),
    couples: ['raised.strokeWidth', 'raised.characterSpacingInStrokes'],
  },
  strokeWidth: {
    set: own(n, 'strokeThickness'),
    couples: ['raised.strokeThickness', 'raised.characterSpacingInStrokes'],
  },
  strokeAtBase: { set: share(n, 'strokeThicknessAtBase', HEIGHT) },
  characterSpacingInStrokes: { set: share(n, 'characterSpacing', STROKE), couples: ['raised.characterSpacing'] },
  characterSpacingAtBase: { set: own(n, 'characterSpacingAtBase') },
  lineSpacing: { set: share(n, 'baselineSpacing', HEIGHT) },
  wordSpacing: { set: own(n, 'wordSpacing') },
})

const SPACING: Record<string, (n: number) => Setting> = {
  'raised.characterSpacing': (n) => ({
    set: own(n, 'characterSpacing'),
    couples: ['raised.characterSpacingInStrokes'],
  }),
  'visual.characterSpacing': (n) => ({ set: share(n, 'characterSpacing', HEIGHT) }),
}

/** A reading of an instrument, for what no field of a description gives. */
const reading = ({ quantity, limit }: Requirement): Setting => ({
  set: (value) => ({
    measured: [
      {
        quantity,
        values: [value],
        unit: limit.kind === 'ratio' ? 'ratio' : limit.kind === 'number' ? limit.unit : 'mm',
      },
    ],
  }),
})

/** @param n number of the lettering that the row looks at */
export function settingFor(row: Requirement, n: number): Setting {
  const [family = '', rest = ''] = row.quantity.split('.')
  const ofCharacters = ['raised', 'visual'].includes(family) ? characters(n)[rest] : undefined
  return (
    SETTINGS[row.quantity] ??
    contrastSettingFor(row.quantity, n, { pictogram: WITH_PICTOGRAM, symbol: SYMBOL }) ??
    height(row.quantity) ??
    SPACING[row.quantity]?.(n) ??
    ofCharacters ??
    reading(row)
  )
}
