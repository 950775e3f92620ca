import { describe, expect, it } from 'vitest'
import { breakLines } from '../../src/braille/layout.js'
import { spacingFor } from '../../src/braille/spacing.js'
import { settingFor, translateText } from '../../src/braille/translate.js'
import { Translation, TranslationRequest } from '../../src/braille/translation-schema.js'
import { Refusal } from '../../src/refusal.js'
import { findStandards, listStandards } from '../../src/standards/catalogue.js'
import type { Standard } from '../../src/standards/standard.js'
import { commonWindows } from '../../src/windows/common.js'
import { isWithin } from '../../src/windows/ends.js'
import { translator } from './translator.js'

const ada = ((): Standard => {
  const [found] = findStandards(['us-ada-2010'])
  if (!found) throw new Error('us-ada-2010 is not in the catalogue')
  return found
})()
const ask = (request: object) => {
  const parsed = TranslationRequest.parse(request)
  return translateText(parsed, translator(), settingFor(parsed.standards ? findStandards(parsed.standards) : [], ada))
}

/** Outside source: 2010 ADA Standards, 703.3.1, both printed units; the middle of what both leave, on a grid of ours. */
describe('spacing for a standard', () => {
  it('lies in the middle of the window of both printed units', () => {
    const spacing = spacingFor([ada])
    expect(spacing).toEqual({ dotSpacing: 2.4, cellSpacing: 6.85, lineSpacing: 10.1 })
    for (const [value, min, max] of [
      [spacing?.dotSpacing, 2.3, 2.5],
      [spacing?.cellSpacing, 6.1214, 7.6],
      [spacing?.lineSpacing, 10.033, 10.16],
    ] as const) {
      expect(value).toBeGreaterThanOrEqual(min)
      expect(value).toBeLessThanOrEqual(max)
    }
  })

  // Invented tables: a single value that its two printed units put differently, and one that excludes the federal window.
  const only = (inches: number, millimetres: number): Standard => ({
    ...ada,
    id: 'invented',
    requirements: ada.requirements.map((row) =>
      row.quantity === 'braille.dotSpacing'
        ? {
            ...row,
            limit: {
              kind: 'length',
              in: { min: inches, max: inches },
              mm: { min: millimetres, max: millimetres },
              printed: '',
            },
          }
        : row,
    ),
  })
  it('falls back on the first printed unit when the two exclude each other', () =>
    expect(spacingFor([only(0.1, 2.5)])?.dotSpacing).toBe(2.54))
  // California Building Code 2019, table 11B-703.3.1: 0.100 in and 0.300 in, without a tolerance.
  it('is the printed figure where a standard prints no range', () => {
    const california = findStandards(['us-ca-2019'])
    expect(spacingFor(california)).toEqual({ dotSpacing: 2.54, cellSpacing: 7.62, lineSpacing: 10.1 })
    expect(spacingFor([...california, ada])).toMatchObject({ dotSpacing: 2.54, cellSpacing: 7.62 })
  })
  // Korean notice of 10 September 2020, as the press reports it: cells 5.5 to 6.9 mm, lines at least 10 mm.
  it('is settled by the usual standard where those asked leave it open, as far as they allow', () => {
    const korea = findStandards(['kr-2020'])
    expect(spacingFor(korea)).toBeUndefined()
    expect(spacingFor(korea, ada)).toEqual({ dotSpacing: 2.4, cellSpacing: 6.2, lineSpacing: 10.1 })
  })
  it('lies in the windows of whichever standard is asked', () => {
    for (const standard of listStandards()) {
      const spacing = spacingFor([standard], ada)
      const { windows } = commonWindows([standard], { use: 'permanent-room' })
      for (const [name, value] of Object.entries(spacing ?? {})) {
        const region = windows.find(({ quantity }) => quantity === `braille.${name}`)?.region
        if (region && 'ends' in region)
          expect(isWithin(Number(value), region.ends), `${standard.id} ${name}`).toBe(true)
      }
      expect(spacing, standard.id).toBeDefined()
    }
  })
  it('is unknown when standards exclude each other or have no such row', () => {
    expect(spacingFor([ada, only(0.2, 5.08)])).toBeUndefined()
    expect(spacingFor([])).toBeUndefined()
    expect(spacingFor([{ ...ada, requirements: [] }])).toBeUndefined()
  })
})

describe('lines', () => {
  const spacing = { dotSpacing: 2.4, cellSpacing: 6.9, lineSpacing: 10.1 }
  const cells = '⠗⠂⠙⠬⠀⠗⠕⠕⠍⠀⠼⠃⠚⠙'
  it('break at blanks only, and fill the width', () => {
    expect(breakLines(cells, undefined, spacing).lines).toEqual([cells])
    expect(breakLines(cells, 8 * 6.9 + 2.4, spacing)).toEqual({ lines: ['⠗⠂⠙⠬⠀⠗⠕⠕⠍', '⠼⠃⠚⠙'], tooWide: [] })
    expect(breakLines(cells, 8 * 6.9 + 2.3, spacing).lines).toEqual(['⠗⠂⠙⠬', '⠗⠕⠕⠍', '⠼⠃⠚⠙'])
  })
  it('say which words do not fit', () => {
    expect(breakLines('⠁⠀⠗⠂⠙⠬', 10, spacing)).toEqual({ lines: ['⠁', '⠗⠂⠙⠬'], tooWide: ['⠗⠂⠙⠬'] })
    expect(breakLines('', 10, spacing)).toEqual({ lines: [], tooWide: [] })
  })
})

