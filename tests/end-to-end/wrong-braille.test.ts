import { describe, expect, test } from 'vitest'
import { checked, finding, kiln, PRODUCT } from './kiln.js'

/** Where braille is wrong: the cell, what it is and what it should be. The words are invented; cells by Unified English Braille. */

describe('a wrong cell', () => {
  const wording = finding(checked(kiln({ cells: '⠅⠂⠇⠝⠀⠗⠕⠕⠍' }), PRODUCT), '703.2/wording')

  test('is named with its dots, beside what the cells read', () => {
    expect(wording.verdict).toBe('fail')
    expect(wording.message).toContain('cell 2 is ⠂ (dot 2) and should be ⠊ (dots 2 4)')
    // ⠂ within a word is the contraction “ea” (The Rules of Unified English Braille, 10.6)
    expect(wording.message).toContain('read “kealn room”')
  })

  test('is the first place of the finding, with its box on the drawing', () => {
    const [first] = wording.where
    expect(first?.element).toBe('braille/0/line/0/cell/1')
    // The drawing puts dot 1 of the first cell at 20, 65 and the cells 6.9 mm apart: the cell begins a dot's radius before that.
    expect(first?.box?.x).toBeCloseTo(20 + 6.9 - 0.775, 1)
    expect(first?.box?.y).toBeCloseTo(65 - 0.775, 1)
    expect(first?.source?.line).toBeGreaterThan(0)
  })
})

test('braille that is not contracted names the first cell that would be', () => {
  const row = finding(checked(kiln({ text: 'THE ROOM', cells: '⠞⠓⠑⠀⠗⠕⠕⠍' }), PRODUCT), '703.3/contracted')
  expect(row.verdict).toBe('fail')
  // “the” is ⠮ (The Rules of Unified English Braille, 10.3)
  expect(row.message).toContain('cell 1 is ⠞ (dots 2 3 4 5) and should be ⠮ (dots 2 3 4 6)')
})

test('of braille that says something else only the first cells are named', () => {
  const row = finding(checked(kiln({ cells: '⠃⠁⠗⠝⠀⠙⠕⠕⠗⠎' }), PRODUCT), '703.2/wording')
  expect(row.message).toMatch(/; and \d+ more\./)
  expect(row.where.filter(({ element }) => element.includes('/cell/')).length).toBeLessThanOrEqual(3)
})

test('braille that says the text names no cell', () => {
  const row = finding(checked(kiln(), PRODUCT), '703.2/wording')
  expect(row.verdict).toBe('pass')
  expect(row.message).not.toContain('should be')
})
