import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { SignDescription } from '../../../src/sign/description.js'
import { MOST_CELLS } from '../../../src/submittals/schedule/extent.js'
import { MOST_ROWS } from '../../../src/submittals/schedule/grid.js'
import { MOST_PROBLEMS } from '../../../src/submittals/schedule/read.js'
import { MOST_ENTRIES, MOST_INFLATED } from '../../../src/submittals/schedule/unpack.js'
import { CORPORA, isMissing, STRINGS } from '../../hostile/corpora.js'
import { problem, read } from './reading.js'
import { parts, sheet, sheetOf, workbook, zipped } from './workbooks.js'

/** Files that mean harm, or that a tired program wrote: each is a problem, none a crash (OWASP File Upload Cheat Sheet). */

const HEADINGS = ['Mark', 'Use', 'Text']
const SIGN = ['W-1', 'room', 'LOOMS']
const fine = sheet([HEADINGS, SIGN])
const refused = (detail: RegExp) => ({ rows: [], doors: [], problems: [problem(detail)] })
const spaces = (count: number) => new Uint8Array(count).fill(32)

/** Writes another number over the declared size of every entry (APPNOTE.TXT 4.3.7 and 4.3.12). */
function declaring(zip: Uint8Array, size: number): Uint8Array {
  const lying = zip.slice()
  const view = new DataView(lying.buffer)
  for (let at = 0; at + 4 <= lying.length; at++) {
    if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, size, true)
    if (view.getUint32(at, true) === 0x04034b50) view.setUint32(at + 22, size, true)
  }
  return lying
}

describe('a workbook that grows when it is unpacked', () => {
  it('beyond the limit is refused by what it declares', async () => {
    const bomb = zipped({ ...parts(fine), 'xl/worksheets/sheet2.xml': spaces(MOST_INFLATED) }, { level: 1 })
    expect(await read(bomb)).toEqual(refused(/grows beyond/))
  })

  it('by more than any sheet does is refused', async () => {
    const dense = zipped({ ...parts(fine), 'xl/worksheets/sheet2.xml': spaces(4 * 1024 * 1024) }, { level: 9 })
    expect(dense.length * 300).toBeLessThan(4 * 1024 * 1024)
    expect(await read(dense)).toEqual(refused(/grows beyond/))
  })

  it('and declares less is stopped at the first byte more', async () => {
    expect(await read(declaring(workbook(fine), 20))).toEqual(refused(/damaged/))
  })

  it('in a part that holds no cells does nothing', async () => {
    const { rows } = await read(
      zipped({ ...parts(fine), 'xl/vbaProject.bin': spaces(MOST_INFLATED + 1) }, { level: 1 }),
    )
    expect(rows).toHaveLength(1)
  })

  it('with very many entries is refused', async () => {
    const many = Object.fromEntries(Array.from({ length: MOST_ENTRIES }, (_, at) => [`x/${at}`, new Uint8Array(0)]))
    expect(await read(zipped({ ...parts(fine), ...many }))).toEqual(refused(/entries/))
  })

  it('with a path out of its folder is refused', async () => {
    expect(await read(zipped({ '../../evil.xml': new Uint8Array(1), ...parts(fine) }))).toEqual(refused(/damaged/))
  })
})

describe('a sheet', () => {
  const value = (at: string) => `<c r="${at}"><v>1</v></c>`
  it.each([
    [
      'a cell far down and far right',
      `<row r="1048576">${value('XFD1048576')}</row>`,
      /reaches to row 1048576 and column 16384/,
    ],
    [
      'few rows of very many columns',
      Array.from({ length: 300 }, (_, at) => `<row r="${at + 1}">${value(`XFD${at + 1}`)}</row>`).join(''),
      /reaches to/,
    ],
    ['a row beyond all rows', '<row r="999999999"></row>', /no proper address/],
    ['a row in powers of ten', '<row r="1e9"></row>', /no proper address/],
    ['an address in character references', `<row r="1"><c r="&#65;1"><v>1</v></c></row>`, /no proper address/],
    [
      'an address that hides behind an empty tag',
      `<row r="1048576"><c r="XFD1048576" x="/>"><v>1</v></c></row>`,
      /reaches to/,
    ],
    ['an address of another prefix', `<row r="1048576"><c y:r='XFD1048576'><v>1</v></c></row>`, /reaches to/],
    ['cells without addresses', '<row><c><v>1</v></c></row>', /cannot be read/],
    ['cells in the wrong order', `<row r="2">${value('A2')}</row><row r="1">${value('A1')}</row>`, /cannot be read/],
    ['a text that is not in its table', '<row r="1"><c r="A1" t="s"><v>7</v></c></row>', /cannot be read/],
    ['markup that is not closed', '<row r="1"><c r="A1"', /cannot be read|No headings/],
  ])('with %s is a problem', async (_, data, detail) => {
    expect(await read(workbook(sheetOf(data)))).toEqual(refused(detail))
  })

  it('that is formatted to its last row and column, and empty there, is read', async () => {
    const formatted = fine.replace('</sheetData>', '<row r="1048576"><c r="XFD1048576" s="0"/></row></sheetData>')
    expect((await read(workbook(formatted))).rows).toHaveLength(1)
  })

  it('of nothing but entities is a problem', async () => {
    const laughs = `<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>${sheetOf('<row r="1"><c r="A1" t="inlineStr"><is><t>&b;</t></is></c></row>')}`
    expect((await read(workbook(laughs))).rows).toEqual([])
  })

  it('the largest that is read has no more cells than it says', () => {
    expect(MOST_ROWS * 200).toBeLessThanOrEqual(MOST_CELLS)
  })
})

