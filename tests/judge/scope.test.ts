import { describe, expect, test } from 'vitest'
import { conditionMet } from '../../src/judge/scope.js'
import { USES, type Use } from '../../src/sign/sign.js'
import { PUMP_ROOM, signOf, TWO_SETS, withValues } from '../measure/signs.js'
import { failing, judgementOf, judgementsOf } from './verdicts.js'

const used = (use: Use) => signOf(PUMP_ROOM, { use })
const inForce = (use: Use) =>
  [...judgementsOf(used(use))].filter(([, j]) => j.verdict !== 'not-applicable').map(([row]) => row)

describe('which rows are in force for a use', () => {
  test.each(USES)('a conforming sign used as %s fails no row that asks nothing but what it has', (use) => {
    // An elevator entrance asks for characters of 2 inches, which this sign does not have (407.2.3.1).
    const expected = use === 'elevator-landing' ? ['407.2.3.1/character-height'] : []
    expect(failing(used(use))).toEqual(expected)
  })

  // 216.1 Exceptions 1 and 3 of the 2010 ADA Standards
  test.each(['directory', 'occupant-name', 'temporary'] as const)('nothing for %s', (use) =>
    expect(inForce(use)).toEqual([]),
  )

  // 216.3: directional and informational signs comply with 703.5 alone
  test.each(['directional', 'informational'] as const)('only the rows on sight for %s', (use) => {
    expect(inForce(use).every((row) => row.startsWith('703.5') || row.startsWith('307'))).toBe(true)
    expect(inForce(use)).toContain('703.5.1/contrast')
  })

  test('a gift is held against geometry and wording, not against scoping, finish or mounting', () => {
    const rows = inForce('gift')
    expect(rows).toEqual(expect.arrayContaining(['703.3.1/cell-spacing', '703.2/wording', '703.2.5/character-height']))
    expect(rows.filter((row) => /^(216|407|703\.1\/|703\.4|703\.5\.1|703\.6|703\.7|810|307)/u.test(row))).toEqual([])
    expect(judgementOf(used('gift'), '703.4.1/lowest-baseline').because).toContain('no code asks')
  })
})

