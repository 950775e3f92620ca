import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readCsv } from '../../../src/submittals/schedule/csv.js'
import { problem, read } from './reading.js'

/** CSV as RFC 4180 (October 2005) defines it, rule by rule of its section 2, and as spreadsheets write it besides. */

const bytes = (text: string) => new TextEncoder().encode(text)
const cells = (text: string) => readCsv(bytes(text)).lines.map((line) => line.cells)

describe('RFC 4180, section 2', () => {
  it.each([
    ['1: records on lines of their own, CRLF', 'Mark,Text\r\nW-1,LOOMS\r\n'],
    ['2: the last record may have no line break', 'Mark,Text\r\nW-1,LOOMS'],
    ['5: fields may be in double quotes', '"Mark","Text"\r\n"W-1",LOOMS\r\n'],
  ])('%s', (_, text) => {
    expect(cells(text)).toEqual([
      ['Mark', 'Text'],
      ['W-1', 'LOOMS'],
    ])
  })

  it('4: spaces are part of a field, and the last field has no comma behind it', () => {
    expect(cells('Mark, Text \r\nW-1, LOOMS ')).toEqual([
      ['Mark', ' Text '],
      ['W-1', ' LOOMS '],
    ])
  })

  it('6: line breaks, quotes and commas inside quotes', () => {
    expect(cells('Mark,Text\r\nW-1,"LOOMS,\r\nDYES"\r\n')).toEqual([
      ['Mark', 'Text'],
      ['W-1', 'LOOMS,\nDYES'],
    ])
  })

  it('7: a double quote inside quotes is doubled', () => {
    expect(cells('Mark,Text\r\nW-1,"the ""old"" loom"\r\n')).toEqual([
      ['Mark', 'Text'],
      ['W-1', 'the "old" loom'],
    ])
  })
})

describe('what spreadsheets write besides', () => {
  it.each([[';'], ['\t'], [',']])('cells divided by %j', (mark) => {
    expect(
      readCsv(bytes(`Mark${mark}Text${mark}Use\nW-1${mark}A,B;C${mark}room\n`.replace('A,B;C', '"A,B;C"'))),
    ).toMatchObject({
      delimiter: mark,
      lines: [{ cells: ['Mark', 'Text', 'Use'] }, { cells: ['W-1', 'A,B;C', 'room'] }],
    })
  })

  it('a first line that names the delimiter, which spreadsheets do not count', async () => {
    const { rows } = await read('sep=|\r\nMark|Text|Use\r\nW-1|LOOMS|room\r\n')
    expect(rows.map(({ row, mark }) => [row, mark])).toEqual([[2, 'W-1']])
  })

  it('line ends of several systems in one file', () => {
    expect(cells('Mark,Text\rW-1,A\nW-2,B\r\nW-3,C')).toEqual([
      ['Mark', 'Text'],
      ['W-1', 'A'],
      ['W-2', 'B'],
      ['W-3', 'C'],
    ])
  })

  it('rows are counted as a spreadsheet shows them: cells of several lines are one row, empty lines are rows', async () => {
    const { rows } = await read('Mark,Use,Text\r\nW-1,room,"WARPING\r\nROOM"\r\n\r\nW-2,room,LOOMS\r\n')
    expect(rows.map(({ row, mark }) => [row, mark])).toEqual([
      [2, 'W-1'],
      [4, 'W-2'],
    ])
    expect(rows[0]?.sign.lettering?.[0]).toEqual({ text: 'WARPING ROOM', lines: ['WARPING', 'ROOM'] })
  })

  it('inch marks in a cell without quotes', async () => {
    const { rows, problems } = await read('Mark,Use,Text,Letter height\nW-1,room,LOOMS,5/8"\nW-2,room,DYES,1 1/4"\n')
    expect(problems).toEqual([])
    expect(rows.map(({ sign }) => sign.lettering?.[0]?.characterHeight)).toEqual([
      { value: 0.625, unit: 'in' },
      { value: 1.25, unit: 'in' },
    ])
  })

  it('a formula that keeps a number a text; no other is worked out', () => {
    expect(cells('Mark,Text\n="0101",=1+1\n"=""0102""",LOOMS\n').slice(1)).toEqual([
      ['0101', '=1+1'],
      ['0102', 'LOOMS'],
    ])
  })

  it('decimal commas, by the semicolons of the file', async () => {
    const { rows, problems } = await read(
      'Mark;Use;Text;Letter height (mm);Dot spacing (mm)\nW-1;room;LOOMS;15,9;2,345\n',
    )
    expect(problems).toEqual([])
    expect(rows[0]?.sign).toMatchObject({
      lettering: [{ characterHeight: { value: 15.9 } }],
      braille: [{ dotSpacing: { value: 2.345 } }],
    })
  })

  it('a number of two readings is a problem of its cell only', async () => {
    const { rows, problems } = await read('Mark,Use,Text,Dot spacing (mm)\nW-1,room,LOOMS,"2,345"\n')
    expect(problems).toEqual([problem(/“2,345” can be read in two ways/, 2, 'Dot spacing (mm)')])
    expect(rows[0]?.sign).toEqual({ mark: 'W-1', use: 'permanent-room', lettering: [{ text: 'LOOMS' }] })
  })
})

