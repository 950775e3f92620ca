import { readFileSync, readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import { readDrawing } from '../../src/drawing/read.js'
import { contrastRatio } from '../../src/recognise/colours.js'
import { recognise } from '../../src/recognise/recognise.js'
import { isKnown, type Fact, type Sign } from '../../src/sign/sign.js'

/**
 * What is recognised on the test drawings, held against their truth, which the program that made each drawing wrote and
 * which was checked by rendering it at high resolution (tests/drawings/README.md).
 */
interface Truth {
  name: string
  panel: { w: number; h: number; orientation: number | string; drawn: boolean }
  colours: { foreground: string; background: string; contrast_ratio: number }
  border: { inset: number; width: number } | null
  pictogram: { field_mm: number } | null
  holes: unknown[]
  raised_lines: { text: string; cap_height: number; letter_gap: number; stroke: number }[]
  text_live: boolean
  dots_state: string
  css_scale?: number
  expectProblem?: string
}

const folder = new URL('../drawings/', import.meta.url)
const truths = readdirSync(new URL('truth/', folder))
  .map((file) => JSON.parse(readFileSync(new URL(`truth/${file}`, folder), 'utf8')) as Truth)
  .filter((truth) => truth.expectProblem === undefined && (truth.css_scale ?? 1) === 1)

const translator = createTranslator()
const signs = new Map<string, Sign>()
const signOf = ({ name }: Truth): Sign => {
  let sign = signs.get(name)
  if (!sign) {
    const drawing = readDrawing(readFileSync(new URL(`svg/${name}.svg`, folder)), {})
    signs.set(name, (sign = recognise(drawing, { use: 'permanent-room' }, translator)))
  }
  return sign
}
const value = <T>(fact: Fact<T> | undefined): T | undefined => (isKnown(fact) ? fact.value : undefined)

/** Half a tenth: the truth's own tolerance. */
const TOLERANCE = 0.05
const near = (number: number) => ({ min: number - TOLERANCE, max: number + TOLERANCE })
const within = (got: number | undefined, { min, max }: { min: number; max: number }) => {
  expect(got).toBeGreaterThanOrEqual(min)
  expect(got).toBeLessThanOrEqual(max)
}

/** A whole turn or a quarter; leaning panels have no width that a box gives. */
const straight = truths.filter(
  (t) => typeof t.panel.orientation === 'number' && t.panel.orientation % 90 === 0 && t.panel.drawn,
)

describe('the panel', () => {
  it.each(straight.map((t) => [t.name, t] as const))('of %s', (_, truth) => {
    const sides = [truth.panel.w, truth.panel.h]
    const [w, h] = Number(truth.panel.orientation) % 180 === 0 ? sides : sides.reverse()
    const { panel } = signOf(truth)
    within(value(panel.width), near(w))
    within(value(panel.height), near(h))
    expect(value(panel.colour)?.css).toBe(truth.colours.background)
  })
})

describe('the colours', () => {
  it.each(truths.map((t) => [t.name, t] as const))('of the characters of %s', (_, truth) => {
    const { lettering } = signOf(truth)
    expect(lettering).toHaveLength(1)
    const [front, back] = [value(lettering[0].colour), value(lettering[0].background)]
    expect([front?.css, back?.css]).toEqual([truth.colours.foreground, truth.colours.background])
    // Colours written in percent are whole 8-bit steps in the truth.
    const ratio = contrastRatio(front?.luminance ?? 0, back?.luminance ?? 0)
    expect(Math.abs(ratio - truth.colours.contrast_ratio)).toBeLessThan(0.02)
  })
})

describe('borders, holes and pictograms', () => {
  it.each(truths.map((t) => [t.name, t] as const))('of %s', (_, truth) => {
    const { borders, pictograms, ignored } = signOf(truth)
    expect(borders).toHaveLength(truth.border ? 1 : 0)
    if (truth.border) {
      within(value(borders[0].width), near(truth.border.width))
      const middle = truth.panel.w - 2 * truth.border.inset - truth.border.width
      within(borders[0].box.width - truth.border.width, {
        min: middle - 2 * truth.border.width,
        max: middle + 2 * truth.border.width,
      })
    }
    expect(ignored.filter((i) => i.why.includes('hole'))).toHaveLength(truth.holes.length)
    expect(pictograms.map((p) => value(p.field)?.height)).toEqual(
      truth.pictogram ? [expect.closeTo(truth.pictogram.field_mm, 2) as number] : [],
    )
  })
})

describe('live text', () => {
  it.each(truths.filter((t) => t.text_live).map((t) => [t.name, t] as const))('of %s', (_, truth) => {
    const [line] = truth.raised_lines
    const [lettering] = signOf(truth).lettering
    expect(value(lettering.text)).toBe(line.text)
    expect(value(lettering.characterHeight)).toBeCloseTo(line.cap_height, 2)
    expect(value(lettering.strokeThickness)).toBeCloseTo(line.stroke, 2)
    expect(value(lettering.characterSpacing)).toBeCloseTo(line.letter_gap, 2)
  })
})

/** Outlines are written with two to four decimals, so that a gap, a small difference of large numbers, is off by a little. */
const GAP_TOLERANCE = 0.05

describe('outlined letters', () => {
  it.each(truths.filter((t) => !t.text_live).map((t) => [t.name, t] as const))('of %s', (_, truth) => {
    const { lettering } = signOf(truth)
    expect(lettering).toHaveLength(1)
    const [{ part, text, lines, characterHeight, strokeThickness, characterSpacing }] = lettering
    expect(part).toBe('both')
    expect(value(text)).toBe(truth.raised_lines.map((line) => line.text).join(' '))
    expect(lines.map((line) => value(line.text))).toEqual(truth.raised_lines.map((line) => line.text))
    const [line] = truth.raised_lines
    within(value(characterHeight), near(line.cap_height))
    within(value(strokeThickness), near(line.stroke))
    const gap = value(characterSpacing) ?? NaN
    expect(Math.abs(gap - line.letter_gap)).toBeLessThan(GAP_TOLERANCE)
  })
  it.each(truths.filter((t) => !t.text_live).map((t) => [t.name, t] as const))('of %s are all there is', (_, truth) => {
    const art = signOf(truth).unread.filter((u) => u.couldBe.includes('pictogram') && u.why.includes('recognised'))
    expect(art).toEqual([])
  })
})
