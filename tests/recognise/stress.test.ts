import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import { readSign } from '../../src/check.js'
import { MOST_DOTS_IN_BLOCK } from '../../src/recognise/blocks.js'
import { readBraille, type BrailleOptions } from '../../src/recognise/braille.js'
import { dotsOf } from '../../src/recognise/dots.js'
import { isKnown, type BrailleBlock } from '../../src/sign/sign.js'
import { QUANTITIES, underNoise } from '../accuracy/noise.js'
import { seeded, type Random } from '../accuracy/random.js'
import { circleShape, dotPlaces, USUAL } from './dotted.js'

/** Dots under stress. Cells are what the translator writes, whose own tests name their sources; sizes are invented. */

const translator = createTranslator()
type Place = { x: number; y: number }
const read = (places: readonly Place[], more: Partial<BrailleOptions> = {}) =>
  readBraille(dotsOf(places.map(({ x, y }) => circleShape(x, y, USUAL.diameter))).dots, {
    translator,
    expected: [],
    named: false,
    ...more,
  })
const cellsOf = (blocks: readonly BrailleBlock[]) =>
  blocks.map((b) => b.lines.map(({ cells }) => (isKnown(cells) ? cells.value : null)))

// The bound is that of H. Cramér (1946) and C. R. Rao (1945), computed in tests/accuracy/noise.ts. The root mean square of so many
// errors is itself known to about 9 %: a fit that wastes a third of what the dots tell would show.
describe('under noise, spacings and rotation are as exact as least squares allows', () => {
  it.each([0.02, 0.05])('%s mm', (sigma) => {
    const { signs, measured, wrong, ratio } = underNoise(sigma, 60, translator)
    expect({ measured, wrong }).toEqual({ measured: signs, wrong: 0 })
    for (const quantity of QUANTITIES) {
      expect(ratio[quantity], quantity).toBeGreaterThan(0.7)
      expect(ratio[quantity], quantity).toBeLessThan(1.4)
    }
  })
})

describe('blocks of different spacings on one sign', () => {
  const FINE = { ...USUAL, dot: 2.3, cell: 6.1, line: 10 }
  const WIDE = { ...USUAL, dot: 2.5, cell: 7.6, line: 10.2 }
  it.each([
    ['one below the other', { ...WIDE, y: USUAL.y + 30 }],
    ['beside each other', { ...WIDE, x: USUAL.x + 80 }],
  ])('%s are each measured by their own dots', (_, second) => {
    const { blocks, unread } = read([...dotPlaces(['⠛⠇⠁⠵⠑⠀⠇⠁⠃'], FINE), ...dotPlaces(['⠏⠁⠉⠅⠬⠀⠗⠕⠕⠍'], second)])
    expect(unread).toEqual([])
    expect(cellsOf(blocks)).toEqual([['⠛⠇⠁⠵⠑⠀⠇⠁⠃'], ['⠏⠁⠉⠅⠬⠀⠗⠕⠕⠍']])
    for (const [block, layout] of [
      [blocks[0], FINE],
      [blocks[1], WIDE],
    ] as const) {
      expect(isKnown(block.dotSpacing) && block.dotSpacing.value).toBeCloseTo(layout.dot, 6)
      expect(isKnown(block.cellSpacing) && block.cellSpacing.value).toBeCloseTo(layout.cell, 6)
    }
  })
})

