import { describe, expect, test } from 'vitest'
import type { Judgement } from '../../src/judge/finding.js'
import { judge } from '../../src/judge/judge.js'
import { notApplicable, rowsFor } from '../../src/judge/rows.js'
import { measurer } from '../../src/measure/measurer.js'
import type { Gap, Measurement, Observation } from '../../src/measure/measurement.js'
import { USES, type Sign } from '../../src/sign/sign.js'
import { load, type LoadedStandard } from '../../src/standards/load.js'
import { PUMP_ROOM, signOf, translator, TWO_SETS } from '../measure/signs.js'
import { length, row, table } from '../standards/invented.js'
import { judgementOf } from './verdicts.js'

/**
 * How a row becomes a judgement. All tables, values and gaps are invented. The rule: a fail beats what is open, what is open beats a pass;
 * an exception only ever relaxes (contract of the service, 3 and 5).
 */

type Json = Record<string, unknown>

const ROW = 'invented/1/relief'
const one = (limit: Json, changes: Json = {}): LoadedStandard =>
  load(table('invented', [row(ROW, 'raised.relief', limit, changes)]))

const seen = (value: Observation['value'], more: Partial<Observation> = {}): Observation => ({
  value,
  basis: 'declared',
  places: [],
  ...more,
})
const gap = (reason: Gap['reason'], why: string = reason): Gap => ({ reason, why, places: [] })

interface Given extends Partial<Measurement> {
  sign?: Sign
  guarded?: boolean
}

function judged(standard: LoadedStandard, { sign = signOf(PUMP_ROOM), guarded = false, ...given }: Given): Judgement {
  const measurement = { quantity: 'q', unit: 'mm' as const, method: '', observations: [], gaps: [], ...given }
  const options = { decisionRule: guarded ? ('guarded' as const) : ('simple' as const), unitSystem: 'printed' as const }
  const [judgement] = judge(standard, sign, () => measurement, options)
  if (!judgement) throw new Error('no judgement')
  return judgement
}

describe('a conclusion', () => {
  const LEAST = one(length(1))

  test('fails though something is open, and keeps both', () => {
    const found = judged(LEAST, { observations: [seen(0.5), seen(2)], gaps: [gap('missing-fact')] })
    expect(found).toMatchObject({ verdict: 'fail', reason: null, margin: -0.5, gaps: [gap('missing-fact')] })
    expect(found.decisive.map(({ value }) => value)).toEqual([0.5])
  })

  test('is open though something passes', () => {
    const found = judged(LEAST, { observations: [seen(2)], gaps: [gap('unreadable')] })
    expect(found).toMatchObject({ verdict: 'undetermined', reason: 'unreadable', decisive: [{ value: 2 }] })
    expect(judged(LEAST, { gaps: [gap('unreadable')] })).toMatchObject({ decisive: [], margin: null })
  })

  test('passes by what was measured alone', () => {
    expect(judged(LEAST, { observations: [seen(2)] })).toMatchObject({ verdict: 'pass', reason: null, margin: 1 })
  })

  test.each([
    [['needs-judgement', 'missing-fact', 'unreadable'], 'missing-fact'],
    [['needs-judgement', 'limit-reached', 'unreadable'], 'unreadable'],
    [['needs-judgement', 'limit-reached'], 'limit-reached'],
    [['needs-judgement'], 'needs-judgement'],
  ] as const)('of %j names %s, which the client can do most about', (reasons, expected) => {
    expect(judged(LEAST, { gaps: reasons.map((reason) => gap(reason)) }).reason).toBe(expected)
  })

  test('names the uncertainty before what a person judges, and after what the client can add', () => {
    const near = { observations: [seen(1, { uncertainty: 0.1 })], guarded: true }
    expect(judged(LEAST, { ...near, gaps: [gap('needs-judgement')] }).reason).toBe('within-uncertainty')
    expect(judged(LEAST, { ...near, gaps: [gap('limit-reached')] }).reason).toBe('limit-reached')
    expect(judged(LEAST, near)).toMatchObject({ verdict: 'undetermined', reason: 'within-uncertainty', gaps: [] })
  })

  test('lists the gaps of the measurement before those of the judging', () => {
    const kinds = one({ kind: 'one-of', pass: ['matte'], judgement: ['satin'] })
    const { gaps } = judged(kinds, { observations: [seen('satin')], gaps: [gap('missing-fact')] })
    expect(gaps.map(({ reason }) => reason)).toEqual(['missing-fact', 'needs-judgement'])
  })

  test('is none where there is nothing to measure, and says what there is not', () => {
    expect(judged(LEAST, { nothing: 'There is none.' })).toMatchObject({
      verdict: 'not-applicable',
      because: 'There is none.',
    })
    expect(judged(LEAST, {}).because).toBe('The sign has nothing to measure this on.')
  })
})

