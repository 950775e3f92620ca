import { describe, expect, test } from 'vitest'
import {
  basisOf,
  gapOf,
  installationPlace,
  join,
  nothing,
  observe,
  pointerOf,
  ratio,
  take,
} from '../../src/measure/facts.js'
import { declared, missing, type Known } from '../../src/sign/sign.js'
import { drawnSign } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'

/** From facts to observations and gaps. Uncertainties by JCGM 100:2008, 5.1.2; all values are invented. */

const PLACE = { element: 'panel' }
const ELSEWHERE = { element: 'lettering/0' }
const ASK = { pointer: '/sign/panel/width', ask: 'How wide is it?' }
const one = (value: number) => observe(declared(value), PLACE)

describe('one fact', () => {
  test('that is known is an observation with all that is known of it', () => {
    const fact: Known<number> = {
      value: 5,
      basis: 'drawn',
      min: 4,
      max: 6,
      count: 3,
      uncertainty: 0.1,
      method: 'by eye',
      places: [ELSEWHERE],
      between: { least: ['A', 'B'], most: ['C', 'D'] },
    }
    const { method, ...rest } = fact
    expect(observe(fact, PLACE)).toEqual({ ...rest, remark: method })
    expect(observe(declared(5), PLACE)).toEqual({ value: 5, basis: 'declared', places: [PLACE] })
    expect(observe({ ...declared(5), places: [] }, PLACE).places).toEqual([PLACE])
    expect(observe({ value: 'matte', basis: 'declared', min: 'a', max: 'b' }, PLACE)).toEqual({
      value: 'matte',
      basis: 'declared',
      places: [PLACE],
    })
  })

  test('that is not is a gap, with what would decide it', () => {
    expect(take(missing('why'), PLACE, ASK)).toEqual({
      observations: [],
      gaps: [{ reason: 'missing-fact', why: 'why', places: [PLACE], ask: ASK }],
    })
    expect(gapOf(missing('why'), PLACE)).toEqual({ reason: 'missing-fact', why: 'why', places: [PLACE] })
    expect(take(declared(5), PLACE, ASK)).toEqual({ observations: [one(5)], gaps: [] })
  })
})

describe('several findings', () => {
  const gap = { observations: [], gaps: [gapOf(missing('why'), PLACE)] }
  const value = { observations: [one(1)], gaps: [] }

  test('are joined in order', () => {
    expect(join([value, gap, nothing('none')], 'x')).toEqual({ observations: [one(1)], gaps: gap.gaps })
    expect(join([value], 'x')).toBe(value)
    expect(join([gap], 'x')).toBe(gap)
  })

  test('of nothing say why: the first that says it', () => {
    expect(join([nothing('none'), nothing('other')], 'x')).toEqual(nothing('none'))
    expect(join([{ observations: [], gaps: [] }, nothing('other')], 'x')).toEqual(nothing('other'))
    expect(join([{ observations: [], gaps: [] }], 'x')).toEqual(nothing('x'))
    expect(join([], 'x')).toEqual(nothing('x'))
  })
})

test('what follows from several facts is drawn when one is, else measured when one is', () => {
  const [said, seen, read] = (['declared', 'drawn', 'measured'] as const).map((basis) => ({ basis }))
  expect(basisOf(said, read, seen)).toBe('drawn')
  expect(basisOf(said, read)).toBe('measured')
  expect(basisOf(said)).toBe('declared')
  expect(basisOf()).toBe('declared')
})

describe('one length over another', () => {
  const of = (above: Partial<Known<number>>, below: Partial<Known<number>> = {}) =>
    ratio(
      { value: 3, basis: 'declared', ...above },
      { value: 20, basis: 'declared', ...below },
      'characterHeight',
      PLACE,
    )

  test('is their quotient, and tells what it is of', () => {
    expect(of({})).toEqual({
      value: 3 / 20,
      basis: 'declared',
      places: [PLACE],
      context: { characterHeight: 20, length: 3 },
    })
    expect(of({ places: [ELSEWHERE] }).places).toEqual([ELSEWHERE])
    expect(of({ places: [] }).places).toEqual([PLACE])
    expect(of({}, { basis: 'drawn' }).basis).toBe('drawn')
    expect(of({ count: 4, between: { least: ['A', 'B'], most: ['C', 'D'] } })).toMatchObject({
      count: 4,
      between: { least: ['A', 'B'] },
    })
  })

  test('has the uncertainties of both', () => {
    expect(of({ uncertainty: 0.2 }).uncertainty).toBeCloseTo(0.2 / 20, 15)
    expect(of({}, { uncertainty: 0.5 }).uncertainty).toBeCloseTo((3 / 20) * (0.5 / 20), 15)
    expect(of({ uncertainty: 0.2 }, { uncertainty: 0.5 }).uncertainty).toBeCloseTo(
      Math.hypot(0.2 / 20, (3 / 20) * (0.5 / 20)),
      15,
    )
    expect(of({})).not.toHaveProperty('uncertainty')
  })

  test('has the extremes of the length above, and below it those of a gauge only', () => {
    expect(of({ min: 2, max: 4 })).toMatchObject({ min: 2 / 20, max: 4 / 20 })
    expect(of({ min: 2 })).not.toHaveProperty('max')
    expect(of({ max: 4 })).not.toHaveProperty('min')
    expect(of({}, { min: 18, max: 24 })).not.toHaveProperty('min')
    expect(of({}, { min: 18, max: 24, basis: 'measured' })).toMatchObject({ min: 3 / 24, max: 3 / 18 })
    expect(of({ min: 2, max: 4 }, { min: 18, max: 24, basis: 'measured' })).toMatchObject({ min: 2 / 24, max: 4 / 18 })
    expect(of({}, { basis: 'measured' })).not.toHaveProperty('min')
    expect(of({}, { basis: 'measured', max: 24 })).not.toHaveProperty('max')
  })
})

// RFC 6901: where a client adds what is missing
test('a pointer goes to the thing that was described, or to the list under its number', () => {
  expect(pointerOf({ element: 'lettering/0', pointer: '/sign/lettering/4' }, 'lettering', 2, 'relief')).toBe(
    '/sign/lettering/4/relief',
  )
  expect(pointerOf({ element: 'lettering/0' }, 'lettering', 2, 'relief')).toBe('/sign/lettering/2/relief')
  expect(installationPlace(signOf(PUMP_ROOM))).toEqual({ element: 'installation', pointer: '/sign/installation' })
  const sign = drawnSign()
  const bare = { ...sign, panel: { ...sign.panel, place: { element: 'panel' } } }
  expect(installationPlace(bare)).toEqual({ element: 'installation' })
})
