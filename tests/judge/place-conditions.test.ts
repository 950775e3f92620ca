import { describe, expect, test } from 'vitest'
import { resolveAtDistance } from '../../src/judge/limits.js'
import { conditionMet } from '../../src/judge/scope.js'
import type { Condition } from '../../src/judge/types.js'
import { PUMP_ROOM, signOf } from '../measure/signs.js'

/** Conditions on where a sign stands, on and off. The signs are invented; the zone of the arm is that of Orden TMA/851/2021, article 44.1. */

const PICTOGRAM = { pictograms: [{ meaning: 'pump' }] }
const said = (text: string) => ({ 'lettering.0.text': text, 'lettering.0.lines': [text] })
const bottom = (height?: number) => ({ 'installation.panelBottomHeight': height })

type Verdict = boolean | 'open'

const CASES: [Condition, Record<string, unknown>, Verdict][] = [
  // the panel is 150 mm high; the zone reaches from 1200 mm to 1600 mm
  ['in-arm-zone', bottom(1200), true],
  ['in-arm-zone', bottom(1450), true],
  ['in-arm-zone', bottom(1451), 'open'],
  ['in-arm-zone', bottom(1199), 'open'],
  ['in-arm-zone', bottom(1601), false],
  ['in-arm-zone', bottom(1049), false],
  // its edge on the end of the zone: neither within it nor clear of it
  ['in-arm-zone', bottom(1600), 'open'],
  ['in-arm-zone', bottom(1050), 'open'],
  ['in-arm-zone', bottom(undefined), 'open'],
  ['in-arm-zone', { ...bottom(1300), 'panel.height': undefined }, 'open'],
  ['with-pictogram', PICTOGRAM, true],
  ['with-pictogram', {}, false],
  ['longer-text', {}, 'open'],
  ['longer-text', said('PUMPS'), false],
  ['door-number', {}, false],
  ['door-number', said('12'), 'open'],
  ['door-number', said('12 B'), 'open'],
  ['door-number', said('12 PUMPS'), false],
  ['door-number', said(' 12 '), 'open'],
  [
    'door-number',
    {
      lettering: [
        { part: 'visual', text: '12' },
        { part: 'raised', text: 'PUMPS' },
      ],
    },
    false,
  ],
  [
    'door-number',
    {
      lettering: [
        { part: 'raised', text: '12' },
        { part: 'raised', text: 'PUMPS' },
      ],
    },
    'open',
  ],
  ['door-number', { 'lettering.0.text': undefined, 'lettering.0.lines': undefined }, 'open'],
  ['black-and-white', {}, 'open'],
  ['black-and-white', { lettering: undefined }, false],
  ['station-name', { use: 'transit-station' }, 'open'],
  ['station-name', { use: 'directional' }, false],
  ['posted-timetable', { use: 'informational' }, 'open'],
  ['posted-timetable', { use: 'directional' }, false],
  ['toilet-or-lift', { use: 'elevator-landing' }, true],
  ['toilet-or-lift', {}, 'open'],
  ['sanitary-room', {}, 'open'],
  ['sanitary-room', { use: 'directional' }, false],
  ['exterior', { 'installation.approach': 'exterior' }, true],
  ['exterior', {}, false],
  ['exterior', { 'installation.approach': undefined }, 'open'],
  ['on-a-handrail', {}, false],
  ['on-a-handrail', { 'installation.side': undefined }, 'open'],
  ['one-direction', {}, 'open'],
]

describe('conditions of the place', () => {
  test.each(CASES)('%s, %j: %s', (condition, values, expected) => {
    const met = conditionMet(condition, signOf(PUMP_ROOM, values))
    expect(met.met).toBe(expected)
    if (met.met === 'open') expect(met.gap.why).not.toBe('')
  })

  test('a panel of unknown height is open for that, not for where it stands', () => {
    const met = conditionMet('in-arm-zone', signOf(PUMP_ROOM, { ...bottom(1300), 'panel.height': undefined }))
    expect(met).toMatchObject({ gap: { why: expect.stringContaining('how high the panel is') as string } })
  })

  test('a missing height is asked for', () => {
    const met = conditionMet('in-arm-zone', signOf(PUMP_ROOM, bottom(undefined)))
    expect(met).toMatchObject({
      gap: { reason: 'missing-fact', ask: { pointer: '/sign/installation/panelBottomHeight' } },
    })
  })
})

test('a share of the distance grows no further beyond its end', () => {
  // Orden TMA/851/2021, article 41.2.b: 5,6 cm at 4,0 m; 7,0 cm at 5,0 m or more
  const limit = { kind: 'distance-share' as const, share: 0.014, upTo: 5000, printed: '' }
  const least = (distance: number) => resolveAtDistance(limit, '41.2.b', distance)?.min
  expect(least(4000)).toBeCloseTo(56, 9)
  expect(least(5000)).toBeCloseTo(70, 9)
  expect(least(9000)).toBeCloseTo(70, 9)
})
