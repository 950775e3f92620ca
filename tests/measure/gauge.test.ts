import { describe, expect, test } from 'vitest'
import { judgementOf } from '../judge/verdicts.js'
import { PUMP_ROOM, signOf } from './signs.js'

/** What a reading of a gauge decides, and what it does not. All sizes are invented; limits are of the 2010 ADA Standards. */

type Json = Record<string, unknown>
const [set] = PUMP_ROOM.lettering as Json[]
const reading = (quantity: string, ...values: number[]) => ({ measured: [{ quantity, values }] })
const verdictOf = (values: Json, row: string) => judgementOf(signOf(PUMP_ROOM, values), row).verdict

describe('a reading of the character height for sight', () => {
  const visual: Json = {
    use: 'directional',
    braille: [],
    'lettering.0.part': 'visual',
    'lettering.0.characterHeight': 90,
    'lettering.0.strokeThickness': 12,
    'lettering.0.characterSpacing': 20,
    'lettering.0.baselineSpacing': 135,
    'installation.viewingDistance': 10000,
  }
  const height = (values: Json) => judgementOf(signOf(PUMP_ROOM, values), '703.5.5/character-height')

  // Table 703.5.5, first row of heights: 5/8 in and 1/8 in for each foot beyond 72 in; worked by hand in millimetres
  test('is held against the viewing distance, like a declared height', () => {
    const needed = (5 / 8 + ((10000 / 25.4 - 72) / 12) * (1 / 8)) * 25.4
    expect(needed).toBeGreaterThan(90)
    for (const more of [{}, reading('visual.characterHeight', 90)]) {
      const judged = height({ ...visual, ...more })
      expect(judged.verdict).toBe('fail')
      expect(judged.limit.min).toBeCloseTo(needed, 9)
    }
  })

  // Table 703.5.5: from 120 in above the floor 3 in, up to a viewing distance of 21 ft
  test('is held against the height above the floor', () => {
    const high = { ...visual, 'installation.panelBottomHeight': 3100, 'installation.viewingDistance': 2000 }
    const judged = height({ ...high, ...reading('visual.characterHeight', 60) })
    expect(judged).toMatchObject({ verdict: 'fail', gaps: [] })
    expect(judged.limit.min).toBeCloseTo(3 * 25.4, 9)
  })

  test('is open where it may be of characters low or high', () => {
    const line = { ...set, part: 'visual', characterHeight: 60, lines: ['PUMP'], text: 'PUMP' }
    const sign = signOf(PUMP_ROOM, {
      use: 'directional',
      braille: [],
      'panel.height': 2000,
      lettering: [
        { ...line, baseline: { x: 20, y: 100 } },
        { ...line, baseline: { x: 20, y: 1900 } },
      ],
      ...reading('visual.characterHeight', 60),
    })
    expect(judgementOf(sign, '703.5.5/character-height').verdict).toBe('undetermined')
  })
})

describe('what follows from a length follows from its reading', () => {
  // 703.2.7: at most four strokes; 12 mm are 4.6 strokes of 2.6 mm
  test('a measured gap in strokes', () => {
    expect(verdictOf(reading('raised.characterSpacing', 10), '703.2.7/character-spacing-max')).toBe('pass')
    expect(verdictOf(reading('raised.characterSpacing', 12), '703.2.7/character-spacing-max')).toBe('fail')
    expect(verdictOf(reading('raised.characterSpacing', 4, 12), '703.2.7/character-spacing-max')).toBe('fail')
  })

  // 703.2.6: at most 15 percent; 2.6 mm of 16 mm are 16.25. 703.2.8: at most 170 percent; 30 mm of 16 mm are 187.5
  test('stroke and line spacing as shares of a measured height', () => {
    const lower = reading('raised.characterHeight', 16)
    const judged = judgementOf(signOf(PUMP_ROOM, lower), '703.2.6/stroke-thickness')
    expect(judged.verdict).toBe('fail')
    expect(judged.margin).toBeCloseTo(0.15 - 2.6 / 16, 12)
    expect(judged.decisive[0]?.basis).toBe('measured')
    expect(verdictOf(lower, '703.2.8/line-spacing')).toBe('fail')
  })

  test('a share is judged on the reading that is worst for it', () => {
    expect(verdictOf(reading('raised.characterHeight', 20, 16), '703.2.6/stroke-thickness')).toBe('fail')
    // 703.2.8: at least 135 percent; 30 mm of 22.5 mm are 133
    expect(verdictOf(reading('raised.characterHeight', 20, 22.5), '703.2.8/line-spacing')).toBe('fail')
  })

  test('a measured stroke, which is a share, counts in the gap in strokes', () => {
    // 4 mm are 5 strokes of 0.04 × 20 mm
    expect(verdictOf(reading('raised.strokeThickness', 0.04), '703.2.7/character-spacing-max')).toBe('fail')
  })

  test('the edge of a dot', () => {
    const near = { 'braille.0.origin': { x: 20, y: 70 + 9.525 + 0.78 } }
    expect(verdictOf(near, '703.3.2/character-clearance')).toBe('pass')
    expect(verdictOf({ ...near, ...reading('braille.dotBaseDiameter', 1.6) }, '703.3.2/character-clearance')).toBe(
      'fail',
    )
  })

  test('is open where characters of two sizes may have been measured', () => {
    const values = {
      lettering: [set, { ...set, text: 'PUMP', lines: ['PUMP'], characterHeight: 16, strokeThickness: 2.2 }],
      ...reading('raised.characterHeight', 20),
    }
    expect(judgementOf(signOf(PUMP_ROOM, values), '703.2.6/stroke-thickness')).toMatchObject({
      verdict: 'undetermined',
      reason: 'missing-fact',
    })
  })
})

describe('a reading does not bring into force what the sign has nothing for', () => {
  test('characters for sight on a sign with one set for both', () => {
    for (const [quantity, value, row] of [
      ['visual.characterHeight', 10, '703.5.5/character-height'],
      ['visual.strokeThickness', 0.05, '703.5.7/stroke-thickness'],
      ['visual.heightAboveFloor', 100, '703.5.6/height-above-floor'],
    ] as const)
      expect(`${quantity} ${verdictOf(reading(quantity, value), row)}`).toBe(`${quantity} not-applicable`)
  })

  test('the foot of characters with straight sides; dots of a sign without braille', () => {
    expect(verdictOf(reading('raised.characterSpacingAtBase', 1), '703.2.7/character-spacing-base-min')).toBe(
      'not-applicable',
    )
    expect(verdictOf({ braille: [], ...reading('braille.dotHeight', 0.7) }, '703.3.1/dot-height')).toBe(
      'not-applicable',
    )
  })
})
