import { describe, expect, it } from 'vitest'
import { ColourDescription, toColour } from '../../src/sign/colour.js'

describe('colours', () => {
  it('gives white and black the luminance of WCAG 2.2 (relative luminance: 1 and 0)', () => {
    expect(toColour('white').luminance).toBeCloseTo(1, 10)
    expect(toColour('#000').luminance).toBe(0)
  })

  it('gives #777 on white the contrast of 4.48:1 that WCAG’s own technique G18 works out', () => {
    const ratio = 1.05 / (toColour('#777').luminance + 0.05)
    expect(ratio).toBeCloseTo(4.48, 2)
  })

  it('follows the formula of WCAG 2.2 for a colour of three different channels', () => {
    // L = 0.2126 R + 0.7152 G + 0.0722 B with the linear values of each channel, worked by hand for #1d2b3a.
    const linear = (byte: number) => ((byte / 255 + 0.055) / 1.055) ** 2.4
    const byHand = 0.2126 * linear(0x1d) + 0.7152 * linear(0x2b) + 0.0722 * linear(0x3a)
    expect(toColour('#1d2b3a').luminance).toBeCloseTo(byHand, 10)
  })

  it('takes a light reflectance value as a share of white', () => {
    expect(toColour({ lrv: 12 })).toEqual({ luminance: 0.12 })
  })

  it('keeps the colour as written, without blanks', () => {
    expect(toColour(' navy ').css).toBe('navy')
  })

  it('takes a colour outside sRGB at the nearest displayable one', () => {
    expect(toColour('color(display-p3 1 1 1)').luminance).toBeLessThanOrEqual(1)
    expect(toColour('rgb(300 300 300)').luminance).toBeCloseTo(1, 10)
  })

  // CSS Color 4: none of these is an opaque colour.
  it.each([
    'no colour',
    '',
    'rgba(0,0,0,0.5)',
    '#1d2b3a80',
    'transparent',
    'currentColor',
    'url(#a)',
    { lrv: 101 },
    { lrv: -1 },
    7,
  ])('refuses %j', (value) => expect(ColourDescription.safeParse(value).success).toBe(false))

  it.each(['#fff', '#1d2b3aff', 'rgb(10, 20, 30)', 'hsl(200 50% 40%)', 'oklch(0.7 0.1 200)', { lrv: 0 }])(
    'takes %j',
    (value) => expect(ColourDescription.safeParse(value).success).toBe(true),
  )
})
