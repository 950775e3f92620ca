import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readDrawing } from '../../src/drawing/read.js'
import dots from './files/dots.json' with { type: 'json' }

/**
 * Whole signs as drawing programs and people write them. Truth: the places and diameters that the signs were drawn from,
 * confirmed by rendering each file at high resolution; the files round to two to four decimals.
 */
describe('dots of whole drawings', () => {
  for (const [name, truth] of Object.entries(dots)) {
    it(`finds every dot of ${name}`, () => {
      const drawing = readDrawing(readFileSync(new URL(`files/${name}.svg`, import.meta.url)))
      expect(drawing.viewport.width).toBeCloseTo(truth.page[0], 2)
      expect(drawing.viewport.height).toBeCloseTo(truth.page[1], 2)
      expect(drawing.ignored).toEqual([])
      const circles = drawing.shapes.flatMap((shape) => shape.circle ?? [])
      expect(circles.length).toBeGreaterThanOrEqual(truth.dots.length)
      for (const [x, y, diameter] of truth.dots) {
        const near = circles.find((c) => Math.hypot(c.x - x, c.y - y) < 0.01)
        expect(near, `a dot at ${x}, ${y}`).toBeDefined()
        expect(2 * near!.radius).toBeCloseTo(diameter, 2)
      }
    })
  }
})
