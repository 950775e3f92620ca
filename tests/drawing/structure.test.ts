import { describe, expect, it } from 'vitest'
import { IGNORED_LISTED, LIMITS } from '../../src/drawing/limits.js'
import { expectBox, page, read, refusalOf, shapesOf } from './svg.js'

const rect = '<rect x="10" y="10" width="5" height="5"/>'

describe('references', () => {
  it('shows copies where they stand, with the names of both places', () => {
    const shapes = shapesOf(
      '<defs><g id="cell" class="c"><circle id="dot" r="1"/></g></defs>\n<g id="braille"><use id="u" href="#cell" x="5" y="6"/></g>',
    )
    expectBox(shapes[0].box, [4, 5, 2, 2])
    expect(shapes[0].source).toMatchObject({ id: 'u', line: 2 })
    expect(shapes[0].labels.names).toEqual(['dot', 'cell', 'c', 'u', 'braille'])
  })

  it('inherits the style of the use, not of the place of the definition (SVG 1.1, 5.6)', () => {
    const shapes = shapesOf('<g fill="red"><circle id="d" r="1"/></g><use xlink:href="#d" fill="blue"/>')
    expect(shapes.map((s) => s.fill?.rgb)).toEqual([[1, 0, 0], [0, 0, 1]]) // prettier-ignore
  })

  it('takes the first of several elements with one id', () => {
    const shapes = shapesOf('<defs><circle id="d" r="1"/><circle id="d" r="2"/></defs><use href="#d"/>')
    expect(shapes[0].circle?.radius).toBe(1)
  })

  it('shows nothing for a circle of references, a missing id or another file, and says so', () => {
    const cases: [string, boolean][] = [
      [`<g id="a">${rect}<use href="#a"/></g>`, false],
      [`<use id="a" href="#a"/>${rect}`, false],
      [`<defs><g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g></defs><use href="#a"/>${rect}`, false],
      [`<use href="#nowhere"/>${rect}`, false],
      [`<use href="other.svg#dot"/>${rect}`, true],
    ]
    for (const [content, hides] of cases) {
      const drawing = read(page(content))
      expect(drawing.shapes, content).toHaveLength(1)
      expect(drawing.ignored, content).toHaveLength(1)
      expect(drawing.ignored[0].couldBe.length > 0).toBe(hides)
    }
  })

  it('counts references as they are followed, and refuses a bomb quickly', () => {
    const level = (i: number) => `<g id="g${i}">${`<use href="#g${i - 1}"/>`.repeat(100)}</g>`
    const bomb = `<defs><circle id="g0" r="1"/>${[1, 2, 3, 4].map(level).join('')}</defs><use href="#g4"/>`
    expect(refusalOf(page(bomb))).toMatchObject({
      type: 'too-complex',
      excess: { limit: LIMITS.references, actual: LIMITS.references + 1 },
    })
    const chain = Array.from({ length: 600 }, (_, i) => `<use id="u${i}" href="#u${i + 1}"/>`).join('')
    expect(refusalOf(page(`${chain}<circle id="u600" r="1"/>`)).excess?.limit).toBe(LIMITS.renderedDepth)
  })

  it('limits lines and curves over the whole drawing', () => {
    const path = (n: number) => `<path id="p" d="M0 0${'h1'.repeat(n)}"/>`
    const copies = (n: number) => page(`${path(50_000)}${'<use href="#p"/>'.repeat(n - 1)}`)
    expect(read(copies(LIMITS.pathSegments / 50_000)).shapes).toHaveLength(10)
    expect(refusalOf(copies(LIMITS.pathSegments / 50_000 + 1)).excess?.limit).toBe(LIMITS.pathSegments)
  })
})

describe('clips', () => {
  const clipped = (clip: string, attributes = '') =>
    read(page(`<clipPath id="c" ${attributes}>${clip}</clipPath><g id="g" clip-path="url(#c)">${rect}</g>`))

  it('lets through what lies wholly inside of one shape of the clip', () => {
    for (const clip of [
      '<rect width="50" height="50"/>',
      '<rect x="10" y="10" width="5" height="5"/>',
      '<circle cx="12" cy="12" r="9"/>',
      '<path d="M0 0H40V40H0z"/>',
      '<rect width="30" height="30" transform="rotate(10 12 12)"/>',
      '<rect x="90" width="1" height="1"/><rect width="20" height="20"/>',
    ]) {
      expect(clipped(clip), clip).toMatchObject({ shapes: [{ source: { line: 1 } }], ignored: [] })
    }
    expect(clipped('<rect width="5" height="5"/>', 'transform="translate(10 10)"').shapes).toHaveLength(1)
  })

  it('drops what lies wholly outside, for it is not seen', () => {
    for (const clip of ['<rect width="5" height="5"/>', '', '<rect width="50" height="50" display="none"/>'])
      expect(clipped(clip), clip).toMatchObject({ shapes: [], ignored: [] })
  })

  it('passes over what a clip cuts, or may cut, and says what it could be', () => {
    for (const clip of [
      '<rect x="12" width="50" height="50"/>',
      '<circle cx="12.5" cy="12.5" r="3"/>',
      '<text>A</text>',
      '<path d="M0 0H40V40H0zM11 11V14H14V11z" />',
      '<path d="M0 0H40V40H0zM12 5V9H13V5z" clip-rule="evenodd"/><g/>',
    ]) {
      const drawing = clipped(clip)
      expect(drawing.shapes, clip).toEqual([])
      expect(drawing.ignored[0].couldBe, clip).toContain('braille')
      expectBox(drawing.ignored[0].box, [10, 10, 5, 5])
    }
    expect(clipped('<rect width="50" height="50"/>', 'clipPathUnits="objectBoundingBox"').shapes).toEqual([])
    expect(read(page(`<g style="clip-path:circle(9px)">${rect}</g>`)).shapes).toEqual([])
  })

  it('clips at the edge of inner viewports, unless they overflow (SVG 1.1, 14.3.3)', () => {
    const inner = (attributes: string) =>
      read(page(`<svg x="8" y="8" width="5" height="5" ${attributes}><rect width="9" height="1"/></svg>`))
    expect(inner('').ignored).toHaveLength(1)
    expect(inner('overflow="visible"').shapes).toHaveLength(1)
  })
})

