import { describe, expect, it } from 'vitest'
import { LIMITS } from '../../src/drawing/limits.js'
import { readAsRendered } from './rendered.js'
import { expectBox, page, read, refusalOf } from './svg.js'

const close = (v: number) => expect.closeTo(v, 6) as number
const centres = (markup: string) => read(markup).shapes.map(({ circle }) => [circle?.x, circle?.y])

/** SVG 1.1, 13.2. */
describe('gradients', () => {
  const filled = (gradient: string, attributes = 'fill="url(#g)"') =>
    page(`${gradient}<rect width="9" height="9" ${attributes}/>`)
  const fillOf = (markup: string) => read(markup).shapes[0]?.fill
  const stops = (...colours: string[]) =>
    colours.map((c, i) => `<stop offset="${i / Math.max(1, colours.length - 1)}" ${c}/>`).join('')

  it('gives the colours of the stops, with all opacities', () => {
    const gradient = `<linearGradient id="g">${stops('stop-color="red"', 'style="stop-color:#008000;stop-opacity:.5"')}</linearGradient>`
    expect(fillOf(filled(gradient, 'fill="url(#g)" opacity=".5"'))).toEqual({
      stops: [
        [1, 0, 0, 0.5],
        [0, 128 / 255, 0, 0.25],
      ],
      opacity: 0.5,
      written: 'url(#g)',
    })
  })

  it('is a plain colour when all stops are, or there is only one', () => {
    for (const colours of [['stop-color="red"'], ['stop-color="red"', 'stop-color="#f00"']]) {
      const gradient = `<radialGradient id="g">${stops(...colours)}</radialGradient>`
      const { shapes } = readAsRendered(filled(gradient, 'fill="url(#g)" fill-opacity=".5"'))
      expect(shapes[0].fill).toMatchObject({ rgb: [1, 0, 0], opacity: 0.5 })
    }
  })

  it('takes stops and colours from where they stand: by reference, from a sheet, from currentColor', () => {
    const gradient = `<style>.s{stop-color:red}</style><g color="red"><linearGradient id="a">${stops('class="s"', 'stop-color="currentColor"')}</linearGradient></g><radialGradient id="b" xlink:href="#a"/><linearGradient id="g" href="#b"/>`
    expect(readAsRendered(filled(gradient)).shapes[0].fill?.rgb).toEqual([1, 0, 0])
  })

  it('paints nothing without stops ("as if none were specified as the paint style", 13.2.4)', () => {
    expect(read(filled('<linearGradient id="g"/>', 'fill="url(#g) red"'))).toMatchObject({ shapes: [], ignored: [] })
    expect(read(filled('<linearGradient id="g" href="#h"/><linearGradient id="h" href="#g"/>')).shapes).toEqual([])
  })

  it('leaves out what a circle never shows: stops at its middle but the last', () => {
    const gradient =
      '<radialGradient id="g"><stop offset="0" stop-opacity="0"/><stop offset="0" stop-color="red"/><stop offset="100%" stop-color="#fee"/></radialGradient>'
    expect(fillOf(filled(gradient))?.stops?.map((stop) => stop[3])).toEqual([1, 1])
  })

  it('does not know a colour that it cannot read', () => {
    const gradient = `<linearGradient id="g">${stops('stop-color="red"', 'stop-color="nothing"')}</linearGradient>`
    expect(fillOf(filled(gradient))).toEqual({ opacity: 1, written: 'url(#g)' })
  })
})

