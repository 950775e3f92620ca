import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Finding } from '../../src/report/finding-schema.js'
import { marginInShort, measuredInShort } from '../../src/report/in-short.js'
import { sampleReport } from './sample.js'

/** Cell spacing: 0.241 in (6.1 mm) to 0.300 in (7.6 mm), 2010 ADA Standards, Table 703.3.1; found values are invented. */

const MIN = 0.241 * 25.4
const MAX = 0.3 * 25.4

const cellSpacing = (changes: Partial<Finding>): Finding => {
  const found = sampleReport().findings.find(({ requirement }) => requirement.endsWith('cell-spacing'))
  if (!found) throw new Error('the sample has the row')
  return { ...found, ...changes }
}
const found = (min: number, max: number): Finding => {
  const margin = Math.min(min - MIN, MAX - max)
  const { measured, ...rest } = cellSpacing({})
  return { ...rest, margin, measured: measured && { ...measured, value: (min + max) / 2, min, max } }
}

describe('a value in a cell', () => {
  it('is the single one that decided', () => {
    expect(measuredInShort(found(5.8, 7))).toBe('5.80 mm (0.228 in), the worst of 3')
    expect(measuredInShort(found(6.5, 8))).toBe('8.00 mm (0.315 in), the worst of 3')
    expect(measuredInShort(cellSpacing({ measured: null }))).toBe('nothing measured')
  })

  it('is a word where it is a kind, a yes or no', () => {
    const { measured } = cellSpacing({})
    const of = (value: string | boolean) => cellSpacing({ measured: measured && { ...measured, value } })
    expect(measuredInShort(of('latch'))).toBe('on the latch side of the door')
    expect(measuredInShort(of(false))).toBe('no')
    expect(measuredInShort(of('x'.repeat(100)))).toHaveLength(61)
  })

  it('never reads as keeping a limit that it misses, however little', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1, noNaN: true }), (miss) => {
        const shown = measuredInShort(found(MIN - miss, 7))
        expect(Number.parseFloat(shown)).toBeLessThan(MIN)
      }),
      { numRuns: 100 },
    )
  })
})

describe('a margin in a cell', () => {
  it('has its sign and its unit', () => {
    expect(marginInShort(cellSpacing({ margin: -0.3214 }))).toBe('-0.321 mm')
    expect(marginInShort(cellSpacing({ margin: 0.5 }))).toBe('+0.500 mm')
    expect(marginInShort(cellSpacing({ margin: null }))).toBe('–')
    const share = sampleReport().findings.find(({ requirement }) => requirement.endsWith('stroke-thickness'))
    // 0.16 of the height against 15 percent at most, tests/report/sample.ts.
    expect(share && marginInShort(share)).toBe('-1.000 percentage points')
  })

  it('never reads as nothing where there is a miss', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1, noNaN: true }), (miss) => {
        expect(Number.parseFloat(marginInShort(cellSpacing({ margin: -miss })))).toBeLessThan(0)
      }),
      { numRuns: 100 },
    )
  })
})
