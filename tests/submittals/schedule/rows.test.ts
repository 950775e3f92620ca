import { describe, expect, it } from 'vitest'
import { SignDescription } from '../../../src/sign/description.js'
import { problem, read, readOne } from './reading.js'

/** From the cells of a row to the description of its sign. The schedule is invented; its words are common practice, no source. */

describe('a full row', () => {
  it('is the sign that its cells say', async () => {
    const { row, problems } = await readOne({
      'Room no.': '104',
      'Room name': 'Dye kitchen',
      Level: '1',
      'Door no.': '104A',
      Copy: 'DYE\nKITCHEN',
      Braille: 'dye kitchen',
      'Letter height': '16 mm',
      Stroke: '2.4 mm',
      Relief: '1/32"',
      Font: 'Open Sans',
      'Font style': 'Sans serif',
      'Braille grade': 'Grade 2',
      'Dot spacing (mm)': '2.4',
      'Cell spacing (in)': '0.27',
      'Dot shape': 'Domed',
      Width: '8 in',
      Height: '6 in',
      Finish: 'Matt',
      'Text colour': 'White',
      'Background color': '#16324F',
      'Bottom of sign AFF': '4\'-0"',
      'Mounting side': 'Latch side',
      'Proper names': 'none',
      Drawing: 'dye-kitchen.svg',
      Qty: '1',
      Notes: 'see detail 4',
    })
    expect(problems).toEqual([])
    expect(row).toEqual({
      row: 2,
      mark: 'W-1',
      location: '1, 104',
      door: '104A',
      drawing: 'dye-kitchen.svg',
      sign: {
        mark: 'W-1',
        use: 'permanent-room',
        panel: {
          width: { value: 8, unit: 'in' },
          height: { value: 6, unit: 'in' },
          finish: 'matte',
          colour: '#16324f',
        },
        lettering: [
          {
            text: 'DYE KITCHEN',
            lines: ['DYE', 'KITCHEN'],
            characterHeight: { value: 16, unit: 'mm' },
            strokeThickness: { value: 2.4, unit: 'mm' },
            relief: { value: 1 / 32, unit: 'in' },
            typeface: { family: 'Open Sans', style: 'sans-serif' },
            colour: 'white',
          },
        ],
        braille: [
          {
            text: 'dye kitchen',
            code: 'ueb-contracted',
            dotSpacing: { value: 2.4, unit: 'mm' },
            cellSpacing: { value: 0.27, unit: 'in' },
            dotShape: 'domed',
          },
        ],
        installation: { panelBottomHeight: { value: 48, unit: 'in' }, side: 'latch' },
        properNames: [],
      },
    })
    expect(SignDescription.safeParse(row.sign).success).toBe(true)
  })

  it('asks its questions in inches where all its lengths are inches', async () => {
    expect((await readOne({ Text: 'LOOMS', 'Letter height (in)': '5/8' })).row.sign.units).toBe('in')
    expect((await readOne({ Text: 'LOOMS', 'Letter height (mm)': '16' })).row.sign.units).toBeUndefined()
  })
})

describe('one bad cell', () => {
  it.each([
    ['Letter height (mm)', 'big', /no(?:t one)? length/],
    ['Letter height (mm)', '0', /cannot be used/],
    ['Letter height (mm)', '999999', /cannot be used/],
    ['Letter height', '16', /without a unit/],
    ['Text colour', 'loom grey no. 4', /CSS colour/],
    ['Text LRV', '140', /cannot be used/],
    ['Text LRV', 'light', /light reflectance/],
    ['Colours', 'light on dark on darker', /not two colours/],
    ['Finish', 'sparkling', /is none of: non-glare, matte/],
    ['Braille grade', 'grade 3', /is none of: ueb-contracted/],
    ['Braille', 'Yes', /does not say what the braille says/],
    ['Braille', 'Grade 2', /does not say what the braille says/],
    ['Use', 'decorative', /is none of: permanent-room/],
    ['Font', 'x'.repeat(101), /longer than 100/],
    ['Letter height', '1'.repeat(101), /longer than 100/],
    ['Room', 'x'.repeat(101), /longer than/],
    ['Notes to say', 'x', /not known/],
    ['Copy', 'x'.repeat(2001), /longer than 2000/],
    ['Room', 'lo\u0000om', /control character/],
    ['Font', 'lo\u0000om', /control character/],
    ['Size', '8 x 6', /without a unit/],
    ['Letter height (mm)', '#REF!', /error of the spreadsheet/],
  ])(
    'under “%s”: %j is named with its row and column, and the rest of the row is used',
    async (heading, cell, detail) => {
      const { row, problems } = await readOne({ 'Line 1': 'LOOMS', [heading]: cell })
      expect(row.mark).toBe('W-1')
      expect(row.sign).toMatchObject({ mark: 'W-1', use: 'permanent-room', lettering: [{ text: 'LOOMS' }] })
      expect(row.sign.lettering?.[0]?.characterHeight).toBeUndefined()
      expect(row.sign.panel).toBeUndefined()
      const ofCell = problems.filter((one) => one.row !== null)
      expect((ofCell.length > 0 ? ofCell : problems).map((one) => one.detail)).toEqual([expect.stringMatching(detail)])
      for (const one of ofCell) expect(one).toMatchObject({ file: 'signs.csv', row: 2, column: heading })
    },
  )

  it('leaves what stands beside it under the same part of the sign', async () => {
    const { row } = await readOne({ Text: 'LOOMS', 'Letter height (mm)': '0', 'Stroke (mm)': '2.4', Relief: 'much' })
    expect(row.sign.lettering).toEqual([{ text: 'LOOMS', strokeThickness: { value: 2.4, unit: 'mm' } }])
  })
})