describe('an exception', () => {
  /** At a landing it is open whether the sign stands at the main entry level; a car control is what it says. */
  const landing = signOf(PUMP_ROOM, { use: 'elevator-landing' })
  const control = signOf(PUMP_ROOM, { use: 'elevator-car-control' })
  const excepted = (exception: Json, ...others: Json[]) =>
    one(length(1), {
      scope: { uses: [...USES], clause: '1' },
      exceptions: [exception, ...others].map((each) => ({ clause: '1x', text: 'Excepted.', ...each })),
    })
  const RELAXED = { limit: { ...length(0.4), printed: 'relaxed' } }

  test('that holds puts its own limit and clause in force', () => {
    const standard = excepted({ when: 'elevator-car-control', ...RELAXED })
    expect(judged(standard, { sign: control, observations: [seen(0.5)] })).toMatchObject({
      verdict: 'pass',
      limit: { min: 0.4, clause: '1x', printed: 'relaxed' },
    })
    expect(judged(standard, { observations: [seen(0.5)] })).toMatchObject({
      verdict: 'fail',
      limit: { min: 1, clause: '1' },
    })
  })

  test('that may hold leaves open what fails without it and passes with it', () => {
    const standard = excepted({ when: 'main-entry-level', ...RELAXED })
    const at = (value: number) => judged(standard, { sign: landing, observations: [seen(value)] })
    expect(at(1.1)).toMatchObject({ verdict: 'pass', limit: { min: 1 } })
    expect(at(0.5)).toMatchObject({ verdict: 'undetermined', reason: 'needs-judgement', limit: { min: 1 } })
    expect(at(0.5).gaps).toHaveLength(1)
    expect(at(0.3)).toMatchObject({ verdict: 'fail', gaps: [] })
  })

  test('that may hold comes before what else is open', () => {
    const standard = excepted({ when: 'main-entry-level', ...RELAXED })
    const { gaps } = judged(standard, { sign: landing, observations: [seen(0.5)], gaps: [gap('missing-fact', 'w')] })
    expect(gaps.map(({ why }) => why)).toEqual(['only the main entry level is concerned', 'w'])
  })

  test('that sets the row aside does so where it holds, and leaves a fail open where it may', () => {
    const aside = excepted({ when: 'elevator-car-control', exempt: true })
    expect(judged(aside, { sign: control, observations: [seen(0.5)] })).toMatchObject({
      verdict: 'not-applicable',
      because: 'Excepted.',
    })
    expect(judged(aside, { observations: [seen(0.5)] }).verdict).toBe('fail')
    const perhaps = excepted({ when: 'main-entry-level', exempt: true })
    expect(judged(perhaps, { sign: landing, observations: [seen(0.3)] }).verdict).toBe('undetermined')
    expect(judged(perhaps, { sign: landing, observations: [seen(1.3)] }).verdict).toBe('pass')
    expect(judged(perhaps, { observations: [seen(0.3)] }).verdict).toBe('fail')
  })

  test('is the first that holds', () => {
    const second = { when: 'elevator-car-control', limit: { ...length(0.2), printed: 'more' }, clause: '1y' }
    const standard = excepted({ when: 'elevator-car-control', ...RELAXED }, second)
    expect(judged(standard, { sign: control, observations: [seen(0.5)] }).limit.clause).toBe('1x')
    const late = excepted({ when: 'exterior', ...RELAXED }, second)
    expect(judged(late, { sign: control, observations: [seen(0.5)] }).limit.clause).toBe('1y')
  })

  test('that says neither a limit nor that the row is set aside changes nothing', () => {
    const standard = excepted({ when: 'main-entry-level' }, { when: 'elevator-car-control' })
    for (const sign of [landing, control])
      expect(judged(standard, { sign, observations: [seen(0.5)] })).toMatchObject({ verdict: 'fail', gaps: [] })
  })

  test('that changes nothing hides none that may hold after it', () => {
    const station = signOf(PUMP_ROOM, { use: 'elevator-landing' })
    const standard = excepted({ when: 'over-circulation-path' }, { when: 'main-entry-level', ...RELAXED })
    const { verdict, gaps } = judged(standard, { sign: station, observations: [seen(0.5)] })
    expect(verdict).toBe('undetermined')
    expect(gaps.map(({ why }) => why)).toEqual(['only the main entry level is concerned'])
  })

  test('that does not hold relaxes nothing where another may hold', () => {
    const none = { when: 'elevator-car-control', limit: { ...length(0.1), printed: 'none' } }
    const standard = excepted(none, { when: 'main-entry-level', ...RELAXED })
    expect(judged(standard, { sign: landing, observations: [seen(0.3)] }).verdict).toBe('fail')
    expect(judged(standard, { sign: landing, observations: [seen(0.5)] }).verdict).toBe('undetermined')
  })

  test('without an observation holds for all or for none', () => {
    const standard = excepted({ when: 'elevator-car-control', ...RELAXED })
    expect(judged(standard, { sign: control, gaps: [gap('missing-fact')] }).limit.min).toBe(0.4)
  })
})