describe('what is no workbook', () => {
  const bytes = (...begin: number[]) => Uint8Array.from([...begin, ...new Array<number>(64).fill(0)])
  it.each([
    ['a zip of drawings', zipped({ 'a.svg': new Uint8Array(3) }), /no XLSX workbook/],
    ['half a zip', workbook(fine).subarray(0, 200), /damaged/],
    ['a workbook of before 2007', bytes(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1), /old form, or has a password/],
    ['a picture', bytes(0x89, 0x50, 0x4e, 0x47), /No headings/],
    ['nothing but zeros', new Uint8Array(1000), /No headings/],
  ])('%s', async (_, file, detail) => {
    const { rows, problems } = await read(file)
    expect(rows).toEqual([])
    expect(problems).toContainEqual(problem(detail))
  })
})

describe('a CSV file', () => {
  it('with a row of a million empty columns is read like any other', async () => {
    const { rows, problems } = await read(`${HEADINGS.join()}\n${SIGN.join()}${','.repeat(1_000_000)}\nW-2,room,DYES\n`)
    expect(rows.map(({ mark }) => mark)).toEqual(['W-1', 'W-2'])
    expect(problems).toEqual([])
  })

  it('with a row of a million filled columns is a problem of that row; those before it are read', async () => {
    const { rows, problems } = await read(
      `${HEADINGS.join()}\n${SIGN.join()}\nW-2,room,DYES${',x'.repeat(1_000_000)}\n`,
    )
    expect(rows.map(({ mark }) => mark)).toEqual(['W-1'])
    expect(problems).toEqual([problem(/too long/, 3)])
  })

  it('with a million headings has none', async () => {
    const { rows, problems } = await read(`${HEADINGS.join()}${',x'.repeat(1_000_000)}\n${SIGN.join()}\n`)
    expect(rows).toEqual([])
    expect(problems).toEqual([problem(/too long/, 1), problem(/No headings/)])
  })

  it('with an endless cell is a problem of that row; those before it are read', async () => {
    const { rows, problems } = await read(`${HEADINGS.join()}\n${SIGN.join()}\nW-2,room,${'x'.repeat(1_000_000)}\n`)
    expect(rows.map(({ mark }) => mark)).toEqual(['W-1'])
    expect(problems).toEqual([problem(/too long/, 3)])
  })

  it('with more columns than are looked at says so', async () => {
    const wide = `${HEADINGS.join()}${',x'.repeat(300)}\n${SIGN.join()}\n`
    expect((await read(wide)).problems).toContainEqual(problem(/more than 200 columns/))
  })

  it('with an open quotation mark is a problem of that row; those before it are read', async () => {
    const { rows, problems } = await read(`${HEADINGS.join()}\n${SIGN.join()}\nW-2,room,"DYES\nW-3,room,SPOOLS\n`)
    expect(rows.map(({ mark }) => mark)).toEqual(['W-1'])
    expect(problems).toEqual([problem(/not closed/, 3)])
  })

  it('with too many rows is read so far', async () => {
    const { rows, problems } = await read(`${HEADINGS.join()}\n${`${SIGN.join()}\n`.repeat(MOST_ROWS + 5)}`)
    expect(rows).toHaveLength(MOST_ROWS)
    expect(problems).toEqual([problem(new RegExp(`more than ${MOST_ROWS} rows`))])
  })

  it('with too many problems counts the rest', async () => {
    const bad = 'W-1,decorative,LOOMS\n'.repeat(MOST_PROBLEMS + 10)
    const { rows, problems } = await read(`${HEADINGS.join()}\n${bad}`)
    expect(rows).toHaveLength(MOST_PROBLEMS + 10)
    expect(problems).toHaveLength(MOST_PROBLEMS + 1)
    expect(problems.at(-1)?.detail).toMatch(/more problems/)
  })

  it('with zero bytes keeps all other cells', async () => {
    const { rows, problems } = await read('Mark,Use,Text\nW-1,room,LO\u0000OMS\nW-2,room,DYES\n')
    expect(rows.map(({ mark, sign }) => [mark, sign.lettering])).toEqual([
      ['W-1', undefined],
      ['W-2', [{ text: 'DYES' }]],
    ])
    expect(problems).toEqual([problem(/control character/, 2, 'Text')])
  })

  it.each([['=1+1'], ["=cmd|' /C calc'!A0"], ['@SUM(1)'], ['+1'], ['-1+1']])(
    'with the formula %s has a text',
    async (formula) => {
      const { rows } = await read(`${HEADINGS.join()}\nW-1,room,${formula}\n`)
      expect(rows[0]?.sign.lettering).toEqual([{ text: formula }])
    },
  )
})