describe('what is not understood', () => {
  it('lists one entry for all that a mask or a filter holds back', () => {
    for (const effect of ['mask="url(#m)"', 'filter="url(#f)"', 'style="filter:blur(2px)"']) {
      const drawing = read(page(`<g id="g" ${effect}>${rect}<text x="3" y="9">A</text>${rect}</g>${rect}`))
      expect(drawing.shapes).toHaveLength(1)
      expect(drawing.texts).toHaveLength(0)
      expect(drawing.ignored).toHaveLength(1)
      expect(drawing.ignored[0].source.id).toBe('g')
      expect(drawing.ignored[0].couldBe).toEqual(expect.arrayContaining(['braille', 'lettering']))
    }
    expect(read(page('<g mask="url(#m)"/>')).ignored).toEqual([])
  })

  it('lists pictures with their place', () => {
    const drawing = read(page('<image id="i" x="1" y="2" width="3" height="4" href="http://127.0.0.1:9/x.png"/>'))
    expect(drawing.ignored).toMatchObject([
      { source: { id: 'i' }, couldBe: ['braille', 'lettering', 'pictogram', 'colour'] },
    ])
    expectBox(drawing.ignored[0].box, [1, 2, 3, 4])
    expect(read(page('<foreignObject width="9" height="9"/>')).ignored[0].couldBe).toContain('lettering')
  })

  it('lists markers, and the path that they stand on when it is painted', () => {
    const marker = '<marker id="m"><circle r="1"/></marker>'
    const path = (attributes: string) => read(page(`${marker}<path d="M1 1h5" marker-mid="url(#m)" ${attributes}/>`))
    expect(path('stroke="red" fill="none"')).toMatchObject({
      shapes: [{}],
      ignored: [{ couldBe: ['braille', 'lettering', 'pictogram', 'colour'] }],
    })
    expect(path('fill="none"').shapes).toEqual([])
    expect(path('fill="none"').ignored).toHaveLength(1)
    expect(read(page('<path d="M1 1h5" fill="none" marker="url(#nowhere)"/>')).ignored).toEqual([])
  })

  it('keeps silent about notes of drawing programs, and names other foreign elements', () => {
    const note =
      '<n:namedview xmlns:n="http://sodipodi.sourceforge.net/DTD/sodipodi-0.dtd"><n:x/></n:namedview><metadata/><title>t</title>'
    expect(read(page(note)).ignored).toEqual([])
    expect(
      read(page('<x xmlns="http://example.com/"/><script>1</script><blob/><set/>')).ignored.map((i) => i.couldBe),
    ).toEqual([[], [], [], []])
  })

  it('passes over what lies off the page or too far away', () => {
    const off = read(page('<rect x="200" width="5" height="5"/><rect x="98" width="5" height="5"/>'))
    expect(off.shapes).toHaveLength(1)
    expect(off.ignored).toMatchObject([{ couldBe: [] }])
    expect(read(page('<circle r="1e200"/><circle r="1e7"/>')).ignored.map((i) => i.couldBe.length > 0)).toEqual([
      true,
      true,
    ])
  })

  it('lists so many and counts the rest', () => {
    const { ignored } = read(page('<circle r="x"/>'.repeat(IGNORED_LISTED + 5)))
    expect(ignored).toHaveLength(IGNORED_LISTED + 1)
    expect(ignored[IGNORED_LISTED].why).toMatch(/^5 more/)
    expect(ignored[IGNORED_LISTED].couldBe).toContain('braille')
  })
})

describe('names', () => {
  it('gathers ids, classes, layer names and titles, the nearest first, and the nearest data-part', () => {
    const markup = page(
      '<g id="layer1" i:label="Braille dots" data-part="braille"><g class="x y" data-name="n"><rect aria-label="a" width="5" height="5"><title>T</title></rect></g></g>',
      'xmlns:i="http://www.inkscape.org/namespaces/inkscape"',
    )
    expect(read(markup).shapes[0].labels).toEqual({
      dataPart: 'braille',
      names: ['a', 'T', 'x', 'y', 'n', 'layer1', 'Braille dots'],
    })
  })

  it('cuts names off', () =>
    expect(shapesOf(`<g id="${'n'.repeat(5000)}">${rect}</g>`)[0].labels.names[0]).toHaveLength(200))
})
