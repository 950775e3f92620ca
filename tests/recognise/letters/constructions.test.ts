import { describe, expect, it } from 'vitest'
import type { Point } from '../../../src/geometry/point.js'
import { signedArea } from '../../../src/geometry/polyline.js'
import { MOST_OUTLINES, type ReadLettersOptions } from '../../../src/recognise/letters/read.js'
import { heldOutFaces, type Face } from './faces.js'
import { readDrawn, setText, type DrawnOutline } from './setting.js'

/** Ways in which drawing programs write outlined letters and turn them. The wording is invented, the faces are open ones. */

const faceNamed = (name: string): Face => {
  const face = heldOutFaces().find((f) => f.name === name)
  if (!face) throw new Error(name)
  return face
}
const sans = faceNamed('DejaVuSans')
const inter = faceNamed('Inter_700Bold')

const textsOf = (outlines: readonly DrawnOutline[], options?: ReadLettersOptions): string[] =>
  readDrawn(outlines, options).lines.map(({ text }) => ('value' in text ? text.value : `? ${text.why}`))

const moved = (outlines: readonly DrawnOutline[], map: (p: Point) => Point): DrawnOutline[] =>
  outlines.map((o) => ({ ...o, outline: o.outline.map(map) }))
const turned = (degrees: number) => {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)]
  return ({ x, y }: Point): Point => ({ x: x * cos - y * sin, y: x * sin + y * cos })
}

const LINES = ['BOARD ROOM', 'LEVEL 38']
const { outlines } = setText(sans, LINES)

describe('however the outlines are written', () => {
  it('each letter a path', () => expect(textsOf(outlines)).toEqual(LINES))

  it('all of a sign in one path, in any order', () => {
    const one = outlines.map((o) => ({ ...o, path: 0 })).reverse()
    expect(textsOf(one)).toEqual(LINES)
    expect(textsOf(one.map((o) => ({ ...o, rule: 'evenodd' })))).toEqual(LINES)
  })

  it('each contour a path, counters in the colour of the panel', () => {
    const largest = (o: DrawnOutline) =>
      outlines.every((p) => p.path !== o.path || Math.abs(signedArea(p.outline)) <= Math.abs(signedArea(o.outline)))
    const letters = outlines.filter(largest).map((o) => ({ ...o, fill: 'black' }))
    const counters = outlines.filter((o) => !largest(o)).map((o) => ({ ...o, fill: 'white' }))
    expect(textsOf([...letters, ...counters].map((o, path) => ({ ...o, path })))).toEqual(LINES)
  })

  it('only edges are drawn', () => {
    expect(textsOf(outlines.map((o, i) => ({ ...o, path: i, fill: undefined })))).toEqual(LINES)
  })

  it('every contour twice, filled and then edged', () => {
    const edged = outlines.map((o) => ({ ...o, path: o.path + outlines.length, fill: undefined }))
    expect(textsOf([...outlines, ...edged])).toEqual(LINES)
  })

  it('contours as coarse polygons', () => {
    // Every sixth point of the curves, and all corners.
    const isCorner = (at: number, points: Point[]) => {
      const [a, b, c] = [-1, 0, 1].map((d) => points[(at + d + points.length) % points.length])
      const turn = Math.atan2(c.y - b.y, c.x - b.x) - Math.atan2(b.y - a.y, b.x - a.x)
      return Math.abs(Math.sin(turn)) > 0.3 || Math.cos(turn) < 0
    }
    const coarse = outlines.map((o) => ({
      ...o,
      outline: o.outline.filter((_, i) => i % 6 === 0 || isCorner(i, o.outline)),
    }))
    expect(coarse.flatMap((o) => o.outline).length).toBeLessThan(outlines.flatMap((o) => o.outline).length / 3)
    expect(textsOf(coarse)).toEqual(LINES)
  })

  it('a letter cut into pieces that touch', () => {
    const box = (x: number, y: number, width: number, height: number) => [
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + height },
      { x, y: y + height },
    ]
    const pieces = [box(0, 0, 2.5, 19), box(2.5, 8.3, 9, 2.4), box(11.5, 0, 2.5, 19)]
    const others = [box(18, 0, 2.5, 19), box(25, 0, 13, 2.4), box(30.2, 2.4, 2.6, 16.6)]
    const cut = [...pieces, ...others].map((outline, path) => ({
      outline,
      path,
      rule: 'nonzero' as const,
      fill: 'black',
    }))
    expect(textsOf(cut)).toEqual(['HIT'])
  })
})

