import { describe, expect, test } from 'vitest'
import { TranslationError } from '../../src/braille/translator.js'
import { measurer } from '../../src/measure/measurer.js'
import { dots, sign as several, text } from './several.js'
import { PUMP_ROOM, signOf, translator } from './signs.js'
import { measured, RAISED, reasonsOf, valuesOf } from './values.js'

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

describe('what is said of the capitals', () => {
  const QUANTITY = 'braille.capitalsKept'
  const remarkOn = (print: string, cells: string) => measured(sign(print, cells), QUANTITY).observations[0]?.remark

  test('names the words without a sign, and no others', () => {
    expect(remarkOn('Pump Room', `⠠${PUMP}⠀${ROOM}`)).toMatch(/“Room”.*lacks/u)
    expect(remarkOn('Pump Room', `⠠${PUMP}⠀${ROOM}`)).not.toContain('Pump')
    expect(remarkOn('Pump Room', `⠠${PUMP}⠀⠠${ROOM}`)).toContain('Every word')
  })

  test('is of a text with blanks around it what it is of the text', () => {
    const given = sign('Pump Room', `⠠${PUMP}⠀⠠${ROOM}`)
    const spaced = { value: ' Pump Room ', basis: 'declared' as const }
    const lettering = given.lettering.map((one) => ({ ...one, text: spaced }))
    expect(valuesOf({ ...given, lettering }, QUANTITY)).toEqual([true])
  })

  test('is nothing where words are misspelt, though as many, and where the block stands is told', () => {
    const misspelt = sign('Pump Room', `⠠⠏⠥⠍⠀⠠${ROOM}`)
    const { observations, gaps } = measured(misspelt, QUANTITY)
    expect(observations).toEqual([])
    expect(gaps).toMatchObject([{ reason: 'needs-judgement', places: misspelt.braille.map(({ place }) => place) }])
    expect(gaps[0]?.why).toContain('do not say')
  })

  test('is nothing where there is no braille or nothing that is raised', () => {
    expect(measured(signOf(PUMP_ROOM, { braille: [] }), QUANTITY)).toMatchObject({
      gaps: [],
      nothing: expect.stringContaining('no braille') as string,
    })
    expect(measured(signOf(PUMP_ROOM, { lettering: [] }), QUANTITY)).toMatchObject({
      gaps: [],
      nothing: expect.stringContaining('no raised') as string,
    })
  })

  test('is for a person where the text cannot be translated, and why is told', () => {
    const failing = {
      ...translator,
      toCells: () => {
        throw new TranslationError('no braille for this')
      },
    }
    const { gaps } = measurer(sign('Pump Room', `⠠${PUMP}⠀⠠${ROOM}`), failing)(QUANTITY, RAISED)
    expect(gaps).toMatchObject([{ reason: 'needs-judgement', why: 'no braille for this' }])
  })

  test('is for a person where there are too many texts to tell which block says which', () => {
    const names = Array.from({ length: 13 }, (_, i) => `Room ${i + 1}`)
    const blocks = [...names].reverse().map((name, i) => dots(name.toLowerCase(), 20, 10 + 15 * i))
    const many = several(
      names.map((name, i) => text(name, 220, 30 * i)),
      blocks,
    )
    expect(reasonsOf(many, QUANTITY)).toEqual(['needs-judgement'])
    expect(measured(many, QUANTITY).gaps[0]?.why).toContain('do not say')
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
