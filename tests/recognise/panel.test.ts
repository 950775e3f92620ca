import { describe, expect, it } from 'vitest'
import type { Shape } from '../../src/drawing/drawing.js'
import type { Box } from '../../src/geometry/box.js'
import { piecesOfShape } from '../../src/recognise/pieces.js'
import { namedPart } from '../../src/recognise/parts.js'
import { sortOut } from '../../src/recognise/sorting.js'
import { drawing, paint, polygon, rectangle, round, shape } from './built.js'

/** All sizes here are invented. */
const DOTS = [0, 1, 2, 3].flatMap((i) => [
  { x: 60 + 6.9 * i, y: 70 },
  { x: 60 + 6.9 * i, y: 72.4 },
])
const glyphs = [60, 75, 90].map((x) => shape([rectangle(x, 30, 10, 20)]))
const stroke = (width: number) =>
  ({ ...paint('#000000'), width, linecap: 'butt', linejoin: 'miter', dashed: false }) as const

function sort(shapes: Shape[]) {
  const pieces = shapes.flatMap((s, order) => piecesOfShape(s, order, namedPart(s.labels, {}, new Set())))
  return sortOut({ dots: DOTS, texts: [], pieces }, drawing(shapes))
}

const sizeOf = (box?: Box) => box && [box.x, box.y, box.width, box.height]

describe('the panel', () => {
  it('is the filled outline that holds everything, with its colour', () => {
    const { found, characters } = sort([shape([rectangle(20, 10, 150, 80)], { fill: paint('#22223b') }), ...glyphs])
    expect(sizeOf(found.panel.place.box)).toEqual([20, 10, 150, 80])
    expect(found.panel).toMatchObject({
      width: { value: 150 },
      height: { value: 80 },
      colour: { value: { css: '#22223b' } },
    })
    expect(characters).toHaveLength(3)
    expect(found.assumptions.map((a) => a.about)).toEqual(['panel'])
  })
  it('lies on a sheet when the larger outline is the whole drawing', () => {
    const sheet = shape([rectangle(0, 0, 200, 100)], { fill: paint('#ffffff') })
    const { found, characters } = sort([sheet, shape([rectangle(20, 10, 150, 80)]), ...glyphs])
    expect(sizeOf(found.panel.place.box)).toEqual([20, 10, 150, 80])
    expect(found.sheets.map((s) => s.shape)).toEqual([sheet])
    expect(found.assumptions[0].text).toContain('sheet')
    expect(characters).toHaveLength(3)
  })
  it('is the drawing itself when nothing else holds everything', () => {
    const { found } = sort([shape([rectangle(0, 0, 200, 100)]), ...glyphs])
    expect(sizeOf(found.panel.place.box)).toEqual([0, 0, 200, 100])
  })
  it('is the one that is named, whatever else is there', () => {
    const named = shape([rectangle(40, 20, 110, 60)], { labels: { names: ['panel'] } })
    const { found } = sort([shape([rectangle(20, 10, 150, 80)]), named, ...glyphs])
    expect(sizeOf(found.panel.place.box)).toEqual([40, 20, 110, 60])
    expect(found.assumptions).toEqual([])
  })
  it('is found in a path that holds the whole sign', () => {
    const contours = [
      rectangle(20, 10, 150, 80),
      ...glyphs.flatMap((g) => g.contours),
      ...glyphs.flatMap((g) => g.contours),
    ]
    const { found, characters } = sort([shape(contours, { fillRule: 'evenodd' })])
    expect(sizeOf(found.panel.place.box)).toEqual([20, 10, 150, 80])
    expect(characters).toHaveLength(6)
  })
  it('is unknown, not guessed, when it is not drawn', () => {
    const { found } = sort(glyphs)
    expect(found.piece).toBeUndefined()
    expect(found.panel).toMatchObject({ width: { unknown: 'missing-fact' }, colour: { unknown: 'missing-fact' } })
    expect(found.assumptions[0].about).toBe('panel')
  })
})

describe('what else holds things', () => {
  const panel = shape([rectangle(10, 5, 180, 90)], { fill: paint('#e9f5db') })
  const frame = [rectangle(20, 15, 160, 70), rectangle(21.2, 16.2, 157.6, 67.6)]
  it('is a border when it is a stroke without a fill', () => {
    const { borders, characters } = sort([
      panel,
      shape([rectangle(20, 15, 160, 70)], { fill: undefined, stroke: stroke(1.2) }),
      ...glyphs,
    ])
    expect(borders).toMatchObject([{ width: 1.2 }])
    expect(characters).toHaveLength(3)
  })
  it('is a border when it is the area between two outlines', () => {
    const { borders, characters } = sort([panel, shape(frame, { fillRule: 'evenodd' }), ...glyphs])
    expect(borders).toHaveLength(1)
    expect(borders[0].width).toBeCloseTo(1.2, 9)
    expect(characters).toHaveLength(3)
  })
  it('is a ground when it is filled: neither a border nor a character', () => {
    const { borders, characters, grounds } = sort([
      panel,
      shape([rectangle(50, 60, 60, 25)], { fill: paint('#ffffff') }),
      ...glyphs,
    ])
    expect(borders).toEqual([])
    expect(grounds).toHaveLength(2)
    expect(characters).toHaveLength(3)
  })
  it('is doubtful when it is a frame round the whole sign', () => {
    const { borders, unread } = sort([shape(frame, { fillRule: 'evenodd' }), ...glyphs])
    expect(borders).toEqual([])
    expect(unread).toMatchObject([{ couldBe: ['border'] }])
  })
  it('is no border, but a character, when it only holds its own counter', () => {
    const letter = shape([round(120, 40, 10), round(120, 40, 7)], { fillRule: 'evenodd' })
    const counter = shape([rectangle(62, 35, 3, 10)], { fill: paint('#e9f5db') })
    const { borders, characters } = sort([panel, ...glyphs, letter, counter])
    expect(borders).toEqual([])
    expect(characters).toHaveLength(6)
  })
})

describe('what is left out, and said', () => {
  const panel = shape([rectangle(10, 5, 180, 90)])
  it('are holes in the corners', () => {
    const holes = [
      [18, 13],
      [182, 13],
    ].map(([x, y]) => shape([round(x, y, 2)]))
    const { characters, ignored } = sort([panel, ...glyphs, ...holes])
    expect(characters).toHaveLength(3)
    expect(ignored).toHaveLength(2)
  })
  it('are not round shapes in the middle, nor long ones in a corner', () => {
    const others = [shape([round(130, 40, 3)]), shape([rectangle(14, 9, 12, 3)])]
    expect(sort([panel, ...glyphs, ...others]).characters).toHaveLength(5)
  })
  it('is what lies beside the panel', () => {
    const { characters, ignored } = sort([
      panel,
      ...glyphs,
      shape([
        polygon([
          [192, 50],
          [198, 50],
          [195, 60],
        ]),
      ]),
    ])
    expect(characters).toHaveLength(3)
    expect(ignored[0].why).toContain('outside')
  })
})
