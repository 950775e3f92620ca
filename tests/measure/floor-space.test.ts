import { describe, expect, test } from 'vitest'
import { messageFor } from '../../src/report/messages.js'
import { measured as measuredOf } from '../../src/report/observed.js'
import { largestSquareBesideLeaf, reachOfLeaf } from '../../src/geometry/sector.js'
import { judgementOf } from '../judge/verdicts.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

const LEAF = 915
const QUARTER = 45

/** By brute force: the largest square with no sample point inside the sector that the leaf sweeps from 0 to 45 degrees. */
function bySampling(centre: number, step = 0.5): number {
  let side = 0
  for (let s = step; s < 600; s += step) {
    for (let y = 0; y <= s; y += 1) {
      const nearEdge = centre - s / 2
      if (nearEdge < reachOfLeaf(LEAF, QUARTER, y)) return side
    }
    side = s
  }
  return side
}

describe('the floor beside a door leaf', () => {
  test('the leaf reaches to its latch edge when closed, and less far out from the wall', () => {
    expect(reachOfLeaf(LEAF, QUARTER, 0)).toBe(0)
    expect(reachOfLeaf(LEAF, QUARTER, LEAF * Math.SQRT1_2)).toBeCloseTo(LEAF * (Math.SQRT1_2 - 1), 9)
    expect(reachOfLeaf(LEAF, QUARTER, LEAF * 0.8)).toBe(-Infinity)
  })

  test.each([50, 150, 228.6, 250])('a square centred %d mm from the latch edge', (centre) => {
    expect(Math.abs(largestSquareBesideLeaf(centre) - bySampling(centre))).toBeLessThanOrEqual(1)
  })
})

describe('clear floor space', () => {
  const door = (values: Record<string, unknown>) =>
    signOf(PUMP_ROOM, Object.fromEntries(Object.entries(values).map(([k, v]) => [`installation.door.${k}`, v])))

  // 2010 ADA Standards 703.4.2: 18 inches; half of it is 9 inches (228.6 mm)
  test('toward the reader, 9 inches to the middle of the text are 18 inches of floor', () => {
    expect(valuesOf(door({ latchToTextCentre: 228.6 }), 'installation.floorSpace')[0]).toBeCloseTo(18 * 25.4, 9)
  })

  test.each(['away', 'sliding', 'none'])('a door of swing %s takes no floor, and no size is made up', (swing) => {
    const sign = door({ swing, latchToTextCentre: undefined })
    const { observations } = measured(sign, 'installation.floorSpace')
    expect(observations.map(({ value }) => value)).toEqual([true])
    expect(observations[0]?.remark).toContain('not known')
    const judgement = judgementOf(sign, '703.4.2/floor-space')
    expect(judgement).toMatchObject({ verdict: 'pass', margin: null })
    expect(measuredOf(judgement)).toMatchObject({ value: true, inches: null, min: null, max: null })
    expect(messageFor(judgement)).toMatch(/^It passes\. No door leaf turns over the floor before the sign\./)
  })

  test.each(['hinge', 'right-of-double-doors', 'nearest-adjacent-wall', 'on-door-push-side'])(
    'at the place %s the distance from the latch edge says nothing; it is measured on site',
    (side) => {
      const values = { 'installation.side': side, 'installation.door.latchToTextCentre': 300 }
      const judgement = judgementOf(signOf(PUMP_ROOM, values), '703.4.2/floor-space')
      expect(judgement).toMatchObject({ verdict: 'undetermined', reason: 'missing-fact' })
      expect(judgement.gaps[0]?.ask?.pointer).toBe('/sign/measured')
      const onSite = { ...values, measured: [{ quantity: 'installation.floorSpace', values: [460] }] }
      expect(judgementOf(signOf(PUMP_ROOM, onSite), '703.4.2/floor-space').verdict).toBe('pass')
    },
  )

  test('open without the swing or the distance, with the place to add them', () => {
    expect(measured(door({ swing: undefined }), 'installation.floorSpace').gaps[0]?.ask?.pointer).toBe(
      '/sign/installation/door/swing',
    )
    expect(reasonsOf(door({ latchToTextCentre: undefined }), 'installation.floorSpace')).toEqual(['missing-fact'])
  })

  test('a sign over the leaf has none', () => {
    const sign = signOf(PUMP_ROOM)
    const over = {
      ...sign,
      installation: { ...sign.installation, latchToTextCentre: { value: -50, basis: 'declared' as const } },
    }
    expect(valuesOf(over, 'installation.floorSpace')).toEqual([0])
  })
})
