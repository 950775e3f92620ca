import { describe, expect, test } from 'vitest'
import type { JudgeOptions } from '../../src/judge/types.js'
import { weigh } from '../../src/judge/weigh.js'
import type { Gap, Observation } from '../../src/measure/measurement.js'
import type { Limit } from '../../src/standards/standard.js'
import { FIRST_ROWS } from './table-703-5-5.js'

/**
 * Observations against one limit. The limits are those of the clauses named beside the tests, the values beside them are invented.
 * The rule: a fail beats what is open, what is open beats a pass (contract of the service, 3).
 */
const INCH = 25.4
const SIMPLE: JudgeOptions = { decisionRule: 'simple', unitSystem: 'printed' }
const GUARDED: JudgeOptions = { ...SIMPLE, decisionRule: 'guarded' }

const seen = (value: Observation['value'], more: Partial<Observation> = {}): Observation => ({
  value,
  basis: 'declared',
  places: [{ element: `at ${String(value)}` }],
  ...more,
})

const weighed = (limit: Limit, observations: Observation[], options = SIMPLE, firstUnit: 'in' | 'mm' = 'in') =>
  weigh(
    { quantity: 'q', unit: 'mm', method: '', observations, gaps: [] },
    () => ({ limit, clause: 'c' }),
    firstUnit,
    options,
  )

/** 2010 ADA Standards, table 703.3.1: 0.241 inch (6.1 mm) to 0.300 inch (7.6 mm) between corresponding dots of adjacent cells. */
const CELLS: Limit = { kind: 'length', in: { min: 0.241, max: 0.3 }, mm: { min: 6.1, max: 7.6 }, printed: '' }
const GAP: Gap = { reason: 'missing-fact', why: 'not given', places: [] }

describe('several lengths', () => {
  test('fail by the worst, which comes first, whatever their order', () => {
    const { failed, margin } = weighed(CELLS, [seen(7.7), seen(6.9), seen(9), seen(6)])
    expect(failed.map(({ value }) => value)).toEqual([9, 6, 7.7])
    expect(margin).toBeCloseTo(0.3 * INCH - 9, 9)
  })

  test('pass by the one that is nearest to its limit', () => {
    const { failed, nearest, margin, gaps, within } = weighed(CELLS, [seen(6.9), seen(7.5), seen(7)])
    expect([failed, gaps, within]).toEqual([[], [], false])
    expect(nearest?.value).toBe(7.5)
    expect(margin).toBeCloseTo(0.3 * INCH - 7.5, 9)
  })

  test('show what is open before what passes, and keep what fails', () => {
    const open = seen(6.9, { atMost: GAP })
    expect(weighed(CELLS, [seen(7.6), open])).toMatchObject({ nearest: { value: 6.9 }, gaps: [GAP], failed: [] })
    expect(weighed(CELLS, [seen(8), open])).toMatchObject({ gaps: [GAP], failed: [{ value: 8 }] })
  })

  test('of none, show the limit and nothing else', () => {
    expect(weighed(CELLS, [])).toEqual({
      limit: {
        kind: 'length',
        min: 0.241 * INCH,
        max: 0.3 * INCH,
        other: { min: 6.1, max: 7.6 },
        unit: 'mm',
        printed: '',
        clause: 'c',
      },
      failed: [],
      nearest: undefined,
      gaps: [],
      within: false,
      margin: null,
      unitSplit: null,
    })
  })

  test('tell the split of any of them, of the one that is shown before others', () => {
    // 7.61 mm lies between 7.6 mm and 0.300 inch (7.62 mm); 6.11 mm between 6.1 mm and 0.241 inch (6.1214 mm)
    const high = { judged: 'in', pass: 'in', fail: 'mm' }
    const low = { judged: 'in', pass: 'mm', fail: 'in' }
    expect(weighed(CELLS, [seen(6.9), seen(7.61)]).unitSplit).toEqual(high)
    expect(weighed(CELLS, [seen(9), seen(7.61)]).unitSplit).toEqual(high)
    expect(weighed(CELLS, [seen(7.61), seen(6.11)]).unitSplit).toEqual(low)
    expect(weighed(CELLS, [seen(6.9)]).unitSplit).toBeNull()
    // between the two ends the units differ, however sure the value is
    expect(weighed(CELLS, [seen(7.61, { uncertainty: 0.05 })]).unitSplit).toEqual(high)
    expect(weighed(CELLS, [seen(7.59, { uncertainty: 0.05 })]).unitSplit).toBeNull()
    expect(weighed(CELLS, [seen(6.9, { uncertainty: 0.36 })]).unitSplit).toBeNull()
    // the same in a table of its own, which puts millimetres first
    const metric = { ...CELLS }
    expect(weighed(metric, [seen(7.61)], SIMPLE, 'mm').unitSplit).toEqual({ judged: 'mm', pass: 'in', fail: 'mm' })
    expect(weighed(metric, [seen(6.11)], SIMPLE, 'mm').unitSplit).toEqual({ judged: 'mm', pass: 'mm', fail: 'in' })
  })

  test('without a number, as long as anyone may ask for, pass', () => {
    expect(weighed(CELLS, [seen(true)])).toMatchObject({ failed: [], gaps: [], margin: null, nearest: { value: true } })
  })
})

