import { describe, expect, test } from 'vitest'
import { drawnSign, rectangle } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

const at = (values: Record<string, unknown> = {}) => signOf(PUMP_ROOM, values)

describe('blank cells between words', () => {
  // Australian Braille Authority, sizes for signs: one blank cell
  const cells = (text: string) => at({ 'braille.0.lines': undefined, 'braille.0.text': text })

  test('are counted, the least and the most', () => {
    expect(measured(cells('⠗⠕⠕⠍⠀⠼⠁⠀⠀⠃'), 'braille.wordGap').observations).toMatchObject([
      { value: 1.5, min: 1, max: 2, count: 2 },
    ])
    expect(measured(cells('pump room'), 'braille.wordGap').observations).toMatchObject([{ value: 1, min: 1, max: 1 }])
  })

  test('at the ends of a line are none', () => {
    expect(measured(cells('⠀⠗⠕⠕⠍⠀'), 'braille.wordGap').nothing).toContain('two words')
  })

  test('are open where the cells are not known', () => {
    expect(reasonsOf(at({ 'braille.0.lines': undefined }), 'braille.wordGap')).toEqual(['missing-fact'])
    expect(measured(at({ braille: [] }), 'braille.wordGap').nothing).toContain('no braille')
  })
})

describe('gaps between words', () => {
  // NCC 2022, S15C3, as reported: 10 mm or more between words
  test('are as described, or asked for', () => {
    expect(valuesOf(at({ 'lettering.0.wordSpacing': 12 }), 'raised.wordSpacing')).toEqual([12])
    expect(measured(at(), 'raised.wordSpacing').gaps.map(({ ask }) => ask?.pointer)).toEqual([
      '/sign/lettering/0/wordSpacing',
    ])
    const single = at({ 'lettering.0.lines': ['PUMPS', '12'], 'lettering.0.text': 'PUMPS 12' })
    expect(measured(single, 'raised.wordSpacing').nothing).toContain('two words')
  })

  /** A line of bars 10 mm wide, with these gaps behind them. */
  function line(text: string, gaps: number[], height = 20) {
    const sign = drawnSign()
    const [set] = sign.lettering
    let x = 20
    const outlines = [rectangle(x, 20, 10, height)]
    for (const gap of gaps) outlines.push(rectangle((x += 10 + gap), 20, 10, height))
    const known = { value: text, basis: 'drawn' as const }
    return { ...sign, lettering: [{ ...set, text: known, lines: [{ ...set.lines[0], text: known, outlines }] }] }
  }

  test('are measured between the outlines of the words', () => {
    const found = measured(line('AB CD E', [3, 12, 4, 15]), 'raised.wordSpacing').observations
    expect(found).toMatchObject([{ value: 13.5, min: 12, max: 15, count: 2, basis: 'drawn' }])
  })

  test('are not told where they are hardly wider than those between characters', () => {
    expect(reasonsOf(line('AB CD', [9, 10, 4]), 'raised.wordSpacing')).toEqual(['unreadable'])
  })

  test('are not told where the text was not read', () => {
    const sign = line('AB CD', [3, 12, 4])
    const unread = { unknown: 'unreadable' as const, why: 'outlines' }
    const lettering = sign.lettering.map((l) => ({
      ...l,
      text: unread,
      lines: l.lines.map((one) => ({ ...one, text: unread })),
    }))
    expect(reasonsOf({ ...sign, lettering }, 'raised.wordSpacing')).toEqual(['unreadable'])
  })

  test('that are described win over drawn ones', () => {
    const sign = line('AB CD', [3, 12, 4])
    const lettering = sign.lettering.map((l) => ({ ...l, wordSpacing: { value: 11, basis: 'declared' as const } }))
    expect(valuesOf({ ...sign, lettering }, 'raised.wordSpacing')).toEqual([11])
  })
})

describe('strokes', () => {
  test('have a width, and one at the base as a share of the height', () => {
    expect(valuesOf(at(), 'raised.strokeWidth')).toEqual([2.6])
    expect(valuesOf(at({ 'lettering.0.strokeThicknessAtBase': 5 }), 'raised.strokeAtBase')).toEqual([0.25])
    const bevelled = at({ 'lettering.0.section': 'bevelled' })
    expect(measured(bevelled, 'raised.strokeAtBase').gaps.map(({ ask }) => ask?.pointer)).toEqual([
      '/sign/lettering/0/strokeThicknessAtBase',
    ])
  })

  test('that were measured as a length tell their share of the height too, where it is known whose they are', () => {
    const reading = { measured: [{ quantity: 'raised.strokeWidth', values: [3, 3.2] }] }
    expect(measured(at(reading), 'raised.strokeWidth').observations).toMatchObject([{ value: 3.1, min: 3, max: 3.2 }])
    const [share] = measured(at(reading), 'raised.strokeThickness').observations
    expect(share?.min).toBeCloseTo(3 / 20, 12)
    expect(share?.max).toBeCloseTo(3.2 / 20, 12)
    const [set] = PUMP_ROOM.lettering as Record<string, unknown>[]
    const two = at({ ...reading, lettering: [set, { ...set, strokeThickness: 2, baseline: { x: 20, y: 140 } }] })
    expect(reasonsOf(two, 'raised.strokeThickness')).toEqual(['missing-fact', 'missing-fact'])
  })

  test('with straight sides are as wide at the base as at the face', () => {
    expect(valuesOf(at(), 'raised.strokeAtBase')).toEqual([2.6 / 20])
  })
})
