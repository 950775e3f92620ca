import { beforeAll, describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import type { Translator } from '../../src/braille/translator.js'
import { readBraille, type BrailleFound, type BrailleOptions } from '../../src/recognise/braille.js'
import { dotsOf } from '../../src/recognise/dots.js'
import { isKnown, type Fact, type Known } from '../../src/sign/sign.js'
import { circleShape, cubicCircle, dotPlaces, shapeOf, twoHalves, USUAL, type Layout } from './dotted.js'

// Cells are Unicode braille (The Unicode Standard, Braille Patterns); words in them follow The Rules of Unified English
// Braille, 2nd edition 2013, as the translator's own tests show. Sizes are invented unless a source is named.

let translator: Translator
beforeAll(() => {
  translator = createTranslator()
})

type Place = { x: number; y: number }
const read = (places: Place[], more: Partial<BrailleOptions> = {}, diameter = USUAL.diameter) =>
  readBraille(dotsOf(places.map(({ x, y }) => circleShape(x, y, diameter))).dots, {
    translator,
    expected: [],
    named: false,
    ...more,
  })
const known = <T>(fact: Fact<T> | undefined): Known<T> => {
  if (!isKnown(fact)) throw new Error(`unknown: ${fact?.why}`)
  return fact
}
const cellsOf = (found: ReturnType<typeof read>) =>
  found.blocks.map((b) => b.lines.map((l) => (isKnown(l.cells) ? l.cells.value : null)))
const turned = (places: Place[], degrees: number, mirror = false): Place[] => {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)]
  return places
    .map(({ x, y }) => (mirror ? { x: -x, y } : { x, y }))
    .map(({ x, y }) => ({ x: 200 + x * c - y * s, y: 200 + x * s + y * c }))
}

describe('spacings', () => {
  // NLS Specification 800: dots 0.092 in apart, cells 0.245 in, lines 0.400 in.
  it('of a block in NLS Specification 800 geometry are those of the specification', () => {
    const inch = 25.4
    const nls: Layout = { ...USUAL, dot: 0.092 * inch, cell: 0.245 * inch, line: 0.4 * inch, diameter: 0.057 * inch }
    const found = read(dotPlaces(['⠗⠂⠙⠬⠀⠗⠕⠕⠍', '⠼⠃⠚⠙'], nls), {}, nls.diameter)
    expect(cellsOf(found)).toEqual([['⠗⠂⠙⠬⠀⠗⠕⠕⠍', '⠼⠃⠚⠙']])
    expect(found.blocks[0].lines.map((l) => l.text)).toEqual(['reading room', '204'])
    for (const [fact, inches] of [
      [found.blocks[0].dotSpacing, 0.092],
      [found.blocks[0].cellSpacing, 0.245],
      [found.blocks[0].lineSpacing, 0.4],
      [found.blocks[0].dotBaseDiameter, 0.057],
    ] as const) {
      const { value, min, max } = known(fact)
      for (const v of [value, min, max]) expect((v ?? NaN) / inch).toBeCloseTo(inches, 9)
    }
    const { baseline } = found.blocks[0].lines[0]
    expect(known(baseline).value.x).toBeCloseTo(nls.x, 9)
    expect(known(baseline).value.y).toBeCloseTo(nls.y + 2 * nls.dot, 9)
  })

  it('keep a displaced dot in the extremes and name it', () => {
    const places = dotPlaces(['⠓⠐⠕⠽⠀⠗⠕⠕⠍'], USUAL)
    places[2].x += 0.4
    const block = read(places).blocks[0]
    expect(known(block.lines[0].cells).value).toBe('⠓⠐⠕⠽⠀⠗⠕⠕⠍')
    expect(known(block.dotSpacing).value).toBeCloseTo(2.4, 2)
    expect(known(block.dotSpacing).max).toBeCloseTo(2.8, 6)
    expect(known(block.cellSpacing).min).toBeCloseTo(6.5, 6)
    expect(known(block.dotSpacing).places?.map((p) => p.element)).toEqual(['braille/0/line/0/cell/0/dot/5'])
    expect(known(block.cellSpacing).places?.map((p) => p.element)).toEqual(['braille/0/line/0/cell/0/dot/5'])
  })

  it('take half of dots 1 to 3 where there is no dot between', () => {
    const { dotSpacing } = read(dotPlaces(['⠅⠅⠅⠅'], USUAL), { expected: ['kkkk'] }).blocks[0]
    expect(known(dotSpacing).value).toBeCloseTo(2.4, 9)
    expect(known(dotSpacing)).toMatchObject({ count: 4 })
  })

  it('are what they are when wrong, and the cells are read all the same', () => {
    for (const wrong of [{ dot: 2.7 }, { cell: 7.9 }, { cell: 6 }, { line: 8 }, { line: 13.5 }]) {
      const layout = { ...USUAL, ...wrong }
      const found = read(dotPlaces(['⠞⠥⠗⠃⠔⠑', '⠓⠁⠇⠇'], layout))
      expect(cellsOf(found)).toEqual([['⠞⠥⠗⠃⠔⠑', '⠓⠁⠇⠇']])
      expect(known(found.blocks[0].dotSpacing).value).toBeCloseTo(layout.dot, 6)
      expect(known(found.blocks[0].cellSpacing).value).toBeCloseTo(layout.cell, 6)
      expect(known(found.blocks[0].lineSpacing).value).toBeCloseTo(layout.line, 6)
    }
  })

  it('name the dot that is thinner than the others', () => {
    const places = dotPlaces(['⠗⠕⠕⠍'], USUAL)
    const dots = dotsOf(places.map(({ x, y }, i) => circleShape(x, y, i === 5 ? 1.3 : 1.55))).dots
    const fact = known(readBraille(dots, { translator, expected: [], named: false }).blocks[0].dotBaseDiameter)
    expect(fact).toMatchObject({ min: 1.3, max: 1.55, count: 13 })
    expect(fact.places?.map((p) => p.element)).toEqual(['braille/0/line/0/cell/1/dot/3'])
  })
})

