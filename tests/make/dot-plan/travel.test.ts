import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { entryOf } from '../../../src/make/dot-plan/head.js'
import { planDots } from '../../../src/make/dot-plan/plan.js'
import { exactTravel } from './exact.js'
import { DOT, HEAD, leftToRight, MACHINE, numbers, picture, points, travelOf } from './pictures.js'

/** The travel of plans: against an exact solver on few dots, against bounds and the columns of common practice on many. */

const SETTINGS = { head: HEAD, machine: MACHINE, dot: DOT }
const FROM_RIGHT = { ...HEAD, approach: { angle: 0, length: 4, height: 1 } }
const plan = (dots: readonly [number, number][], settings: typeof SETTINGS = SETTINGS) =>
  planDots({ dots: points(dots), of: 'points' }, settings)

const dot = fc
  .tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 60 }))
  .map(([x, y]): [number, number] => [x, y])
const fewDots = (most: number) => fc.uniqueArray(dot, { minLength: 2, maxLength: most, selector: String })

const NOISE = 1e-6

describe('few dots, against an exact solver', () => {
  it('travel no farther than need be, within a hundredth, and the bound never lies above', () => {
    const next = numbers(7)
    let [ours, exact] = [0, 0]
    for (let k = 0; k < 25; k++) {
      const dots = Array.from({ length: 9 }, (): [number, number] => [next() * 60, next() * 60])
      const { travel, travelLowerBound } = plan(dots)
      const least = exactTravel(dots)
      expect(travel).toBeGreaterThanOrEqual(least - NOISE)
      expect(travelLowerBound).toBeLessThanOrEqual(least + NOISE)
      ours += travel
      exact += least
    }
    expect(ours / exact).toBeLessThan(1.01)
  })

  it('with an approach from the side, too: never below the least that its rules allow', () => {
    const entry = entryOf(FROM_RIGHT)
    // The tip comes in over 4 mm from the right: what lies there must be laid later. The rule is written out a second time.
    const mustWait = (later: [number, number], first: [number, number]) => {
      const along = Math.min(4, Math.max(0, later[0] - first[0]))
      const off = Math.hypot(later[0] - first[0] - along, later[1] - first[1])
      return off < HEAD.tipDiameter / 2 + DOT.baseDiameter / 2
    }
    const next = numbers(3)
    let [ours, exact] = [0, 0]
    for (let k = 0; k < 15; k++) {
      const cells = picture(40, k + 1)
        .filter(() => next() < 0.5)
        .slice(0, 8)
      const { travel, travelLowerBound } = plan(cells, { ...SETTINGS, head: FROM_RIGHT })
      const least = exactTravel(cells, [entry.x, entry.y], mustWait)
      expect(travel).toBeGreaterThanOrEqual(least - NOISE)
      expect(travelLowerBound).toBeLessThanOrEqual(least + NOISE)
      ours += travel
      exact += least
    }
    expect(ours / exact).toBeLessThan(1.03)
  })

  it('for any few dots the bound holds', () => {
    fc.assert(
      fc.property(fewDots(7), (dots) => {
        const { travel, travelLowerBound } = plan(dots)
        const least = exactTravel(dots)
        expect(travelLowerBound).toBeLessThanOrEqual(least + NOISE)
        expect(travel).toBeGreaterThanOrEqual(least - NOISE)
      }),
      { numRuns: 40 },
    )
  })
})

describe('the columns of common practice', () => {
  it.each([1, 2, 37, 400, 3000])('are never quicker: %i dots of a picture', (count) => {
    const dots = picture(count)
    const { travel, baselineTravel, seconds, baselineSeconds, sequence, baselineAllowed } = plan(dots)
    expect(baselineAllowed).toBe(true)
    expect(baselineTravel).toBeCloseTo(travelOf(leftToRight(dots)), 6)
    expect(travel).toBeCloseTo(travelOf(sequence), 6)
    expect(travel).toBeLessThanOrEqual(baselineTravel)
    expect(seconds).toBeLessThanOrEqual(baselineSeconds)
  })

  it('are never quicker for any dots, with ramps and an approach from the right', () => {
    const settings = { ...SETTINGS, head: FROM_RIGHT, machine: { ...MACHINE, acceleration: 200 } }
    fc.assert(
      fc.property(fewDots(20), (dots) => {
        const { seconds, baselineSeconds, baselineAllowed } = plan(dots, settings)
        if (baselineAllowed) expect(seconds).toBeLessThanOrEqual(baselineSeconds)
      }),
      { numRuns: 40 },
    )
  })

  it('are not allowed where they would draw the tip over laid dots, and that is said', () => {
    const head = { ...HEAD, approach: { angle: 180, length: 4, height: 1 } }
    expect(plan(picture(50), { ...SETTINGS, head }).baselineAllowed).toBe(false)
    expect(plan(picture(50), { ...SETTINGS, head: FROM_RIGHT }).baselineAllowed).toBe(true)
  })
})

describe('many dots', () => {
  it('travel within a fifth of the bound, and a third of the columns', () => {
    const { travel, travelLowerBound, travelGap, baselineTravel } = plan(picture(5000))
    expect(travelLowerBound).toBeGreaterThan(0)
    expect(travelGap).toBeCloseTo(travel / travelLowerBound - 1, 9)
    expect(travelGap).toBeLessThan(0.2)
    expect(travel).toBeLessThan(baselineTravel / 3)
  })

  it('have the same order each time they are asked', () => {
    expect(plan(picture(300)).sequence).toEqual(plan(picture(300)).sequence)
  })

  it('may stand in one line, or in one place', () => {
    const line = Array.from({ length: 30 }, (_, i): [number, number] => [(i * 7) % 30, 0])
    expect(plan(line).travel).toBeCloseTo(29, 9)
    expect(plan(line).travelLowerBound).toBeCloseTo(29, 6)
    const heap = plan([
      [5, 5],
      [5, 5],
      [5, 5],
    ])
    expect(heap).toMatchObject({ travel: 0, travelLowerBound: 0, travelGap: null })
    expect(heap.warnings.map(({ kind, count }) => [kind, count])).toEqual([
      ['dots-merge', 3],
      ['tip-over-dot', 3],
    ])
  })
})
