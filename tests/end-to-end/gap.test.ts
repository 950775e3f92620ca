import { expect, test } from 'vitest'
import { checked, finding, kiln, PRODUCT } from './kiln.js'

/** Which characters stand too near or too far: the drawing moves one letter by `dx` (SVG 1.1, 10.5), so that it is known. Invented words. */

const moved = (dx: number) =>
  checked(
    kiln({ text: `KI<tspan dx="${dx}">L</tspan>N` }).replace('letter-spacing="2.2"', 'letter-spacing="3"'),
    PRODUCT,
  )

test('a gap that is too narrow is told with its two characters', () => {
  const row = finding(moved(-6), '703.2.7/character-spacing-min')
  expect(row.verdict).toBe('fail')
  expect(row.message).toMatch(/at its worst, between “I” and “L”, .* too little/)
})

test('a gap that is too wide in strokes as well', () => {
  const row = finding(moved(3), '703.2.7/character-spacing-max')
  expect(row.verdict).toBe('fail')
  expect(row.message).toMatch(/at its worst, between “I” and “L”/)
})