describe('a condition of a row', () => {
  const when = (...conditions: string[]) =>
    one(length(1), { scope: { uses: [...USES], clause: '1', when: conditions } })
  const landing = signOf(PUMP_ROOM, { use: 'elevator-landing' })

  test('that may be met lets pass what passes and leaves open what fails', () => {
    const standard = when('main-entry-level')
    expect(judged(standard, { sign: landing, observations: [seen(1.5)] })).toMatchObject({ verdict: 'pass', gaps: [] })
    expect(judged(standard, { sign: landing, observations: [seen(0.5)] })).toMatchObject({
      verdict: 'undetermined',
      reason: 'needs-judgement',
    })
  })

  test('that is not met beats one that is open', () => {
    const standard = when('over-circulation-path', 'elevator-car-control')
    expect(judged(standard, { observations: [seen(0.5)] })).toMatchObject({
      verdict: 'not-applicable',
      because: 'The sign does not mark a car control.',
    })
    const both = when('elevator-car-control', 'over-circulation-path')
    const control = signOf(PUMP_ROOM, { use: 'elevator-car-control' })
    expect(judged(both, { sign: control, observations: [seen(0.5)] }).verdict).toBe('undetermined')
  })
})

describe('rows', () => {
  test('of a use that the table sets aside say by which clause', () => {
    const standard = load(
      table('invented', [row(ROW, 'raised.relief', length(1))], {
        setAside: { directory: { clause: '9', text: 'Directories are free.' } },
      }),
    )
    const because = (use: string) => judged(standard, { sign: signOf(PUMP_ROOM, { use }) }).because
    expect(because('directory')).toBe('Directories are free. (9)')
    expect(because('gift')).toBe('A gift is no sign of a building: no code asks this of it.')
    expect(because('parking')).toBe(
      'Nothing puts this in force for the use “parking” (in force by 1 for permanent-room).',
    )
  })

  test('are made once for a use, and share equal scopes', () => {
    const scope = { uses: ['permanent-room'], clause: '1', parts: ['raised', 'both'], sections: ['straight'] }
    const standard = load(
      table('invented', [
        row('invented/1/relief', 'raised.relief', length(1), { scope }),
        row('invented/2/height', 'raised.characterHeight', length(15), { scope }),
        row('invented/3/style', 'raised.style', { kind: 'one-of', pass: ['sans-serif'] }),
      ]),
    )
    const rows = rowsFor(standard, 'permanent-room')
    expect(rowsFor(standard, 'permanent-room')).toBe(rows)
    expect(rowsFor(standard, 'parking')).not.toBe(rows)
    expect(rowsFor(standard, 'permanent-room')).toBe(rows)
    expect(rows[0]?.scope).toEqual({ parts: ['raised', 'both'], sections: ['straight'] })
    expect(rows[1]?.scope).toBe(rows[0]?.scope)
    expect(rows[2]?.scope).toEqual({})
    expect(rows.map((each) => each.outOfScope)).toEqual([undefined, undefined, undefined])
    expect(rowsFor(standard, 'parking').every((each) => each.outOfScope?.verdict === 'not-applicable')).toBe(true)
  })

  test('that are not held against a sign have nothing but the reason', () => {
    const [made] = rowsFor(one(length(1)), 'permanent-room')
    if (!made) throw new Error('no row')
    const { requirement, limit } = made
    expect(notApplicable(requirement, limit, 'Because.')).toEqual({
      requirement,
      verdict: 'not-applicable',
      reason: null,
      because: 'Because.',
      limit,
      decisive: [],
      gaps: [],
      margin: null,
      unitSplit: null,
    })
    const before = notApplicable(requirement, limit, 'Because.')
    expect(notApplicable(requirement, limit, 'Because.')).toBe(before)
    expect(notApplicable(requirement, { ...limit, clause: 'other' }, 'Because.')).not.toBe(before)
  })

  test('keep a few reasons, and not all that ever were', () => {
    const [made] = rowsFor(one(length(1)), 'permanent-room')
    if (!made) throw new Error('no row')
    const because = (reason: string) => notApplicable(made.requirement, made.limit, reason)
    const first = because('First.')
    because('Second.')
    expect(because('First.')).toBe(first)
    for (let i = 0; i < 200; i++) expect(because(`Reason ${i}`).because).toBe(`Reason ${i}`)
    expect(because('First.')).not.toBe(first)
    expect(because('First.')).toEqual(first)
  })
})

// 2010 ADA Standards 703.2.5, Exception: 1/2 inch where the same text is given apart for sight
test('an exception is asked of the characters that were measured', () => {
  const sign = signOf(TWO_SETS, { 'lettering.1.characterHeight': 13, 'lettering.1.strokeThickness': 1.7 })
  const { measurement, limit } = judgementOf(sign, '703.2.5/character-height')
  expect([measurement?.observations[0]?.lettering, limit.min]).toEqual([1, 12.7])
  expect(measurer(sign, translator)('raised.characterHeight', { parts: ['raised'] }).observations).toHaveLength(1)
})
