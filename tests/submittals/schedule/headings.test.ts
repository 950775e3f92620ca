import { describe, expect, it } from 'vitest'
import { COLUMNS } from '../../../src/submittals/schedule/columns.js'
import { isDoorHeading, readHeading } from '../../../src/submittals/schedule/heading.js'
import { DOOR_SCHEDULE } from '../../../src/submittals/schedule/door-headings.js'
import { scheduleTemplate } from '../../../src/submittals/schedule/template.js'
import { problem, read } from './reading.js'

/** Headings are common practice in sign and door schedules, no source; the schedules are invented. */

describe('the table of columns', () => {
  const names = COLUMNS.flatMap((column) => [column.heading, ...column.also].map((name) => [name, column] as const))

  it.each(names)('“%s” is recognised', (name, column) => {
    expect(readHeading(name)?.column.key).toBe(column.key)
    expect(readHeading(name.toUpperCase())?.column.key).toBe(column.key)
  })

  it('has no name twice, so that no heading means two things', () => {
    const ranks = names.map(([name, column]) => [column.key, readHeading(name)?.rank].join())
    expect(new Set(ranks).size).toBe(names.length)
  })

  it.each(DOOR_SCHEDULE.map((name) => [name]))('“%s” tells a door schedule', (name) => {
    expect(isDoorHeading(name)).toBe(true)
  })
})

describe('a heading', () => {
  it.each([
    ['Height (mm)', 'height', 'mm'],
    ['Letter Height [in]', 'characterHeight', 'in'],
    ['Width, in.', 'width', 'in'],
    ['Width "', 'width', 'in'],
    ['Panel size (inches)', 'size', 'in'],
    ['Height in mm', 'height', 'mm'],
    ['Height (in mm)', 'height', 'mm'],
    ['Stroke width - mm', 'strokeThickness', 'mm'],
    ['Width (cm)', 'width', 'cm'],
    ['LETTER\nHEIGHT\n(MM)', 'characterHeight', 'mm'],
    ['Dot  spacing', 'dotSpacing', null],
    ['Sign No.', 'mark', null],
    ['Sign #', 'mark', null],
    ['Nº', 'mark', null],
    ['Room Nos.', 'roomNumber', null],
    ['Color', 'colours', null],
    ['Background Color', 'panelColour', null],
    ['Text (as fabricated)', 'text', null],
    ['Braille', 'brailleText', null],
    ['Rm. No.', 'roomNumber', null],
  ])('%j is the column %s in %s', (text, key, unit) => {
    expect(readHeading(text)).toMatchObject({ column: { key }, unit })
  })

  it.each([['Height (mm/in)'], ['Height (in/mm)'], ['Height mm [inch]']])(
    '“%s” says no unit for a bare number',
    (text) => {
      expect(readHeading(text)).toMatchObject({ column: { key: 'height' }, unit: null })
    },
  )

  it.each([
    ['Texture'],
    ['Marks & Spencer'],
    ['in'],
    ['mm'],
    [''],
    ['__proto__'],
    ['constructor'],
    ['toString'],
    ['Fingers'],
  ])('“%s” is not known', (text) => {
    expect(readHeading(text)).toBeNull()
  })
})

