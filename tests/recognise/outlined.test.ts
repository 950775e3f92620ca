import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import type { Shape } from '../../src/drawing/drawing.js'
import { boxOfPoints } from '../../src/geometry/box.js'
import { recognise, type RecogniseOptions } from '../../src/recognise/recognise.js'
import { isKnown, type Fact, type Sign } from '../../src/sign/sign.js'
import { cellsAt, dot, drawing, paint, polygon, rectangle, shape } from './built.js'
import { letters } from './lettered.js'
import { rotation } from './turned.js'

/** Outlined letters on a sign. Places and sizes are invented; the faces are not among those that the reading was made from. */

const translator = createTranslator()
const read = (shapes: Shape[], more: Partial<RecogniseOptions> = {}): Sign =>
  recognise(
    drawing(shapes, [], { viewport: { width: 320, height: 140 } }),
    { use: 'permanent-room', ...more },
    translator,
  )
const value = <T>(fact: Fact<T> | undefined): T | undefined => (isKnown(fact) ? fact.value : undefined)

const panel = shape([rectangle(10, 5, 300, 130)], { fill: paint('#22223b') })
const WHITE = { fill: paint('#ffffff') }
/** “exit” has no contraction in UEB: the cells are its letters e, x, i, t. */
const braille = cellsAt('⠑⠭⠊⠞', 60, 110, WHITE)
const exit = letters({ text: 'EXIT', x: 60, y: 60, height: 20 }, WHITE)

/** Six-cornered shapes that are no letters. */
const art = (x: number, y: number, more: Partial<Shape> = WHITE) =>
  shape(
    [
      polygon([
        [x, y],
        [x + 8, y],
        [x + 8, y + 20],
        [x + 4, y + 10],
        [x, y + 20],
        [x + 1, y + 10],
      ]),
    ],
    more,
  )

