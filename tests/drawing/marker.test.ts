import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readAsRendered } from './rendered.js'
import { expectBox, page, read } from './svg.js'

/** SVG 1.1, 11.6.2 and SVG 2, 13.7; the pictures by resvg. */
const ARROW = '<path d="M0 0L4 2L0 4z" fill="green"/>'
const DOT = '<circle cx="1" cy="1" r="1"/>'
const marked = (attributes: string, path: string, content = ARROW) =>
  page(`<marker id="m" ${attributes}>${content}</marker>${path}`)
const all = 'marker-start="url(#m)" marker-mid="url(#m)" marker-end="url(#m)"'

describe('markers', () => {
  it.each([
    ['start', 'marker-start="url(#m)"', 1],
    ['mid', 'marker-mid="url(#m)"', 2],
    ['end', 'marker-end="url(#m)"', 1],
    ['all', all, 4],
  ])('stand at the vertices: %s', (_, attributes, count) => {
    const { shapes, ignored } = readAsRendered(
      marked(
        'markerWidth="9" markerHeight="9" refX="1" refY="1" markerUnits="userSpaceOnUse"',
        `<path fill="none" stroke="red" stroke-width=".5" ${attributes} d="M10 10H20V30L40 40"/>`,
        DOT,
      ),
    )
    expect(ignored).toEqual([])
    expect(shapes).toHaveLength(count + 1)
    expect(shapes.slice(1).every(({ circle }) => circle)).toBe(true)
  })

  /**
   * Outside reference: Chromium 156, from a picture of the same drawing: where a dot stands that lies 3.5 mm ahead of each
   * vertex, to 0.1 mm. At the start and end of a closed outline there are two at one place.
   */
  it.each([
    [
      'path',
      'path d="M10 10H20V30L40 40C50 60 60 10 70 50Q80 90 90 60z"',
      '11,6.7 21.8,33 22.5,12.5 42.5,42.5 70.9,53.4 88.8,56.7',
    ],
    ['path with arcs', 'path d="M10 30A10 20 30 0 1 40 40a9 9 0 0 0 9 9"', '11.6,26.9 39.2,43.4 52.5,49'],
    [
      'path of several parts',
      'path d="M10 10h20v20zl-5 9M40 40h20M70 70v9h9z"',
      '3.3,22 11.3,6.8 26.7,31.3 32.5,12.5 43.5,40 63.5,40 66.8,71.3 72.5,81.5 80.3,75.8',
    ],
    [
      'path of curves whose controls lie on their ends',
      'path d="M10 10C10 10 30 20 40 10C50 40 60 50 60 50"',
      '13.1,11.6 43.4,10.8 62.5,52.5',
    ],
    [
      'path with a segment of no length',
      'path d="M10 10H30H30V50L50 60"',
      '13.5,10 31.8,53 32.5,12.5 33.5,10 53.1,61.6',
    ],
    ['polygon', 'polygon points="10,10 40,20 30,60 80,80"', '11.8,7 31.6,63.1 41.7,23.1 81.9,77'],
    ['polyline', 'polyline points="10,10 40,20 30,60 80,80"', '13.3,11.1 31.6,63.1 41.7,23.1 83.3,81.3'],
    ['line', 'line x1="10" y1="20" x2="60" y2="40"', '13.3,21.3 63.3,41.3'],
  ])('are turned with the outline of a %s', (_, element, places) => {
    const ahead = '<circle cx="3.5" r="1"/>'
    const { shapes } = read(
      marked(
        'orient="auto" overflow="visible" markerUnits="userSpaceOnUse"',
        `<${element} fill="none" ${all}/>`,
        ahead,
      ),
    )
    const wanted = places.split(' ').map((place) => place.split(',').map(Number))
    const apart = ([x, y]: number[], { circle }: (typeof shapes)[number]) =>
      circle ? Math.hypot(x - circle.x, y - circle.y) : Infinity
    for (const place of wanted) expect(Math.min(...shapes.map((shape) => apart(place, shape)))).toBeLessThan(0.15)
    for (const shape of shapes) expect(Math.min(...wanted.map((place) => apart(place, shape)))).toBeLessThan(0.15)
  })

  it.each([
    ['path', `<path d="M10 10H20V30L40 40C50 60 60 10 70 50Q80 90 90 60" ${all}/>`],
    ['line', `<line x1="10" y1="20" x2="60" y2="40" ${all}/>`],
    ['polyline', `<polyline points="10,10 40,20 30,60 80,80" ${all}/>`],
  ])('give the picture of a %s with arrows', (_, path) => {
    readAsRendered(
      marked(
        'orient="auto" markerWidth="5" markerHeight="5" refX="1" refY="2" markerUnits="userSpaceOnUse"',
        path.replace('/>', ' fill="none" stroke="red" stroke-width=".5"/>'),
      ),
    )
  })

  it('point away from the start when they are to be reversed there (SVG 2, 13.7.4)', () => {
    const line = `<line x1="10" y1="20" x2="60" y2="20" fill="none" ${all}/>`
    const boxes = (orient: string) =>
      read(
        marked(`orient="${orient}" markerWidth="4" markerHeight="4" refY="2" markerUnits="userSpaceOnUse"`, line),
      ).shapes.map(({ box }) => box)
    expectBox(boxes('auto-start-reverse')[0], [6, 18, 4, 4])
    expectBox(boxes('auto-start-reverse')[1], [60, 18, 4, 4])
    expectBox(boxes('auto')[0], [10, 18, 4, 4])
  })

  it('stand at every vertex for the shorthand, and on outlines that are not painted themselves', () => {
    const at = (attributes: string) =>
      read(marked('', `<path d="M9 9h9v9" fill="none" ${attributes}/>`, DOT)).shapes.map(({ circle }) => circle?.x)
    expect(at('style="marker:url(#m)"')).toEqual([10, 19, 19].map((x) => expect.closeTo(x, 6) as number))
    expect(at('marker="url(#m)"')).toEqual([])
  })

  it.each([
    ['in widths of the stroke', 'markerWidth="4" markerHeight="4"'],
    ['in user units', 'markerWidth="4" markerHeight="4" markerUnits="userSpaceOnUse"'],
    ['of the usual size', 'overflow="visible"'],
    ['with a viewBox', 'markerWidth="5" markerHeight="3" viewBox="0 0 4 4"'],
    ['with a viewBox that fills', 'markerWidth="5" markerHeight="3" viewBox="0 0 4 4" preserveAspectRatio="none"'],
    ['with a viewBox that starts elsewhere', 'markerWidth="5" markerHeight="5" viewBox="-1 -1 6 6" refX="2" refY="2"'],
    ['at a fixed angle', 'markerWidth="4" markerHeight="4" orient="30"'],
    ['at an angle in turns', 'markerWidth="4" markerHeight="4" orient="0.25turn"'],
    ['that overflow', 'markerWidth="1" markerHeight="1" overflow="visible"'],
  ])('are drawn %s', (_, attributes) => {
    readAsRendered(marked(attributes, `<path d="M20 20H60V70" fill="none" stroke="red" stroke-width="2" ${all}/>`))
  })

  it('are cut at their edge, and it is said', () => {
    const { shapes, ignored } = read(
      marked('markerWidth="3" markerHeight="3"', `<path d="M20 20H60" fill="none" ${all}/>`),
    )
    expect(shapes).toEqual([])
    expect(ignored).toHaveLength(2)
    expect(ignored[0].couldBe).toContain('braille')
  })

  it('know the key words for the reference point (SVG 2, 13.7.2)', () => {
    const words = marked(
      'markerWidth="4" markerHeight="4" refX="center" refY="bottom"',
      `<path d="M20 20H60" fill="none" ${all}/>`,
    )
    const numbers = marked(
      'markerWidth="4" markerHeight="4" refX="2" refY="4"',
      `<path d="M20 20H60" fill="none" ${all}/>`,
    )
    expect(read(words).shapes.map(({ box }) => box)).toEqual(read(numbers).shapes.map(({ box }) => box))
  })

  it('are painted over the element, in its opacity, with the names and the place of the element', () => {
    const { shapes } = read(
      marked(
        'markerWidth="4" markerHeight="4"',
        `<g id="braille"><path id="p" opacity=".5" d="M20 20H60" stroke="red" ${all}/></g>`,
        '<circle id="d" cx="1" cy="1" r="1"/>',
      ),
    )
    expect(shapes.map(({ source }) => source.id)).toEqual(['p', 'p', 'p'])
    expect(shapes[1].labels.names).toEqual(['d', 'p', 'braille'])
    expect(shapes[1].fill?.opacity).toBe(0.5)
  })

  it('take their style from where they stand, and colours from what they mark when they ask for them (SVG 2, 13.2)', () => {
    const own = read(
      page(`<g fill="red"><marker id="m">${DOT}</marker></g><path d="M9 9h9" fill="green" marker-end="url(#m)"/>`),
    )
    expect(own.shapes.at(-1)?.fill?.rgb).toEqual([1, 0, 0])
    const asked = marked(
      '',
      '<path d="M9 9h9" fill="green" stroke="red" marker-end="url(#m)"/>',
      '<circle cx="1" cy="1" r="1" fill="context-stroke"/>',
    )
    expect(read(asked).shapes.at(-1)?.fill?.rgb).toEqual([1, 0, 0])
  })

  it('are not there with no size, on other elements, on what is hidden, or where a reference leads nowhere', () => {
    for (const [attributes, path] of [
      ['markerWidth="0"', `<path d="M9 9h9" fill="none" ${all}/>`],
      ['', `<path d="M9 9h9" visibility="hidden" ${all}/>`],
      ['', `<path d="M9 9h9" fill="none" marker="url(#no)"/>`],
      ['', `<circle r="5" fill="none" ${all}/>`],
    ])
      expect(read(marked(attributes, path))).toMatchObject({ shapes: [], ignored: [] })
  })

  it('are told of when they cannot be read or mark themselves', () => {
    for (const attributes of ['markerWidth="wide"', 'orient="north"', 'viewBox="0 0 1"', 'refX="?"'])
      expect(
        read(marked(attributes, `<path d="M9 9h9" fill="none" marker-end="url(#m)"/>`)).ignored,
        attributes,
      ).toHaveLength(1)
    const ring = read(
      marked('', `<path d="M9 9h9" fill="none" marker-end="url(#m)"/>`, '<path d="M0 0h1v1" marker-end="url(#m)"/>'),
    )
    expect(ring.ignored.length).toBeGreaterThan(0)
  })

  it('agree with the other renderer on any polyline', () => {
    const n = fc.integer({ min: 10, max: 90 })
    fc.assert(
      fc.property(fc.array(fc.tuple(n, n), { minLength: 2, maxLength: 6 }), (points) => {
        readAsRendered(
          marked(
            'orient="auto" markerWidth="4" markerHeight="4" refX="1" refY="2" markerUnits="userSpaceOnUse"',
            `<polyline points="${points.join(' ')}" fill="none" stroke="red" stroke-width=".5" ${all}/>`,
          ),
        )
      }),
      { numRuns: 25, seed: 3 },
    )
  })
})