describe('both printed units', () => {
  const BOTH: JudgeOptions = { ...SIMPLE, unitSystem: 'both' }

  test('leave what satisfies each', () => {
    expect(weighed(CELLS, [seen(6.9)], BOTH).limit).toMatchObject({ min: 0.241 * INCH, max: 7.6 })
    expect(weighed(CELLS, [seen(6.11)], BOTH).failed).toHaveLength(1)
    expect(weighed(CELLS, [seen(7.61)], BOTH).failed).toHaveLength(1)
    expect(weighed(CELLS, [seen(6.13)], BOTH).failed).toHaveLength(0)
    expect(weighed(CELLS, [seen(6.9)]).limit).toMatchObject({ min: 0.241 * INCH, max: 0.3 * INCH })
  })

  // 2010 ADA Standards 703.2.1: 1/32 inch (0.8 mm) minimum; table 703.3.1: dots 0.059 inch (1.5 mm) to 0.063 inch (1.6 mm)
  test('put no end where neither prints one', () => {
    const relief: Limit = { kind: 'length', in: { min: 1 / 32 }, mm: { min: 0.8 }, printed: '' }
    expect(weighed(relief, [seen(1)], BOTH).limit).toMatchObject({ min: 0.8 })
    expect(weighed(relief, [seen(1)], BOTH).limit).not.toHaveProperty('max')
    const most: Limit = { kind: 'length', in: { max: 0.063 }, mm: { max: 1.6 }, printed: '' }
    expect(weighed(most, [seen(1)], BOTH).limit).toMatchObject({ max: 1.6 })
    expect(weighed(most, [seen(1)], BOTH).limit).not.toHaveProperty('min')
  })
})

// 2010 ADA Standards, table 703.5.5: 2 inches (51 mm), of which the inches are less; the rest is invented
test('of both printed units the narrower end counts, and an end that one of them prints alone', () => {
  const BOTH: JudgeOptions = { ...SIMPLE, unitSystem: 'both' }
  const ends = (inches: { min?: number; max?: number }, mm: { min?: number; max?: number }) =>
    weighed({ kind: 'length', in: inches, mm, printed: '' }, [seen(20)], BOTH).limit
  expect(ends({ max: 2 }, { max: 51 }).max).toBeCloseTo(2 * INCH, 9)
  expect(ends({ min: 2 }, { min: 51 }).min).toBe(51)
  expect(ends({ max: 2 }, { min: 10, max: 51 })).toMatchObject({ min: 10 })
  expect(ends({ min: 0.5, max: 2 }, { max: 51 }).min).toBeCloseTo(0.5 * INCH, 9)
  expect(ends({ min: 0.5 }, { min: 12, max: 51 }).max).toBe(51)
  expect(ends({ min: 0.5, max: 2 }, { min: 12 }).max).toBeCloseTo(2 * INCH, 9)
})

describe('a bound', () => {
  // 2010 ADA Standards 703.2.1: 1/32 inch minimum
  const LEAST: Limit = { kind: 'length', in: { min: 1 / 32 }, mm: { min: 0.8 }, printed: '' }

  test('from below shows that a least length is kept, never that it is not', () => {
    expect(weighed(LEAST, [seen(0.9, { atLeast: GAP })])).toMatchObject({ failed: [], gaps: [] })
    expect(weighed(LEAST, [seen(0.5, { atLeast: GAP })])).toMatchObject({ failed: [], gaps: [GAP], unitSplit: null })
  })

  test('from above shows that it is not kept, never that it is', () => {
    expect(weighed(LEAST, [seen(0.5, { atMost: GAP })]).failed).toHaveLength(1)
    expect(weighed(LEAST, [seen(0.9, { atMost: GAP })])).toMatchObject({ failed: [], gaps: [GAP] })
  })

  test('within the uncertainty of the limit is open for what is not known of it', () => {
    for (const bound of ['atLeast', 'atMost'] as const)
      expect(weighed(LEAST, [seen(0.8, { uncertainty: 0.05, [bound]: GAP })], GUARDED)).toMatchObject({
        gaps: [GAP],
        within: false,
      })
    expect(weighed(LEAST, [seen(0.8, { uncertainty: 0.05 })], GUARDED)).toMatchObject({ gaps: [], within: true })
  })
})

