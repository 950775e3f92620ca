import { createRequire } from 'node:module'
import { create } from 'fontkit'
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import { measurer } from '../../src/measure/measurer.js'
import { recognise } from '../../src/recognise/recognise.js'
import type { Sign } from '../../src/sign/sign.js'
import { cellsAt, drawing, paint, rectangle, round, shape, text } from './built.js'

/** What a drawing carries for measures beyond those of the United States. All places and sizes are invented. */

const translator = createTranslator()
const panel = shape([rectangle(10, 5, 180, 90)], { fill: paint('#22223b') })
const WHITE = { fill: paint('#ffffff') }
const read = (...parts: Parameters<typeof drawing>): Sign =>
  recognise(drawing(...parts), { use: 'permanent-room' }, translator)
const found = (sign: Sign, quantity: string) =>
  measurer(sign, translator)(quantity, { parts: ['raised', 'both'] }).observations.map(({ value }) => value)

describe('a drawn border', () => {
  it('has the colour of its stroke', () => {
    const border = shape([rectangle(15, 10, 170, 80)], {
      fill: undefined,
      stroke: { ...paint('#ffffff'), width: 2, linecap: 'butt', linejoin: 'miter', dashed: false },
    })
    const sign = read([panel, border, ...cellsAt('⠑⠭⠊⠞', 60, 70, WHITE)], [text('EXIT', 50, 45, WHITE)])
    expect(sign.borders).toMatchObject([{ width: { value: 2 }, colour: { value: { css: '#ffffff' }, basis: 'drawn' } }])
  })
})

describe('a drawn pictogram', () => {
  it('has a figure of its own height in its field', () => {
    const figure = shape([round(60, 40, 10)], { labels: { names: [], dataPart: 'pictogram' }, ...WHITE })
    const field = shape([rectangle(40, 20, 40, 42)], { fill: paint('#000000') })
    const sign = read([panel, field, figure, ...cellsAt('⠑⠭⠊⠞', 100, 70, WHITE)], [text('EXIT', 100, 45, WHITE)])
    expect(Number(found(sign, 'pictogram.figureHeight')[0])).toBeCloseTo(20, 1)
    expect(found(sign, 'pictogram.fieldWidth')).toEqual([40])
    expect(found(sign, 'pictogram.count')).toEqual([1])
  })
})

describe('live text of two words', () => {
  const FONT_SIZE = 26
  const sign = read([panel, ...cellsAt('⠗⠕⠕⠍⠀⠑⠭⠊⠞', 40, 70, WHITE)], [text('OH HI', 40, 45, WHITE)])

  // The face itself, read by fontkit: the blank right of H, a word space, the blank left of H
  it('has the gap between its words that its typeface gives', () => {
    const file = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf')
    const face = create(readFileSync(file))
    if (!('layout' in face)) throw new Error('a collection of faces')
    const [glyph] = face.layout('H').glyphs
    const [space] = face.layout(' ').glyphs
    const beside = glyph.bbox.minX + (glyph.advanceWidth - glyph.bbox.maxX)
    const gap = ((beside + space.advanceWidth) / face.unitsPerEm) * FONT_SIZE
    expect(Number(found(sign, 'raised.wordSpacing')[0])).toBeCloseTo(gap, 2)
  })

  it('lies level, and stands to the left of the middle of its panel', () => {
    expect(new Set(found(sign, 'raised.horizontal'))).toEqual(new Set([true]))
    expect(found(sign, 'raised.alignment')).toEqual(['flush-left'])
  })

  it('has its braille at its left end, or beside it', () => {
    expect(found(sign, 'braille.alignment')).toEqual(['flush-left'])
    const moved = read([panel, ...cellsAt('⠗⠕⠕⠍⠀⠑⠭⠊⠞', 70, 70, WHITE)], [text('OH HI', 40, 45, WHITE)])
    expect(found(moved, 'braille.alignment')).toEqual(['other'])
  })
})