describe('orientation', () => {
  const lines = ['⠗⠕⠕⠍⠀⠼⠃⠁⠙']

  it.each([0, 1.5, -30, 90, -90, 180])('a block turned by %s degrees reads the same and says so', (degrees) => {
    const { blocks, assumptions } = read(turned(dotPlaces(lines, USUAL), degrees))
    expect(known(blocks[0].lines[0].cells).value).toBe(lines[0])
    expect(blocks[0].lines[0].text).toBe('room 214')
    expect(blocks[0].rotation).toBeCloseTo(degrees, 3)
    expect(blocks[0].mirrored).toBe(false)
    expect(known(blocks[0].cellSpacing).value).toBeCloseTo(6.9, 6)
    expect(assumptions.some((a) => a.about === 'braille-orientation')).toBe(Math.abs(degrees) >= 90)
  })

  it('a mirrored block is read as the lettering says, or by its words', () => {
    for (const expected of [['ROOM 214'], []]) {
      const { blocks } = read(turned(dotPlaces(lines, USUAL), 0, true), { expected })
      expect(known(blocks[0].lines[0].cells).value).toBe(lines[0])
      expect(blocks[0].mirrored).toBe(true)
    }
  })

  it('nothing is read when a sideways block reads as well from either end', () => {
    const credulous: Translator = { identity: translator.identity, toCells: () => '', toText: () => 'x' }
    const found = read(turned(dotPlaces(['⠗⠕⠕⠍'], USUAL), 90), { translator: credulous })
    expect(found.blocks).toEqual([])
    expect(found.unread[0].why).toMatch(/nothing says which/)
    expect(found.strays).toHaveLength(13)
  })

  it('lettering above it tells which end is up', () => {
    const places = turned(dotPlaces(['⠵⠑⠊⠎⠎'], USUAL), 180)
    const lettering = [{ x: 160, y: 190, width: 40, height: 20 }]
    const below = { x: 140, y: 175, width: 40, height: 20 }
    expect(cellsOf(read(places, { lettering: [below] }))).toEqual([['⠵⠑⠊⠎⠎']])
    expect(cellsOf(read(places, { lettering })).flat()).not.toContain('⠜⠜⠔⠢⠫')
  })
})