describe('fields of dots', () => {
  /** Cells of all six dots, so many, 60 in a line. */
  const field = (dots: number): Place[] => {
    const cells = Math.ceil(dots / 6)
    const lines = Array.from({ length: Math.ceil(cells / 60) }, (_, i) => '⠿'.repeat(Math.min(60, cells - 60 * i)))
    return dotPlaces(lines, USUAL).slice(0, dots)
  }
  it('are read up to the limit of a block', () => {
    const { blocks } = read(field(MOST_DOTS_IN_BLOCK), { named: true })
    expect(blocks[0].lines.reduce((sum, line) => sum + line.dots.length, 0)).toBe(MOST_DOTS_IN_BLOCK)
  })
  it.each([MOST_DOTS_IN_BLOCK + 1, 100_000])(
    'of %d dots are left open, with the limit, and nothing is read',
    (count) => {
      const { blocks, strays, unread } = read(field(count), { named: true })
      expect(blocks).toEqual([])
      expect(strays).toHaveLength(count)
      expect(unread).toMatchObject([{ couldBe: ['braille'] }])
      expect(unread[0].why).toContain(`a field of ${count} dots is more than is read (limit-reached`)
    },
  )
  it('of 15,000 dots in one path are no braille of the sign beside them', () => {
    const dots = dotPlaces(
      Array.from({ length: 70 }, () => '⠿'.repeat(60)),
      { ...USUAL, y: 200 },
    ).slice(0, 15_000)
    const path = dots
      .map(({ x, y }) => `M${(x - 0.75).toFixed(2)} ${y.toFixed(1)}a.75 .75 0 1 0 1.5 0a.75 .75 0 1 0-1.5 0z`)
      .join('')
    const sign = dotPlaces(['⠗⠕⠕⠍⠀⠎⠊⠭'], USUAL).map(({ x, y }) => `<circle cx="${x}" cy="${y}" r=".75"/>`)
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="1000mm" height="1000mm" viewBox="0 0 1000 1000">${sign.join('')}<path d="${path}"/></svg>`
    const options = { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' } as const
    const { braille, unread } = readSign({ drawing: Buffer.from(svg), standards: [], options }, translator)
    expect(cellsOf(braille)).toEqual([['⠗⠕⠕⠍⠀⠎⠊⠭']])
    expect(unread.some(({ why }) => why.includes('15000 dots'))).toBe(true)
  })
})

/** Words of signs; their braille has lines without dots in a row or column, of one cell, and such as read another way round. */
const WORDS =
  'room exit stair women men conference office storage in case of fire the first floor wing west b a k level enough be 1 12 204 361a 66 to go we it'.split(
    ' ',
  )
const DISTORTIONS: Record<string, (random: Random) => (p: Place) => Place> = {
  'as they are': () => (p) => p,
  'noisy by 0.06 mm': (random) => (p) => ({ x: p.x + 0.06 * random.normal(), y: p.y + 0.06 * random.normal() }),
  'sheared by 4.6 degrees': () => (p) => ({ x: p.x + 0.08 * p.y, y: p.y }),
  'wider by 6 %': () => (p) => ({ x: 1.06 * p.x, y: p.y }),
  'turned a little': (random) => {
    const angle = random.between(-0.17, 0.17)
    return ({ x, y }) => ({
      x: x * Math.cos(angle) - y * Math.sin(angle),
      y: x * Math.sin(angle) + y * Math.cos(angle),
    })
  },
  'upside down': () => (p) => ({ x: -p.x, y: -p.y }),
  sideways: () => (p) => ({ x: -p.y, y: p.x }),
  mirrored: () => (p) => ({ x: -p.x, y: p.y }),
}

describe('random lines of sign words are read as they are or left open, never otherwise,', () => {
  it.each(Object.keys(DISTORTIONS))('%s, with their text known', (name) => {
    const random = seeded(7033)
    let right = 0
    for (let i = 0; i < SIGNS; i++) {
      const pick = <T>(list: readonly T[]): T => list[Math.floor(random.between(0, list.length - 0.001))]
      const words = (most: number) => Array.from({ length: 1 + Math.floor(random.between(0, most)) }, () => pick(WORDS))
      const texts = Array.from({ length: 1 + (i % 3) }, () => words(3).join(' '))
      const code = i % 2 === 0 ? 'ueb-contracted' : 'ueb-uncontracted'
      const wanted = texts.map((text) => translator.toCells(text, code))
      const dot = random.between(2.2, 2.7)
      const layout = { ...USUAL, dot, cell: dot * random.between(2.4, 3.5), line: random.between(9.5, 12) }
      const places = dotPlaces(wanted, layout).map(DISTORTIONS[name](random))
      const said = cellsOf(read(places, { expected: [texts.join(' ').toUpperCase()] }).blocks).flat()
      const open = said.every((cells) => cells === null || wanted.includes(cells))
      expect(open, `${texts.join(' / ')} (${code}) was read as ${said.join(' / ')}`).toBe(true)
      if (said.join() === wanted.join()) right++
    }
    expect(right).toBeGreaterThan(MOSTLY_RIGHT * SIGNS)
  })
})

const SIGNS = 60
/** So that leaving everything open is no way to pass. */
const MOSTLY_RIGHT = 0.9
