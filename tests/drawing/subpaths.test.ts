import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { outlineOfPath } from '../../src/drawing/path.js'
import { subpathsIn, withSubpaths } from '../../src/drawing/subpaths.js'
import { IDENTITY } from '../../src/geometry/matrix.js'

/** Outside reference: the drawing stage's own reader of path data, which knows nothing of how the data are taken apart here. */

const contoursOf = (data: string) => {
  const { contours, fault } = outlineOfPath(data, IDENTITY)
  expect(fault).toBeUndefined()
  return contours
}
const rounded = (value: unknown): string =>
  JSON.stringify(value, (_, one: unknown) => (typeof one === 'number' ? Number(one.toFixed(4)) + 0 : one))

const number = fc.integer({ min: -90, max: 90 }).map((n) => n / 4)
const pair = fc.tuple(number, number).map(([x, y]) => `${x},${y}`)
const draw = fc.oneof(
  pair.map((p) => `L${p}`),
  pair.map((p) => `l ${p} ${p}`),
  number.map((x) => `H${x}`),
  number.map((y) => `v${y}`),
  fc.tuple(pair, pair, pair).map(([a, b, c]) => `C${a} ${b} ${c}`),
  fc.tuple(pair, pair).map(([a, b]) => `s${a} ${b}`),
  fc.tuple(pair, pair).map(([a, b]) => `Q${a} ${b}`),
  pair.map((p) => `T${p}`),
  pair.map((p) => `a3 2 10 01${p}`),
  pair.map((p) => `A3,2,0,1,0,${p}`),
)
const subpath = fc
  .tuple(
    fc.constantFrom('M', 'm', ''),
    pair,
    fc.option(pair),
    fc.array(draw, { minLength: 1, maxLength: 4 }),
    fc.boolean(),
  )
  .map(([move, at, further, steps, closed]) => ({ move, at, further, steps, closed }))
const path = fc.array(subpath, { minLength: 1, maxLength: 5 }).map((parts) =>
  parts
    .map(({ move, at, further, steps, closed }, i) => {
      // Only behind a close does a subpath start without a move.
      const start = i === 0 || !parts[i - 1].closed ? move || 'M' : move
      return `${start === '' ? '' : `${start}${at}${further === null ? '' : ` ${further}`}`}${steps.join(' ')}${closed ? 'z' : ''}`
    })
    .join(' '),
)

describe('path data with some subpaths changed', () => {
  it('draws what is left where it was, and moves what is moved', () => {
    fc.assert(
      fc.property(
        path,
        fc.array(fc.constantFrom('keep', 'remove', 'move'), { minLength: 6, maxLength: 6 }),
        (data, fates) => {
          const before = contoursOf(data)
          expect(subpathsIn(data)).toBe(before.length)
          const by = { x: 12.5, y: -3.25 }
          const data2 = withSubpaths(
            data,
            (i) => (fates[i] === 'remove' ? 'remove' : fates[i] === 'move' ? by : undefined),
            8,
          )
          if (data2 === undefined) throw new Error(`not taken apart: ${data}`)
          const there = <P extends { x: number; y: number }>({ x, y }: P) => ({ x: x + by.x, y: y + by.y })
          const wanted = before.flatMap((contour, i) => {
            if (fates[i] === 'remove') return []
            if (fates[i] === 'keep') return [contour]
            const segments = contour.segments.map((s) =>
              s.kind === 'line'
                ? { ...s, to: there(s.to) }
                : { ...s, c1: there(s.c1), c2: there(s.c2), to: there(s.to) },
            )
            return [{ ...contour, start: there(contour.start), segments }]
          })
          expect(rounded(contoursOf(data2 === '' ? 'none' : data2))).toBe(rounded(wanted))
        },
      ),
      { numRuns: 300 },
    )
  })

  it('leaves what is not changed as it is written', () => {
    expect(withSubpaths('M 1.50,2 h3 v3 z m9 0h1v1z', (i) => (i === 1 ? 'remove' : undefined), 3)).toBe(
      'M 1.50,2 h3 v3 z',
    )
    expect(withSubpaths('M1 2h3v3z m9,0 h1v1z', (i) => (i === 0 ? 'remove' : undefined), 3)).toBe('M10,2 h1v1z')
  })

  it('takes nothing apart that it does not understand', () => {
    expect(withSubpaths('M1 2 L3', () => undefined, 3)).toBeUndefined()
    expect(subpathsIn('M1 2 A1 1 0 2 0 3 4')).toBeUndefined()
  })
})
