import { describe, expect, test } from 'vitest'
import { messageFor } from '../../src/report/messages.js'
import { measured as measuredOf } from '../../src/report/observed.js'
import { judgementOf } from '../judge/verdicts.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

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

describe('clear floor space beside other doors and walls', () => {
  const at = (values: Record<string, unknown>) =>
    signOf(PUMP_ROOM, Object.fromEntries(Object.entries(values).map(([k, v]) => [`installation.${k}`, v])))
  const space = (values: Record<string, unknown>) => valuesOf(at(values), 'installation.floorSpace')[0]
  const NEXT = { leafWidth: 900, swing: 'toward-reader', hinge: 'far' }

  // 2010 ADA Standards 703.4.2: beyond the arc of any door. Each leaf in the wall of the sign leaves twice its distance.
  test('the nearest of the doors decides', () => {
    expect(space({ neighbouringDoors: [{ ...NEXT, distance: 200 }] })).toBeCloseTo(400, 9)
    expect(space({ neighbouringDoors: [{ ...NEXT, distance: 200, hinge: 'near' }] })).toBeCloseTo(400, 9)
    expect(space({ neighbouringDoors: [{ ...NEXT, distance: 350 }] })).toBeCloseTo(600, 9)
    expect(space({ neighbouringDoors: [{ ...NEXT, distance: 200, swing: 'away' }] })).toBeCloseTo(600, 9)
    expect(space({ neighbouringDoors: [] })).toBeCloseTo(600, 9)
  })

  test('a door that opens away leaves the floor to its neighbours', () => {
    const values = { 'door.swing': 'away', neighbouringDoors: [{ ...NEXT, distance: 200 }] }
    expect(space(values)).toBeCloseTo(400, 9)
    expect(judgementOf(at(values), '703.4.2/floor-space').verdict).toBe('fail')
    expect(judgementOf(at({ ...values, neighbouringDoors: [] }), '703.4.2/floor-space').verdict).toBe('pass')
  })

  test('a neighbour that is too near fails although the own door is not described', () => {
    const values = { 'door.swing': undefined, neighbouringDoors: [{ ...NEXT, distance: 200 }] }
    expect(judgementOf(at(values), '703.4.2/floor-space').verdict).toBe('fail')
    const far = { ...values, neighbouringDoors: [{ ...NEXT, distance: 900 }] }
    expect(judgementOf(at(far), '703.4.2/floor-space')).toMatchObject({
      verdict: 'undetermined',
      reason: 'missing-fact',
    })
  })

  test('the wall beyond an inner corner ends the floor', () => {
    expect(space({ innerCorner: 220 })).toBeCloseTo(440, 9)
    expect(space({ innerCorner: 4000 })).toBeCloseTo(600, 9)
  })

  // Worked by hand in tests/geometry/sector.test.ts: 500 mm to the corner, the leaf of 900 mm starts 100 mm behind it
  test('a door beyond the corner comes nearer when it is hinged at the corner', () => {
    const door = { ...NEXT, distance: 100, corner: 500 }
    expect(space({ neighbouringDoors: [{ ...door, hinge: 'near' }] })).toBeCloseTo(400, 9)
    expect(space({ neighbouringDoors: [{ ...door, hinge: 'far' }] })).toBeCloseTo(1000 - 1800 / Math.sqrt(5), 9)
  })

  test('a sign on the adjacent wall is beside its own door, where the corner is described', () => {
    const values = {
      side: 'nearest-adjacent-wall',
      innerCorner: 500,
      'door.leafWidth': 900,
      'door.latchToCorner': 100,
    }
    expect(space(values)).toBeCloseTo(1000 - 1800 / Math.sqrt(5), 9)
    expect(reasonsOf(at({ ...values, 'door.latchToCorner': undefined }), 'installation.floorSpace')).toEqual([
      'missing-fact',
    ])
  })

  test('lengths in inches are converted', () => {
    const inches = { value: 9, unit: 'in' }
    expect(space({ neighbouringDoors: [{ ...NEXT, leafWidth: inches, distance: inches }] })).toBeCloseTo(457.2, 9)
  })
})

// 2010 ADA Standards 703.4.2: the nearest adjacent wall where there is no wall at the latch side
describe('the place at the door', () => {
  const side = (values: Record<string, unknown>) =>
    judgementOf(
      signOf(PUMP_ROOM, Object.fromEntries(Object.entries(values).map(([k, v]) => [`installation.${k}`, v]))),
      '703.4.2/side',
    )
  const ADJACENT = { side: 'nearest-adjacent-wall' }

  test('the adjacent wall is right where there is no wall at the latch, and wrong where there is', () => {
    expect(side({ ...ADJACENT, 'door.wallAtLatch': false }).verdict).toBe('pass')
    expect(side({ ...ADJACENT, 'door.wallAtLatch': true }).verdict).toBe('fail')
    const open = side(ADJACENT)
    expect(open).toMatchObject({ verdict: 'undetermined', reason: 'missing-fact' })
    expect(open.gaps.map(({ ask }) => ask?.pointer)).toContain('/sign/installation/door/wallAtLatch')
  })

  test.each(['latch', 'inactive-leaf', 'right-of-double-doors'])('%s is right whatever wall there is', (place) => {
    for (const wall of [true, false, undefined])
      expect(side({ side: place, 'door.wallAtLatch': wall }).verdict).toBe('pass')
  })

  test('the push side stays with a person, as nobody says what a closer does', () => {
    expect(side({ side: 'on-door-push-side', 'door.wallAtLatch': false })).toMatchObject({
      verdict: 'undetermined',
      reason: 'needs-judgement',
    })
  })

  test('double doors have no latch side to stand on, single ones no other leaf', () => {
    expect(side({ side: 'latch', 'door.leaves': 'double' }).reason).toBe('needs-judgement')
    expect(side({ side: 'inactive-leaf', 'door.leaves': 'single' }).reason).toBe('needs-judgement')
    expect(side({ side: 'inactive-leaf', 'door.leaves': 'double' }).verdict).toBe('pass')
    expect(side({ side: 'right-of-double-doors', 'door.leaves': 'double' }).verdict).toBe('pass')
    expect(side({ side: 'latch', 'door.leaves': 'single' }).verdict).toBe('pass')
  })
})