describe('where the headings stand', () => {
  it('below a title, which may say the unit of all lengths', async () => {
    const { rows, problems } = await read(
      'Weaving house,,,\nSign schedule,,,\nAll dimensions in millimetres,,,\n,,,\nMark,Use,Text,Letter height\nW-1,permanent-room,LOOMS,16\n',
    )
    expect(problems).toEqual([])
    expect(rows[0]).toMatchObject({
      row: 6,
      mark: 'W-1',
      sign: { lettering: [{ text: 'LOOMS', characterHeight: { value: 16, unit: 'mm' } }] },
    })
  })

  it('below a title block that has words of headings itself', async () => {
    const { rows } = await read(
      'Drawing,A-601,Sheet,3,Rev,B\nBuilding,Weaving house,Level,2,,\nMark,Use,Text,Door\nW-1,room,LOOMS,101\n',
    )
    expect(rows.map(({ row, mark, door }) => [row, mark, door])).toEqual([[4, 'W-1', '101']])
  })

  it.each([
    ['no unit in the title', 'Sizes are nominal'],
    ['two units in the title', 'Dimensions in mm and inches'],
    ['the word “in” alone', 'Dimensions in the schedule are nominal'],
  ])('takes no unit from %s', async (_, title) => {
    const { rows, problems } = await read(`${title},,,\nMark,Use,Text,Letter height\nW-1,permanent-room,LOOMS,16\n`)
    expect(problems).toEqual([problem(/without a unit/, 3, 'Letter height')])
    expect(rows[0]?.sign).toEqual({ mark: 'W-1', use: 'permanent-room', lettering: [{ text: 'LOOMS' }] })
  })

  it('in two lines, the upper one over several columns', async () => {
    const { rows, problems } = await read(
      'Sign,,Tactile,,Braille,\nNo.,Use,Text,Height (mm),Text,Dot spacing (mm)\nW-1,room,LOOMS,16,looms,2.4\n',
    )
    expect(problems).toEqual([])
    expect(rows[0]?.sign).toEqual({
      mark: 'W-1',
      use: 'permanent-room',
      lettering: [{ text: 'LOOMS', characterHeight: { value: 16, unit: 'mm' } }],
      braille: [{ text: 'looms', dotSpacing: { value: 2.4, unit: 'mm' } }],
    })
  })

  it('does not take the height of something else for the panel’s', async () => {
    const { rows, problems } = await read(
      'Sign,,,Lift car,\nNo.,Use,Text,Height (mm),Width (mm)\nW-1,room,LOOMS,2100,1400\n',
    )
    expect(rows[0]?.sign.panel).toBeUndefined()
    expect(problems).toEqual([problem(/“Lift car Height \(mm\)”, “Lift car Width \(mm\)”/)])
  })

  it('with the units in a line of their own', async () => {
    const { rows, problems } = await read(
      'Mark,Use,Text,Letter height,Dot spacing\n,,,(in),(mm)\nW-1,room,LOOMS,5/8,2.4\n',
    )
    expect(problems).toEqual([])
    expect(rows[0]?.sign).toMatchObject({
      lettering: [{ characterHeight: { value: 0.625, unit: 'in' } }],
      braille: [{ dotSpacing: { value: 2.4, unit: 'mm' } }],
    })
  })

  it('does not take the first sign for a second line of headings', async () => {
    const { rows } = await read('Mark,Text,Use\nROOM,COPY,exit\nW-2,LOOMS,room\n')
    expect(rows.map(({ mark }) => mark)).toEqual(['ROOM', 'W-2'])
  })

  it('and are named when nothing like them is there', async () => {
    expect(await read('a,b,c\n1,2,3\n')).toEqual({ rows: [], doors: [], problems: [problem(/No headings/)] })
    expect(await read('')).toMatchObject({ problems: [problem(/No headings/)] })
  })
})

