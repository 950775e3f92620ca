import { describe, expect, it } from 'vitest'
import { readAsRendered } from './rendered.js'
import { expectBox, page, read } from './svg.js'

const rect = '<rect x="10" y="10" width="5" height="5"/>'
const dots = '<circle cx="20" cy="20" r=".8"/><circle cx="22.4" cy="20" r=".8"/><circle cx="20" cy="22.4" r=".8"/>'

/** SVG 1.1, 14.3: "Conceptually, any parts of the drawing that lie outside of the region bounded by the clipping path are not drawn." */
describe('clips', () => {
  const clipped = (clip: string, attributes = '', content = rect) =>
    page(`<clipPath id="c" ${attributes}>${clip}</clipPath><g id="g" clip-path="url(#c)">${content}</g>`)

  it.each([
    ['a rect', '<rect width="50" height="50"/>'],
    ['the same rect', '<rect x="10" y="10" width="5" height="5"/>'],
    ['a circle', '<circle cx="12" cy="12" r="9"/>'],
    ['a path', '<path d="M0 0H40V40H0z"/>'],
    ['a turned rect', '<rect width="30" height="30" transform="rotate(10 12 12)"/>'],
    ['one of two', '<rect x="90" width="1" height="1"/><rect width="20" height="20"/>'],
    ['one with a hole beside it', '<path d="M0 0H40V40H0zM20 20V30H30V20z"/>'],
  ])('lets through what lies wholly inside of %s', (_, clip) => {
    const { shapes, ignored } = readAsRendered(clipped(clip))
    expect({ shapes, ignored }).toMatchObject({ shapes: [{ source: { line: 1 } }], ignored: [] })
    expectBox(shapes[0].box, [10, 10, 5, 5])
  })

  it('drops what lies wholly outside, for it is not seen', () => {
    for (const clip of [
      '<rect width="5" height="5"/>',
      '',
      '<rect width="50" height="50" display="none"/>',
      '<g visibility="hidden"/>'.replace('<g', '<rect width="50" height="50"'),
      '<path d="M0 0H40V40H0zM9 9V16H16V9z"/>',
    ])
      expect(read(clipped(clip)), clip).toMatchObject({ shapes: [], ignored: [] })
  })

  it('makes each shape of a clip a shape, painted as the one that is clipped', () => {
    const { shapes, ignored } = readAsRendered(clipped(dots, '', '<rect width="90" height="90" fill="green"/>'))
    expect(ignored).toEqual([])
    expect(shapes.map(({ circle }) => circle?.radius)).toEqual(
      [0.8, 0.8, 0.8].map((r) => expect.closeTo(r, 9) as number),
    )
    expect(shapes[1].fill?.rgb).toEqual([0, 128 / 255, 0])
    expect(shapes[1].source).toMatchObject({ line: 1 })
  })

  it.each([
    [
      'one path of many dots',
      '<path d="M19.2 20a.8.8 0 1 0 1.6 0a.8.8 0 1 0-1.6 0zm2.4 0a.8.8 0 1 0 1.6 0a.8.8 0 1 0-1.6 0z"/>',
      '<rect width="90" height="90"/>',
    ],
    ['some of the dots inside of what is painted', dots, '<rect width="90" height="21.3"/>'],
    [
      'dots of a path, some outside of the clip',
      '<circle cx="20" cy="20" r="2"/>',
      '<path d="M19 19h1v1h-1zm20 0h1v1h-1zM20.2 20.2h.5v.5h-.5z"/>',
    ],
    [
      'a ring round what is clipped',
      '<path d="M0 0H40V40H0zM5 5V30H30V5z"/>',
      '<path d="M1 1H3V3H1zM20 20H22V22H20z"/>',
    ],
    ['a hole inside of what is clipped', '<path d="M0 0H40V40H0zM11 11V14H14V11z"/>', rect],
    [
      'a piece of a shape with a hole',
      '<rect x="11" y="11" width="20" height="20"/>',
      '<path d="M5 5H60V60H5zM15 15V20H20V15z"/>',
    ],
    [
      'a nonzero shape that winds twice',
      '<rect x="11" y="11" width="20" height="20"/>',
      '<path d="M5 5H60V60H5zM15 15H20V20H15z"/>',
    ],
    [
      'an evenodd clip',
      '<path clip-rule="evenodd" d="M5 5H60V60H5zM15 15H20V20H15z"/>',
      '<rect width="90" height="90"/>',
    ],
    [
      'a clip-rule that the clip inherits',
      '<path d="M5 5H60V60H5zM15 15H20V20H15z"/>',
      '<rect width="90" height="90"/>',
    ],
    [
      'a stroke that is not reached',
      '<circle cx="30" cy="30" r="9"/>',
      '<rect x="5" y="5" width="50" height="50" stroke="red" stroke-width="4" fill="green"/>',
    ],
    [
      'a stroke that is inside',
      '<circle cx="30" cy="30" r="25"/>',
      '<rect x="25" y="25" width="9" height="9" stroke="red" stroke-width="4" fill="green"/>',
    ],
    ['lines, some outside', '<circle cx="30" cy="30" r="9"/>', '<path d="M28 28h3M80 80h3" stroke="red" fill="none"/>'],
  ])('is exact for %s', (name, clip, content) => {
    const attributes = name.includes('inherits') ? 'clip-rule="evenodd"' : ''
    expect(readAsRendered(clipped(clip, attributes, content)).ignored).toEqual([])
  })

  it.each([
    ['transform', '<rect x="-2" y="-2" width="4" height="4"/>', 'transform="translate(30 30) rotate(30)"'],
    ['objectBoundingBox', '<circle cx=".5" cy=".5" r=".25"/>', 'clipPathUnits="objectBoundingBox"'],
    ['a use inside', '<use href="#d" x="5" y="6" transform="scale(2)"/>', ''],
    ['a clip on the clip', dots, 'clip-path="url(#outer)"'],
    ['a clip on a shape of the clip', dots.replace('r=', 'clip-path="url(#outer)" r='), ''],
  ])('knows %s', (_, clip, attributes) => {
    const markup = page(
      `<defs><circle id="d" cx="9" cy="9" r="2"/></defs><clipPath id="outer"><rect x="18" y="18" width="9" height="3.2"/></clipPath>` +
        `<clipPath id="c" ${attributes}>${clip}</clipPath><rect width="60" height="50" clip-path="url(#c)"/>`,
    )
    expect(readAsRendered(markup).ignored).toEqual([])
  })

  it('takes every clip round a shape into account', () => {
    const inner = clipped(dots, '', '<g clip-path="url(#d)"><rect width="90" height="90"/></g>')
    const { shapes } = readAsRendered(
      inner.replace('<g id', '<clipPath id="d"><rect x="21" width="9" height="60"/></clipPath><g id'),
    )
    expect(shapes).toHaveLength(1)
  })

  it('takes what the inner clip leaves for what the outer one cuts', () => {
    const { shapes, ignored } = readAsRendered(
      page(
        `<clipPath id="o"><path d="M19 19H24V24L19 23.9z"/></clipPath><clipPath id="i">${dots}</clipPath><g clip-path="url(#o)"><g clip-path="url(#i)"><rect width="90" height="90"/></g></g>`,
      ),
    )
    expect({ count: shapes.length, ignored }).toEqual({ count: 3, ignored: [] })
  })

  it('knows that edges which are drawn there and back bound nothing, as shades drawn in rings do', () => {
    const rings = '<path d="M21 21zM15 15H25V25H15zM15 15V25H25V15zM0 0H40V40H0z"/>'
    const { shapes } = readAsRendered(clipped(dots, '', rings))
    expect(shapes.every(({ circle }) => circle)).toBe(true)
    expect(shapes).toHaveLength(3)
  })

  it('passes over what a clip cuts, and says what it could be and where', () => {
    for (const clip of [
      '<rect x="12" width="50" height="50"/>',
      '<circle cx="12.5" cy="12.5" r="3"/>',
      '<text>A</text>',
      '<rect width="50" height="50"/><g/>',
    ]) {
      const drawing = read(clipped(clip))
      expect(drawing.shapes, clip).toEqual([])
      expect(drawing.ignored[0].couldBe, clip).toContain('braille')
      expectBox(drawing.ignored[0].box, [10, 10, 5, 5])
    }
    expect(read(clipped('<rect width="1" height="1"/>', 'clipPathUnits="objectBoundingBox"')).shapes).toEqual([])
    expect(read(page(`<g style="clip-path:circle(9px)">${rect}</g>`)).shapes).toEqual([])
  })

  it('keeps the dots that a clip does not cut, and tells of the one that it cuts', () => {
    const path = '<path d="M19.2 20a.8.8 0 1 0 1.6 0a.8.8 0 1 0-1.6 0zm2.4 0a.8.8 0 1 0 1.6 0a.8.8 0 1 0-1.6 0z"/>'
    const { shapes, ignored } = read(clipped('<path d="M0 0H22.4V40L0 39z"/>', '', path))
    expect(shapes.map(({ contours }) => contours.length)).toEqual([1])
    expectBox(ignored[0].box, [21.6, 19.2, 1.6, 1.6], 3)
  })

  it('never fills the hole of a letter whose outline a clip cuts', () => {
    const letter = '<path d="M10 10H30V30H10zM15 15V20H20V15z"/>'
    expect(read(clipped('<path d="M0 0H28V40L0 39z"/>', '', letter)).shapes).toEqual([])
  })

  it('does not paint shapes of a clip twice where they overlap and are seen through', () => {
    const drawing = read(
      clipped(
        '<circle cx="20" cy="20" r="3"/><circle cx="22" cy="20" r="3"/>',
        '',
        '<rect width="90" height="90" opacity=".5"/>',
      ),
    )
    expect(drawing.shapes).toEqual([])
    expect(drawing.ignored).toHaveLength(1)
  })

  it('keeps text that lies wholly inside, and passes over the rest', () => {
    const text = '<text x="20" y="30" font-size="5">AB</text>'
    expect(read(clipped('<rect width="90" height="90"/>', '', text)).texts).toHaveLength(1)
    expect(read(clipped('<rect width="22" height="90"/>', '', text)).ignored).toHaveLength(1)
    expect(read(clipped('<rect y="60" width="22" height="9"/>', '', text))).toMatchObject({ texts: [], ignored: [] })
  })

  it('clips at the edge of inner viewports, unless they overflow (SVG 1.1, 14.3.3)', () => {
    const inner = (attributes: string) =>
      page(`<svg x="8" y="8" width="5" height="5" ${attributes}><rect width="9" height="1"/><rect y="9" width="1" height="1"/><rect y="2" width="1" height="1"/></svg>`) // prettier-ignore
    const hidden = read(inner(''))
    expect(hidden.ignored).toHaveLength(1)
    expect(hidden.shapes).toHaveLength(1)
    expect(readAsRendered(inner('overflow="visible"')).shapes).toHaveLength(3)
  })

  it('treats a reference that leads nowhere, or to itself, as far as it can', () => {
    expect(read(page(`<g clip-path="url(#no)">${rect}</g>`)).shapes).toHaveLength(1)
    const ring = read(page(`<clipPath id="c" clip-path="url(#c)">${dots}</clipPath><g clip-path="url(#c)">${rect}</g>`))
    expect(ring.shapes).toEqual([])
    expect(ring.ignored).toHaveLength(1)
  })
})

