import { beforeAll, describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import type { Translator } from '../../src/braille/translator.js'
import { readBraille } from '../../src/recognise/braille.js'
import { dotsOf } from '../../src/recognise/dots.js'
import { isKnown, type BrailleBlock, type Fact, type Known } from '../../src/sign/sign.js'
import { circleShape, dotPlaces, USUAL } from './dotted.js'

// Dots and runs of cells that are out of their places. Distances follow from the layout and the displacement alone; layout
// and displacements are invented. The limits that they break are those of the 2010 ADA Standards, Table 703.3.1.

let translator: Translator
beforeAll(() => {
  translator = createTranslator()
})

const LINE = '⠅⠊⠇⠝⠀⠗⠕⠕⠍'
const TURNS = { 'as it is': [1, 1], 'turned by half': [-1, -1] } as const

type Moved = (place: { x: number; y: number }, i: number) => { x: number; y: number }
function blockOf(moved: Moved, [sx, sy]: readonly [number, number] = [1, 1], line = LINE): BrailleBlock {
  const places = dotPlaces([line], USUAL)
    .map(moved)
    .map(({ x, y }) => circleShape(100 + sx * x, 100 + sy * y, USUAL.diameter))
  const found = readBraille(dotsOf(places).dots, { translator, expected: ['kiln room'], named: true })
  expect(found.blocks).toHaveLength(1)
  return found.blocks[0]
}
const known = <T>(fact: Fact<T>): Known<T> => {
  if (!isKnown(fact)) throw new Error(`unknown: ${fact.why}`)
  return fact
}
const shift =
  (index: number, dx: number, dy: number): Moved =>
  ({ x, y }, i) =>
    i === index ? { x: x + dx, y: y + dy } : { x, y }

describe.each(Object.entries(TURNS))('one dot out of its place, the block %s', (_, turn) => {
  // Dots of the line in order: k 1 3, i 2 4, l 1 2 3, n 1 3 4 5, r 1 2 3 5, o 1 3 5, o 1 3 5, m 1 3 4.
  it.each([
    ['the other dot of its cell is in the other column and row', 3, 0.6, 0, 'max', 3, 'cell/1/dot/4'],
    ['its cell has dots above and below on the left only', 20, 0.6, 0, 'max', 3, 'cell/7/dot/5'],
    ['nothing is in the other column', 1, 0.4, 0, 'min', 2, 'cell/0/dot/3'],
    ['it is one of three in a column', 5, 0.4, 0, 'min', 2, 'cell/2/dot/2'],
    ['its only neighbour is beside it', 23, 0, -0.4, 'max', 2.8, 'cell/8/dot/4'],
  ] as const)('makes another dot spacing and is named: %s', (_, dot, dx, dy, end, made, name) => {
    const block = blockOf(shift(dot, dx, dy), turn)
    const spacing = known(block.dotSpacing)
    expect(known(block.lines[0].cells).value).toBe(LINE)
    expect(spacing.value).toBeCloseTo(USUAL.dot, 2)
    if (end === 'max' || dy === 0) expect(spacing[end]).toBeCloseTo(made, 2)
    expect(spacing.places?.map((p) => p.element)).toContain(`braille/0/line/0/${name}`)
  })
})

describe('what is no displaced dot', () => {
  it('places rounded to a hundredth widen nothing', () => {
    const rounded = (v: number) => Math.round(v * 100) / 100
    for (const offset of [0.0013, 0.0049, 0.0071]) {
      const block = blockOf(({ x, y }) => ({ x: rounded(x + offset), y: rounded(y + offset) }))
      for (const fact of [block.dotSpacing, block.cellSpacing]) {
        const { value, min, max } = known(fact)
        expect(Math.abs((min ?? NaN) - value)).toBeLessThan(0.011)
        expect(Math.abs((max ?? NaN) - value)).toBeLessThan(0.011)
      }
    }
  })

  it('a cell that is moved as a whole keeps its dot spacing and changes its cell spacings', () => {
    const block = blockOf(({ x, y }) => ({ x: x > 40 && x < 48 ? x + 0.3 : x, y }))
    expect(known(block.dotSpacing).min).toBeCloseTo(USUAL.dot, 6)
    expect(known(block.dotSpacing).max).toBeCloseTo(USUAL.dot, 6)
    expect(known(block.cellSpacing).max).toBeCloseTo(USUAL.cell + 0.3, 2)
    expect(known(block.cellSpacing).min).toBeCloseTo(USUAL.cell - 0.3, 2)
  })
})

describe('a run of cells that is moved along its line', () => {
  it.each([
    [60, 1, 5],
    [60, 0.7, 5],
    [60, -1, 5],
    [65, 1.5, 6],
    [30, 1, 2],
    [30, -0.8, 2],
  ])('from %s mm on by %s mm is read, and the step at the break is one cell spacing', (from, by, cell) => {
    for (const turn of Object.values(TURNS)) {
      const block = blockOf(({ x, y }) => ({ x: x > from ? x + by : x, y }), turn)
      expect(known(block.lines[0].cells).value).toBe(LINE)
      const spacing = known(block.cellSpacing)
      expect(spacing.value).toBeCloseTo(USUAL.cell, 2)
      expect(by > 0 ? spacing.max : spacing.min).toBeCloseTo(USUAL.cell + by, 2)
      expect(by > 0 ? spacing.min : spacing.max).toBeCloseTo(USUAL.cell, 2)
      expect(known(block.dotSpacing).max).toBeCloseTo(USUAL.dot, 6)
      expect(spacing.places?.some((p) => p.element === `braille/0/line/0/cell/${cell}`)).toBe(true)
    }
  })

  it('is not read where what follows may be the one column of a cell or the other', () => {
    // After the break there are only left columns: moved by half the way between the columns, they may be either.
    const places = dotPlaces(['⠗⠕⠅⠁⠇⠇⠁⠅'], USUAL).map(({ x, y }) =>
      circleShape(x > 38 ? x + USUAL.dot / 2 : x, y, USUAL.diameter),
    )
    const found = readBraille(dotsOf(places).dots, { translator, expected: [], named: true })
    expect(found.blocks.flatMap((b) => b.lines.filter((l) => isKnown(l.cells)))).toEqual([])
    expect(found.unread).not.toEqual([])
  })
})