describe('columns', () => {
  it('that are not known are named together, once', async () => {
    const { rows, problems } = await read('Mark,Fnord,Use,Text,Glyph\nW-1,1,room,LOOMS,2\nW-2,1,room,DYES,2\n')
    expect(rows).toHaveLength(2)
    expect(problems).toEqual([problem(/not known and were not used: “Fnord”, “Glyph”/)])
  })

  it('of the same meaning: the surer heading is used and the others are named', async () => {
    const { rows, problems } = await read('No.,Mark,Use,Text,Text\n1,W-1,room,LOOMS,DYES\n')
    expect(rows[0]).toMatchObject({ mark: 'W-1', sign: { lettering: [{ text: 'LOOMS' }] } })
    expect(problems).toEqual([
      problem(/“Mark”.*“No.” \(column 1\)/),
      problem(/“Text” \(column 4\) was used; not used: “Text” \(column 5\)/),
    ])
  })

  it('whose heading is a name of the language’s own objects do no harm', async () => {
    const { rows, problems } = await read('Mark,__proto__,constructor,Use,Text\nW-1,polluted,x,room,LOOMS\n')
    expect(rows).toHaveLength(1)
    expect(problems).toEqual([problem(/“__proto__”, “constructor”/)])
    expect(({} as Record<string, unknown>).polluted).toBeUndefined()
  })

  it.each([['Height (mm)'], ['Width (mm)']])(
    'headed “%s” alone may be of anything and are not used',
    async (heading) => {
      const { rows, problems } = await read(`Mark,Use,Text,${heading}\nW-1,room,LOOMS,16\n`)
      expect(rows[0]?.sign).toEqual({ mark: 'W-1', use: 'permanent-room', lettering: [{ text: 'LOOMS' }] })
      expect(problems).toEqual([problem(/does not say of what/, null, heading)])
    },
  )

  it('headed “Height” and “Width” are the panel’s', async () => {
    const { rows } = await read('Mark,Use,Text,Height (mm),Width (mm)\nW-1,room,LOOMS,110,200\n')
    expect(rows[0]?.sign.panel).toEqual({ width: { value: 200, unit: 'mm' }, height: { value: 110, unit: 'mm' } })
  })

  it('of a mounting height to nowhere are not used', async () => {
    const { rows, problems } = await read('Mark,Use,Text,Mounting height (mm)\nW-1,room,LOOMS,1500\n')
    expect(rows[0]?.sign.installation).toBeUndefined()
    expect(problems).toEqual([problem(/does not say to what/, null, 'Mounting height (mm)')])
  })
})

describe('rows that are no signs', () => {
  const HEADINGS = 'Mark,Room,Use,Text,Qty\n'

  it('blank rows, headings at the head of a page and totals are passed over', async () => {
    const { rows, problems } = await read(
      `${HEADINGS}W-1,101,room,LOOMS,1\n\n,,,,\nMARK,Room,Use,Text,Qty\nW-2,102,room,DYES,2\nTotal signs:,,,,3\n`,
    )
    expect(rows.map(({ row, mark }) => [row, mark])).toEqual([
      [2, 'W-1'],
      [6, 'W-2'],
    ])
    expect(problems).toEqual([])
  })

  it('a sign may say TOTAL all the same', async () => {
    const { rows } = await read(`${HEADINGS},101,room,TOTAL,1\nW-1,,room,TOTALS,1\n`)
    expect(rows.map(({ sign }) => sign.lettering?.[0]?.text)).toEqual(['TOTAL', 'TOTALS'])
  })

  it('a heading between the rows is named, not taken for a sign', async () => {
    const { rows, problems } = await read(`${HEADINGS}LEVEL 2,,,,\nW-1,101,room,LOOMS,1\n`)
    expect(rows).toHaveLength(1)
    expect(problems).toEqual([problem(/“LEVEL 2”.*heading between/, 2)])
  })

  it('a row that names nothing is named', async () => {
    const { rows, problems } = await read(`${HEADINGS},101,room,,1\n`)
    expect(rows).toEqual([])
    expect(problems).toEqual([problem(/names no sign/, 2)])
  })
})

describe('the template', () => {
  it('is read back, every heading recognised, and holds nothing', async () => {
    expect(await read(scheduleTemplate())).toEqual({ rows: [], doors: [], problems: [problem(/no sign and no door/)] })
    const headings = scheduleTemplate().slice(1).trim().split(',')
    expect(new Set(headings.map((heading) => readHeading(heading)?.column.key)).size).toBe(headings.length)
  })

  it('has a unit in the heading of every length', () => {
    for (const heading of scheduleTemplate().slice(1).trim().split(','))
      if (readHeading(heading)?.column.kind === 'length') expect(readHeading(heading)?.unit, heading).toBe('mm')
  })
})
