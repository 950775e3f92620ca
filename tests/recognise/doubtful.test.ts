import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import { readBraille, type BrailleOptions } from '../../src/recognise/braille.js'
import { dotsOf } from '../../src/recognise/dots.js'
import { recognise } from '../../src/recognise/recognise.js'
import { isKnown, type BrailleBlock } from '../../src/sign/sign.js'
import { cellsAt, dot, drawing, paint, rectangle, shape, text } from './built.js'
import { circleShape, dotPlaces, USUAL } from './dotted.js'
import { letters } from './lettered.js'
import { rotation } from './turned.js'

// Cells follow The Rules of Unified English Braille, 2nd edition 2013: 4.1 (letters), 5.2 (a letter alone), 6.1 (numbers). Sizes are
// invented unless a source is named.

const translator = createTranslator()
const cellsOf = (blocks: readonly BrailleBlock[]) =>
  blocks.map((b) => b.lines.map(({ cells }) => (isKnown(cells) ? cells.value : null)))

type Layout = typeof USUAL
function read(cells: string[], layout: Partial<Layout> = {}, more: Partial<BrailleOptions> = {}) {
  const places = dotPlaces(cells, { ...USUAL, ...layout })
  const { dots } = dotsOf(places.map(({ x, y }) => circleShape(x, y, USUAL.diameter)))
  return readBraille(dots, { translator, expected: [], named: false, ...more })
}

describe('a few cells that nothing confirms', () => {
  it.each([
    ['one cell', ['⠿']],
    ['two cells that would be a word', ['⠔⠋']],
    ['two lines of one cell, as the lamps of a machine', ['⠉', '⠉']],
    ['four lines of one cell, each of them a word', ['⠋', '⠑', '⠋', '⠔']],
    ['lines of one and two cells', ['⠿', '⠛⠕']],
  ])('%s: are left open, with the reason', (_, cells) => {
    const { blocks, unread } = read(cells)
    expect(cellsOf(blocks)).toEqual([])
    expect(unread).toMatchObject([{ couldBe: ['braille'] }])
    expect(unread[0].why).toMatch(/braille or an ornament|better words another way round/)
  })
  it('are read where a client named them, or a text says them', () => {
    expect(cellsOf(read(['⠉', '⠉'], {}, { named: true }).blocks)).toEqual([['⠉', '⠉']])
    expect(cellsOf(read(['⠼⠉'], {}, { expected: ['3'] }).blocks)).toEqual([['⠼⠉']])
    expect(cellsOf(read(['⠡⠝'], {}, { expected: ['CHILDREN'] }).blocks)).toEqual([['⠡⠝']])
  })
  it('are read as another text than the characters when two cells say one', () => {
    expect(read(['⠡⠝'], {}, { expected: ['KITCHEN'] }).blocks[0]?.lines[0]?.text).toBe('children')
    expect(read(['⠋'], {}, { expected: ['KITCHEN'] }).blocks).toEqual([])
  })
})

describe('one or two cells beside the letter or figure that they repeat', () => {
  const panel = shape([rectangle(10, 5, 180, 90)], { fill: paint('#22223b') })
  const WHITE = { fill: paint('#ffffff') }
  it.each([
    ['B', '⠰⠃'],
    ['3', '⠼⠉'],
  ])('%s as live text and as an outline: %s', (character, cells) => {
    const live = drawing([panel, ...cellsAt(cells, 90, 70, WHITE)], [text(character, 90, 45, WHITE)])
    const outlined = drawing([
      panel,
      ...letters({ text: character, x: 90, y: 45, height: 20 }, WHITE),
      ...cellsAt(cells, 90, 70, WHITE),
    ])
    for (const drawn of [live, outlined]) {
      const sign = recognise(drawn, { use: 'permanent-room' }, translator)
      expect(cellsOf(sign.braille)).toEqual([[cells]])
      expect(sign.unread).toEqual([])
    }
  })
  it('and a cell of two dots, which says a letter in uncontracted braille, beside live text', () => {
    const drawn = drawing([panel, ...cellsAt('⠃', 90, 70, WHITE)], [text('B', 90, 45, WHITE)])
    expect(cellsOf(recognise(drawn, { use: 'permanent-room' }, translator).braille)).toEqual([['⠃']])
  })
  it('and four screws of a plate beside a word are no cell', () => {
    const screws = [dot(20, 15, WHITE), dot(180, 15, WHITE), dot(20, 85, WHITE), dot(180, 85, WHITE)]
    const sign = recognise(
      drawing([panel, ...screws, ...cellsAt('⠑⠭⠊⠞', 60, 70, WHITE)], [text('EXIT', 50, 45, WHITE)]),
      { use: 'permanent-room' },
      translator,
    )
    expect(cellsOf(sign.braille)).toEqual([['⠑⠭⠊⠞']])
  })
})

