import { describe, expect, it } from 'vitest'
import { parseTransform } from '../../src/drawing/transform.js'
import { expectBox, page, read, shapesOf } from './svg.js'

describe('circles', () => {
  const circleOf = (content: string) => shapesOf(content)[0].circle
  it.each([
    ['circle', '<circle cx="10" cy="20" r="0.8"/>'],
    ['ellipse of equal radii', '<ellipse cx="10" cy="20" rx="0.8" ry="0.8"/>'],
    ['ellipse made round', '<ellipse cx="5" cy="20" rx="0.4" ry="0.8" transform="scale(2 1)"/>'],
    ['round rect', '<rect x="9.2" y="19.2" width="1.6" height="1.6" rx="0.8"/>'],
    ['round rect, radii clamped', '<rect x="9.2" y="19.2" width="1.6" height="1.6" rx="5"/>'],
    ['two half circles', '<path d="M9.2 20a.8.8 0 1 0 1.6 0a.8.8 0 1 0-1.6 0z"/>'],
    ['two half circles, the other way, left open', '<path d="M9.2 20A.8.8 0 0 1 10.8 20A.8.8 0 0 1 9.2 20"/>'],
    ['arcs turned', '<path d="M9.2 20a.8.8 45 1 0 1.6 0a.8.8 45 1 0-1.6 0z"/>'],
    ['mirrored and turned', '<circle cx="-10" cy="20" r=".8" transform="scale(-1 1) rotate(90 -10 20)"/>'],
  ])('knows the exact circle of a %s', (_, content) => {
    const circle = circleOf(content)
    expect(circle?.x).toBeCloseTo(10, 9)
    expect(circle?.y).toBeCloseTo(20, 9)
    expect(circle?.radius).toBeCloseTo(0.8, 9)
  })

  it.each([
    ['an ellipse', '<ellipse cx="10" cy="20" rx="0.8" ry="0.7"/>'],
    ['a skewed circle', '<circle r="0.8" transform="skewX(10)"/>'],
    ['half a circle', '<path d="M9.2 20a.8.8 0 1 0 1.6 0z"/>'],
    ['a circle with a tail', '<path d="M9.2 20a.8.8 0 1 0 1.6 0a.8.8 0 1 0-1.6 0l5 5"/>'],
    ['two circles', '<path d="M9 20a1 1 0 1 0 2 0a1 1 0 1 0-2 0zm9 0a1 1 0 1 0 2 0a1 1 0 1 0-2 0z"/>'],
    ['an arc and its way back', '<path d="M9.2 20a.8.8 0 0 0 1.6 0a.8.8 0 0 1-1.6 0z"/>'],
  ])('takes no %s for a circle', (_, content) => expect(circleOf(content)).toBeUndefined())

  it('scales the radius through every group', () => {
    const circle = circleOf('<g transform="scale(2)"><g transform="rotate(30)"><circle cx="1" r="3"/></g></g>')
    expect(circle?.radius).toBeCloseTo(6, 12)
    expect(circle?.x).toBeCloseTo(Math.sqrt(3), 12)
  })
})

