import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { differencesOf, differenceWords } from '../../src/braille/differences.js'

/** Cells and their dots: The Unicode Standard, Braille Patterns. The words are invented. */

const told = (is: string, should: string) => differencesOf(is, should).map((one) => differenceWords(one))

describe('the cells that differ', () => {
  it.each([
    ['⠅⠂⠇⠝', '⠅⠊⠇⠝', ['cell 2 is ⠂ (dot 2) and should be ⠊ (dots 2 4)']],
    ['⠅⠇⠝', '⠅⠊⠇⠝', ['before cell 2 ⠊ (dots 2 4) is missing']],
    ['⠅⠊⠊⠇⠝', '⠅⠊⠇⠝', ['cell 3 is ⠊ (dots 2 4) and should not be there']],
    ['⠅⠊⠇', '⠅⠊⠇⠝', ['before cell 4 ⠝ (dots 1 3 4 5) is missing']],
    ['⠅⠊⠗', '⠅⠊⠀⠗', ['before cell 3 a blank is missing']],
  ])('%s for %s', (is, should, expected) => expect(told(is, should)).toEqual(expected))

  it('leave capital signs aside, unless nothing else differs', () => {
    expect(told('⠠⠅⠂⠇⠝', '⠅⠊⠇⠝')).toEqual(['cell 3 is ⠂ (dot 2) and should be ⠊ (dots 2 4)'])
    expect(told('⠠⠅⠊', '⠅⠊')).toEqual(['cell 1 is ⠠ (dot 6) and should not be there'])
  })

  const cells = fc.string({ unit: fc.constantFrom('⠁', '⠃', '⠉', '⠀'), maxLength: 8 })

  it('are as few as can be, and turn the one run into the other', () => {
    fc.assert(
      fc.property(cells, cells, (is, should) => {
        const found = differencesOf(is, should)
        expect(found.length === 0).toBe(is === should)
        expect(found.length).toBeLessThanOrEqual(Math.max(is.length, should.length))
        let [made, from] = ['', 0]
        for (const { at, is: there, should: wanted } of found) {
          made += is.slice(from, at) + (wanted ?? '')
          from = at + (there === undefined ? 0 : 1)
        }
        expect(made + is.slice(from)).toBe(should)
      }),
      { numRuns: 300 },
    )
  })
})