describe('one set of characters or two', () => {
  test('characters for both are free of 703.5.2 to 703.5.9, whether or not their 703.2 rows pass', () => {
    for (const sign of [signOf(PUMP_ROOM), signOf(PUMP_ROOM, { 'lettering.0.relief': 0.1 })])
      for (const [row, { verdict }] of judgementsOf(sign))
        if (/^703\.5\.[2-9]/u.test(row)) expect(`${row} ${verdict}`).toBe(`${row} not-applicable`)
  })

  test('two conforming sets pass, each by its own rows', () => {
    const sign = signOf(TWO_SETS)
    expect(failing(sign)).toEqual([])
    for (const row of ['703.2.3/style', '703.5.3/style', '703.5.8/character-spacing'])
      expect(judgementOf(sign, row).verdict).toBe('pass')
  })

  test('a raised set beside one for sight needs no contrast of its own', () => {
    const sign = signOf(TWO_SETS, { 'lettering.1.colour': '#ffffff' })
    expect(judgementOf(sign, '703.5.1/contrast').verdict).toBe('pass')
  })

  // 703.2.5 Exception: 1/2 inch where the same text is given separately for sight
  test('a raised set may be 1/2 inch high only beside the same words for sight', () => {
    const small = withValues(TWO_SETS, {
      'lettering.1.characterHeight': 13,
      'lettering.1.strokeThickness': 1.7,
      'lettering.1.baselineSpacing': 20,
    })
    expect(judgementOf(signOf(small), '703.2.5/character-height')).toMatchObject({
      verdict: 'pass',
      limit: { min: 12.7 },
    })
    const others = withValues(small, { 'lettering.0.text': 'Office', 'lettering.0.lines': ['Office'] })
    expect(judgementOf(signOf(others), '703.2.5/character-height').verdict).toBe('undetermined')
    expect(judgementOf(signOf(small, { 'lettering.1.characterHeight': 12 }), '703.2.5/character-height').verdict).toBe(
      'fail',
    )
  })

  // 703.2.5: 5/8 inch; the Exception is for characters whose text is given separately for sight
  test('a set for both is 5/8 inch high at least, whatever other characters have their text apart', () => {
    const [set] = PUMP_ROOM.lettering as Record<string, unknown>[]
    const line = (part: string, text: string, more: Record<string, unknown>) => ({
      ...set,
      part,
      text,
      lines: undefined,
      baselineSpacing: undefined,
      ...more,
    })
    const height = (raised: number, both: number, more: Record<string, unknown> = {}) =>
      judgementOf(
        signOf(PUMP_ROOM, {
          lettering: [
            line('raised', 'PUMP', { characterHeight: raised, strokeThickness: 1.6 }),
            line('visual', 'Pump', { baseline: { x: 120, y: 40 } }),
            line('both', 'ROOM', { characterHeight: both, strokeThickness: 1.6, baseline: { x: 20, y: 70 } }),
          ],
          ...more,
        }),
        '703.2.5/character-height',
      )
    expect(height(14, 14)).toMatchObject({ verdict: 'fail', limit: { min: 0.625 * 25.4 } })
    expect(height(14, 20).verdict).toBe('pass')
    expect(height(12, 20)).toMatchObject({ verdict: 'fail', limit: { min: 12.7 } })
    const measured = { measured: [{ quantity: 'raised.characterHeight', values: [14] }] }
    expect(height(14, 20, measured)).toMatchObject({ verdict: 'undetermined', reason: 'needs-judgement' })
  })

  test('raised characters alone are judged for sight too; described so, a fault is left open', () => {
    const alone = signOf(PUMP_ROOM, { 'lettering.0.part': 'raised', 'lettering.0.colour': '#dddddd' })
    expect(judgementOf(alone, '703.5.1/contrast')).toMatchObject({ verdict: 'undetermined', reason: 'needs-judgement' })
    const drawn = { ...alone, lettering: alone.lettering.map((l) => ({ ...l, place: { element: l.place.element } })) }
    expect(judgementOf(drawn, '703.5.1/contrast').verdict).toBe('fail')
  })
})

describe('conditions', () => {
  const met = (condition: Parameters<typeof conditionMet>[0], values: Record<string, unknown> = {}) =>
    conditionMet(condition, signOf(PUMP_ROOM, values)).met

  test('a door: none beside an open doorway, open at a station of which nothing is said', () => {
    expect(met('at-a-door')).toBe(true)
    expect(met('at-a-door', { 'installation.door.swing': 'none' })).toBe(false)
    expect(met('at-a-door', { installation: undefined })).toBe(true)
    expect(met('at-a-door', { installation: undefined, use: 'transit-station' })).toBe('open')
  })

  test('a pictogram that informs does not name the room', () => {
    const pictogram = (meaning: string) => ({ pictograms: [{ meaning }] })
    expect(met('pictogram-designates-room', pictogram('restroom'))).toBe(true)
    expect(met('pictogram-designates-room', pictogram('no-smoking'))).toBe(false)
    expect(met('pictogram-designates-room', pictogram('wheelchair'))).toBe(false)
  })

  // 703.3.2 Exception and 703.4.1 Exception
  test('car controls: 3/16 inch, beside the characters, at any height', () => {
    const control = { use: 'elevator-car-control', 'braille.0.origin': { x: 20, y: 70 + 4.8 + 0.775 } }
    const sign = signOf(PUMP_ROOM, { ...control, 'installation.panelBottomHeight': 500 })
    expect(judgementOf(sign, '703.3.2/character-clearance')).toMatchObject({
      verdict: 'pass',
      limit: { min: 0.1875 * 25.4 },
    })
    expect(judgementOf(sign, '703.4.1/lowest-baseline')).toMatchObject({ verdict: 'not-applicable' })
    const beside = signOf(PUMP_ROOM, { use: 'elevator-car-control', 'braille.0.origin': { x: 5, y: 50 } })
    expect(judgementOf(beside, '703.3.2/below-text').verdict).toBe('pass')
    expect(judgementOf({ ...beside, use: 'permanent-room' }, '703.3.2/below-text').verdict).toBe('fail')
  })
})
