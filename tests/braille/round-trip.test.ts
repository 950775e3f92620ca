import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { compareCells, gradesOf, readingOf } from '../../src/braille/compare.js'
import { BRAILLE_CODES } from '../../src/sign/sign.js'
import { translator } from './translator.js'

/** Invented sign texts: a property, with no outside value in it. */
const word = fc.constantFrom(
  'room',
  'exit',
  'Stair',
  'women',
  'Men',
  'CONFERENCE',
  'Office',
  'storage',
  'in',
  'case',
  'of',
  'fire',
  'the',
  'first',
  'floor',
  'wing',
  'WEST',
  'Orchid',
  'House',
  'theater',
  'B',
  'A',
  'k',
  'Level',
  "Women's",
  'Co-op',
  'R&D',
  'Mother',
  'children',
  'Wi-Fi',
  'enough',
  'still',
  'USB',
  'be',
)
const number = fc.oneof(
  fc.integer({ min: 1, max: 9999 }).map(String),
  fc
    .tuple(fc.integer({ min: 1, max: 999 }), fc.constantFrom('A', 'B', 'a', 'j', 'K', 'BC', '-A', '.5', 'nd'))
    .map(([n, tail]) => `${n}${tail}`),
  fc.tuple(fc.constantFrom('A', 'B', 'P', 'G-'), fc.integer({ min: 1, max: 99 })).map(([letter, n]) => `${letter}${n}`),
)
const text = fc.array(fc.oneof(word, number), { minLength: 1, maxLength: 5 }).map((words) => words.join(' '))
const code = fc.constantFrom(...BRAILLE_CODES)
const RUNS = { numRuns: 200 }

describe('sign texts', () => {
  it('are read back as a text with the same letters and exactly the same cells', () => {
    fc.assert(
      fc.property(text, code, (print, grade) => {
        const cells = translator().toCells(print, grade)
        const back = translator().toText(cells, grade)
        expect(back).toBeDefined()
        expect(translator().toCells(back ?? '', grade)).toBe(cells)
        expect(back?.toLowerCase()).toBe(print.toLowerCase())
      }),
      RUNS,
    )
  })

  it('are what their own cells say, in any casing of the lettering, and in the grade they were written in', () => {
    fc.assert(
      fc.property(text, code, (print, grade) => {
        const cells = translator().toCells(print, grade)
        const verdict = compareCells(cells, print.toUpperCase(), translator())
        expect(verdict.saysTheSame).toBe(true)
        expect(verdict.grades).toContain(grade)
        expect(verdict.expected[grade]).toBeTypeOf('string')
        expect(gradesOf(cells, translator())).toContain(grade)
      }),
      RUNS,
    )
  })

  it('are said by damaged cells only where these read as the same text, in the grade that is named', () => {
    fc.assert(
      fc.property(text, fc.nat(), fc.integer({ min: 0, max: 5 }), (print, place, dot) => {
        const cells = Array.from(translator().toCells(print, 'ueb-contracted'))
        const at = place % cells.length
        const changed = String.fromCodePoint((cells[at]?.codePointAt(0) ?? 0) ^ (1 << dot))
        const damaged = [...cells.slice(0, at), changed, ...cells.slice(at + 1)].join('')
        // One dot makes ⠠⠅ of ⠰⠅: knowledge in one grade, the letter in the other.
        const reading = BRAILLE_CODES.filter((grade) => sameText(readingOf(damaged, grade, translator()), print))
        expect(compareCells(damaged, print, translator()).grades).toEqual(reading)
      }),
      { ...RUNS, examples: [['k', 0, 4]] },
    )
  })
})

const sameText = (read: string | undefined, print: string): boolean => read?.toLowerCase() === print.toLowerCase()
