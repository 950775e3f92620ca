import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { planDots } from '../../../src/make/dot-plan/plan.js'
import { DOT, HEAD, MACHINE, picture, points } from './pictures.js'
import { collisions, type SimulatedHead } from './simulator.js'

/** No plan lets the head stand over a laid dot, by a simulator that shares nothing with the planner. All heads are invented. */

const plan = (dots: readonly [number, number][], head: SimulatedHead) =>
  planDots({ dots: points(dots), of: 'points' }, { head, machine: MACHINE, dot: DOT })

/** Of each, the body or the tip reaches to one side at less than the lift. */
const HEADS: Record<string, SimulatedHead> = {
  'straight down': HEAD,
  'in from the right': { ...HEAD, approach: { angle: 0, length: 4, height: 1 } },
  'in from above left': { ...HEAD, approach: { angle: -130, length: 7, height: 2.5 } },
  'a body to the right': { ...HEAD, bodyClearance: 1, bodyDiameter: 6, offset: { x: 4.2, y: 0 } },
  'a body below': { ...HEAD, bodyClearance: 2, bodyDiameter: 8, offset: { x: 0, y: 5.5 } },
  'a body to the right, in from the right': {
    ...HEAD,
    bodyClearance: 2,
    bodyDiameter: 5,
    offset: { x: 4, y: 1 },
    approach: { angle: 10, length: 3, height: 1 },
  },
}

const CASES = Object.entries(HEADS)

describe('the simulator', () => {
  it.each(CASES.slice(1))('finds the head over laid dots in a wrong order: %s', (_, head) => {
    const wrong = [...plan(picture(60), head).sequence].reverse()
    expect(collisions(wrong, head, DOT.baseDiameter).length).toBeGreaterThan(0)
  })

  it('finds one dot under one body, worked out by hand', () => {
    // Set at (0, 0), a body of radius 3 with its middle 4 to the right covers a dot of radius 0.775 at (7, 0), not at (10, 0).
    const head = { ...HEAD, bodyClearance: 1, bodyDiameter: 6, offset: { x: 4, y: 0 } }
    const far: [number, number] = [10, 0]
    const near: [number, number] = [7, 0]
    expect(collisions([near, far, [0, 0]], head, DOT.baseDiameter)).toEqual([{ setting: 2, over: 0, part: 'body' }])
  })
})

describe('a plan', () => {
  it.each(CASES)('of a picture keeps the head off laid dots: %s', (_, head) => {
    const { sequence, warnings } = plan(picture(150), head)
    expect(warnings).toEqual([])
    expect(collisions(sequence, head, DOT.baseDiameter)).toEqual([])
  })

  it('names the pairs for which no order helps, and no others collide', () => {
    // The body hangs low all round the tip: neighbours are under it whichever is set first.
    const head = { ...HEAD, bodyClearance: 1, bodyDiameter: 6, offset: { x: 1, y: 0 } }
    const { sequence, warnings } = plan(picture(24), head)
    const [warning] = warnings.filter(({ kind }) => kind === 'body-over-dot')
    const named = new Set<string>()
    for (let i = 0; i < warning.dots.length; i += 2)
      named.add([warning.dots[i], warning.dots[i + 1]].sort((a, b) => a - b).join(' '))
    const hits = collisions(sequence, head, DOT.baseDiameter).map(({ setting, over }) => `${over} ${setting}`)
    expect(warning.count).toBeLessThanOrEqual(20)
    expect(hits.sort()).toEqual([...named].sort())
  })

  it('gives up one pair of a ring, and says so', () => {
    // The tip comes in from the left, the body hangs to the right: in a row each dot would have to be set before its neighbours.
    const head = {
      ...HEAD,
      bodyClearance: 1.5,
      bodyDiameter: 2,
      offset: { x: 6, y: 0 },
      approach: { angle: 180, length: 3, height: 2.5 },
    }
    const row = Array.from({ length: 8 }, (_, i): [number, number] => [i * 2.4, 0])
    const { sequence, warnings } = plan(row, head)
    const ring = warnings.find(({ kind }) => kind === 'ring')
    const hits = collisions(sequence, head, DOT.baseDiameter)
    expect(hits.length).toBeGreaterThan(0)
    expect(ring?.count).toBe(hits.length)
  })

  it('keeps the head off laid dots for any dots and heads, but for the pairs that it names', () => {
    const dot = fc
      .tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }))
      .map(([x, y]): [number, number] => [x, y])
    const head = fc.record({
      offset: fc.record({ x: fc.integer({ min: -6, max: 6 }), y: fc.integer({ min: -6, max: 6 }) }),
      bodyDiameter: fc.integer({ min: 2, max: 12 }),
      bodyClearance: fc.integer({ min: 1, max: 3 }),
      approach: fc.option(
        fc.record({
          angle: fc.integer({ min: -180, max: 180 }),
          length: fc.integer({ min: 1, max: 8 }),
          height: fc.constantFrom(0.5, 1, 2.5),
        }),
        { nil: undefined },
      ),
    })
    fc.assert(
      fc.property(
        fc.uniqueArray(dot, { minLength: 1, maxLength: 14, selector: String }),
        head,
        (dots, { approach, ...sizes }) => {
          const whole: SimulatedHead = { ...HEAD, ...sizes, ...(approach && { approach }) }
          const { sequence, warnings } = plan(dots, whole)
          const told = warnings
            .filter(({ kind }) => ['tip-over-dot', 'body-over-dot', 'ring'].includes(kind))
            .reduce((sum, { count }) => sum + count, 0)
          expect(sequence.map(String).sort()).toEqual(dots.map(String).sort())
          expect(collisions(sequence, whole, DOT.baseDiameter).length).toBeLessThanOrEqual(told)
        },
      ),
      { numRuns: 60 },
    )
  })
})