describe('path data', () => {
  it('turns a quadratic into the cubic that it is: tops at half the height of its control (calculus)', () => {
    const [shape] = shapesOf('<path d="M10 80Q52.5 10 95 80T80 80z"/>')
    // B(1/2) = 80/4 + 10/2 + 80/4 = 45; the reflected control lies at 150, so the second curve reaches 115.
    expectBox(shape.box, [10, 45, shape.box.width, 70])
  })

  it('keeps what stands before an error and says so (SVG 1.1, F.2)', () => {
    const drawing = read(page('<path id="p" d="M10 10L20 10L20 20L30"/>'))
    expectBox(drawing.shapes[0].box, [10, 10, 10, 10])
    expect(drawing.ignored).toHaveLength(1)
    expect(drawing.ignored[0].couldBe).toContain('braille')
    for (const d of ['M0 0R10 10 20 20', 'L10 10', 'M0 0 A 1 1 0 2 0 1 1', 'M0 0L1e999 0', 'garbage'])
      expect(read(page(`<path d="${d}"/>`)).ignored.length, d).toBeGreaterThan(0)
  })

  it('allows leading zeros, as the grammar of SVG 1.1, 8.3.9 does', () => {
    const drawing = read(page('<path d="M 010,005 L 020.50 005 L 020 -007.5 z"/>'))
    expect(drawing.ignored).toEqual([])
    expectBox(drawing.shapes[0].box, [10, -7.5, 10.5, 12.5])
  })

  it('draws nothing and complains of nothing for empty data', () => {
    for (const d of ['', ' ', 'none', 'M5 5'])
      expect(read(page(`<path d="${d}"/>`))).toMatchObject({ shapes: [], ignored: [] })
  })

  it('keeps subpaths of no length, which paint the caps of points (SVG 1.1, 11.4)', () => {
    const stroke = 'fill="none" stroke="#000" stroke-width="1.6" stroke-linecap="round"'
    const [shape] = shapesOf(`<path ${stroke} d="M5 5h0M10 5L10 5M15 5z"/>`)
    expect(shape.contours.map((c) => c.start.x)).toEqual([5, 10, 15])
    expect(shape.contours.every((c) => c.segments.length === 1)).toBe(true)
    expect(shape.stroke).toMatchObject({ width: expect.closeTo(1.6, 9) as number, linecap: 'round', dashed: false })
    expect(shapesOf(`<line x1="5" y1="5" x2="5" y2="5" ${stroke}/>`)).toHaveLength(1)
  })

  it('starts anew from the start of the closed subpath', () => {
    const [shape] = shapesOf('<path d="M10 10h5v5zl-3 4z"/>')
    expect(shape.contours.map((c) => c.start)).toEqual([shape.contours[0].start, shape.contours[0].start])
  })
})

describe('basic shapes', () => {
  it.each([
    ['no radius', '<circle cx="5" cy="5"/>'],
    ['radius 0', '<circle r="0"/>'],
    ['ry 0', '<ellipse rx="5" ry="0"/>'],
    ['no height', '<rect width="5"/>'],
    ['no points', '<polygon/>'],
  ])('draws nothing with %s and complains of nothing (SVG 1.1, chapter 9)', (_, content) =>
    expect(read(page(content))).toMatchObject({ shapes: [], ignored: [] }),
  )

  it.each([
    'r="-1"',
    'r="NaN"',
    'r="1e309"',
    'r="0x10"',
    'r="twelve"',
    'r="--5"',
    'r="1e"',
    'r="5" cx="calc(1px + 2px)"',
    'r="5 6"',
  ])('lists a circle with %s as not understood, and never as a circle', (attributes) => {
    const drawing = read(page(`<circle id="c" cx="9" ${attributes}/>`.replace('cx="9" r="5" cx', 'r="5" cx')))
    expect(drawing.shapes).toEqual([])
    expect(drawing.ignored).toMatchObject([
      { source: { id: 'c', line: 1 }, couldBe: expect.arrayContaining(['braille']) as string[] },
    ])
  })

  it('takes one radius of a rect for the other, and clamps each to half a side (SVG 1.1, 9.2)', () => {
    const corner = (attributes: string) => {
      const [shape] = shapesOf(`<rect width="20" height="10" ${attributes}/>`)
      const [{ segments }] = shape.contours
      const end = segments.findIndex((segment, i) => i > 0 && segment.kind === 'line') - 1
      return { rx: 20 - segments[0].to.x, ry: segments[end].to.y }
    }
    const close = (v: number) => expect.closeTo(v, 9) as number
    expect(corner('rx="3"')).toEqual({ rx: close(3), ry: close(3) })
    expect(corner('ry="2"')).toEqual({ rx: close(2), ry: close(2) })
    expect(corner('rx="8"')).toEqual({ rx: close(8), ry: close(5) })
    expect(corner('rx="30" ry="auto"')).toEqual({ rx: close(10), ry: close(5) })
  })

  it('ignores the odd last number of a list of points, and says so', () => {
    const drawing = read(page('<polygon points="1,1 5,1 5,5 9"/>'))
    expectBox(drawing.shapes[0].box, [1, 1, 4, 4])
    expect(drawing.ignored).toHaveLength(1)
  })
})

