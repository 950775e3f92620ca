import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { readDrawing } from '../../src/drawing/read.js'
import type { Box } from '../../src/geometry/box.js'
import { CORPORA, filesIn, isMissing, LIBRSVG } from './corpora.js'

/**
 * Boxes of elements against the goldens of librsvg (Debian package librsvg2-tests, `geometries/*.subs` and
 * `primitive_geometries/*.geom`), in px of the page: an inch has 96 of them (CSS Values 4, 5.2) and 25.4 mm.
 */
const MM = 25.4 / 96

/** librsvg places things to the 256th of a px, which is how its goldens read. */
const TOLERANCE = 1 / 256

const Rectangle = z.object({ x: z.number(), y: z.number(), width: z.number(), height: z.number() })
const Goldens = z.record(z.string(), z.union([Rectangle, z.object({ ink_rect: Rectangle, logical_rect: Rectangle })]))

/** What is painted: half of a stroke on each side included. librsvg measures what is hidden too, so that it is shown first. */
function inkOf(path: string, id: string): Box | undefined {
  const shown = readFileSync(path, 'utf8').replaceAll('"opacity:0"', '"opacity:1"')
  const { shapes } = readDrawing(new TextEncoder().encode(shown))
  const shape = shapes.find(({ source }) => source.id === id)
  if (!shape) return undefined
  const half = (shape.stroke?.width ?? 0) / 2
  const { x, y, width, height } = shape.box
  return { x: x - half, y: y - half, width: width + 2 * half, height: height + 2 * half }
}

const goldens = isMissing(LIBRSVG)
  ? []
  : filesIn(join(CORPORA, LIBRSVG), /\.svg\.(subs|geom)$/).flatMap((path) =>
      Object.entries(Goldens.parse(JSON.parse(readFileSync(path, 'utf8')))).map(([id, golden]) => ({
        svg: path.replace(/\.(subs|geom)$/, ''),
        name: `${path.slice(path.lastIndexOf('/') + 1)} ${id}`,
        id: id.slice(1),
        golden: 'ink_rect' in golden ? golden.ink_rect : golden,
      })),
    )

describe.skipIf(goldens.length === 0)('boxes as librsvg finds them', () => {
  it('are of enough elements', () => {
    console.log(`${goldens.length} boxes compared, within ${TOLERANCE} px`)
    expect(goldens.length).toBeGreaterThan(30)
  })

  it.each(goldens)('$name', ({ svg, id, golden }) => {
    const ours = inkOf(svg, id)
    for (const side of ['x', 'y', 'width', 'height'] as const)
      expect(Math.abs((ours?.[side] ?? NaN) - golden[side] * MM), side).toBeLessThanOrEqual(TOLERANCE * MM)
  })
})