describe('phase', () => {
  it('an expected text decides between rows and columns, and without one nothing is told', () => {
    const natural = read(dotPlaces(['⠁⠁⠃'], USUAL), { expected: ['AAB'] })
    expect(cellsOf(natural)).toEqual([['⠁⠁⠃']])
    const lower = read(dotPlaces(['⠆⠆⠆⠆'], USUAL), { expected: ['BBBB'] })
    expect(cellsOf(lower)).toEqual([['⠃⠃⠃⠃']])
    expect(cellsOf(read(dotPlaces(['⠆⠆⠆⠆'], USUAL)))).toEqual([[null]])
  })

  it('blanks inside count as whole cells', () => {
    expect(cellsOf(read(dotPlaces(['⠗⠕⠕⠍⠀⠼⠃'], USUAL)))).toEqual([['⠗⠕⠕⠍⠀⠼⠃']])
  })

  it('lines that are centred under each other are read each by itself', () => {
    const places = [...dotPlaces(['⠺⠁⠊⠞⠬'], USUAL), ...dotPlaces(['⠗⠕⠕⠍'], { ...USUAL, x: 23.3, y: 50.1 })]
    expect(cellsOf(read(places))).toEqual([['⠺⠁⠊⠞⠬', '⠗⠕⠕⠍']])
  })
})

describe('what is no braille', () => {
  const places = dotPlaces(['⠗⠕⠕⠍⠀⠼⠃⠁⠙'], USUAL)

  it('rivets, full stops and ornaments are strays, and the braille beside them is read', () => {
    const rivets = [
      { x: 10, y: 10 },
      { x: 150, y: 10 },
      { x: 60, y: 70 },
      { x: 100, y: 41 },
    ]
    const found = read([...places, ...rivets])
    expect(cellsOf(found)).toEqual([['⠗⠕⠕⠍⠀⠼⠃⠁⠙']])
    expect(found.strays.map(({ x, y }) => ({ x, y }))).toEqual(rivets.sort((a, b) => a.y - b.y || a.x - b.x))
  })

  it('a grid of equal steps is no braille', () => {
    const grid = Array.from({ length: 64 }, (_, i) => ({ x: (i % 8) * 3, y: Math.floor(i / 8) * 3 }))
    expect(read(grid).blocks).toEqual([])
    expect(read(grid).strays).toHaveLength(64)
  })

  it('a dotted frame is no braille', () => {
    const frame = Array.from({ length: 40 }, (_, i) => ({ x: i * 3, y: 0 }))
    expect(read(frame).blocks).toEqual([])
  })

  it('a dot between the places of the cells makes its line unreadable, never another reading', () => {
    const found = read([...places, { x: places[0].x + 1.2, y: places[0].y + 1.2 }], {}, 1.1)
    expect(cellsOf(found).flat()).toEqual([null])
    expect(found.unread[0].couldBe).toEqual(['braille'])
    expect(isKnown(found.blocks[0].dotSpacing)).toBe(false)
  })

  it('two blocks far apart stay two', () => {
    const found = read([...places, ...dotPlaces(['⠑⠭⠊⠞'], { ...USUAL, y: 90 })])
    expect(cellsOf(found)).toEqual([['⠗⠕⠕⠍⠀⠼⠃⠁⠙'], ['⠑⠭⠊⠞']])
  })

  it('few dots are braille only when they say what is expected', () => {
    const two = dotPlaces(['⠃'], USUAL)
    expect(read(two).blocks).toEqual([])
    expect(cellsOf(read(two, { expected: ['B'] }))).toEqual([['⠃']])
  })

  it('a huge field is not read, and it is said why', () => {
    const field = Array.from({ length: 4800 }, (_, i) => ({
      x: (i % 80) * 6.9 + (i % 2) * 0,
      y: Math.floor(i / 80) * 2.4,
    }))
    const found = read(field)
    expect(found.blocks).toEqual([])
    expect(found.unread[0].why).toMatch(/limit-reached/)
    expect(found.strays).toHaveLength(4800)
  })
})