describe('outlines that read as letters', () => {
  const sign = read([panel, ...exit, ...braille])
  it('are lettering with text, sizes, places and colours', () => {
    expect(sign.lettering).toHaveLength(1)
    const [lettering] = sign.lettering
    expect(lettering).toMatchObject({
      part: 'both',
      text: { value: 'EXIT', basis: 'drawn' },
      style: { value: 'sans-serif' },
      colour: { value: { css: '#ffffff' } },
      background: { value: { css: '#22223b' } },
      place: { element: 'lettering/0' },
    })
    expect(value(lettering.characterHeight)).toBeCloseTo(20, 1)
    expect(value(lettering.lines[0].baseline)?.y).toBeCloseTo(60, 1)
    expect(boxOfPoints(lettering.lines[0].outlines.flat())).toEqual(lettering.place.box)
    expect(sign.unread).toEqual([])
  })
  it('are said to be taken for lettering only where nobody named them', () => {
    expect(sign.assumptions.some((a) => a.text.startsWith('Outlines that nobody named'))).toBe(true)
    const named = exit.map((s) => ({ ...s, labels: { names: [], dataPart: 'raised' } }))
    const said = read([panel, ...named, ...braille])
    expect(said.lettering).toMatchObject([{ part: 'raised', text: { value: 'EXIT' } }])
    expect(said.assumptions.some((a) => a.text.startsWith('Outlines that nobody named'))).toBe(false)
  })
  it('are sets by size, with their lines and baselines', () => {
    const second = letters({ text: 'ROOM', x: 60, y: 88, height: 20 }, WHITE)
    const small = letters({ text: 'Hall office', x: 170, y: 60, height: 8, tracking: 0.6 }, WHITE)
    const found = read([panel, ...small, ...second, ...exit, ...braille]).lettering
    expect(found.map((l) => value(l.text))).toEqual(expect.arrayContaining(['EXIT ROOM', 'Hall office']))
    const large = found.find((l) => l.lines.length === 2)
    expect(value(large?.baselineSpacing)).toBeCloseTo(28, 1)
    expect(found.map((l) => l.place.element)).toEqual(['lettering/0', 'lettering/1'])
  })
  it('keep the points of small letters, though they are small and round', () => {
    const small = letters({ text: 'Public info.', x: 60, y: 60, height: 8, tracking: 0.6 }, WHITE)
    const found = read([panel, ...small, ...braille])
    expect(found.lettering.map((l) => value(l.text))).toEqual(['Public info.'])
    expect(found.unread).toEqual([])
  })
  it.each([90, 180, 270, 12])('are read at %d degrees with their braille', (degrees) => {
    const matrix = rotation(degrees, 1, 160, 70)
    const turn = (s: Shape) => ({ ...s, labels: { names: [] } })
    const at = letters({ text: 'EXIT', x: -40, y: 0, height: 20, matrix }, WHITE)
    const found = read([shape([rectangle(0, 0, 320, 140)], { fill: paint('#22223b') }), ...at.map(turn)])
    expect(found.lettering.map((l) => value(l.text))).toEqual(['EXIT'])
    expect(value(found.lettering[0].characterHeight)).toBeCloseTo(20, 1)
  })
  it('are read from the back of clear sheet, and that is said', () => {
    const matrix = { a: -1, b: 0, c: 0, d: 1, e: 320, f: 0 }
    const found = read([panel, ...letters({ text: 'BRIGHT ROOM', x: 60, y: 60, height: 20, matrix }, WHITE)])
    expect(found.lettering.map((l) => value(l.text))).toEqual(['BRIGHT ROOM'])
    expect(found.assumptions.map((a) => a.about)).toContain('lettering-orientation')
    const { x = NaN, y = NaN } = value(found.lettering[0].lines[0].baseline) ?? {}
    expect([x, y]).toEqual([expect.closeTo(320 - 60, -1), expect.closeTo(60, 1)])
  })
  it('have counters that were painted over them, and their own colour', () => {
    const [bowl] = letters({ text: 'O', x: 60, y: 60, height: 20 }, WHITE)
    const [outer, inner] = bowl.contours
    const o = shape([outer], WHITE)
    const counter = shape([inner], { fill: panel.fill })
    const rest = letters({ text: 'NE', x: 85, y: 60, height: 20 }, WHITE)
    const [lettering] = read([panel, o, counter, ...rest, ...braille]).lettering
    expect(value(lettering.text)).toBe('ONE')
    expect(lettering.colour).toMatchObject({ value: { css: '#ffffff' } })
  })
  it('have no colour when it is that of their ground', () => {
    const alike = exit.map((l) => ({ ...l, fill: panel.fill }))
    expect(read([panel, ...alike, ...braille]).lettering[0].colour).toMatchObject({ unknown: 'needs-judgement' })
    const stroke = { ...paint('#ffffff'), width: 0.01, linecap: 'butt', linejoin: 'miter', dashed: false } as const
    const bare = exit.map((l) => ({ ...l, fill: undefined, stroke }))
    const [lettering] = read([panel, ...bare, ...braille]).lettering
    expect(value(lettering.text)).toBe('EXIT')
    expect(lettering.colour).toMatchObject({ unknown: 'unreadable' })
  })
})

describe('outlines that do not read as letters', () => {
  it('are unread art where nobody named them', () => {
    const sign = read([panel, art(60, 20), art(75, 20), art(90, 20), ...braille])
    expect(sign.lettering).toEqual([])
    expect(sign.unread).toMatchObject([{ couldBe: ['lettering', 'pictogram'], place: { box: { x: 60, y: 20 } } }])
  })
  it('are unread art beside letters', () => {
    const sign = read([panel, ...exit, art(200, 20), art(230, 70), ...braille])
    expect(sign.lettering.map((l) => value(l.text))).toEqual(['EXIT'])
    expect(sign.unread).toMatchObject([{ couldBe: ['lettering', 'pictogram'] }])
  })
  it('are lettering that is not read where they were named so, with places and colours', () => {
    const named = [60, 75, 90].map((x) => art(x, 20, { ...WHITE, labels: { names: [], dataPart: 'both' } }))
    const [lettering] = read([panel, ...named, ...braille]).lettering
    expect(lettering).toMatchObject({
      text: { unknown: 'unreadable' },
      characterHeight: { unknown: 'unreadable' },
      colour: { value: { css: '#ffffff' } },
      place: { box: { x: 60, y: 20, width: 38, height: 20 } },
    })
    expect(lettering.lines.map((l) => l.outlines.length)).toEqual([3])
  })
  it('are no characters when they are plain rings and bars', () => {
    const plain = [
      letters({ text: 'O', x: 60, y: 60, height: 20 }, WHITE),
      letters({ text: 'I', x: 200, y: 60, height: 20 }, WHITE),
    ]
    const sign = read([panel, ...plain.flat(), ...braille])
    expect(sign.lettering).toEqual([])
  })
  it('are no characters of a sign when they are small, few, and nothing else is there', () => {
    expect(read([panel, ...letters({ text: 'R', x: 60, y: 60, height: 20 })]).lettering).toEqual([])
    expect(read([panel, ...letters({ text: 'OPEN', x: 60, y: 60, height: 5 })]).lettering).toEqual([])
  })
})

