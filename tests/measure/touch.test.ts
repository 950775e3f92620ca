import { describe, expect, test } from 'vitest'
import { measurer } from '../../src/measure/measurer.js'
import { PUMP_ROOM, signOf, translator, TWO_SETS } from './signs.js'

/** What a sign offers to touch, and matters without a figure. The signs are invented. */

type Json = Record<string, unknown>

const SIGHT_ONLY = { lettering: [(TWO_SETS.lettering as Json[])[0]] }
const NO_BRAILLE = { braille: [] }
const PICTOGRAM = { pictograms: [{ meaning: 'pump' }] }

function take(quantity: string, values: Json) {
  const { observations, gaps, nothing } = measurer(signOf(PUMP_ROOM, values), translator)(quantity, {})
  return observations[0]?.value ?? gaps[0]?.reason ?? nothing
}

describe('what is read by touch', () => {
  // Regulation (EU) 1300/2014, annex, 2.3: raised pictograms, raised characters or braille
  test.each<[string, Json, unknown]>([
    ['raised characters and braille', {}, true],
    ['raised characters alone', NO_BRAILLE, true],
    ['braille alone', SIGHT_ONLY, true],
    ['characters for sight alone', { ...SIGHT_ONLY, ...NO_BRAILLE }, false],
    ['a pictogram, of which the relief is not told', { ...SIGHT_ONLY, ...NO_BRAILLE, ...PICTOGRAM }, 'needs-judgement'],
  ])('%s', (_, values, expected) => expect(take('sign.readByTouch', values)).toBe(expected))

  // Orden TMA/851/2021, article 44.1: braille and high relief, or another system
  test.each<[string, Json, unknown]>([
    ['both', {}, true],
    ['no braille', NO_BRAILLE, 'needs-judgement'],
    ['nothing raised', SIGHT_ONLY, 'needs-judgement'],
  ])('braille and relief: %s', (_, values, expected) => expect(take('sign.brailleAndRelief', values)).toBe(expected))

  test('braille', () => {
    expect(take('sign.braille', {})).toBe(true)
    expect(take('sign.braille', NO_BRAILLE)).toBe(false)
  })
})

describe('matters without a figure are always a person’s', () => {
  test.each(['sign.pictogramUnderstood', 'sign.symbolColours'])('%s', (quantity) => {
    expect(take(quantity, PICTOGRAM)).toBe('needs-judgement')
    expect(take(quantity, {})).toBe('The sign has no pictogram.')
  })

  test('contrast', () => {
    expect(take('sign.contrastWithoutFigure', {})).toBe('needs-judgement')
    expect(take('sign.contrastWithoutFigure', { ...NO_BRAILLE, lettering: undefined, ...PICTOGRAM })).toBe(
      'needs-judgement',
    )
    expect(take('sign.contrastWithoutFigure', { lettering: undefined })).toContain('no characters')
  })
})

describe('the frame of a symbol', () => {
  const FIELD = { x: 10, y: 10, width: 120, height: 120 }
  const symbol = (more: Json) => ({ use: 'symbol-of-accessibility', pictograms: [{ meaning: 'wheelchair', ...more }] })

  test('has the height of its field, and carries the distance', () => {
    const values = { ...symbol({ field: FIELD }), 'installation.viewingDistance': 20000 }
    const [observation] = measurer(signOf(PUMP_ROOM, values), translator)('symbol.frameHeight', {}).observations
    expect(observation).toMatchObject({ value: FIELD.height, context: { viewingDistance: 20000 } })
  })

  test('is asked for', () => expect(take('symbol.frameHeight', symbol({}))).toBe('missing-fact'))
  test('is one of symbols only', () => {
    expect(take('symbol.frameHeight', PICTOGRAM)).toContain('no symbol')
    expect(take('symbol.frameHeight', { pictograms: [{ meaning: 'wheelchair lift' }] })).toBe('needs-judgement')
  })
})
