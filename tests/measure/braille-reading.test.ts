import { describe, expect, test } from 'vitest'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

type Json = Record<string, unknown>
const [block] = PUMP_ROOM.braille as Json[]
const [set] = PUMP_ROOM.lettering as Json[]

/** A sign with one raised text and one line of braille; words are invented. */
const sign = (print: string, text: string, more: Record<string, unknown> = {}) =>
  signOf(PUMP_ROOM, {
    'lettering.0.text': print,
    'lettering.0.lines': [print],
    'braille.0.lines': undefined,
    'braille.0.text': text,
    ...more,
  })
const wording = (...args: Parameters<typeof sign>) => valuesOf(sign(...args), 'braille.wording')

describe('wording', () => {
  test('either grade says the text, capitals aside', () => {
    expect(wording('READING ROOM', 'reading room')).toEqual([true])
    expect(wording('READING ROOM', 'Reading Room')).toEqual([true])
    expect(wording('READING ROOM', 'reading room', { 'braille.0.code': 'ueb-uncontracted' })).toEqual([true])
  })

  test('another word, another number, a missing word do not', () => {
    expect(wording('READING ROOM', 'reading hall')).toEqual([false])
    expect(wording('ROOM 204', 'room 240')).toEqual([false])
    expect(wording('READING ROOM', 'reading')).toEqual([false])
  })

  // Unicode Standard, block Braille Patterns: U+2817 is dots 1-2-3-5 (r), U+2807 is dots 1-2-3 (l)
  test('one missing dot is another word', () => {
    const [right, wrong] = ['\u2817\u2815\u2815\u280d', '\u2807\u2815\u2815\u280d']
    expect(wording('ROOM', right)).toEqual([true])
    expect(wording('ROOM', wrong)).toEqual([false])
  })

  test('a finding tells what the cells are and what was expected', () => {
    const [observation] = measured(sign('ROOM 204', 'room 240'), 'braille.wording').observations
    expect(observation?.context).toMatchObject({ print: 'ROOM 204', expected: '⠗⠕⠕⠍⠀⠼⠃⠚⠙' })
    expect(observation?.remark).toContain('ROOM 204')
  })

  test('texts in two blocks, each with its own braille, in either order', () => {
    const lettering = [
      { ...set, text: 'PUMPS', lines: ['PUMPS'], baseline: { x: 20, y: 40 } },
      { ...set, text: 'FILTERS', lines: ['FILTERS'], baseline: { x: 120, y: 40 } },
    ]
    const under = (left: string, right: string) =>
      signOf(PUMP_ROOM, {
        lettering,
        braille: [
          { ...block, lines: [left], origin: { x: 20, y: 55 } },
          { ...block, lines: [right], origin: { x: 120, y: 55 } },
        ],
      })
    expect(valuesOf(under('pumps', 'filters'), 'braille.wording').every((v) => v === true)).toBe(true)
    expect(valuesOf(under('filters', 'pumps'), 'braille.wording').every((v) => v === true)).toBe(true)
    expect(valuesOf(under('pumps', 'pumps'), 'braille.wording')).toContain(false)
  })

  test('not applicable without raised text or without braille', () => {
    expect(measured(signOf(PUMP_ROOM, { braille: [] }), 'braille.wording').nothing).toBe('The sign has no braille.')
    expect(measured(signOf(PUMP_ROOM, { 'lettering.0.part': 'visual' }), 'braille.wording').nothing).toBe(
      'The sign has no raised characters.',
    )
  })

  test('a text that braille tables do not know is left to a person', () => {
    const foreign = { ...sign('ROOM', 'room') }
    const lettering = foreign.lettering.map((l) => ({ ...l, text: { value: '泵房', basis: 'declared' as const } }))
    expect(reasonsOf({ ...foreign, lettering }, 'braille.wording')).toEqual(['needs-judgement'])
  })
})

describe('contracted', () => {
  const contracted = (...args: Parameters<typeof sign>) => valuesOf(sign(...args), 'braille.contracted')
  const uncontracted = { 'braille.0.code': 'ueb-uncontracted' }

  // Rules of Unified English Braille, section 10: "ea", "d-ing" are contracted in READING; EXIT has no contraction
  test('is decided by the cells', () => {
    expect(contracted('READING ROOM', 'reading room')).toEqual([true])
    expect(contracted('READING ROOM', 'reading room', uncontracted)).toEqual([false])
    expect(contracted('EXIT', 'exit', uncontracted)).toEqual([true])
  })

  test('also where the braille says something else, or the letters were not read', () => {
    expect(contracted('PUMP ROOM', 'reading room', uncontracted)).toEqual([false])
    const outlined = sign('READING ROOM', 'reading room', uncontracted)
    const unread = {
      ...outlined,
      lettering: outlined.lettering.map((l) => ({ ...l, text: { unknown: 'unreadable' as const, why: 'outlines' } })),
    }
    expect(valuesOf(unread, 'braille.contracted')).toEqual([false])
    expect(reasonsOf(unread, 'braille.wording')).toEqual(['unreadable'])
  })
})

// 2010 ADA Standards 703.3.1, as the contract of the service reads it
describe('capitals', () => {
  const capitals = (text: string, properNames?: string[]) => sign(text.toUpperCase(), text, { properNames })
  test('none pass; single letters may always have one; others need the list of names', () => {
    expect(valuesOf(capitals('pump room'), 'braille.capitals')).toEqual([true])
    expect(valuesOf(capitals('room B'), 'braille.capitals')).toEqual([true])
    expect(valuesOf(capitals('Ada Hall', ['Ada Hall']), 'braille.capitals')).toEqual([true])
    expect(valuesOf(capitals('Pump Room', []), 'braille.capitals')).toEqual([false])
    expect(measured(capitals('Ada Hall'), 'braille.capitals').gaps[0]).toMatchObject({
      reason: 'missing-fact',
      ask: { pointer: '/sign/properNames' },
    })
  })
})
