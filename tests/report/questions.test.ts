import { describe, expect, test } from 'vitest'
import { judgementsOf } from '../judge/verdicts.js'
import { PUMP_ROOM, signOf, TWO_SETS } from '../measure/signs.js'
import { questionsOf } from '../../src/report/questions.js'

/** What the contract of the service says of questions: what the client could add. What is there already is never asked for. */

type Json = Record<string, unknown>

const asked = (values: Json, base: Json = PUMP_ROOM) =>
  questionsOf([...judgementsOf(signOf(base, values)).values()]).map(({ pointer }) => pointer)

/** The value that a pointer of the request names in a description. */
const at = (description: unknown, pointer: string): unknown =>
  pointer
    .split('/')
    .slice(2)
    .reduce<unknown>((value, key) => (value as Json | undefined)?.[key], description)

const MISSING = [
  ['lettering.0.baselineSpacing', '/sign/lettering/0/baselineSpacing'],
  ['lettering.0.baseline', '/sign/lettering/0/baseline'],
  ['lettering.0.characterHeight', '/sign/lettering/0/characterHeight'],
  ['braille.0.dotSpacing', '/sign/braille/0/dotSpacing'],
  ['braille.0.cellSpacing', '/sign/braille/0/cellSpacing'],
  ['braille.0.lineSpacing', '/sign/braille/0/lineSpacing'],
  ['braille.0.origin', '/sign/braille/0/origin'],
  ['braille.0.dotBaseDiameter', '/sign/braille/0/dotBaseDiameter'],
  ['installation.panelBottomHeight', '/sign/installation/panelBottomHeight'],
  ['panel.height', '/sign/panel/height'],
]

describe('what is asked for', () => {
  test.each(MISSING)('without %s, that and nothing that is given', (path, pointer) => {
    const pointers = asked({ [path]: undefined })
    expect(pointers).toContain(pointer)
    expect(pointers.filter((p) => at(PUMP_ROOM, p) !== undefined)).toEqual([pointer])
  })

  // 2010 ADA Standards 703.5.5: the height of the characters hangs on that of their baseline above the floor
  test.each([
    ['lettering.0.baseline', '/sign/lettering/0/baseline'],
    ['lettering.0.baselineSpacing', '/sign/lettering/0/baselineSpacing'],
    ['panel.height', '/sign/panel/height'],
    ['installation.panelBottomHeight', '/sign/installation/panelBottomHeight'],
  ])('of characters for sight without %s, that', (path, pointer) => {
    const sign = signOf(TWO_SETS, { [path]: undefined, use: 'informational', braille: [] })
    const judgement = judgementsOf(sign).get('703.5.5/character-height')
    expect(judgement).toMatchObject({ verdict: 'undetermined', reason: 'missing-fact' })
    expect(new Set(judgement?.gaps.map(({ ask }) => ask?.pointer))).toEqual(new Set([pointer]))
  })
})

describe('the unit of a question', () => {
  // the contract: `units` holds for every bare length, so that only a question in that unit can be answered by a bare number
  test('is that of the description, and a bare number there closes the row', () => {
    const without = { 'braille.0.dotHeight': undefined }
    const open = [...judgementsOf(signOf(PUMP_ROOM, without)).values()]
    const of = (units?: 'in' | 'mm') =>
      questionsOf(open, units).find(({ pointer }) => pointer === '/sign/braille/0/dotHeight')?.unit
    expect(of('in')).toBe('in')
    expect(of('mm')).toBe('mm')
    expect(of()).toBe('mm')
  })

  test('stays what it is for what is no length', () => {
    const open = [...judgementsOf(signOf(PUMP_ROOM, { 'lettering.0.characterProportion': undefined })).values()]
    const units = questionsOf(open, 'in').map(({ pointer, unit }) => [pointer, unit])
    expect(units).toContainEqual(['/sign/lettering/0/characterProportion', 'ratio'])
  })
})

describe('braille of one cell', () => {
  // 2010 ADA Standards 703.3.2 and 703.4.1: where the braille stands; with one cell no distance to another is needed
  test.each(['go', '⠛'])('%s is placed without a cell spacing, and none is asked for', (text) => {
    const values = {
      'lettering.0.text': 'GO',
      'lettering.0.lines': undefined,
      'lettering.0.baselineSpacing': undefined,
      'braille.0.text': text,
      'braille.0.lines': undefined,
      'braille.0.lineSpacing': undefined,
      'braille.0.cellSpacing': undefined,
    }
    const judgements = judgementsOf(signOf(PUMP_ROOM, values))
    for (const row of ['703.3.2/below-text', '703.3.2/character-clearance', '703.4.1/lowest-baseline'])
      expect(`${row} ${judgements.get(row)?.verdict}`).toBe(`${row} pass`)
    expect(asked(values).filter((pointer) => pointer.startsWith('/sign/braille'))).toEqual([])
  })

  test('two cells are not', () => {
    const two = { 'braille.0.lines': undefined, 'braille.0.text': 'up', 'braille.0.cellSpacing': undefined }
    expect(judgementsOf(signOf(PUMP_ROOM, two)).get('703.3.2/below-text')).toMatchObject({ verdict: 'undetermined' })
  })
})
