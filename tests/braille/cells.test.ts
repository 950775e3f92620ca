import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  blockBox,
  cellOfDots,
  cellWords,
  dotPositions,
  dotsOfCell,
  dotsOfLines,
  isCells,
  tidyCells,
} from '../../src/braille/cells.js'

/** Outside source: The Unicode Standard, Braille Patterns: the character names list the raised dots. */
describe('dots and cells', () => {
  it.each([
    ['\u2800', []],
    ['\u2801', [1]],
    ['\u2813', [1, 2, 5]],
    ['\u281a', [2, 4, 5]],
    ['\u2820', [6]],
    ['\u283c', [3, 4, 5, 6]],
    ['\u283f', [1, 2, 3, 4, 5, 6]],
  ])('%s has dots %j', (cell, dots) => {
    expect(dotsOfCell(cell)).toEqual(dots)
    expect(cellOfDots(dots)).toBe(cell)
  })

  it('refuses what is no six-dot cell', () => {
    for (const cell of ['\u2840', 'a', ' ']) expect(() => dotsOfCell(cell)).toThrow(RangeError)
    for (const dot of [0, 7, 1.5]) expect(() => cellOfDots([dot])).toThrow(RangeError)
    expect(isCells('⠗⠀⠼')).toBe(true)
    expect(isCells('⠗ ⠼')).toBe(false)
  })

  it('splits and tidies', () => {
    expect(cellWords('⠀⠗⠕⠀⠀⠼⠃ ⠁')).toEqual(['⠗⠕', '⠼⠃', '⠁'])
    expect(tidyCells('⠀⠗⠕⠀⠀⠼⠃ ')).toBe('⠗⠕⠀⠼⠃')
  })
})

/**
 * Outside source of the order of the dots: NLS Specification 800, 3.2 (two columns of three; distances centre to centre). Spacings: within the
 * printed windows of 2010 ADA Standards, 703.3.1.
 */
describe('places of dots', () => {
  const place = { origin: { x: 20, y: 95 }, dotSpacing: 2.4, cellSpacing: 6.9, lineSpacing: 10.1 }

  it('puts dot 1 of the first cell at the origin, x to the right, y down', () => {
    expect(dotPositions(['⠃⠀⠸'], place)).toEqual([
      { x: 20, y: 95 },
      { x: 20, y: 97.4 },
      { x: 20 + 13.8 + 2.4, y: 95 },
      { x: 20 + 13.8 + 2.4, y: 97.4 },
      { x: 20 + 13.8 + 2.4, y: 99.8 },
    ])
    expect(dotsOfLines(['⠁', '⠁⠁'], place)).toEqual([
      [{ x: 20, y: 95 }],
      [
        { x: 20, y: 105.1 },
        { x: 26.9, y: 105.1 },
      ],
    ])
  })

  it('keeps every dot inside the block and raises as many as the cells have', () => {
    const line = fc
      .array(fc.integer({ min: 0, max: 63 }), { minLength: 1, maxLength: 12 })
      .map((bits) => String.fromCodePoint(...bits.map((b) => 0x2800 + b)))
    fc.assert(
      fc.property(fc.array(line, { maxLength: 4 }), (lines) => {
        const dots = dotPositions(lines, place)
        const box = blockBox(lines, place)
        expect(dots).toHaveLength(Array.from(lines.join('')).flatMap((cell) => dotsOfCell(cell)).length)
        for (const dot of dots) {
          expect(dot.x).toBeGreaterThanOrEqual(box.x)
          expect(dot.x).toBeLessThanOrEqual(box.x + box.width + 1e-9)
          expect(dot.y).toBeLessThanOrEqual(box.y + box.height + 1e-9)
        }
      }),
      { numRuns: 50 },
    )
  })

  it('measures a block from centre to centre of full cells', () => {
    expect(blockBox(['⠁⠁⠁', '⠁'], place)).toEqual({ x: 20, y: 95, width: 2 * 6.9 + 2.4, height: 10.1 + 4.8 })
    expect(blockBox([], place)).toMatchObject({ width: 0, height: 0 })
  })
})
