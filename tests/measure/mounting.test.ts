import { describe, expect, test } from 'vitest'
import { missing } from '../../src/sign/sign.js'
import { drawnSign, rectangle } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

/**
 * The pump room: panel 150 mm high with its lower edge at 1300 mm; baselines at y = 40 and 70, characters 20 mm high; braille from
 * y = 95, dots 1.55 mm wide and 2.4 mm apart, lines 10.1 mm apart. Heights worked by hand: 1300 + 150 - y.
 */
const BASES = { lowest: 1450 - 95 - 10.1 - 2 * 2.4, highest: 1450 - 95 - 2 * 2.4 }
const at = (values: Record<string, unknown> = {}) => signOf(PUMP_ROOM, values)
const value = (quantity: string, values: Record<string, unknown> = {}) =>
  Number(valuesOf(at(values), `installation.${quantity}`)[0])

describe('heights above the floor, each by its own datum', () => {
  test.each([
    ['lowestBaseline', BASES.lowest],
    ['highestBaseline', 1450 - 40],
    ['raisedLowestBaseline', 1450 - 70],
    ['brailleBaselineLowest', BASES.lowest],
    ['brailleBaselineHighest', BASES.highest],
    ['lowestTactile', BASES.lowest - 1.55 / 2],
    ['highestTactile', 1450 - 20],
    ['brailleHighest', 1450 - 95 + 1.55 / 2],
    ['topHeight', 1450 - 20],
    ['centreHeight', 1300 + 75],
  ])('%s', (quantity, expected) => expect(value(quantity)).toBeCloseTo(expected, 9))

  test('move with the panel and ask for its place', () => {
    expect(value('centreHeight', { 'installation.panelBottomHeight': 1000 })).toBe(1075)
    for (const quantity of ['centreHeight', 'lowestTactile', 'tactileLine', 'topHeight', 'brailleHighest']) {
      const sign = at({ 'installation.panelBottomHeight': undefined })
      const gaps = measured(sign, `installation.${quantity}`).gaps
      expect(gaps.map(({ ask }) => ask?.pointer)).toContain('/sign/installation/panelBottomHeight')
    }
  })

  test('the middle of a panel of unknown height is open', () => {
    expect(reasonsOf(at({ 'panel.height': undefined }), 'installation.centreHeight')).toEqual(['missing-fact'])
  })
})

describe('the line of raised characters', () => {
  // NCC 2022, S15C2(b), as reported: the one line of characters between 1250 and 1350 mm; both its ends are judged
  test('runs from the baseline to the top', () => {
    const [line] = measured(at({ 'lettering.0.lines': ['PUMPS'], 'lettering.0.text': 'PUMPS' }), QUANTITY).observations
    expect(line).toMatchObject({ min: 1410, max: 1430, value: 1420 })
  })

  test('of several lines, from the lowest baseline to the highest top', () => {
    expect(measured(at(), QUANTITY).observations[0]).toMatchObject({ min: 1380, max: 1430 })
  })

  test('is open without the height of the characters', () => {
    expect(reasonsOf(at({ 'lettering.0.characterHeight': undefined }), QUANTITY)).toContain('missing-fact')
    expect(measured(at({ lettering: [] }), QUANTITY).nothing).toContain('no raised characters')
  })

  const QUANTITY = 'installation.tactileLine'
})

describe('edges that only outlines tell', () => {
  test('a letter that hangs below its baseline leaves the lowest edge open where characters are lowest', () => {
    const alone = { braille: [], 'lettering.0.text': 'QUAY', 'lettering.0.lines': ['QUAY'] }
    expect(reasonsOf(at(alone), 'installation.lowestTactile')).toEqual(['missing-fact'])
    const level = { ...alone, 'lettering.0.text': 'PUMP', 'lettering.0.lines': ['PUMP'] }
    expect(reasonsOf(at(level), 'installation.lowestTactile')).toEqual([])
    expect(valuesOf(at(level), 'installation.lowestTactile')).toEqual([1410])
  })

  test('and does not where the braille is lower than it may hang', () => {
    const quay = { 'lettering.0.text': 'QUAY', 'lettering.0.lines': ['QUAY'] }
    expect(reasonsOf(at(quay), 'installation.lowestTactile')).toEqual([])
    // Baseline at y = 40, so the 20 mm high characters hang to y = 60 at most
    const beside = { ...quay, 'braille.0.lines': ['quay'], 'braille.0.origin': { x: 150, y: 50 } }
    expect(reasonsOf(at(beside), 'installation.lowestTactile')).toEqual(['missing-fact'])
  })

  test('a mark above a capital leaves the highest edge open', () => {
    const accented = { 'lettering.0.text': 'CAFÉ', 'lettering.0.lines': ['CAFÉ'] }
    expect(reasonsOf(at(accented), 'installation.highestTactile')).toEqual(['missing-fact'])
  })

  test('drawn outlines tell', () => {
    const sign = drawnSign()
    const [set] = sign.lettering
    const tall = { ...set.lines[0], outlines: [rectangle(20, 10, 10, 35)] }
    const lettering = [{ ...set, lines: [tall, ...set.lines.slice(1)] }]
    expect(valuesOf({ ...sign, lettering }, 'installation.highestTactile')).toEqual([1450 - 10])
    const alone = { ...sign, braille: [], lettering: [{ ...set, lines: [tall] }] }
    expect(valuesOf(alone, 'installation.lowestTactile')).toEqual([1450 - 45])
  })
})

describe('what stands on the sign', () => {
  test('a pictogram may be the top of it', () => {
    const pictograms = [{ meaning: 'pump', field: { x: 10, y: 5, width: 10, height: 10 } }]
    expect(value('topHeight', { pictograms })).toBe(1445)
    expect(reasonsOf(at({ pictograms: [{ meaning: 'pump' }] }), 'installation.topHeight')).toEqual(['missing-fact'])
  })

  test('braille whose place is not known leaves the edges open', () => {
    const unplaced = at({ 'braille.0.origin': undefined })
    expect(reasonsOf(unplaced, 'installation.brailleHighest')).toContain('missing-fact')
    expect(reasonsOf(unplaced, 'installation.lowestTactile')).toContain('missing-fact')
    expect(measured(at({ braille: [] }), 'installation.brailleHighest').nothing).toContain('no braille')
  })

  test('dots of unknown width have no known edge', () => {
    expect(reasonsOf(at({ 'braille.0.dotBaseDiameter': undefined }), 'installation.brailleHighest')).toEqual([
      'missing-fact',
    ])
  })

  test('a sign drawn without a panel has no lower edge to count from', () => {
    const sign = drawnSign()
    const panel = { ...sign.panel, place: { element: 'panel' }, height: missing('no panel is drawn') }
    expect(reasonsOf({ ...sign, panel }, 'installation.highestTactile')).toContain('missing-fact')
  })
})