describe('any bytes at all', () => {
  it('are a schedule or a problem', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.uint8Array({ maxLength: 200 }),
        fc.constantFrom('', 'PK', '\ufeff', 'Mark,Text\n'),
        async (tail, head) => {
          const { rows, problems } = await read(Uint8Array.from([...new TextEncoder().encode(head), ...tail]))
          expect(rows.length + problems.length).toBeGreaterThan(0)
        },
      ),
      { numRuns: 200 },
    )
  })

  it('in a workbook are a schedule or a problem', async () => {
    const whole = workbook(fine)
    const change = fc.tuple(fc.integer({ min: 0, max: whole.length - 1 }), fc.integer({ min: 0, max: 255 }))
    await fc.assert(
      fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 4 }), async (changes) => {
        const broken = whole.slice()
        for (const [at, byte] of changes) broken[at] = byte
        const { rows, problems } = await read(broken)
        expect(rows.length + problems.length).toBeGreaterThan(0)
      }),
      { numRuns: 200 },
    )
  })

  it('in the markup of a sheet are a schedule or a problem', async () => {
    const change = fc.tuple(
      fc.integer({ min: 0, max: fine.length - 1 }),
      fc.constantFrom('<', '>', '/', '"', '&', 'r', '9', ' '),
    )
    await fc.assert(
      fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 4 }), async (changes) => {
        const letters = [...fine]
        for (const [at, letter] of changes) letters[at] = letter
        const { rows, problems } = await read(workbook(letters.join('')))
        expect(rows.length + problems.length).toBeGreaterThan(0)
      }),
      { numRuns: 200 },
    )
  })
})

describe.skipIf(isMissing(STRINGS))('the big list of naughty strings', () => {
  const path = join(CORPORA, STRINGS)
  const naughty = existsSync(path) ? (JSON.parse(readFileSync(path, 'utf8')) as string[]) : []
  const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`

  it('in every column gives rows that the description accepts, or problems', async () => {
    const headings = [
      'Mark',
      'Use',
      'Room',
      'Door',
      'Text',
      'Braille',
      'Letter height',
      'Size',
      'Colours',
      'Text colour',
      'Proper names',
      'Font',
    ]
    const rows = naughty.map((text) => headings.map((_, at) => (at === 1 ? 'room' : quoted(text))).join(','))
    const schedule = await read(`${headings.join()}\r\n${rows.join('\r\n')}\r\n`)
    expect(schedule.rows.length).toBeGreaterThan(naughty.length / 2)
    for (const { sign } of schedule.rows) expect(SignDescription.safeParse(sign).success).toBe(true)
  })

  it('as headings does no harm', async () => {
    const schedule = await read(`Mark,Text,Use,${naughty.slice(0, 190).map(quoted).join(',')}\r\nW-1,LOOMS,room\r\n`)
    expect(schedule.rows.map(({ mark }) => mark)).toEqual(['W-1'])
  })

  it('in a workbook gives what it gives in CSV', async () => {
    const printable = naughty.filter(
      (text) => !/[\p{Cc}\p{Cs}\ufffe\uffff]|_x[0-9a-f]{4}_/iu.test(text) && text === text.trim(),
    )
    const csv = await read(`Mark,Use,Text\r\n${printable.map((text) => `W,room,${quoted(text)}`).join('\r\n')}\r\n`)
    const xlsx = await read(workbook(sheet([HEADINGS, ...printable.map((text) => ['W', 'room', text])])))
    expect(xlsx.rows).toEqual(csv.rows)
  })
})
