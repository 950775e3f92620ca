import { describe, expect, it } from 'vitest'
import { settleByWord } from '../../../src/recognise/letters/context.js'
import { UNRECOGNISED, type Decision } from '../../../src/recognise/letters/decide.js'

/** A character that looks like just one. */
const sure = (reading: string): Decision => ({ readings: [reading], shares: [1], confidence: 1, distance: 3 })
const settled = (word: Decision[]) => settleByWord(word, word).map(({ readings }) => readings.join(''))

// Figures of the old style are as high as small letters: their 0 is the ring that o is (Gelasio, and other faces by eye).
describe('a small ring', () => {
  it('may be a figure in a word without other small letters, however many rings it has', () => {
    expect(settled([UNRECOGNISED, sure('o'), sure(':'), UNRECOGNISED, sure('o')])).toEqual(['', 'o0', ':', '', 'o0'])
    expect(settled([sure('5'), sure('o'), sure('o')])).toEqual(['5', 'o0', 'o0'])
  })
  it('is a letter beside small letters, and alone', () => {
    expect(settled([sure('R'), sure('o'), sure('o'), sure('m')])).toEqual(['R', 'o', 'o', 'm'])
    expect(settled([sure('o')])).toEqual(['o'])
  })
})
