import { describe, expect, it } from 'vitest'
import type { Contour } from '../../src/geometry/outline.js'
import { roundOnce, type KnownRounds } from '../../src/recognise/round-once.js'
import { roundOf } from '../../src/recognise/round.js'
import { cubicCircle } from './dotted.js'

// Held against the same contour worked out by itself; the places are invented.

describe('a round contour that is worked out once for each shape', () => {
  it('is found where it stands, as it is when worked out by itself', () => {
    const known: KnownRounds = new Map()
    for (const [x, y] of [
      [10, 20],
      [33.3, 7.1],
      [1234.5, 987.6],
    ]) {
      const contour = cubicCircle(x, y, 1.55)
      const [once, alone] = [roundOnce(contour, 1.55, true, known), roundOf(contour, 1.55, true)]
      expect(once?.x).toBeCloseTo(alone?.x ?? NaN, 6)
      expect(once?.y).toBeCloseTo(alone?.y ?? NaN, 6)
      expect(once?.diameter).toBeCloseTo(alone?.diameter ?? NaN, 6)
    }
    expect(known.size).toBe(1)
  })

  it('is another one when it is larger by a micrometre, or moved in one control', () => {
    const known: KnownRounds = new Map()
    const usual = roundOnce(cubicCircle(10, 20, 1.55), 1.55, true, known)
    const larger = roundOnce(cubicCircle(10, 20, 1.551), 1.55, true, known)
    expect((larger?.diameter ?? NaN) - (usual?.diameter ?? NaN)).toBeCloseTo(0.001, 5)
    const contour = cubicCircle(10, 20, 1.55)
    const [first, ...others] = contour.segments
    if (first.kind !== 'cubic') throw new Error('a circle of curves is meant')
    const bent = { ...contour, segments: [{ ...first, c1: { x: first.c1.x, y: first.c1.y + 0.6 } }, ...others] }
    expect(roundOnce(bent, 1.55, true, known)).toEqual(roundOf(bent, 1.55, true))
  })

  it('remembers what is not round too', () => {
    const known: KnownRounds = new Map()
    const triangle = (x: number): Contour => ({
      start: { x, y: 0 },
      segments: [
        { kind: 'line', to: { x: x + 1, y: 0 } },
        { kind: 'line', to: { x: x + 0.5, y: 1 } },
      ],
      closed: true,
    })
    expect(roundOnce(triangle(0), 1, true, known)).toBeUndefined()
    expect(roundOnce(triangle(5), 1, true, known)).toBeUndefined()
    expect(known.size).toBe(1)
  })
})