describe('encodings', () => {
  const text = 'Mark,Use,Text\r\nW-1,room,CAFÉ – ÆØÅ\r\n'
  const utf16 = (order: 'little' | 'big') => {
    const units = Uint16Array.from({ length: text.length }, (_, at) => text.charCodeAt(at))
    const view = new DataView(new ArrayBuffer((units.length + 1) * 2))
    for (const [at, unit] of [0xfeff, ...units].entries()) view.setUint16(at * 2, unit, order === 'little')
    return new Uint8Array(view.buffer)
  }
  /** By the table of windows-1252 in the WHATWG Encoding Standard: É c9, – 96, Æ c6, Ø d8, Å c5. */
  const windows = Uint8Array.from(text, (letter) => (letter === '–' ? 0x96 : letter.charCodeAt(0)))

  it.each([
    ['UTF-8', bytes(text)],
    ['UTF-8 with a byte order mark', bytes(`\ufeff${text}`)],
    ['UTF-16, little end first', utf16('little')],
    ['UTF-16, big end first', utf16('big')],
  ])('%s', async (_, file) => {
    const { rows, problems } = await read(file)
    expect(rows[0]).toMatchObject({ mark: 'W-1', sign: { lettering: [{ text: 'CAFÉ – ÆØÅ' }] } })
    expect(problems).toEqual([])
  })

  it('Windows-1252 is read and said', async () => {
    const { rows, problems } = await read(windows)
    expect(rows[0]?.sign.lettering?.[0]?.text).toBe('CAFÉ – ÆØÅ')
    expect(problems).toEqual([problem(/not UTF-8.*Windows-1252/)])
  })

  it('a file that begins like UTF-8 and is not is refused', async () => {
    expect(await read(Uint8Array.of(0xef, 0xbb, 0xbf, 0x4d, 0xff, 0x2c))).toMatchObject({
      rows: [],
      problems: [problem(/UTF-8/)],
    })
  })
})

describe('a file that a program of another hand wrote', () => {
  const cell = fc
    .string({ unit: 'grapheme', maxLength: 12 })
    .map((text) => text.replace(/\r\n?/g, '\n').replace(/^="[^"]*"$/, ''))
  const table = fc.array(fc.tuple(cell, cell, cell), { maxLength: 8 })

  it('is read back cell by cell, whatever divides and quotes it', () => {
    fc.assert(
      fc.property(
        table,
        fc.constantFrom(',', ';', '\t'),
        fc.constantFrom('\n', '\r\n'),
        fc.boolean(),
        (rows, mark, end, always) => {
          // RFC 4180, 2.5 to 2.7: quotes where a cell has a quote, a delimiter or a line break, else at will.
          const quote = (text: string) =>
            always || /[",;\t\n\r]/.test(text) ? `"${text.replaceAll('"', '""').replaceAll('\n', end)}"` : text
          const all = [['Mark', 'Use', 'Text'], ...rows]
          const grid = readCsv(bytes(all.map((row) => row.map(quote).join(mark)).join(end) + end))
          expect(grid.delimiter).toBe(mark)
          expect(grid.lines.map((line) => line.cells)).toEqual(all)
        },
      ),
      { numRuns: 150 },
    )
  })
})
