import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isEmpty, meet, type Ends } from '../../src/windows/ends.js'
import { smallestExcluding } from '../../src/windows/excluding.js'

const isPossible = (some: readonly Ends[]): boolean => !isEmpty(some.reduce(meet, {}))

describe('the smallest sets that exclude each other', () => {
  it('are none when all can be had together', () => {
    expect(smallestExcluding([{ min: 1, max: 3 }, { min: 2 }], isPossible)).toEqual([])
  })

  it('are all the pairs, of intervals', () => {
    const [low, other, high] = [{ max: 1 }, { max: 2 }, { min: 3 }]
    expect(smallestExcluding([low, other, high], isPossible)).toEqual([
      [low, high],
      [other, high],
    ])
  })

  it('may be three, of sets of kinds', () => {
    const sets = ['ab', 'bc', 'ca']
    const share = (some: readonly string[]) => [...'abc'].some((kind) => some.every((set) => set.includes(kind)))
    expect(smallestExcluding(sets, share)).toEqual([sets])
  })

  // Helly's theorem in one dimension (E. Helly, 1923).
  it('are never more than pairs, of any intervals', () => {
    const interval = fc
      .tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 20 }))
      .map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) }))
    fc.assert(
      fc.property(fc.array(interval, { minLength: 2, maxLength: 7 }), (intervals) => {
        const sets = smallestExcluding(intervals, isPossible)
        expect(sets.length === 0).toBe(isPossible(intervals))
        for (const set of sets) expect(set).toHaveLength(2)
      }),
      { numRuns: 200 },
    )
  })
})
