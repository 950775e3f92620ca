import { describe, expect, it } from 'vitest'
import { LIMITS } from '../../src/drawing/limits.js'
import { page, read, refusalOf, shapesOf } from './svg.js'

const RED = [1, 0, 0]
const GREEN = [0, 128 / 255, 0]
const rect = (attributes: string) => `<rect ${attributes} width="5" height="5"/>`
const fillOf = (content: string) => shapesOf(content)[0]?.fill
const rgbOf = (content: string) => fillOf(content)?.rgb

describe('what is declared', () => {
  it('weighs attributes below rules below style, and !important above all (CSS Cascading 3, 6.1)', () => {
    expect(rgbOf(rect('fill="red"'))).toEqual(RED)
    expect(rgbOf(`<style>rect{fill:green}</style>${rect('fill="red"')}`)).toEqual(GREEN)
    expect(rgbOf(`<style>rect{fill:red}</style>${rect('style="fill:green"')}`)).toEqual(GREEN)
    expect(rgbOf(`<style>rect{fill:green!important}</style>${rect('style="fill:red"')}`)).toEqual(GREEN)
    expect(rgbOf(`<style>rect{fill:red!important}</style>${rect('style="fill:green !important"')}`)).toEqual(GREEN)
  })

  it('sorts rules by specificity, then by order (Selectors 4, 17)', () => {
    const sheet = (css: string) => rgbOf(`<style>${css}</style><g class="p">${rect('id="a" class="b c"')}</g>`)
    expect(sheet('#a{fill:green} .b.c{fill:red} rect{fill:red}')).toEqual(GREEN)
    expect(sheet('.b{fill:red} .c{fill:green}')).toEqual(GREEN)
    expect(sheet('g .b{fill:green} .c{fill:red} g.p .b{fill:green}')).toEqual(GREEN)
    expect(sheet('g>rect{fill:green} rect{fill:red} svg circle{fill:red}')).toEqual(GREEN)
    expect(sheet(':not(#x){fill:green} .b.c{fill:red}')).toEqual(GREEN)
    expect(sheet(':where(#a){fill:red} rect{fill:green}')).toEqual(GREEN)
    expect(sheet('[id=a]{fill:green} rect{fill:red}')).toEqual(GREEN)
    expect(sheet('rect:first-child{fill:green} rect:nth-child(2){fill:red}')).toEqual(GREEN)
    expect(sheet('.b:hover{fill:red} rect{fill:green}')).toEqual(GREEN)
    expect(sheet('rect{fill:green;;fill-opacity:;x} {} }')).toEqual(GREEN)
  })

  it('applies @media for screens, leaves @media print alone and says what it does not apply', () => {
    const drawing = read(page(`<style>rect{fill:red} @media screen{rect{fill:green}} @media print{rect{fill:red}}
      @media (min-width:9px){rect{fill:red}} @import url(http://127.0.0.1:9/x.css); @font-face{font-family:X;src:url(x.woff)}</style>${rect('')}`)) // prettier-ignore
    expect(drawing.shapes[0].fill?.rgb).toEqual(GREEN)
    expect(drawing.ignored.map((i) => i.couldBe).sort()).toEqual([['colour'], ['colour'], ['lettering']])
  })

  it('inherits what is inherited, and no more', () => {
    const [shape] = shapesOf(
      `<g fill="green" opacity="0.5" stroke="red" stroke-width="2" color="green">${rect('fill="inherit" stroke="currentColor"')}</g>`,
    )
    expect(shape.fill).toMatchObject({ rgb: GREEN, opacity: 0.5 })
    expect(shape.stroke).toMatchObject({ rgb: GREEN, width: expect.closeTo(2, 9) as number, opacity: 0.5 })
    expect(rgbOf(`<g fill="red">${rect('fill="initial"')}</g>`)).toEqual([0, 0, 0])
  })

  it('hides with display and visibility as SVG 1.1, 11.5 says', () => {
    expect(shapesOf(`<g display="none">${rect('display="inline"')}</g>`)).toEqual([])
    expect(shapesOf(`<g visibility="hidden">${rect('visibility="visible"')}${rect('')}</g>`)).toHaveLength(1)
    expect(read(page(`<defs>${rect('')}</defs>${rect('style="display:none"')}`)).ignored).toEqual([])
  })

  it('resolves lengths in em, rem and per cent of stroke widths', () => {
    const width = (attributes: string) =>
      shapesOf(`<g font-size="4">${rect(`fill="none" stroke="red" ${attributes}`)}</g>`)[0].stroke?.width
    expect(width('stroke-width="0.5em"')).toBeCloseTo(2, 9)
    expect(width('font-size="200%" stroke-width="0.5em"')).toBeCloseTo(4, 9)
    expect(width('stroke-width="1rem"')).toBeCloseTo(16, 9)
    // SVG 1.1, 7.10: per cent of the viewport's diagonal over the square root of 2, which is 100 here.
    expect(width('stroke-width="3%"')).toBeCloseTo(3, 9)
    expect(width('stroke-width="3" transform="scale(2 8)"')).toBeCloseTo(12, 9)
    expect(width('stroke-width="3" transform="scale(2)" vector-effect="non-scaling-stroke"')).toBeCloseTo(
      3 * (25.4 / 96),
      9,
    )
  })

  it('leaves variables alone and tells of each that would change more than a colour (CSS Custom Properties 1, 3)', () => {
    const drawing = read(
      page(
        `<style>:root{--w:3px} .a{stroke-width:var(--w);fill:var(--x, red)}</style>${rect('class="a" stroke="red"')}${rect('stroke="red" stroke-width="var(--w)"')}`,
      ),
    )
    expect(drawing.shapes.map(({ fill }) => fill?.rgb)).toEqual([undefined, [0, 0, 0]])
    expect(drawing.ignored.map(({ couldBe }) => couldBe.includes('braille'))).toEqual([true, true])
    expect(read(page(rect('style="--w:var(--v);fill:red"'))).ignored).toEqual([])
  })

  it('limits style sheets and the work of their selectors', () => {
    const rules = (count: number) => page(`<style>${'a{}'.repeat(count)}</style>`)
    expect(() => read(rules(LIMITS.styleSelectors))).not.toThrow()
    expect(refusalOf(rules(LIMITS.styleSelectors + 1))).toMatchObject({
      type: 'too-complex',
      excess: { limit: LIMITS.styleSelectors },
    })
    expect(refusalOf(page(`<style>/*${'a'.repeat(LIMITS.styleSheetLength)}*/</style>`)).type).toBe('too-complex')
    expect(refusalOf(page(`<style>${'@media all{'.repeat(20_000)}</style>`)).type).toBe('too-complex')
    const slow = `<style>${'g~g:nth-last-child(2n+1)~g:not(:empty)~g{fill:red}'.repeat(40)}</style>${'<g/>'.repeat(4000)}`
    expect(refusalOf(page(slow)).type).toBe('too-complex')
  })
})