describe('a translation', () => {
  it('has cells, lines, size and dots', () => {
    const answer = ask({ text: 'reading room 204', code: 'ueb-contracted', width: 60 })
    expect(Translation.parse(answer)).toEqual(answer)
    expect(answer).toMatchObject({
      text: 'reading room 204',
      cells: '⠗⠂⠙⠬⠀⠗⠕⠕⠍⠀⠼⠃⠚⠙',
      lines: ['⠗⠂⠙⠬⠀⠗⠕⠕⠍', '⠼⠃⠚⠙'],
      size: { width: 57.2, height: 14.9, unit: 'mm' },
      tooWide: [],
      engine: { engine: 'liblouis', table: 'en-ueb-g2.ctb' },
    })
    expect(answer.dots[0]).toEqual([0, 0])
    expect(answer.dots).toHaveLength(36)
  })

  it('keeps the capitals of the text, or those of names and single letters when a standard has a rule', () => {
    expect(ask({ text: 'Orchid House B' }).text).toBe('Orchid House B')
    expect(
      ask({ text: 'ORCHID HOUSE THEATER B', standards: ['us-ada-2010'], properNames: ['Orchid House'] }),
    ).toMatchObject({
      text: 'Orchid House theater B',
      cells: '⠠⠕⠗⠡⠊⠙⠀⠠⠓⠳⠎⠑⠀⠮⠁⠞⠻⠀⠰⠠⠃',
    })
    expect(ask({ text: 'Room 204A', standards: ['us-ada-2010'] }).text).toBe('room 204A')
    expect(ask({ text: "O'BRIEN HALL", standards: ['us-ada-2010'], properNames: ["O'Brien"] }).text).toBe(
      "O'Brien hall",
    )
    expect(ask({ text: 'RSVP DESK', standards: ['us-ada-2010'], properNames: ['RSVP'] }).text).toBe('RSVP desk')
  })

  // NCC 2022, S15C6: uncontracted, with capital signs. 2010 ADA Standards, 703.3: contracted. Rules of Unified English Braille 2013, 10.4: sh.
  it('is in the grade that the standards ask for when the request chooses none', () => {
    expect(ask({ text: 'Shop', standards: ['au-aba', 'au-ncc-2022'] })).toMatchObject({
      code: 'ueb-uncontracted',
      cells: '⠠⠎⠓⠕⠏',
      text: 'Shop',
    })
    expect(ask({ text: 'Shop', standards: ['us-ada-2010'] })).toMatchObject({ code: 'ueb-contracted', cells: '⠩⠕⠏' })
    expect(ask({ text: 'Shop', standards: ['au-ncc-2022'], code: 'ueb-contracted' }).cells).toBe('⠠⠩⠕⠏')
  })

  it('is not made up where the standards ask for both grades', () => {
    const standards = ['us-ada-2010', 'au-ncc-2022']
    expect(() => ask({ text: 'Shop', standards })).toThrow(/say which/u)
    expect(ask({ text: 'Shop', standards, code: 'ueb-uncontracted' }).cells).toBe('⠎⠓⠕⠏')
  })

  it('reads cells back', () => {
    expect(ask({ cells: '⠼⠃⠚⠙⠠⠁' })).toMatchObject({ text: '204A', code: 'ueb-contracted' })
    expect(ask({ cells: '⠺⠁⠊⠞⠊⠝⠛ ⠗⠕⠕⠍', code: 'ueb-uncontracted' }).text).toBe('waiting room')
  })

  it.each([
    [{ text: 'room 漢' }, '/text', 'U+6F22'],
    [{ text: '   ' }, '/text', 'blanks'],
    [{ cells: '⠈⠐⠘⠈' }, '/cells', 'No print text'],
    [{ cells: '⠺⠁⠊⠞⠊⠝⠛' }, '/cells', 'As ueb-uncontracted they say “waiting”'],
  ])('refuses %j', (request, pointer, words) => {
    const refused = (): unknown => ask(request)
    expect(refused).toThrow(Refusal)
    try {
      refused()
    } catch (error) {
      expect(error).toMatchObject({ type: 'untranslatable-text', errors: [{ pointer }] })
      expect((error as Refusal).detail).toContain(words)
    }
  })

  it.each([
    {},
    { text: 'a', cells: '⠁' },
    { cells: 'abc' },
    { text: 'a', width: 0 },
    { text: 'a', code: 'ueb-3' },
    { text: 'a', colour: 'red' },
    { text: 'x'.repeat(2001) },
  ])('a request of the wrong shape is refused: %j', (request) =>
    expect(TranslationRequest.safeParse(request).success).toBe(false),
  )
})