describe('strokes round the fills', () => {
  const stroke = (width: number, css = '#000000') =>
    ({ ...paint(css), width, linecap: 'butt', linejoin: 'miter', dashed: false }) as const
  const with_ = (shapes: Shape[], width: number, css?: string) =>
    shapes.map((s) => ({ ...s, stroke: stroke(width, css) }))
  const plain = read([panel, ...exit, ...braille]).lettering[0]

  // SVG 1.1, 11.4: half of the stroke lies outside of the outline, on each side.
  it('make characters larger and gaps smaller by their width', () => {
    const [lettering] = read([panel, ...with_(exit, 0.4), ...braille]).lettering
    const more = (key: 'characterHeight' | 'strokeThickness' | 'characterSpacing') =>
      (value(lettering[key]) ?? NaN) - (value(plain[key]) ?? NaN)
    expect(more('characterHeight')).toBeCloseTo(0.4, 9)
    expect(more('strokeThickness')).toBeCloseTo(0.4, 9)
    expect(more('characterSpacing')).toBeCloseTo(-0.4, 9)
  })
  it('leave sizes open when they differ', () => {
    const mixed = [...with_(exit.slice(0, 2), 0.4), ...exit.slice(2)]
    expect(read([panel, ...mixed, ...braille]).lettering[0].characterHeight).toMatchObject({
      unknown: 'needs-judgement',
    })
  })
  it('are no material when every shape has the same one in another colour, and that is said', () => {
    const all = [...with_(exit, 0.5), ...with_(braille, 0.5)]
    const sign = read(all)
    expect(value(sign.lettering[0].characterHeight)).toBeCloseTo(value(plain.characterHeight) ?? NaN, 6)
    expect(value(sign.braille[0].dotBaseDiameter)).toBeCloseTo(1.55, 2)
    expect(sign.assumptions.filter((a) => a.about === 'stroke')).toHaveLength(1)
    const own = read([...with_(exit, 0.5, '#ffffff'), ...with_(braille, 0.5, '#ffffff')])
    expect(value(own.braille[0].dotBaseDiameter)).toBeCloseTo(2.05, 2)
    expect(own.assumptions.map((a) => a.about)).not.toContain('stroke')
  })
})

describe('outlined letters and braille that geometry alone leaves open', () => {
  const alone = cellsAt('⠛', 60, 110, WHITE)
  it('are settled by what the letters say: a single cell, which may be an ornament', () => {
    const bare = read([panel, ...alone])
    expect(bare.braille).toEqual([])
    expect(bare.unread).toMatchObject([{ couldBe: ['braille'] }])
    // The pips of a die: two columns of three, far apart, which read as nothing.
    const die = [0, 1].flatMap((c) => [0, 1, 2].map((r) => dot(60 + 4.8 * c, 110 + 2.4 * r, WHITE)))
    expect(read([panel, ...die]).braille).toEqual([])
    const told = read([panel, ...letters({ text: 'G', x: 60, y: 60, height: 30 }, WHITE), ...alone])
    expect(told.lettering.map((l) => value(l.text))).toEqual(['G'])
    expect(told.braille.flatMap((b) => b.lines.map((l) => value(l.cells)))).toEqual(['⠛'])
    expect(told.unread).toEqual([])
  })
  it('leave a cell that they do not say', () => {
    const named = letters(
      { text: 'K', x: 60, y: 60, height: 30 },
      { ...WHITE, labels: { names: [], dataPart: 'both' } },
    )
    expect(read([panel, ...named, ...alone]).braille).toEqual([])
  })
})