/** SVG 1.1, 13.3. */
describe('patterns', () => {
  const dot = '<circle cx="1" cy="1" r=".5"/>'
  const filled = (
    attributes: string,
    content = dot,
    shape = '<rect x="10" y="12" width="10" height="6" fill="url(#p)"/>',
  ) => page(`<pattern id="p" ${attributes}>${content}</pattern>${shape}`)

  it.each([
    ['units of the user', 'width="2" height="3" patternUnits="userSpaceOnUse"', 10],
    ['its own corner', 'x="2" y="12" width="4" height="6" patternUnits="userSpaceOnUse"', 3],
    ['units of the box', 'width=".25" height=".5"', 8],
    ['a transform', 'width="2" height="2" patternUnits="userSpaceOnUse" patternTransform="scale(1.25 1.5)"', 8],
    ['a viewBox', 'width="5" height="3" viewBox="0 0 2 2" patternUnits="userSpaceOnUse"', 4],
    ['per cent', 'width="50%" height="50%"', 4],
  ])('is made of dots: %s', (_, attributes, count) => {
    const { shapes, ignored } = readAsRendered(filled(attributes))
    expect(ignored).toEqual([])
    expect(shapes).toHaveLength(count)
    expect(shapes.every(({ source }) => source.line === 1)).toBe(true)
  })

  it('counts content in units of the box', () => {
    const { shapes } = readAsRendered(
      filled(
        'width=".5" height=".5" patternContentUnits="objectBoundingBox"',
        '<ellipse cx=".25" cy=".25" rx=".05" ry=".1"/>',
      ),
    )
    expect(shapes).toHaveLength(4)
  })

  it('keeps the exact circles, turned with the pattern', () => {
    const turned = filled('width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(90)"')
    const found = centres(turned)
    // rotate(90) takes (x, y) to (−y, x): the tile's dot at 1, 1 goes to −1, 1, and on in steps of 4.
    expect(found).toEqual(
      expect.arrayContaining([
        [close(11), close(13)],
        [close(15), close(13)],
        [close(19), close(13)],
      ]),
    )
    expect(found).toHaveLength(6)
  })

  it('takes what it lacks from the pattern that it refers to', () => {
    const markup = page(
      `<pattern id="a" width="5" height="3" patternUnits="userSpaceOnUse">${dot}</pattern><pattern id="b" href="#a"/><pattern id="p" xlink:href="#b" width="2.5" patternTransform="translate(10 10)"/><rect x="10" y="10" width="10" height="6" fill="url(#p)"/>`,
    )
    expect(readAsRendered(markup).shapes).toHaveLength(8)
  })

  it('paints the ground of its tiles as one, and what lies on it over it', () => {
    const { shapes } = readAsRendered(
      filled('width="5" height="3" patternUnits="userSpaceOnUse"', `<rect width="5" height="3" fill="green"/>${dot}`),
    )
    expect(shapes).toHaveLength(5)
    expectBox(shapes[0].box, [10, 12, 10, 6])
    expect(shapes[0].fill?.rgb).toEqual([0, 128 / 255, 0])
  })

  it('tells once of all that the edge of the shape cuts, and where', () => {
    const { shapes, ignored } = read(
      filled(
        'width="2" height="2" patternUnits="userSpaceOnUse"',
        dot,
        '<rect x="10" y="10" width="9" height="6" fill="url(#p)"/>',
      ),
    )
    expect(shapes).toHaveLength(12)
    expect(ignored).toHaveLength(1)
    expectBox(ignored[0].box, [18.5, 10.5, 1, 5])
  })

  it('passes over a pattern whose tile is not all worked out', () => {
    for (const content of [
      '<text>A</text>',
      '<image width="1" height="1" href="x.png"/>',
      '<circle cx="2" cy="1" r=".5"/>',
      '<rect width="1" height="1" fill="url(#p)"/>',
    ]) {
      const { shapes, ignored } = read(filled('width="2" height="2" patternUnits="userSpaceOnUse"', content))
      expect(shapes, content).toHaveLength(1)
      expect(shapes[0].fill?.rgb).toBeUndefined()
      expect(ignored[0].couldBe).toContain('braille')
    }
  })

  it('paints nothing where there is no tile or nothing in it', () => {
    for (const attributes of ['width="0" height="2"', 'width="2"'])
      expect(read(filled(`${attributes} patternUnits="userSpaceOnUse"`))).toMatchObject({ shapes: [], ignored: [] })
    expect(read(filled('width="2" height="2"', '<desc/>'))).toMatchObject({ shapes: [], ignored: [] })
  })

  it('lists what a stroke with a pattern could hide', () => {
    const shape = '<rect x="10" y="12" width="10" height="6" fill="none" stroke="url(#p)"/>'
    expect(read(filled('width="2" height="2"', dot, shape)).ignored[0].couldBe).toContain('braille')
  })

  it('counts copies before they are made: at the limit, and one beyond', () => {
    // One column of tiles, as many as the page is high.
    const column = (copies: number) =>
      filled(
        `width="100" height="${100 / copies}" patternUnits="userSpaceOnUse"`,
        `<rect width="1" height="${50 / copies}"/>`,
        `<rect width="99" height="${100 - 50 / copies}" fill="url(#p)"/>`,
      )
    expect(read(column(LIMITS.patternCopies)).shapes).toHaveLength(LIMITS.patternCopies)
    expect(refusalOf(column(LIMITS.patternCopies + 1))).toMatchObject({
      type: 'too-complex',
      excess: { limit: LIMITS.patternCopies, actual: LIMITS.patternCopies + 1 },
    })
    expect(
      refusalOf(
        filled('width="1e-9" height="1e-9" patternUnits="userSpaceOnUse"', '<rect width="1e-10" height="1e-10"/>'),
      ).type,
    ).toBe('too-complex')
  })
})

