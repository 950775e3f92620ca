import { describe, expect, test } from 'vitest'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

/**
 * What a block has to have for its spacings to be there. 2010 ADA Standards, Table 703.3.1: the distance between corresponding dots in
 * adjacent cells, and from one cell to that directly below. The pump room's values are invented: cells 6.9 mm apart, lines 10.1 mm.
 */

const sign = signOf(PUMP_ROOM)
/** The pump room with these lines of cells, whose spacings are all known. */
const withLines = (...cells: string[]) => ({
  ...sign,
  braille: sign.braille.map((block) => ({
    ...block,
    lineSpacing: { value: 10.1, basis: 'declared' as const },
    lines: cells.flatMap((value) =>
      block.lines.slice(0, 1).map((line) => ({ ...line, cells: { value, basis: 'declared' as const } })),
    ),
  })),
})

describe('the distance between lines', () => {
  test('is there where there are two', () => {
    expect(valuesOf(withLines('⠏⠥', '⠗⠕'), 'braille.lineSpacing')).toEqual([10.1])
  })

  test('is not there in one line, whatever is given', () => {
    expect(measured(withLines('⠏⠥'), 'braille.lineSpacing')).toMatchObject({
      observations: [],
      gaps: [],
      nothing: expect.stringContaining('one line') as string,
    })
  })
})

describe('the distance between cells', () => {
  test('is there where some line has two cells', () => {
    for (const given of [withLines('⠏⠥'), withLines('⠏⠥', '⠼'), withLines('⠼', '⠏⠥')])
      expect(valuesOf(given, 'braille.cellSpacing')).toEqual([6.9])
  })

  test('is not there where no line has', () => {
    for (const given of [withLines('⠏'), withLines('⠏', '⠗')])
      expect(measured(given, 'braille.cellSpacing')).toMatchObject({
        observations: [],
        gaps: [],
        nothing: expect.stringContaining('two cells') as string,
      })
  })

  test('is held to be there where the cells are not known', () => {
    expect(valuesOf(withLines(), 'braille.cellSpacing')).toEqual([6.9])
    const unread = { unknown: 'unreadable' as const, why: 'the dots are blurred' }
    const [block] = withLines('⠏').braille
    if (!block) throw new Error('the sign has a block')
    const blurred = { ...block, lines: block.lines.map((line) => ({ ...line, cells: unread })) }
    expect(valuesOf({ ...sign, braille: [blurred] }, 'braille.cellSpacing')).toEqual([6.9])
  })

  test('leaves the size of a single cell to be measured', () => {
    expect(valuesOf(withLines('⠏'), 'braille.dotSpacing')).toEqual([2.4])
    expect(reasonsOf(withLines('⠏'), 'braille.dotHeight')).toEqual([])
  })
})
