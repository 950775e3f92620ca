import { describe, expect, it } from 'vitest'
import { coloursOf, contrastRatio, type Painted, type Surface } from '../../src/recognise/colours.js'
import { over, relativeLuminance, type Rgb } from '../../src/recognise/rgb.js'
import { isKnown } from '../../src/sign/sign.js'
import { paint, rectangle, shape } from './built.js'
import { flatten } from '../../src/geometry/curve.js'

const rgb = (hex: string): Rgb => paint(hex).rgb ?? [0, 0, 0]
const ratio = (a: string, b: string) => contrastRatio(relativeLuminance(rgb(a)), relativeLuminance(rgb(b)))

const square = (fill?: ReturnType<typeof paint>, order = 5): Painted => ({
  outlines: [flatten(rectangle(20, 20, 10, 10))],
  order,
  fill,
})
const ground = (hex: string, order: number, opacity = 1): Surface => ({
  shape: shape([rectangle(0, 0, 100, 50)], { fill: paint(hex, opacity) }),
  order,
})

describe('relative luminance and contrast', () => {
  // WCAG 2.2, definition of relative luminance: 0 for darkest black, 1 for lightest white; contrast ratio from 1 to 21.
  it('spans from black to white', () => {
    expect(relativeLuminance(rgb('#000000'))).toBe(0)
    expect(relativeLuminance(rgb('#ffffff'))).toBeCloseTo(1, 12)
    expect(ratio('#000000', '#ffffff')).toBeCloseTo(21, 10)
  })
  // Understanding WCAG 2.2, 1.4.3: #777777 on white is 4.48:1 and fails 4.5:1; #767676 is the lightest gray that meets it.
  it('gives the ratios of the published examples', () => {
    expect(ratio('#777777', '#ffffff')).toBeCloseTo(4.48, 2)
    expect(ratio('#767676', '#ffffff')).toBeGreaterThanOrEqual(4.5)
  })
  // W3C Compositing and Blending Level 1, 5.1: co = cs αs + cb (1 − αs) on an opaque backdrop.
  it('composites over an opaque ground', () => {
    expect(over([1, 0, 0], 0.25, [0, 0, 1])).toEqual([0.25, 0, 0.75])
  })
})

describe('what is behind the characters', () => {
  it('is the topmost ground painted before them', () => {
    const { colour, background } = coloursOf(
      [square(paint('#101010'))],
      [ground('#ffffff', 0), ground('#22223b', 1)],
      [],
    )
    expect(isKnown(colour) && colour.value.css).toBe('#101010')
    expect(isKnown(background) && background.value.css).toBe('#22223b')
  })
  it('is seen through a veil, and so is a veil of characters', () => {
    const pair = coloursOf([square(paint('#000000', 0.5))], [ground('#ffffff', 0), ground('#000000', 1, 0.5)], [])
    expect(isKnown(pair.background) && pair.background.value.css).toBe('#808080')
    expect(isKnown(pair.colour) && pair.colour.value.css).toBe('#404040')
  })
  it('is not known when nothing is painted there', () => {
    const { colour, background } = coloursOf([square(paint('#101010'))], [], [])
    expect(background).toMatchObject({ unknown: 'missing-fact' })
    expect(isKnown(colour) && colour.value.css).toBe('#101010')
  })
  it('is not known behind a paint that is not understood, nor under something painted later', () => {
    const gradient: Surface = {
      shape: shape([rectangle(0, 0, 100, 50)], { fill: { opacity: 1, written: 'url(#g)' } }),
      order: 1,
    }
    expect(coloursOf([square(paint('#101010'))], [ground('#ffffff', 0), gradient], []).background).toMatchObject({
      unknown: 'unreadable',
    })
    expect(coloursOf([square(paint('#101010'), 0)], [ground('#ffffff', 1)], []).colour).toMatchObject({
      unknown: 'unreadable',
    })
  })
  it('is not known where something was painted that was not read', () => {
    const cloud = { box: { x: 25, y: 15, width: 10, height: 10 }, why: 'an image' }
    expect(coloursOf([square(paint('#101010'))], [ground('#ffffff', 0)], [cloud]).background).toMatchObject({
      why: 'an image',
    })
    const far = { box: { x: 80, y: 40, width: 5, height: 5 }, why: 'an image' }
    expect(isKnown(coloursOf([square(paint('#101010'))], [ground('#ffffff', 0)], [far]).background)).toBe(true)
  })
  it('is the worse of two grounds, and says that there are two', () => {
    const half: Surface = { shape: shape([rectangle(0, 0, 25, 50)], { fill: paint('#333333') }), order: 1 }
    const { background } = coloursOf([square(paint('#101010'))], [ground('#ffffff', 0), half], [])
    expect(background).toMatchObject({ value: { css: '#333333' }, count: 2 })
  })
})

/** Between two stops of a gradient all shades between theirs are seen (SVG 1.1, 13.2): the worst pair is one of the ends. */
describe('gradients', () => {
  const gradient = (...stops: [string, number][]): ReturnType<typeof paint> => ({
    stops: stops.map(([hex, opacity]) => [...rgb(hex), opacity]),
    opacity: 1,
    written: 'url(#g)',
  })
  const behind = (fill: ReturnType<typeof paint>, order = 1): Surface => ({
    shape: shape([rectangle(0, 0, 100, 50)], { fill }),
    order,
  })

  it('are judged by the stop that contrasts least', () => {
    const onShade = coloursOf([square(paint('#000000'))], [behind(gradient(['#ffffff', 1], ['#999999', 1]))], [])
    expect(onShade.background).toMatchObject({ value: { css: '#999999' }, count: 2 })
    const shaded = coloursOf([square(gradient(['#333333', 1], ['#000000', 1]))], [ground('#ffffff', 0)], [])
    expect(shaded.colour).toMatchObject({ value: { css: '#333333' } })
  })

  it('are not judged where they run through the lightness of the other', () => {
    const through = coloursOf([square(paint('#777777'))], [behind(gradient(['#ffffff', 1], ['#000000', 1]))], [])
    expect(through).toMatchObject({ colour: { unknown: 'unreadable' }, background: { unknown: 'unreadable' } })
  })

  it('are veils where a stop is seen through', () => {
    const veil = behind(gradient(['#000000', 0], ['#000000', 0.5]), 2)
    const { background } = coloursOf([square(paint('#000000'))], [ground('#ffffff', 0), veil], [])
    expect(background).toMatchObject({ value: { css: '#808080' } })
    expect(coloursOf([square(paint('#000000'))], [veil], []).background).toMatchObject({ unknown: 'unreadable' })
  })
})
