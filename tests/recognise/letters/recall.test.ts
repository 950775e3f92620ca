import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { loopOf } from '../../../src/geometry/loop.js'
import type { Point } from '../../../src/geometry/point.js'
import { boxOfInk, mapInk, type Ink } from '../../../src/recognise/letters/ink.js'
import { likenessesOf, lookAt } from '../../../src/recognise/letters/look.js'
import { Recall } from '../../../src/recognise/letters/recall.js'
import { inkOfShape, isSameShape, shapeOf, type Shape } from '../../../src/recognise/letters/shape.js'
import { glyphOf, heldOutFaces } from './faces.js'

/** What is kept of shapes, held against working everything out anew. The shapes are glyphs of open faces, or invented. */

const shape = (ink: Ink): Shape => {
  const box = boxOfInk(ink)
  if (!box) throw new Error('no ink')
  return shapeOf(ink, box)
}
const inkOf = (...contours: Point[][]): Ink => ({
  layers: [{ contours: contours.map(loopOf), rule: 'nonzero', effect: 'add' }],
})
const [face] = heldOutFaces()
const glyphs = [...'AEGRS&8a'].map((c) => inkOf(...(glyphOf(face, c)?.contours ?? [])))

describe('a shape', () => {
  it('is the same wherever and however large the letter is drawn', () => {
    const place = {
      dx: fc.double({ min: -500, max: 500, noNaN: true }),
      size: fc.double({ min: 0.2, max: 8, noNaN: true }),
    }
    fc.assert(
      fc.property(fc.record(place), fc.constantFrom(...glyphs), ({ dx, size }, ink) => {
        const there = mapInk(ink, { a: size, b: 0, c: 0, d: size, e: dx, f: -dx })
        expect(isSameShape(shape(ink), shape(there))).toBe(true)
      }),
      { numRuns: 60 },
    )
  })

  it('is another one for another letter, proportion, fill rule or order of painting', () => {
    const [first] = glyphs
    const wider = mapInk(first, { a: 1.001, b: 0, c: 0, d: 1, e: 0, f: 0 })
    const ruled: Ink = { layers: first.layers.map((layer) => ({ ...layer, rule: 'evenodd' })) }
    const cut: Ink = { layers: [...first.layers, { ...first.layers[0], effect: 'cut' }] }
    const shapes = [...glyphs, wider, ruled, cut].map(shape)
    shapes.forEach((a, i) => shapes.forEach((b, j) => expect(isSameShape(a, b)).toBe(i === j)))
  })

  it('gives back the ink that it was made from, in steps', () => {
    for (const ink of glyphs) expect(isSameShape(shape(inkOfShape(shape(ink))), shape(ink))).toBe(true)
  })
})

describe('what was seen before', () => {
  it('is seen the same again, and as without keeping anything', () => {
    for (const ink of [...glyphs, ...glyphs]) {
      const box = boxOfInk(ink)
      expect(box && lookAt(ink, box)?.likenesses).toEqual(likenessesOf(shape(ink)))
    }
  })

  const counted = (most: { shapes: number; numbers: number }) => {
    const asked: Shape[] = []
    const recall = new Recall((one) => asked.push(one) && one.numbers.length, most)
    return { asked, recall }
  }
  const shapes = glyphs.map(shape)
  const all = { shapes: 100, numbers: 1_000_000 }

  it('is worked out once', () => {
    const { asked, recall } = counted(all)
    for (const one of [...shapes, ...shapes]) expect(recall.get(one)).toBe(one.numbers.length)
    expect(asked).toEqual(shapes)
  })

  it('is bounded in number: what was asked for longest ago goes first', () => {
    const { asked, recall } = counted({ ...all, shapes: 2 })
    const [a, b, c] = shapes
    for (const one of [a, b, a, c, a, b]) recall.get(one)
    expect(asked).toEqual([a, b, c, b])
  })

  it('is bounded in size', () => {
    const [a, b] = shapes
    const { asked, recall } = counted({ ...all, numbers: a.numbers.length + b.numbers.length - 1 })
    for (const one of [a, b, b, a]) recall.get(one)
    expect(asked).toEqual([a, b, a])
    const none = counted({ ...all, numbers: 0 })
    for (const one of [a, a]) none.recall.get(one)
    expect(none.asked).toEqual([a, a])
  })

  it('is told from another shape of the same hash', () => {
    const [a] = shapes
    const other = { ...shapes[1], hash: a.hash }
    const { recall } = counted(all)
    for (const one of [a, other, a, other]) expect(recall.get(one)).toBe(one.numbers.length)
  })
})