describe('a drawing of another scale', () => {
  it('is read by its proportions and measured as it is', () => {
    for (const scale of [0.75, 4 / 3]) {
      const places = dotPlaces(['⠍⠁⠏⠀⠗⠕⠕⠍'], USUAL).map(({ x, y }) => ({ x: x * scale, y: y * scale }))
      const found = read(places, {}, USUAL.diameter * scale)
      expect(cellsOf(found)).toEqual([['⠍⠁⠏⠀⠗⠕⠕⠍']])
      expect(known(found.blocks[0].dotSpacing).value).toBeCloseTo(2.4 * scale, 6)
    }
  })

  it('sheared, keeps its true distances along the lattice', () => {
    const shear = Math.tan((1.5 * Math.PI) / 180)
    const places = dotPlaces(['⠓⠐⠕⠽⠀⠗⠕⠕⠍'], USUAL).map(({ x, y }) => ({ x: x + shear * y, y }))
    const block = read(places).blocks[0]
    expect(known(block.cellSpacing).value).toBeCloseTo(6.9, 6)
    expect(known(block.dotSpacing).min).toBeCloseTo(2.4, 6)
    expect(known(block.dotSpacing).max).toBeCloseTo(2.4 * Math.hypot(1, shear), 6)
  })
})

describe('braille that is drawn out of shape is named', () => {
  const saidOf = (found: BrailleFound) => found.assumptions.filter((a) => a.about === 'lattice').map((a) => a.text)
  const places = dotPlaces(['⠓⠐⠕⠽⠀⠗⠕⠕⠍'], USUAL)
  const mapped = (map: (p: { x: number; y: number }) => { x: number; y: number }) => saidOf(read(places.map(map)))
  it('when its cells lean', () => {
    const shear = Math.tan((1.5 * Math.PI) / 180)
    for (const sign of [1, -1])
      expect(mapped(({ x, y }) => ({ x: x + sign * shear * y, y }))).toEqual([
        expect.stringContaining('lean by 1.5 degrees'),
      ])
  })
  it('when it is scaled unequally', () => {
    expect(mapped(({ x, y }) => ({ x: 1.05 * x, y }))).toEqual([
      expect.stringMatching(/2\.52 mm apart along the line and 2\.40 mm down/),
    ])
    const shapes = places.map(({ x, y }) => shapeOf([cubicCircle(1.05 * x, y, USUAL.diameter, 1.05)]))
    const found = readBraille(dotsOf(shapes).dots, { translator, expected: [], named: false })
    expect(saidOf(found)).toHaveLength(2)
    expect(saidOf(found)[1]).toContain('5 % longer than wide')
  })
  it('not when it is turned, mirrored or noisy, nor for the circles of drawing programs', () => {
    const [cos, sin] = [Math.cos(0.3), Math.sin(0.3)]
    expect(mapped(({ x, y }) => ({ x: x * cos - y * sin, y: x * sin + y * cos }))).toEqual([])
    expect(mapped(({ x, y }) => ({ x: -x, y }))).toEqual([])
    let state = 3
    const noise = () => ((state = (state * 48271) % 2147483647) / 2147483647 - 0.5) * 0.15
    expect(mapped(({ x, y }) => ({ x: x + noise(), y: y + noise() }))).toEqual([])
    const shapes = places.map(({ x, y }) => shapeOf([twoHalves(x, y, USUAL.diameter)]))
    expect(saidOf(readBraille(dotsOf(shapes).dots, { translator, expected: [], named: false }))).toEqual([])
  })
})

// Cramér–Rao bound for Gaussian noise of the dot places, here for the cell pitch of a real line (variance sigma² (XᵀX)⁻¹ of the
// linear lattice model, by the reported uncertainty of a run whose noise is known).
it('tells its own uncertainty: the errors over seeded noise are within 15 % of it', () => {
  let state = 9
  const next = () => (state = (state * 48271) % 2147483647) / 2147483647
  const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next())
  const rounds = 120
  let squares = 0
  let told = 0
  for (let i = 0; i < rounds; i++) {
    const places = dotPlaces(['⠉⠕⠝⠋⠻⠰⠑⠀⠗⠕⠕⠍⠀⠼⠃⠁⠙'], USUAL).map(({ x, y }) => ({
      x: x + 0.02 * normal(),
      y: y + 0.02 * normal(),
    }))
    const fact = known(read(places).blocks[0].cellSpacing)
    squares += (fact.value - 6.9) ** 2
    told += fact.uncertainty ?? NaN
  }
  const ratio = Math.sqrt(squares / rounds) / (told / rounds)
  expect(ratio).toBeGreaterThan(0.85)
  expect(ratio).toBeLessThan(1.15)
})
