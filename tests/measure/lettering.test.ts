import { describe, expect, test } from 'vitest'
import { PUMP_ROOM, signOf, TWO_SETS } from './signs.js'
import { measured } from './values.js'

/**
 * What is measured of characters (2010 ADA Standards 703.2 and 703.5), and what is said where there is nothing to measure. Sizes are invented.
 */

type Json = Record<string, unknown>
const [SET] = PUMP_ROOM.lettering as Json[]
const SIGHT = { parts: ['visual' as const] }
const one = (text: string, more: Json = {}): Json => ({
  'lettering.0.text': text,
  'lettering.0.lines': [text],
  'lettering.0.baselineSpacing': undefined,
  ...more,
})
const of = (quantity: string, values: Json = {}, scope?: Parameters<typeof measured>[2]) =>
  measured(signOf(PUMP_ROOM, values), quantity, scope)

describe('where no characters are of a kind', () => {
  test('those that serve both need no row of their own for sight', () => {
    expect(of('visual.style', {}, SIGHT).nothing).toContain('serve touch and sight')
    expect(of('visual.style', { lettering: [] }, SIGHT).nothing).toBe('The sign has no characters of this kind.')
    const raised = signOf(TWO_SETS, { lettering: [(TWO_SETS.lettering as Json[])[0]] })
    expect(measured(raised, 'raised.style').nothing).toBe('The sign has no characters of this kind.')
  })

  // 703.2.7 has figures of its own for characters whose sides are not straight
  test('of a section is said, or that no section is given', () => {
    const round = { parts: ['raised' as const, 'both' as const], sections: ['rounded' as const] }
    expect(of('raised.characterSpacingAtBase', {}, round).nothing).toBe(
      'No characters have a section that this asks about.',
    )
    const unsaid = { 'lettering.0.section': undefined }
    expect(of('raised.characterSpacingAtBase', unsaid, round).nothing).toContain(
      'The section of the characters is not given',
    )
    const half = { lettering: [SET, { ...SET, section: undefined }] }
    expect(of('raised.characterSpacingAtBase', half, round).nothing).toContain('is not given')
    expect(of('raised.characterSpacingAtBase', { lettering: [] }, round).nothing).toContain('no characters')
  })
})

describe('the gap between characters', () => {
  test.each(['raised.characterSpacing', 'raised.characterSpacingAtBase', 'raised.characterSpacingInStrokes'])(
    '%s is none where no word has two of them, and one where some word has',
    (quantity) => {
      const at = (text: string) => of(quantity, one(text, { 'lettering.0.characterSpacingAtBase': 3 }))
      expect(at('A B').nothing).toBe('No word has two characters.')
      expect(at('A BC').observations).toHaveLength(1)
      expect(at('AB  C').observations).toHaveLength(1)
    },
  )

  test('nothing else hangs on it', () => {
    expect(of('raised.characterHeight', one('A')).observations).toHaveLength(1)
    expect(of('raised.strokeThickness', one('A')).observations).toHaveLength(1)
  })
})

describe('shares', () => {
  test('of lines are asked only where there are several', () => {
    expect(of('raised.lineSpacing', one('PUMPS')).nothing).toBe('The text has one line.')
    expect(of('raised.lineSpacing', one('PUMPS', { 'lettering.0.baselineSpacing': 30 })).nothing).toBe(
      'The text has one line.',
    )
    expect(of('raised.strokeThickness', one('PUMPS')).observations).toHaveLength(1)
    expect(of('raised.lineSpacing').observations).toMatchObject([{ value: 1.5, lettering: 0 }])
  })

  test('of characters with straight sides are as wide at the foot as at the face', () => {
    expect(of('raised.strokeAtBase').observations).toMatchObject([{ value: 2.6 / 20 }])
    expect(of('raised.strokeAtBase', { 'lettering.0.strokeThicknessAtBase': 3 }).observations[0]?.value).toBe(3 / 20)
    const round = { 'lettering.0.section': 'rounded' }
    expect(of('raised.strokeAtBase', round).gaps).toMatchObject([
      { ask: { pointer: '/sign/lettering/0/strokeThicknessAtBase', unit: 'mm' } },
    ])
  })

  test('ask for both lengths where neither is known', () => {
    const { gaps } = of('raised.strokeThickness', {
      'lettering.0.strokeThickness': undefined,
      'lettering.0.characterHeight': undefined,
    })
    expect(gaps.map(({ ask }) => ask?.pointer)).toEqual([
      '/sign/lettering/0/strokeThickness',
      '/sign/lettering/0/characterHeight',
    ])
  })
})

test('a typeface is asked for where the description holds it', () => {
  expect(of('raised.style', { 'lettering.0.typeface': undefined }).gaps).toMatchObject([
    { ask: { pointer: '/sign/lettering/0/typeface/style' } },
  ])
  expect(of('raised.relief', { 'lettering.0.relief': undefined }).gaps).toMatchObject([
    { ask: { pointer: '/sign/lettering/0/relief', unit: 'mm' } },
  ])
})
