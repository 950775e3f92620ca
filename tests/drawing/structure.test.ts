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

describe('what is not understood', () => {
  it('lists one entry for all that a mask holds back that is not worked out', () => {
    const mask = '<mask id="m"><rect width="50" height="50" fill="grey"/></mask>'
    for (const effect of ['mask="url(#m)"', 'clip-path="url(other.svg#c)"', 'style="clip-path:circle(3px)"']) {
      const drawing = read(page(`${mask}<g id="g" ${effect}>${rect}<text x="3" y="9">A</text>${rect}</g>${rect}`))
      expect(drawing.shapes).toHaveLength(1)
      expect(drawing.texts).toHaveLength(0)
      expect(drawing.ignored).toHaveLength(1)
      expect(drawing.ignored[0].source.id).toBe('g')
      expect(drawing.ignored[0].couldBe).toEqual(expect.arrayContaining(['braille', 'lettering']))
    }
    expect(read(page(`${mask}<g mask="url(#m)"/>`)).ignored).toEqual([])
  })

  it('knows the geometry of what is drawn through a filter, but no longer its colours', () => {
    for (const effect of ['filter="url(#f)"', 'style="filter:blur(2px)"']) {
      const drawing = read(page(`<g id="g" ${effect}>${rect}<text x="3" y="9">A</text></g>${rect}`))
      expect(drawing.shapes.map(({ fill }) => fill?.rgb)).toEqual([undefined, [0, 0, 0]])
      expect(drawing.texts[0].fill?.rgb).toBeUndefined()
      expect(drawing.ignored).toMatchObject([{ source: { id: 'g' }, couldBe: ['colour'] }])
    }
  })

  it('lists pictures with their place', () => {
    const drawing = read(page('<image id="i" x="1" y="2" width="3" height="4" href="http://127.0.0.1:9/x.png"/>'))
    expect(drawing.ignored).toMatchObject([
      { source: { id: 'i' }, couldBe: ['braille', 'lettering', 'pictogram', 'colour'] },
    ])
    expectBox(drawing.ignored[0].box, [1, 2, 3, 4])
    expect(read(page('<foreignObject width="9" height="9"/>')).ignored[0].couldBe).toContain('lettering')
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
