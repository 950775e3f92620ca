import { describe, expect, test } from 'vitest'
import { backgroundContrast } from '../../src/measure/contrast/background.js'
import { bowmanSapolinskiContrast } from '../../src/measure/contrast/bowman-sapolinski.js'
import { reflectanceDifference } from '../../src/measure/contrast/difference.js'
import { reflectanceContrast } from '../../src/measure/contrast/lighter.js'
import { michelsonContrast } from '../../src/measure/contrast/michelson.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

const SEEN = { parts: ['visual' as const, 'both' as const] }
const lrv = (value: number) => ({ lrv: value })
const on = (characters: unknown, panel: unknown, more: Record<string, unknown> = {}) =>
  signOf(PUMP_ROOM, { 'lettering.0.colour': characters, 'panel.colour': panel, ...more })

describe('formulas of contrast', () => {
  // Worked by hand from the formulas as printed in their sources (see the files); pairs of light reflectance values.
  test.each([
    [20, 7, { points: 0.13, lighter: 0.65, michelson: 13 / 27, bowman: 0.3125 }],
    [41, 20, { points: 0.21, lighter: 21 / 41, michelson: 21 / 61, bowman: 26.25 / 86 }],
    [75, 11, { points: 0.64, lighter: 64 / 75, michelson: 64 / 86, bowman: 80 / 111 }],
    [85, 5, { points: 0.8, lighter: 80 / 85, michelson: 80 / 90, bowman: 100 / 115 }],
  ])('of %d and %d, whichever is behind', (light, dark, expected) => {
    for (const [a, b] of [
      [light / 100, dark / 100],
      [dark / 100, light / 100],
    ]) {
      expect(reflectanceDifference(a, b)).toBeCloseTo(expected.points, 12)
      expect(reflectanceContrast(a, b)).toBeCloseTo(expected.lighter, 12)
      expect(michelsonContrast(a, b)).toBeCloseTo(expected.michelson, 12)
      expect(bowmanSapolinskiContrast(a, b)).toBeCloseTo(expected.bowman, 12)
    }
  })

  // Published: https://accessarchitects.com.au/calculators/luminance-contrast-calculator (AS 1428.1-2021): beside 20 it takes about 7
  // or about 41 to reach 30 %
  test('Bowman and Sapolinski: beside 20, about 7 or about 41 is enough for 30 %', () => {
    const beside20 = (other: number) => bowmanSapolinskiContrast(0.2, other / 100)
    expect(beside20(7)).toBeGreaterThanOrEqual(0.3)
    expect(beside20(8)).toBeLessThan(0.3)
    expect(beside20(41)).toBeGreaterThanOrEqual(0.3)
    expect(beside20(40)).toBeLessThan(0.3)
  })

  // Method of NS 11001, as reported; the same two paints worked by hand: 21 / 20 and 21 / 41
  test('over the background: light on dark and dark on light differ', () => {
    expect(backgroundContrast(0.41, 0.2)).toBeCloseTo(1.05, 12)
    expect(backgroundContrast(0.2, 0.41)).toBeCloseTo(21 / 41, 12)
    expect(backgroundContrast(0.2, 0)).toBeUndefined()
  })

  test('two black areas have none', () => {
    expect([michelsonContrast(0, 0), reflectanceDifference(0, 0), bowmanSapolinskiContrast(0, 0)]).toEqual([0, 0, 0])
  })
})

describe('contrast on a sign', () => {
  test.each([
    ['Michelson', 13 / 27],
    ['BowmanSapolinski', 0.3125],
    ['Background', 0.65],
    ['Difference', 0.13],
  ])('of characters by %s', (formula, expected) => {
    const [value] = valuesOf(on(lrv(7), lrv(20)), `contrast.charactersBy${formula}`, SEEN)
    expect(value).toBeCloseTo(expected, 12)
  })

  test('characters over the background: the panel is what is behind', () => {
    expect(valuesOf(on(lrv(41), lrv(20)), 'contrast.charactersByBackground', SEEN)[0]).toBeCloseTo(1.05, 12)
  })

  test('on a background that reflects nothing there is no ratio, and none is made up', () => {
    expect(reasonsOf(on(lrv(41), lrv(0)), 'contrast.charactersByBackground', SEEN)).toEqual(['needs-judgement'])
  })

  test('the lighter of two areas, and a colour by its relative luminance', () => {
    expect(valuesOf(on(lrv(7), lrv(20)), 'contrast.lighterReflectance', SEEN)).toEqual([0.2])
    expect(valuesOf(on(lrv(70), lrv(20)), 'contrast.lighterReflectance', SEEN)).toEqual([0.7])
    // WCAG 2.2, relative luminance: white 1, black 0
    expect(valuesOf(on('black', 'white'), 'contrast.charactersByMichelson', SEEN)).toEqual([1])
  })

  test('of a pictogram with its field', () => {
    const pictograms = [{ meaning: 'pump', colour: lrv(20), fieldColour: lrv(7) }]
    const sign = signOf(PUMP_ROOM, { pictograms })
    expect(valuesOf(sign, 'contrast.pictogramByBowmanSapolinski')[0]).toBeCloseTo(0.3125, 12)
    expect(valuesOf(sign, 'contrast.pictogramByLighter')[0]).toBeCloseTo(0.65, 12)
    expect(measured(signOf(PUMP_ROOM), 'contrast.pictogramByMichelson').nothing).toContain('no pictogram')
  })
})

describe('contrast with the wall', () => {
  const wall = (values: Record<string, unknown>) =>
    on('black', lrv(20), { 'installation.wallColour': lrv(7), ...values })
  const QUANTITY = 'contrast.wallByBowmanSapolinski'
  const border = (colour?: unknown) => ({
    borders: [{ box: { x: 0, y: 0, width: 260, height: 150 }, width: 6, raised: false, colour }],
  })

  test('is that of the panel', () => {
    expect(valuesOf(wall({}), QUANTITY)[0]).toBeCloseTo(0.3125, 12)
  })

  test('or of a border that stands out more', () => {
    expect(valuesOf(wall(border(lrv(85))), QUANTITY)[0]).toBeCloseTo((1.25 * 78) / 117, 12)
    expect(valuesOf(wall(border(lrv(8))), QUANTITY)[0]).toBeCloseTo(0.3125, 12)
  })

  test('is at least that of the panel where the border has no known colour', () => {
    const [observation] = measured(wall(border()), QUANTITY).observations
    expect(observation?.value).toBeCloseTo(0.3125, 12)
    expect(observation?.atLeast?.ask?.pointer).toBe('/sign/borders/0/colour')
  })

  test('asks for the wall once', () => {
    const { gaps } = measured(wall({ ...border(), 'installation.wallColour': undefined }), QUANTITY)
    expect(gaps.map(({ ask }) => ask?.pointer).filter((p) => p === '/sign/installation/wallColour')).toHaveLength(1)
  })
})