describe('cells that are spaced wider than any table', () => {
  // 2010 ADA Standards, Table 703.3.1: cells 6.1 mm to 7.6 mm apart; these are 8.0 to 8.7.
  it.each([3.35, 3.5, 3.62])('are read as they are, %s dot spacings apart', (share) => {
    const cells = ['⠙⠔⠬', '⠃⠊⠅⠑⠀⠓⠊⠗⠑']
    const { blocks } = read(cells, { cell: USUAL.dot * share })
    expect(cellsOf(blocks)).toEqual([cells])
    const { cellSpacing } = blocks[0]
    expect(isKnown(cellSpacing) && cellSpacing.value).toBeCloseTo(USUAL.dot * share, 6)
  })
  it.each([3.8, 4, 4.2])('or not at all, %s apart', (share) => {
    const cells = ['⠙⠔⠬', '⠃⠊⠅⠑⠀⠓⠊⠗⠑']
    const lies = [{ rotation: 0, mirrored: false }]
    const found = read(cells, { cell: USUAL.dot * share }, { lies, expected: ['DINING BIKE HIRE'] })
    expect(
      cellsOf(found.blocks)
        .flat()
        .filter((line) => line !== null && !cells.includes(line)),
    ).toEqual([])
  })
})

describe('braille across the characters', () => {
  const panel = shape([rectangle(0, 0, 320, 140)], { fill: paint('#ffffff') })
  const across = (cells: string) =>
    cellsAt(cells, 0, 0).map((s) => {
      const { x = 0, y = 0, radius = 0 } = s.circle ?? {}
      return shape([...circleShape(250 - y, 40 + x, 2 * radius).contours], {
        circle: { x: 250 - y, y: 40 + x, radius },
      })
    })
  const signOf = (cells: string) =>
    recognise(
      drawing([panel, ...letters({ text: 'EXIT', x: 60, y: 60, height: 20 }), ...across(cells)]),
      { use: 'permanent-room' },
      translator,
    )
  it('is read when it says what they say', () => {
    expect(cellsOf(signOf('⠑⠭⠊⠞').braille)).toEqual([['⠑⠭⠊⠞']])
  })
  it('is left open when it says something else: it may be the columns of braille that runs as they do', () => {
    const sign = signOf('⠗⠕⠕⠍⠀⠎⠊⠭')
    expect(sign.braille).toEqual([])
    expect(sign.unread.map(({ why }) => why)).toContainEqual(expect.stringMatching(/across the characters/))
  })
  it('is read as it is when all of the sign stands turned', () => {
    const matrix = rotation(90, 1, 200, 40)
    const outlined = letters({ text: 'EXIT', x: 0, y: 0, height: 20, matrix })
    const sign = recognise(drawing([panel, ...outlined, ...across('⠗⠕⠕⠍⠀⠎⠊⠭')]), { use: 'permanent-room' }, translator)
    expect(sign.braille.map((b) => b.lines[0].text)).toEqual(['room six'])
  })
})

it('a line that says nothing is not told beside a line with a dot out of place', () => {
  const places = dotPlaces(['⠇⠸⠀⠄⠲⠮⠿⠯', '⠗⠕⠕⠍⠀⠼⠃⠁⠙'], USUAL)
  const out = { x: USUAL.x + 4 * USUAL.cell + 1.2, y: USUAL.y + USUAL.line + 1.2 }
  const { dots } = dotsOf([...places, out].map(({ x, y }) => circleShape(x, y, 1.1)))
  const { blocks } = readBraille(dots, { translator, expected: [], named: false })
  expect(
    cellsOf(blocks)
      .flat()
      .filter((line) => line !== null),
  ).toEqual([])
})

describe('a line without dots in some rows or columns of its cells', () => {
  // ⠆ is “be”, ⠃ “but” (Rules of Unified English Braille, 10.1 and 10.5): the same two dots, a row apart.
  it('is left open where another row says something too, and its baseline with it', () => {
    const [{ lines, dotSpacing }] = read(['⠗⠕⠕⠍⠀⠎⠊⠭', '⠆']).blocks
    expect(isKnown(lines[0].cells) && lines[0].cells.value).toBe('⠗⠕⠕⠍⠀⠎⠊⠭')
    expect(lines[1].cells).toMatchObject({ unknown: 'unreadable' })
    expect(isKnown(lines[1].cells) || lines[1].cells.why).toMatch(/may be ⠃ or .*⠆/)
    expect(isKnown(lines[1].baseline)).toBe(false)
    expect(isKnown(dotSpacing)).toBe(true)
  })
  it('is read where only one row says something, or a text says which', () => {
    expect(cellsOf(read(['⠉⠁⠋⠑']).blocks)).toEqual([['⠉⠁⠋⠑']])
    expect(cellsOf(read(['⠗⠕⠕⠍⠀⠎⠊⠭', '⠆'], {}, { expected: ['ROOM SIX BE'] }).blocks)).toEqual([['⠗⠕⠕⠍⠀⠎⠊⠭', '⠆']])
  })
})

describe('two cells with three columns, which two spacings of cells explain', () => {
  it.each([2.56, 3.42])('are read as the text says, %s dot spacings apart', (share) => {
    for (const [cells, text] of [
      ['⠼⠁', '1'],
      ['⠃⠑', 'BE'],
    ])
      expect(cellsOf(read([cells], { cell: USUAL.dot * share }, { expected: [text] }).blocks)).toEqual([[cells]])
  })
})
