import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { problem, read } from './reading.js'
import { parts, sheet, sheetOf, workbook, zipped, type Value } from './workbooks.js'

/**
 * XLSX, ECMA-376. The file of this folder was saved by LibreOffice 7.4 from the document beside it; the other workbooks are made
 * part by part by the standard. Their contents are invented.
 */

const HEADINGS = ['Mark', 'Use', 'Text', 'Letter height (mm)']
const SIGN: Value[] = ['W-1', 'room', 'LOOMS', 16]

describe('a workbook that a spreadsheet program saved', () => {
  const saved = () => read(readFileSync(new URL('files/weaving-house.xlsx', import.meta.url)))

  it('is read from the first sheet that has headings, merged ones too', async () => {
    const { rows, doors } = await saved()
    expect(rows.map(({ row, mark, door, location }) => [row, mark, door, location])).toEqual([
      [5, 'W-101', '101A', '101'],
      [6, 'W-101-B', '101B', '101'],
      [7, 'W-102', '102', '102'],
    ])
    expect(doors.map(({ door }) => door)).toEqual(['101A', '101B', '102'])
    expect(rows[0]?.sign).toEqual({
      mark: 'W-101',
      use: 'permanent-room',
      lettering: [{ text: 'LOOM ROOM', lines: ['LOOM', 'ROOM'], characterHeight: { value: 0.625, unit: 'in' } }],
      braille: [{ text: 'loom room', dotSpacing: { value: 2.4, unit: 'mm' } }],
    })
  })

  it('has the values that it holds for formulas, and markup characters in its texts', async () => {
    const { rows } = await saved()
    expect(rows[1]?.sign.lettering?.[0]?.characterHeight).toEqual({ value: 0.625, unit: 'in' })
    expect(rows[2]?.sign.lettering?.[0]?.text).toBe('DYE & SPOOLS <2>')
  })

  it('has a problem for an error and for a fraction that became a date, and no other', async () => {
    expect((await saved()).problems).toEqual([
      problem(/“#DIV\/0!” is an error/, 6, 'Braille Dot spacing (mm)'),
      problem(/holds a date/, 7, 'Tactile Height (in)'),
    ])
  })
})

describe('a workbook', () => {
  it('is told by its content, whatever its name', async () => {
    const { rows } = await read(workbook(sheet([HEADINGS, SIGN])))
    expect(rows[0]?.sign.lettering).toEqual([{ text: 'LOOMS', characterHeight: { value: 16, unit: 'mm' } }])
  })

  it('keeps the numbers of its rows where rows are missing', async () => {
    const cell = (at: string, text: string) => `<c r="${at}" t="inlineStr"><is><t>${text}</t></is></c>`
    const gap = sheetOf(
      `<row r="3">${cell('A3', 'Mark')}${cell('B3', 'Text')}${cell('C3', 'Use')}</row><row r="9">${cell('A9', 'W-1')}${cell('B9', 'LOOMS')}${cell('C9', 'room')}</row>`,
    )
    expect((await read(workbook(gap))).rows.map(({ row, mark }) => [row, mark])).toEqual([[9, 'W-1']])
  })

  it('with a formula that has no result has an empty cell, which is said', async () => {
    const formulas = sheetOf(
      `${sheet([HEADINGS]).replace(/^.*<sheetData>|<\/sheetData>.*$/g, '')}<row r="2"><c r="A2" t="str"><f>"W-"&amp;1</f></c><c r="B2" t="inlineStr"><is><t>room</t></is></c><c r="C2" t="inlineStr"><is><t>LOOMS</t></is></c><c r="D2"><f>8*2</f></c></row>`,
    )
    const { rows, problems } = await read(workbook(formulas))
    expect(rows).toEqual([
      expect.objectContaining({ mark: null, sign: { use: 'permanent-room', lettering: [{ text: 'LOOMS' }] } }),
    ])
    expect(problems).toEqual([problem(/formulas without a result \(2\)/)])
  })

  it('does nothing with macros, links to other files and pictures', async () => {
    const contents = {
      ...parts(sheet([HEADINGS, SIGN])),
      'xl/vbaProject.bin': new Uint8Array(100).fill(7),
      'xl/externalLinks/externalLink1.xml': new TextEncoder().encode('<not closed'),
      'xl/media/image1.png': new Uint8Array(100),
    }
    expect(await read(zipped(contents))).toEqual(await read(workbook(sheet([HEADINGS, SIGN]))))
  })

  it('gives every cell of a long table as it was written', async () => {
    const rows = Array.from({ length: 5000 }, (_, at): Value[] => [
      `W-${at}`,
      'room',
      `LOOM ÆØÅ & <${at}>`,
      16 + at / 64,
    ])
    const schedule = await read(workbook(sheet([HEADINGS, ...rows])))
    expect(schedule.problems).toEqual([])
    expect(
      schedule.rows.map(({ mark, sign }) => [mark, sign.lettering?.[0]?.text, sign.lettering?.[0]?.characterHeight]),
    ).toEqual(rows.map(([mark, , text, value]) => [mark, text, { value, unit: 'mm' }]))
  })

  it('says the same as the same table in CSV', async () => {
    const word = fc.stringMatching(/^[A-Z]{1,8}( [A-Z]{1,8})?$/)
    const rows = fc.array(
      fc.tuple(word, fc.constantFrom('room', 'exit', 'directional'), word, fc.integer({ min: 10, max: 60 })),
      { minLength: 1, maxLength: 6 },
    )
    await fc.assert(
      fc.asyncProperty(rows, async (signs) => {
        const csv = [HEADINGS, ...signs].map((row) => row.join(',')).join('\r\n')
        expect(await read(workbook(sheet([HEADINGS, ...signs])))).toEqual(await read(csv))
      }),
      { numRuns: 25 },
    )
  })
})