describe('kinds and truths', () => {
  // 2010 ADA Standards 703.5.1: characters and their background shall have a non-glare finish; which kinds are is the contract's
  const FINISH: Limit = { kind: 'one-of', pass: ['matte'], judgement: ['satin'], printed: '' }

  test('pass, fail, or wait for a person, who is told what to judge', () => {
    expect(weighed(FINISH, [seen('matte')])).toMatchObject({ failed: [], gaps: [], margin: null, unitSplit: null })
    expect(weighed(FINISH, [seen('glossy')]).failed).toHaveLength(1)
    expect(weighed(FINISH, [seen('satin')])).toMatchObject({
      failed: [],
      gaps: [
        {
          reason: 'needs-judgement',
          why: "“satin” passes or not by a person's judgement",
          places: [{ element: 'at satin' }],
        },
      ],
    })
  })

  test('a plain yes passes and nothing else does', () => {
    const YES: Limit = { kind: 'yes', printed: '' }
    expect(weighed(YES, [seen(true)]).failed).toHaveLength(0)
    expect(weighed(YES, [seen(false)]).failed).toHaveLength(1)
    expect(weighed(YES, [seen('yes')]).failed).toHaveLength(1)
  })
})

describe('a height by the distance of the reader', () => {
  // CSA B651-04, table 1: 25 mm up to 750 mm, 50 mm up to 1500 mm, as the table of that standard here cites it
  const STEPS: Limit = {
    kind: 'distance-steps',
    steps: [
      { upTo: 750, min: 25 },
      { upTo: 1500, min: 50 },
    ],
    printed: '',
  }
  const at = (viewingDistance?: number) =>
    weighed(STEPS, [seen(30, { context: viewingDistance === undefined ? {} : { viewingDistance } })])

  test('goes by its step', () => {
    expect(at(750)).toMatchObject({ failed: [], limit: { min: 25, unit: 'mm', clause: 'c' }, margin: 5 })
    expect(at(751).failed).toHaveLength(1)
  })

  test('is left to a person beyond the table, and to the client where the distance is not given', () => {
    expect(at(1501).gaps).toEqual([
      {
        reason: 'needs-judgement',
        why: 'the table does not go as far as this viewing distance',
        places: [{ element: 'at 30' }],
      },
    ])
    expect(weighed(STEPS, [seen(30)]).gaps).toMatchObject([{ reason: 'missing-fact' }])
    const share: Limit = { kind: 'distance-share', share: 0.025, printed: '' }
    expect(weighed(share, [seen(30)])).toMatchObject({ failed: [], gaps: [{ reason: 'missing-fact' }] })
    expect(at().gaps).toEqual([
      {
        reason: 'missing-fact',
        why: 'the viewing distance is not given',
        places: [{ element: 'at 30' }],
        ask: { pointer: '/sign/installation/viewingDistance', ask: 'From how far is the sign read?', unit: 'mm' },
      },
    ])
  })

  // 2010 ADA Standards, table 703.5.5, its first two rows
  const TABLE: Limit = {
    kind: 'by-viewing-distance',
    bands: FIRST_ROWS,
    printed: '',
  }

  test('is decided where every row gives the same, by the row that decides it', () => {
    expect(weighed(TABLE, [seen(10)])).toMatchObject({ limit: { min: (5 / 8) * INCH }, failed: [{ value: 10 }] })
    expect(weighed(TABLE, [seen(60)])).toMatchObject({ limit: { min: 2 * INCH }, failed: [], gaps: [] })
  })

  test('else asks for what would tell the height above the floor, each with what keeps it', () => {
    const why = 'the height of the characters above the floor is not known'
    const places = [{ element: 'at 30' }]
    expect(weighed(TABLE, [seen(30)]).gaps).toEqual([{ reason: 'missing-fact', why, places }])
    const limitGaps: Gap[] = [
      { reason: 'unreadable', why: 'a', places: [] },
      { reason: 'missing-fact', why: 'b', places: [], ask: { pointer: '/p', ask: 'How high?' } },
    ]
    expect(weighed(TABLE, [seen(30, { limitGaps })]).gaps).toEqual([
      { reason: 'unreadable', why, places },
      { reason: 'missing-fact', why, places, ask: { pointer: '/p', ask: 'How high?' } },
    ])
  })

  test('says that nothing is taken to be in the way only where no distance is given', () => {
    const of = (context: Observation['context']) =>
      weighed(TABLE, [seen(20, { context: { baselineHeight: 1500, ...context }, remark: 'own' })]).nearest?.remark
    expect(of({})).toContain('No viewing distance is given')
    expect(of({ viewingDistance: 1000 })).toBe('own')
  })
})