/** SVG 1.1, 11.4; SVG 2, 13.5.6. */
describe('dashes', () => {
  const line = (attributes: string, d = 'M10 10H34.1') =>
    page(`<path d="${d}" fill="none" stroke="#000" stroke-width="1.6" stroke-linecap="round" ${attributes}/>`)
  const starts = (markup: string) => read(markup).shapes.flatMap(({ contours }) => contours.map(({ start }) => start.x))

  it.each([
    ['of no length', 'stroke-dasharray="0 6"'],
    ['nearly of no length', 'stroke-dasharray=".001,5.999"'],
    ['with an offset', 'stroke-dasharray="0 6" stroke-dashoffset="2"'],
    ['with an offset before the start', 'stroke-dasharray="0 6" stroke-dashoffset="-2"'],
    ['in an odd list', 'stroke-dasharray="0 6 0 3 0 4"'],
    ['in per cent', 'stroke-dasharray="0 6%"'],
    ['in another scale', 'stroke-dasharray="0 3" transform="translate(-10 -10) scale(2)"'],
    ['in unequal scales', 'stroke-dasharray="0 3" transform="scale(1.5 1)"'],
  ])('are dots when they are %s', (_, attributes) => {
    const { shapes } = readAsRendered(line(attributes))
    expect(shapes).toHaveLength(1)
    expect(shapes[0].stroke).toMatchObject({ dashed: false, linecap: 'round' })
    expect(shapes[0].contours.length).toBeGreaterThan(3)
  })

  it('stand where the lengths say, from the start of each subpath', () => {
    expect(starts(line('stroke-dasharray="0 6"', 'M10 10H22.1M40 20H47'))).toEqual([10, 16, 22, 40, 46].map(close))
    expect(starts(line('stroke-dasharray="0 6" stroke-dashoffset="2"'))).toEqual([14, 20, 26, 32].map(close))
    // SVG 2, 9.6.1: all lengths along the path count in the stated length of the whole.
    expect(starts(line('stroke-dasharray="0 1" pathLength="5"', 'M10 10H40'))).toEqual([10, 16, 22, 28, 34].map(close))
    // The part of a dash that lies before the end is drawn; one that would start there is not.
    expect(starts(line('stroke-dasharray="0 6"', 'M10 10H22'))).toEqual([10, 16].map(close))
  })

  it('follow corners, curves and the way back', () => {
    for (const d of [
      'M10 10H20V30H60',
      'M10 10C30 10 30 40 60 40',
      'M10 10H30V30H10z',
      'M40 40a9 9 0 1 1 18 0a9 9 0 1 1 -18 0z',
    ])
      expect(readAsRendered(line('stroke-dasharray="0 2.5"', d)).ignored).toEqual([])
  })

  it('leave a fill behind the dots', () => {
    const { shapes } = readAsRendered(
      page(
        '<rect x="9" y="9" width="20" height="20" fill="green" stroke="#000" stroke-linecap="round" stroke-dasharray="0 4"/>',
      ),
    )
    expect(shapes.map(({ fill, stroke }) => [fill !== undefined, stroke !== undefined])).toEqual([
      [true, false],
      [false, true],
    ])
  })

  it('are a dashed line in all other cases', () => {
    for (const attributes of ['stroke-dasharray="2 6"', 'stroke-dasharray="0 6" stroke-linecap="butt"']) {
      const [{ contours, stroke }] = read(
        line(attributes).replace('stroke-linecap="round" stroke-dasharray="0 6" ', 'stroke-dasharray="0 6" '),
      ).shapes
      expect({ contours: contours.length, dashed: stroke?.dashed }, attributes).toEqual({ contours: 1, dashed: true })
    }
  })

  it('do not change in size with the drawing when the stroke does not (SVG 2, 8.13)', () => {
    const still = line('stroke-dasharray="0 6" vector-effect="non-scaling-stroke" transform="scale(2)"')
    const px = 25.4 / 96
    expect(starts(still).slice(0, 2)).toEqual([close(20), close(20 + 6 * px)])
  })

  it('are counted before they are made', () => {
    const count = (dashes: number) => line(`stroke-dasharray="0 ${80 / dashes}"`, 'M10 10h80')
    expect(() => read(count(LIMITS.dashes - 1))).not.toThrow()
    expect(refusalOf(count(LIMITS.dashes + 1))).toMatchObject({ type: 'too-complex', excess: { limit: LIMITS.dashes } })
    expect(refusalOf(line('stroke-dasharray="0 1e-6"', 'M0 50H1e6')).type).toBe('too-complex')
  })
})

/** SVG 2, 13.8. */
describe('paint-order', () => {
  it('paints in the order that is asked for', () => {
    const order = (value: string) => {
      const { shapes } = readAsRendered(
        page(
          `<rect x="9" y="9" width="20" height="20" fill="green" stroke="red" stroke-width="4" paint-order="${value}"/>`,
        ),
      )
      return shapes.map(({ fill, stroke }) => (fill ? 'f' : '') + (stroke ? 's' : ''))
    }
    expect(['normal', 'fill', 'stroke', 'markers stroke', 'stroke fill'].map(order)).toEqual([['fs'], ['fs'], ['s', 'f'], ['s', 'f'], ['s', 'f']]) // prettier-ignore
  })
})