describe('transforms', () => {
  it('gives the matrices of SVG 1.1, 7.5', () => {
    const near = (...v: number[]) =>
      Object.fromEntries(['a', 'b', 'c', 'd', 'e', 'f'].map((k, i) => [k, expect.closeTo(v[i], 9) as number]))
    const root = Math.SQRT1_2
    const attribute = (text: string) => parseTransform(text, 'attribute')
    expect(attribute('translate(50 90) rotate(-45) translate(130,160)')).toEqual(
      near(root, -root, root, root, 50 + 290 * root, 90 + 30 * root),
    )
    expect(attribute('rotate(90)')).toEqual({ a: 0, b: 1, c: -1, d: 0, e: 0, f: 0 })
    expect(attribute('rotate(30 10 20)')).toEqual(
      near(Math.sqrt(3) / 2, 0.5, -0.5, Math.sqrt(3) / 2, 10 - 5 * Math.sqrt(3) + 10, 20 - 5 - 10 * Math.sqrt(3)),
    )
    expect(attribute('skewX(45)')).toEqual(near(1, 0, 1, 1, 0, 0))
    expect(attribute('skewY(45)')).toEqual(near(1, 1, 0, 1, 0, 0))
    expect(attribute('scale(3)')).toEqual(near(3, 0, 0, 3, 0, 0))
    expect(attribute('translate(7)')).toEqual(near(1, 0, 0, 1, 7, 0))
  })

  it('reads every legal list', () => {
    for (const text of [
      '',
      ' ',
      'none',
      'matrix(1,0,0,1,10,20)translate(5,5)',
      'scale(2),skewX(1)',
      '\ttranslate ( 1e1-2e-1 )\n',
      'translate(1 2) , rotate(3)',
    ])
      expect(parseTransform(text, 'attribute'), text).toBeDefined()
  })

  it('refuses everything else', () => {
    for (const text of [
      'foo(1)',
      'matrix(1 2 3)',
      'translate(1,2,3)',
      'translate(1',
      'translate(1,)',
      'translate(,1)',
      'rotate(1 2)',
      'scale()',
      'translate(1px)',
      'rotate(45deg)',
      'translate(1),',
      'x translate(1)',
      'scale(1e200)scale(1e200)',
      'perspective(3)',
      'translateX(3)',
    ])
      expect(parseTransform(text, 'attribute'), text).toBeUndefined()
  })

  it('needs units in a style, and none in an attribute (CSS Transforms 1, 6)', () => {
    expect(parseTransform('translate(1in, 0) rotate(0.25turn)', 'property')).toEqual(
      parseTransform('translate(96) rotate(90)', 'attribute'),
    )
    expect(parseTransform('rotate(100grad)', 'property')).toEqual(parseTransform('rotate(90)', 'attribute'))
    for (const text of ['translate(5)', 'rotate(5)', 'rotate(5px)', 'scale(2px)'])
      expect(parseTransform(text, 'property'), text).toBeUndefined()
  })

  it('paints nothing that a broken transform moves, and says so', () => {
    const drawing = read(page('<g id="g" transform="rotate(1 2)"><rect width="3" height="3"/></g>'))
    expect(drawing.shapes).toEqual([])
    expect(drawing.ignored).toMatchObject([{ source: { id: 'g' } }])
    expect(drawing.ignored[0].couldBe.length).toBeGreaterThan(0)
    expect(
      read(page('<rect width="3" height="3" style="transform:rotate(1deg);transform-origin:center"/>')).ignored,
    ).toHaveLength(1)
  })

  it('turns round transform-origin', () => {
    expectBox(
      shapesOf('<rect width="4" height="2" transform="rotate(90)" transform-origin="10 10"/>')[0].box,
      [18, 0, 2, 4],
    )
  })
})