describe('however the sign lies', () => {
  it.each([0, 90, 180, 270, 30, -7])('turned by %d degrees', (degrees) => {
    expect(textsOf(moved(outlines, turned(degrees)))).toEqual(LINES)
    expect(textsOf(moved(outlines, turned(degrees)), { rotation: degrees })).toEqual(LINES)
  })

  it('slanted', () => {
    const reading = readDrawn(moved(outlines, ({ x, y }) => ({ x: x - y * Math.tan((12 * Math.PI) / 180), y })))
    expect(reading.lie.slant).toBeCloseTo(12, 1)
    expect(reading.lines.map((l) => l.text)).toMatchObject(LINES.map((value) => ({ value })))
  })

  it('drawn for reading from behind, when that is known', () => {
    const behind = moved(outlines, ({ x, y }) => ({ x: -x, y }))
    expect(textsOf(behind, { rotation: 180, mirrored: true })).toEqual(LINES)
    for (const text of textsOf(behind)) expect(text).toMatch(/^\?/)
  })

  it('at any size', () => {
    expect(textsOf(moved(outlines, ({ x, y }) => ({ x: x / 20, y: y / 20 })))).toEqual(LINES)
    expect(textsOf(moved(outlines, ({ x, y }) => ({ x: x * 7, y: y * 7 })))).toEqual(LINES)
  })
})

describe('what shape does not tell', () => {
  it('an O among letters, a 0 among figures', () => {
    expect(textsOf(setText(sans, ['ROOM 100', 'OO 00']).outlines)[0]).toBe('ROOM 100')
  })

  it('capitals or small letters of one shape stay open', () => {
    const [text] = textsOf(setText(inter, ['SOS']).outlines)
    expect(text).toBe('? the 1st character may be “s” or “S”')
  })

  it('another line of the same size settles them', () => {
    expect(textsOf(setText(inter, ['SOS', 'HELP']).outlines)).toEqual(['SOS', 'HELP'])
  })

  it('a word that the sign says elsewhere settles characters of one shape, and only these', () => {
    const first = setText(faceNamed('Poppins_400Regular'), ['lobby'])
    expect(textsOf(first.outlines)[0]).toMatch(/^\? the 1st character may be/)
    expect(textsOf(first.outlines, { expected: ['lobby'] })).toEqual(['lobby'])
    expect(textsOf(first.outlines, { expected: ['hobby'] })[0]).toMatch(/^\?/)
    expect(textsOf(setText(inter, ['SOS']).outlines, { expected: ['sos'] })[0]).toMatch(/^\?/)
  })
})

describe('what is no text', () => {
  const shape = (points: [number, number][], path = 0): DrawnOutline => ({
    outline: points.map(([x, y]) => ({ x, y })),
    path,
    rule: 'nonzero',
    fill: 'black',
  })
  const arrow = shape([
    [0, 8],
    [12, 8],
    [12, 3],
    [20, 10],
    [12, 17],
    [12, 12],
    [0, 12],
  ])

  it('nothing at all', () => expect(readDrawn([]).lines).toEqual([]))

  it('an arrow alone', () => {
    const { lines, others } = readDrawn([arrow])
    expect(lines).toEqual([])
    expect(others).toEqual([0])
  })

  it('an arrow beside a word: the word is not said to be all', () => {
    const word = moved(setText(sans, ['EXIT']).outlines, ({ x, y }) => ({ x: x + 26, y: y + 20 })).map((o) => ({
      ...o,
      path: o.path + 1,
    }))
    expect(textsOf([arrow, ...word])[0]).toBe('? the 1st character is not recognised')
  })

  it('a ring, a bar, a square', () => {
    const ring = Array.from({ length: 60 }, (_, i): [number, number] => [
      10 + 9 * Math.cos(i / 9.55),
      9 * Math.sin(i / 9.55),
    ])
    for (const one of [
      shape(ring),
      shape([
        [0, 0],
        [3, 0],
        [3, 20],
        [0, 20],
      ]),
      shape([
        [0, 0],
        [9, 0],
        [9, 9],
        [0, 9],
      ]),
    ])
      for (const text of textsOf([one])) expect(text).toMatch(/^\?/)
  })

  it('more outlines than are looked at', () => {
    const many = Array.from({ length: MOST_OUTLINES + 1 }, (_, i) =>
      shape(
        [
          [i, 0],
          [i + 0.5, 0],
          [i, 1],
        ],
        i,
      ),
    )
    expect(readDrawn(many)).toMatchObject({ limitReached: true, lines: [] })
    expect(readDrawn(many.slice(1)).limitReached).toBe(false)
  })
})
