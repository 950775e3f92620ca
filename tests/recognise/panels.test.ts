import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import type { Shape } from '../../src/drawing/drawing.js'
import { recognise, type RecogniseOptions } from '../../src/recognise/recognise.js'
import { Refusal } from '../../src/refusal.js'
import { isKnown } from '../../src/sign/sign.js'
import { cellsAt, drawing, paint, rectangle, shape, text } from './built.js'

/** Sheets with several panels. Names, sizes and places are invented; cells are plain letters of UEB. */

const translator = createTranslator()
const SIGNS = [
  { text: 'EXIT', cells: '⠑⠭⠊⠞', id: 'way-out' },
  { text: 'LAMP', cells: '⠇⠁⠍⠏', id: 'lamp-room' },
]
const panelAt = (x: number, id?: string, more: Partial<Shape> = {}) =>
  shape([rectangle(x, 10, 130, 80)], { fill: paint('#22223b'), source: { id, line: 3, column: 1 }, ...more })
const textAt = (written: string, x: number) => text(written, x + 15, 45, { after: 2 })

function sheet(ids: (string | undefined)[], more: Shape[] = [], panels: Partial<Shape> = {}) {
  const shapes = ids.flatMap((id, i) => [
    panelAt(10 + 150 * i, id, panels),
    ...cellsAt(SIGNS[i].cells, 25 + 150 * i, 65, { fill: paint('#ffffff') }),
  ])
  const texts = ids.map((_, i) => textAt(SIGNS[i].text, 10 + 150 * i))
  return drawing([...more, ...shapes], texts, { viewport: { width: 320, height: 100 } })
}

const read = (d: ReturnType<typeof drawing>, more: Partial<RecogniseOptions> = {}) =>
  recognise(d, { use: 'permanent-room', ...more }, translator)

function refusalOf(d: ReturnType<typeof drawing>, more: Partial<RecogniseOptions> = {}): Refusal {
  try {
    read(d, more)
  } catch (error) {
    if (error instanceof Refusal) return error
    throw error
  }
  throw new Error('the drawing was read')
}

const said = (d: ReturnType<typeof drawing>, panel: string | number) => {
  const sign = read(d, { panel })
  return {
    text: sign.lettering.map((l) => isKnown(l.text) && l.text.value),
    cells: sign.braille.flatMap((b) => b.lines.map((l) => isKnown(l.cells) && l.cells.value)),
    width: isKnown(sign.panel.width) && sign.panel.width.value,
    about: sign.assumptions.map((a) => a.about),
  }
}

describe('several panels on one sheet', () => {
  const two = sheet(['way-out', 'lamp-room'])

  it('are refused with a list of them', () => {
    const { type, detail, errors } = refusalOf(two)
    expect(type).toBe('several-signs')
    expect(detail).toContain('2 panels')
    expect(errors).toEqual([
      {
        detail: expect.stringMatching(/Panel 1, “way-out”: 130\.0 mm × 80\.0 mm.*10\.0 mm, 10\.0 mm/) as string,
        line: 3,
        column: 1,
      },
      { detail: expect.stringContaining('Panel 2, “lamp-room”') as string, line: 3, column: 1 },
    ])
  })

  it.each([
    [1, 0],
    ['way-out', 0],
    [2, 1],
    ['2', 1],
    ['lamp-room', 1],
  ])('are read one at a time: %s', (panel, i) => {
    const found = said(two, panel)
    expect(found).toMatchObject({ text: [SIGNS[i].text], cells: [SIGNS[i].cells], width: 130 })
    expect(found.about).toContain('panel')
  })

  it('are found on a sheet that holds them, and with no names', () => {
    const board = shape([rectangle(0, 0, 320, 100)], { fill: paint('#eeeeee') })
    expect(refusalOf(sheet([undefined, undefined], [board])).errors).toHaveLength(2)
    expect(said(sheet([undefined, undefined], [board]), 2).text).toEqual(['LAMP'])
  })

  it('are refused for a panel that is not there', () => {
    expect(refusalOf(two, { panel: 3 }).detail).toContain('“3”')
    expect(refusalOf(two, { panel: 'hall' })).toMatchObject({ type: 'several-signs' })
    expect(refusalOf(sheet(['way-out']), { panel: 2 }).detail).toContain('does not hold several')
  })
})

describe('one sign', () => {
  it('is one that has a panel beside an empty one, or one with text alone', () => {
    const empty = panelAt(160)
    expect(read(drawing([panelAt(10), ...cellsAt('⠑⠭⠊⠞', 25, 65), empty], [textAt('EXIT', 10)])).braille).toHaveLength(
      1,
    )
    const beside = drawing([panelAt(10), ...cellsAt('⠑⠭⠊⠞', 25, 65), empty], [textAt('EXIT', 10), textAt('NOTE', 160)])
    expect(read(beside).braille).toHaveLength(1)
  })

  it('is one whose text and braille stand on fields of their own', () => {
    const fields = [shape([rectangle(15, 15, 120, 35)]), shape([rectangle(15, 55, 120, 30)])]
    const one = drawing([panelAt(10), ...fields, ...cellsAt('⠑⠭⠊⠞', 25, 65)], [textAt('EXIT', 10)])
    expect(read(one).lettering).toHaveLength(1)
  })

  it('is one whose panel the client names, though it holds two plates', () => {
    const whole = shape([rectangle(2, 2, 316, 96)], {
      labels: { names: [], dataPart: 'panel' },
      fill: paint('#eeeeee'),
    })
    const sign = read(sheet(['a', 'b'], [whole]))
    expect(sign.braille).toHaveLength(2)
    expect(isKnown(sign.panel.width) && sign.panel.width.value).toBe(316)
  })
})