describe('paints', () => {
  // CSS Color 4: notations of one colour, and the named colour `green` = #008000.
  it.each([
    'green',
    '#008000',
    '#008000ff',
    'rgb(0,128,0)',
    'rgb(0 128 0 / 1)',
    'hsl(120,100%,25.098%)',
    ' GREEN ',
    'green icc-color(p, 0.1)',
    'rgb(0%,50.196%,0%)',
  ])('reads %s', (colour) => {
    rgbOf(rect(`fill="${colour}"`))!.forEach((v, i) => expect(v).toBeCloseTo(GREEN[i], 4))
  })

  it('multiplies all opacities', () => {
    const fill = fillOf(`<g opacity="50%"><g opacity=".5">${rect('fill="#ff000080" fill-opacity="0.5"')}</g></g>`)
    expect(fill?.opacity).toBeCloseTo(0.125 * (128 / 255), 9)
  })

  it('clamps, and admits what it does not know', () => {
    expect(rgbOf(rect('fill="rgb(300,-5,0)"'))).toEqual(RED)
    for (const colour of ['notacolour', 'var(--x)', 'device-cmyk(0 1 1 0)', '#12345'])
      expect(fillOf(rect(`fill="${colour}"`))).toEqual({ rgb: undefined, opacity: 1, written: colour })
  })

  it('lists nothing that paints nothing', () => {
    for (const attributes of [
      'fill="none"',
      'fill="transparent"',
      'fill-opacity="0"',
      'opacity="0"',
      'fill="#0000"',
      'fill="url(#nowhere)"',
    ])
      expect(read(page(rect(attributes))), attributes).toMatchObject({ shapes: [], ignored: [] })
  })

  it('lists a stroke of width 0 among what was passed over, for a machine may follow it', () => {
    const thin = rect('fill="none" stroke="red" stroke-width="0"')
    const drawing = read(page(thin + rect('fill="red"')))
    expect(drawing.shapes).toHaveLength(1)
    expect(drawing.ignored).toHaveLength(1)
    const bare = read(page(thin))
    expect(bare.shapes).toMatchObject([{ stroke: { width: 0 } }])
    expect(bare.ignored).toEqual([])
    expect(bare.assumptions).toContainEqual(expect.objectContaining({ about: 'stroke' }))
    expect(shapesOf(rect('fill="red" stroke="red" stroke-width="0"'))[0].stroke).toBeUndefined()
  })

  it('takes the fallback of a reference that leads nowhere (SVG 1.1, 11.2)', () => {
    expect(rgbOf(rect('fill="url(#nowhere) green"'))).toEqual(GREEN)
    expect(rgbOf(rect('fill="url(#nowhere) none"'))).toBeUndefined()
  })

  it('says when a stroke is dashed', () => {
    const dashed = (list: string) =>
      shapesOf(rect(`fill="none" stroke="red" stroke-dasharray="${list}"`))[0].stroke?.dashed
    expect(['none', '0 0', '5', '0,2.4', '1mm 2%', '5 -1'].map(dashed)).toEqual([false, false, true, true, true, false])
  })
})
