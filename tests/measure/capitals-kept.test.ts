import { describe, expect, test } from 'vitest'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

const sign = (print: string, cells: string) =>
  signOf(PUMP_ROOM, {
    'lettering.0.text': print,
    'lettering.0.lines': undefined,
    'braille.0.lines': undefined,
    'braille.0.code': 'ueb-uncontracted',
    'braille.0.text': cells,
  })

// Rules of Unified English Braille, 2nd edition, 8.3 to 8.5: ⠠ before a capital letter, ⠠⠠ before a word in capitals, ⠠⠠⠠ before a passage
// of three words or more, which ⠠⠄ ends
const PUMP = '⠏⠥⠍⠏'
const ROOM = '⠗⠕⠕⠍'

describe('capitals of the print in the cells', () => {
  test.each([
    ['Pump Room', `⠠${PUMP}⠀⠠${ROOM}`, true],
    ['Pump Room', `⠠${PUMP}⠀${ROOM}`, false],
    ['Pump Room', `${PUMP}⠀${ROOM}`, false],
    ['Pump room', `⠠${PUMP}⠀${ROOM}`, true],
    ['PUMP ROOM', `⠠⠠${PUMP}⠀⠠⠠${ROOM}`, true],
    ['PUMP ROOM', `⠠${PUMP}⠀⠠${ROOM}`, true],
    ['PUMP ROOM', `${PUMP}⠀${ROOM}`, false],
    ['PUMP ROOM PUMP', `⠠⠠⠠${PUMP}⠀${ROOM}⠀${PUMP}⠠⠄`, true],
    ['Pump 12', `⠠${PUMP}⠀⠼⠁⠃`, true],
  ])('“%s” as %s: kept is %s', (print, cells, kept) => {
    expect(valuesOf(sign(print, cells), 'braille.capitalsKept')).toEqual([kept])
  })

  test('lettering in capitals does not tell which words would be capitalised: some signs only are for a person', () => {
    expect(reasonsOf(sign('PUMP ROOM', `⠠${PUMP}⠀${ROOM}`), 'braille.capitalsKept')).toEqual(['needs-judgement'])
  })

  test('print without capitals has none to keep', () => {
    expect(measured(sign('pump room', `${PUMP}⠀${ROOM}`), 'braille.capitalsKept').nothing).toContain('no capitals')
  })

  test('cells that say something else tell nothing', () => {
    expect(reasonsOf(sign('Pump Room', `⠠${ROOM}`), 'braille.capitalsKept')).toEqual(['needs-judgement'])
    expect(reasonsOf(signOf(PUMP_ROOM, { 'braille.0.lines': undefined }), 'braille.capitalsKept')).toEqual([
      'missing-fact',
    ])
  })
})

describe('the grade of the braille', () => {
  // Unified English Braille: “st” is one cell in contracted braille (⠌) and two letters in uncontracted
  test.each([
    ['STOP', '⠌⠕⠏', [true], [false]],
    ['STOP', '⠎⠞⠕⠏', [false], [true]],
    ['PUMP', PUMP, [true], [true]],
  ])('“%s” as %s', (print, cells, contracted, uncontracted) => {
    expect(valuesOf(sign(print, cells), 'braille.contracted')).toEqual(contracted)
    expect(valuesOf(sign(print, cells), 'braille.uncontracted')).toEqual(uncontracted)
  })

  test('says which cells are wrong for the grade', () => {
    const [observation] = measured(sign('STOP', '⠌⠕⠏'), 'braille.uncontracted').observations
    expect(observation?.context?.expected).toBe('⠎⠞⠕⠏')
    expect(observation?.remark).toContain('Compared cell by cell')
  })

  test('of another country is never read here', () => {
    expect(reasonsOf(sign('PUMP', PUMP), 'braille.nationalCode')).toEqual(['needs-judgement'])
    expect(measured(signOf(PUMP_ROOM, { braille: [] }), 'braille.nationalCode').nothing).toContain('no braille')
  })
})
