import { describe, expect, it } from 'vitest'
import { expectBox, page, read, refusalOf, SVG } from './svg.js'

const rect = '<rect x="2" y="3" width="4" height="5"/>'

describe('the size of the page', () => {
  it('takes user units from width, height and viewBox', () => {
    const drawing = read(`<svg ${SVG} width="210mm" height="150mm" viewBox="0 0 420 300">${rect}</svg>`)
    expect(drawing.scale).toEqual({ millimetresPerUnit: expect.closeTo(0.5, 12) as number, from: 'units' })
    expect(drawing.assumptions).toEqual([])
    expectBox(drawing.shapes[0].box, [1, 1.5, 2, 2.5])
  })

  it('takes the missing side from the ratio of the viewBox', () => {
    expect(read(`<svg ${SVG} width="50mm" viewBox="0 0 100 40"/>`).viewport.height).toBeCloseTo(20, 9)
    expect(read(`<svg ${SVG} height="20mm" width="auto" viewBox="0 0 100 40"/>`).viewport.width).toBeCloseTo(50, 9)
    expect(read(`<svg ${SVG} height="20mm" width="100%" viewBox="0 0 100 40"/>`).viewport.width).toBeCloseTo(50, 9)
  })

  it('says that px are an assumption: 96 of them are an inch (CSS Values 4, 5.2)', () => {
    for (const size of ['width="96" height="48"', 'width="96px" height="48px"']) {
      const drawing = read(`<svg ${SVG} ${size} viewBox="0 0 96 48">${rect}</svg>`)
      expect(drawing.scale.from).toBe('css-px')
      expect(drawing.assumptions.map((a) => a.about)).toEqual(['scale'])
      expect(drawing.viewport.width).toBeCloseTo(25.4, 9)
    }
  })

  it('reads user units as px where there is no viewBox, even on a page in mm', () => {
    const drawing = read(`<svg ${SVG} width="100mm" height="50mm">${rect}</svg>`)
    expect(drawing.scale.from).toBe('css-px')
    expect(drawing.viewport.width).toBeCloseTo(100, 9)
    expectBox(drawing.shapes[0].box, [2 * (25.4 / 96), 3 * (25.4 / 96), 4 * (25.4 / 96), 5 * (25.4 / 96)])
  })

  it('takes width and height from a style as browsers do', () => {
    expect(
      read(`<svg ${SVG} style="width:80mm;height:40mm" width="9" viewBox="0 0 80 40"/>`).viewport.width,
    ).toBeCloseTo(80, 9)
  })

  it('refuses to guess a size, and says what to send', () => {
    for (const size of ['', 'width="100%" height="100%"', 'width="50em"', 'width="auto" height=""']) {
      const refusal = refusalOf(`<svg ${SVG} ${size} viewBox="0 0 100 40">${rect}</svg>`)
      expect(refusal.type).toBe('scale-unknown')
      expect(refusal.detail).toMatch(/"scale"/)
    }
  })

  it('takes the scale that the client gives, in all cases', () => {
    const bare = read(`<svg ${SVG} viewBox="10 20 100 40">${rect}</svg>`, { scale: 0.5 })
    expect(bare.viewport).toEqual({ width: 50, height: 20 })
    expect(bare.scale).toEqual({ millimetresPerUnit: 0.5, from: 'option' })
    const inside = '<rect x="12" y="23" width="4" height="5"/>'
    const sized = read(`<svg ${SVG} width="300mm" viewBox="10 20 100 40">${inside}</svg>`, { scale: 0.5 })
    expectBox(sized.shapes[0].box, [1, 1.5, 2, 2.5])
    expect(sized.assumptions[0].text).toMatch(/not used/)
    expect(refusalOf(page(rect), { scale: 0 }).type).toBe('scale-unknown')
  })

  it('refuses sizes and viewBoxes that are none, at the line of the svg element', () => {
    for (const attributes of [
      'width="-10mm" viewBox="0 0 10 10"',
      'width="0" viewBox="0 0 10 10"',
      'width="twelve" viewBox="0 0 10 10"',
      'width="1e999mm" viewBox="0 0 10 10"',
      'width="10mm" viewBox="0 0 0 10"',
      'width="10mm" viewBox="0 0 -10 10"',
      'width="10mm" viewBox="0 0 10"',
      'width="10mm" viewBox="0 0 NaN 10"',
      'width="10mm" viewBox="0 0 10 10 10"',
    ]) {
      const refusal = refusalOf(`\n  <svg ${SVG} ${attributes}/>`)
      expect(refusal.type, attributes).toBe('malformed-drawing')
      expect(refusal.errors[0]).toMatchObject({ line: 2, column: 3 })
    }
  })

  it('refuses scales that no sign has', () => {
    expect(refusalOf(`<svg ${SVG} width="1e12mm" viewBox="0 0 10 10"/>`).type).toBe('scale-unknown')
    expect(refusalOf(`<svg ${SVG} width="10mm" viewBox="0 0 1e-300 1e-300"/>`).type).toBe('scale-unknown')
  })
})

/**
 * Worked example: SVG 1.1 Second Edition, 7.8, example PreserveAspectRatio. A viewBox of 30 by 40 in viewports of 50 by 30
 * and of 30 by 60; the figure shows where the smiley's frame lies. Numbers by the definitions of that section.
 */
describe('preserveAspectRatio', () => {
  const frame = '<rect width="30" height="40"/>'
  const wide = (ratio: string) =>
    read(`<svg ${SVG} width="50mm" height="30mm" viewBox="0 0 30 40" preserveAspectRatio="${ratio}">${frame}</svg>`)
  const tall = (ratio: string) =>
    read(`<svg ${SVG} width="30mm" height="60mm" viewBox="0 0 30 40" preserveAspectRatio="${ratio}">${frame}</svg>`)
  const cases: [typeof wide, string, [number, number, number, number]][] = [
    [wide, 'xMinYMid meet', [0, 0, 22.5, 30]],
    [wide, 'xMidYMid meet', [13.75, 0, 22.5, 30]],
    [wide, 'xMaxYMid', [27.5, 0, 22.5, 30]],
    [tall, 'xMidYMin meet', [0, 0, 30, 40]],
    [tall, 'xMidYMid meet', [0, 10, 30, 40]],
    [tall, 'xMidYMax meet', [0, 20, 30, 40]],
    [tall, 'xMinYMid slice', [0, 0, 45, 60]],
    [tall, 'xMidYMid slice', [-7.5, 0, 45, 60]],
    [tall, 'xMaxYMid slice', [-15, 0, 45, 60]],
    [wide, 'xMidYMin slice', [0, 0, 50, 200 / 3]],
    [wide, 'xMidYMax slice', [0, 30 - 200 / 3, 50, 200 / 3]],
    [wide, 'none', [0, 0, 50, 30]],
    [wide, 'none slice', [0, 0, 50, 30]],
    [wide, 'nonsense', [13.75, 0, 22.5, 30]],
  ]
  for (const [drawing, ratio, box] of cases)
    it(`${ratio} in a ${drawing === wide ? 'wide' : 'tall'} viewport`, () =>
      expectBox(drawing(ratio).shapes[0].box, box))

  it('keeps no circle round when the axes have scales of their own', () => {
    const circle = '<circle cx="15" cy="20" r="5"/>'
    const drawn = read(
      `<svg ${SVG} width="50mm" height="30mm" viewBox="0 0 30 40" preserveAspectRatio="none">${circle}</svg>`,
    )
    expect(drawn.shapes[0].circle).toBeUndefined()
    expectBox(drawn.shapes[0].box, [50 / 3, 11.25, 50 / 3, 7.5])
  })
})