/** SVG 1.1, 14.4: what is white and opaque in a mask lets everything through, what is black or not there nothing. */
describe('masks', () => {
  const masked = (mask: string, attributes = '', content = '<rect width="60" height="50" fill="green"/>') =>
    page(`<mask id="m" ${attributes}>${mask}</mask><g>${content.replace('/>', ' mask="url(#m)"/>')}</g>`)

  it.each([
    ['white dots on nothing', `<g fill="white">${dots}</g>`, ''],
    ['white dots on black', `<rect width="100" height="100"/><g fill="#fff">${dots}</g>`, ''],
    ['a white ground', '<rect width="100" height="100" fill="white"/>', ''],
    ['black holes in white', `<rect x="5" y="5" width="50" height="40" fill="white"/>${dots}`, ''],
    ['white, then black beside it', `<g fill="white">${dots}</g><circle cx="40" cy="30" r="3"/>`, ''],
    ['opaque dots of any colour, by their alpha', dots, 'mask-type="alpha"'],
    [
      'content in units of the box',
      '<circle cx=".5" cy=".5" r=".2" fill="white"/>',
      'maskContentUnits="objectBoundingBox"',
    ],
    [
      'a frame of its own',
      `<g fill="white">${dots}</g>`,
      'maskUnits="userSpaceOnUse" x="21.3" y="0" width="40" height="40"',
    ],
  ])('knows %s', (_, mask, attributes) => {
    expect(readAsRendered(masked(mask, attributes)).ignored).toEqual([])
  })

  it('passes over what is seen through a mask of any other kind', () => {
    for (const mask of [
      `<g fill="grey">${dots}</g>`,
      `<g fill="white" opacity=".5">${dots}</g>`,
      '<rect width="40" height="60" stroke="white"/>',
      '<text fill="white">A</text>',
      '<rect width="90" height="90" fill="white"/><circle cx="5" cy="0" r="3"/>',
      '<image width="90" height="90" href="x.png"/>',
    ]) {
      const { shapes, ignored } = read(masked(mask))
      expect(shapes, mask).toEqual([])
      expect(ignored, mask).toHaveLength(1)
      expect(ignored[0].couldBe).toContain('braille')
    }
  })

  it('shows nothing through an empty mask, and everything through one that is not there', () => {
    expect(read(masked(''))).toMatchObject({ shapes: [], ignored: [] })
    expect(read(page('<rect width="9" height="9" mask="url(#no)"/>')).shapes).toHaveLength(1)
  })
})
