import { describe, expect, test } from 'vitest'
import { declared } from '../../src/sign/sign.js'
import { PUMP_ROOM, signOf, TWO_SETS } from '../measure/signs.js'
import { PER_FOOT, TABLE_703_5_5 } from '../standards/ada-figures.js'
import { judgementOf } from './verdicts.js'

/** 2010 ADA Standards, Table 703.5.5; the formula is typed anew from the table, in inches. */
const INCH = 25.4

function required(baseline: number, distance: number): number {
  const row = TABLE_703_5_5.find(({ upTo }) => baseline <= upTo)
  if (!row) throw new Error('no row')
  return row.height + Math.max(0, (distance - row.distance) / 12) * PER_FOOT
}

const VISUAL = [{ ...(TWO_SETS.lettering as Record<string, unknown>[])[0], text: 'Pumps', lines: ['Pumps'] }]

/** An information sign with one line of the given height, its baseline at `baseline` above the floor. All in inches. */
const signAt = (height: number, baseline: number, distance?: number) =>
  signOf(PUMP_ROOM, {
    use: 'informational',
    braille: [],
    lettering: VISUAL,
    'lettering.0.characterHeight': height * INCH,
    'lettering.0.baseline': { x: 20, y: 100 },
    'installation.panelBottomHeight': baseline * INCH - 50,
    'installation.viewingDistance': distance === undefined ? undefined : distance * INCH,
  })

const verdict = (height: number, baseline: number, distance?: number) =>
  judgementOf(signAt(height, baseline, distance), '703.5.5/character-height').verdict

const BASELINES = [41, 55, 69.9, 70.1, 100, 119.9, 120.1, 200]
const DISTANCES = [10, 71, 72, 84, 100, 179, 180, 200, 251, 252, 300, 600]

describe('character height by viewing distance', () => {
  test.each(BASELINES)('a baseline %d inches above the floor', (baseline) => {
    for (const distance of DISTANCES) {
      const height = required(baseline, distance)
      expect(verdict(height + 0.001, baseline, distance), `${height} at ${distance}`).toBe('pass')
      expect(verdict(height - 0.001, baseline, distance), `${height} at ${distance}`).toBe('fail')
    }
  })

  test('with no distance given, nothing is in the way and the first row holds; the finding says so', () => {
    const judgement = judgementOf(signAt(5 / 8, 60), '703.5.5/character-height')
    expect(judgement.verdict).toBe('pass')
    expect(judgement.decisive[0]?.remark).toContain('No viewing distance is given')
  })

  // Table 703.5.5 prints "70 inches (1780 mm) or less": 70 inches themselves are in the first row
  test('a baseline at the printed end of a row is in that row, also when its height is a sum', () => {
    const sum = signOf(PUMP_ROOM, {
      use: 'informational',
      braille: [],
      lettering: VISUAL,
      'lettering.0.characterHeight': (5 / 8) * INCH,
      'lettering.0.baseline': { x: 20, y: 49.9 },
      'installation.panelBottomHeight': 70 * INCH - (150 - 49.9) + 1e-12,
    })
    expect(judgementOf(sum, '703.5.5/character-height').verdict).toBe('pass')
    const above = { ...sum.installation, panelBottomHeight: declared(70 * INCH - (150 - 49.9) + 0.01) }
    expect(judgementOf({ ...sum, installation: above }, '703.5.5/character-height').verdict).toBe('fail')
  })

  test('with no height above the floor, it is decided when every band says the same', () => {
    const open = { 'installation.panelBottomHeight': undefined }
    const of = (height: number) =>
      judgementOf(
        signOf(TWO_SETS, { ...open, 'lettering.0.characterHeight': height * INCH }),
        '703.5.5/character-height',
      )
    expect(of(0.6).verdict).toBe('fail')
    expect(of(3.1).verdict).toBe('pass')
    expect(of(1)).toMatchObject({ verdict: 'undetermined', reason: 'missing-fact' })
    expect(of(1).gaps[0]?.ask?.pointer).toBe('/sign/installation/panelBottomHeight')
  })

  test('at a platform, 3 inches leave it open whether space is limited (810.6.2)', () => {
    const station = (height: number) => ({ ...signAt(height, 60, 72 + 12 * 40), use: 'transit-station' as const })
    const of = (height: number) => judgementOf(station(height), '703.5.5/character-height')
    expect(of(6).verdict).toBe('pass')
    expect(of(3.5)).toMatchObject({ verdict: 'undetermined', reason: 'needs-judgement' })
    expect(of(2.9).verdict).toBe('fail')
  })
})
