import { describe, expect, test } from 'vitest'
import {
  baselines,
  extreme,
  heightOfBaseline,
  highest,
  levelAt,
  lowest,
  panelBottom,
  type Level,
} from '../../src/measure/heights.js'
import { raisedLettering } from '../../src/measure/lettering.js'
import { declared, missing, type Known } from '../../src/sign/sign.js'
import { drawn, drawnSign, rectangle } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'

/**
 * Heights above the finish floor, by plain arithmetic (datum: 2010 ADA Standards 703.4.1). The pump room's panel is 150 mm high with its lower
 * edge at 1300 mm, its baselines at y = 40 and 70.
 */

const SIGN = signOf(PUMP_ROOM)
const place = { element: 'lettering/0/line/0' }
const at = (up: number, basis: Known<number>['basis'] = 'declared'): Level => ({
  up: { value: up, basis },
  places: [place],
})
const somewhere = (between?: [number, number]): Level => ({
  up: missing('not read'),
  places: [{ element: 'lettering/0/line/1' }],
  ask: { pointer: '/p', ask: 'Where?' },
  ...(between && { between }),
})

describe('the extreme of several heights', () => {
  test('is counted from the floor, at its own places', () => {
    expect(extreme(SIGN, [at(80), at(110)], lowest)).toEqual({
      observations: [{ value: 1380, basis: 'declared', places: [place], context: { panelBottomHeight: 1300 } }],
      gaps: [],
    })
    expect(extreme(SIGN, [at(80), at(110)], highest).observations[0]?.value).toBe(1410)
    expect(extreme(SIGN, [at(80), at(80), at(90)], lowest).observations[0]?.places).toHaveLength(2)
  })

  test('is drawn where one of those that make it is', () => {
    expect(extreme(SIGN, [at(80, 'drawn'), at(110)], lowest).observations[0]?.basis).toBe('drawn')
    expect(extreme(SIGN, [at(80, 'drawn'), at(110)], highest).observations[0]?.basis).toBe('declared')
  })

  test('stands beside what is not known, unless that can be no further out', () => {
    expect(extreme(SIGN, [at(80), somewhere()], lowest).gaps).toEqual([
      {
        reason: 'missing-fact',
        why: 'not read',
        places: [{ element: 'lettering/0/line/1' }],
        ask: { pointer: '/p', ask: 'Where?' },
      },
    ])
    expect(extreme(SIGN, [at(80), somewhere([90, 110])], lowest).gaps).toEqual([])
    expect(extreme(SIGN, [at(80), somewhere([70, 110])], lowest).gaps).toHaveLength(1)
    expect(extreme(SIGN, [at(80), somewhere([60, 70])], highest).gaps).toEqual([])
    expect(extreme(SIGN, [at(80), somewhere([60, 90])], highest).gaps).toHaveLength(1)
    expect(extreme(SIGN, [somewhere([60, 90])], highest)).toMatchObject({ observations: [], gaps: [{}] })
  })

  test('without a place is asked for at the installation', () => {
    const nowhere: Level = { up: missing(), places: [] }
    expect(extreme(SIGN, [nowhere], lowest).gaps).toMatchObject([{ places: [{ element: 'installation' }] }])
  })

  test('is open without the height of the panel, whatever else is known', () => {
    const sign = signOf(PUMP_ROOM, { 'installation.panelBottomHeight': undefined })
    const { observations, gaps } = extreme(sign, [at(80), somewhere()], lowest)
    expect(observations).toEqual([])
    expect(gaps.map(({ ask }) => ask?.pointer)).toEqual(['/sign/installation/panelBottomHeight', '/p'])
    expect(panelBottom(sign)).toMatchObject({
      reason: 'missing-fact',
      places: [{ element: 'installation' }],
      ask: { unit: 'mm', pointer: '/sign/installation/panelBottomHeight' },
    })
    expect(panelBottom(SIGN)).toEqual(declared(1300))
  })
})

describe('a level', () => {
  test('is the way up from the lower edge', () => {
    expect(levelAt(40, drawn(0), declared(150), [place])).toEqual({
      up: { value: 110, basis: 'drawn' },
      places: [place],
    })
    expect(levelAt(40, declared(0), missing(), [place])).toMatchObject({
      up: { unknown: 'missing-fact' },
      places: [place],
      ask: { pointer: '/sign/panel/height' },
    })
  })
})

describe('baselines', () => {
  const ups = (levels: Level[]) => levels.map(({ up }) => ('value' in up ? up.value : up.unknown))

  test('are those of all lines, of characters and of braille', () => {
    const raised = raisedLettering(SIGN)
    expect(ups(baselines(SIGN, raised, []))).toEqual([110, 80])
    const [first, second] = ups(baselines(SIGN, [], SIGN.braille)).map(Number)
    expect(first).toBeCloseTo(150 - 95 - 4.8, 9)
    expect(second).toBeCloseTo(150 - 95 - 10.1 - 4.8, 9)
    expect(baselines(SIGN, raised, SIGN.braille)).toHaveLength(4)
  })

  test('that are not known lie within the outlines of their line, and are asked for', () => {
    const sign = drawnSign()
    const lettering = sign.lettering.map((set) => ({
      ...set,
      lines: set.lines.map((line) => ({ ...line, baseline: missing(), outlines: [rectangle(20, 30, 10, 20)] })),
    }))
    const [level] = baselines(sign, [{ lettering: lettering[0], n: 0 }], [])
    expect(level).toMatchObject({ between: [100, 120], ask: { pointer: '/sign/lettering/0/baseline' } })
    const bare = lettering[0].lines.map((line) => ({ ...line, outlines: [] }))
    const [open] = baselines(sign, [{ lettering: { ...lettering[0], lines: bare }, n: 3 }], [])
    expect(open).not.toHaveProperty('between')
    expect(open?.ask?.pointer).toBe('/sign/lettering/3/baseline')
    const [block] = sign.braille
    const lost = { ...block, lines: block.lines.map((line) => ({ ...line, baseline: missing() })) }
    expect(baselines(sign, [], [lost])[0]?.ask?.pointer).toBe('/sign/braille/0/origin')
  })

  test('of one set tell the height that limits hang on, or what keeps it from being known', () => {
    const scope = { parts: ['raised' as const, 'both' as const] }
    expect(heightOfBaseline({ sign: SIGN, scope }, 0)).toEqual({ value: 1410, basis: 'declared' })
    expect(heightOfBaseline({ sign: SIGN, scope }, 1)).toEqual([])
    const sign = signOf(PUMP_ROOM, { 'installation.panelBottomHeight': undefined })
    expect(heightOfBaseline({ sign, scope }, 0)).toMatchObject([
      { ask: { pointer: '/sign/installation/panelBottomHeight' } },
    ])
  })
})