describe('cells that say nothing', () => {
  it.each([['-'], ['—'], ['n/a'], ['N/A'], ['TBD'], ['  ']])('%j is as good as empty', async (cell) => {
    const { row, problems } = await readOne({ Text: 'LOOMS', 'Letter height (mm)': cell, Braille: cell, Finish: cell })
    expect(problems).toEqual([])
    expect(row.sign).toEqual({ mark: 'W-1', use: 'permanent-room', lettering: [{ text: 'LOOMS' }] })
  })
})

describe('lines of text', () => {
  it('come from columns of their own', async () => {
    const { row, problems } = await readOne({ 'Line 2': 'KITCHEN', 'Line 1': 'DYE', 'Line 3': '' })
    expect(problems).toEqual([])
    expect(row.sign.lettering).toEqual([{ text: 'DYE KITCHEN', lines: ['DYE', 'KITCHEN'] }])
  })

  it('and win over a text that says otherwise, which is named', async () => {
    const { row, problems } = await readOne({ Text: 'DYES', 'Line 1': 'DYE', 'Line 2': 'KITCHEN' })
    expect(row.sign.lettering?.[0]?.text).toBe('DYE KITCHEN')
    expect(problems).toEqual([problem(/“DYES” and the lines “DYE KITCHEN” differ/, 2, 'Text')])
  })
})

describe('two columns for one thing', () => {
  it('a width wins over a size that says another, which is named', async () => {
    const { row, problems } = await readOne({ Text: 'LOOMS', 'Size (W x H)': '8 x 6 in', Width: '9 in' })
    expect(row.sign.panel).toEqual({ width: { value: 9, unit: 'in' }, height: { value: 6, unit: 'in' } })
    expect(problems).toEqual([problem(/another width than the column “Width”/, 2, 'Size (W x H)')])
  })

  it('two colours in one cell', async () => {
    const { row } = await readOne({ Text: 'LOOMS', Color: 'White on Navy' })
    expect(row.sign).toMatchObject({ lettering: [{ colour: 'white' }], panel: { colour: 'navy' } })
  })

  it('light reflectance values', async () => {
    const { row } = await readOne({ Text: 'LOOMS', 'Text LRV': '80', 'Background colour': 'LRV 9,5' })
    expect(row.sign).toMatchObject({ lettering: [{ colour: { lrv: 80 } }], panel: { colour: { lrv: 9.5 } } })
  })
})

describe('what a sign is for', () => {
  it.each([
    ['Room ID', 'permanent-room'],
    ['EXIT', 'exit-door'],
    ['Elevator jamb', 'elevator-landing'],
    ['Directional', 'directional'],
    ['permanent_room', 'permanent-room'],
  ])('“%s” is %s', async (type, use) => {
    const { row, problems } = await readOne({ Use: '', 'Sign type': type, Text: 'LOOMS' })
    expect(row.sign.use).toBe(use)
    expect(row.useAssumed).toBeUndefined()
    expect(problems).toEqual([])
  })

  it('is assumed where nobody says it, marked in the row and said once for the file', async () => {
    const { rows, problems } = await read('Mark,Sign type,Text\nW-1,R-1,LOOMS\nW-2,R-1,DYES\nW-3,room,SPOOLS\n')
    expect(rows.map(({ useAssumed }) => useAssumed)).toEqual([true, true, undefined])
    expect(problems).toEqual([problem(/not said in rows 2, 3: .*permanent room.*“R-1”\./)])
  })

  it('the use wins over the type', async () => {
    expect((await readOne({ Use: 'exit-door', 'Sign type': 'room', Text: 'EXIT' })).row.sign.use).toBe('exit-door')
  })
})

describe('an order that nobody said', () => {
  it('of width and height is said once for the file', async () => {
    const { problems } = await read(
      'Mark,Use,Text,Size\nW-1,room,LOOMS,8 x 6 in\nW-2,room,DYES,8 x 6 in\nW-3,room,SPOOLS,"8""W x 6""H"\n',
    )
    expect(problems).toEqual([problem(/width is not said in rows 2, 3/)])
  })
})
