import { describe, expect, test } from 'vitest'
import type { Sign, Unread } from '../../src/sign/sign.js'
import { judgementOf, judgementsOf } from '../judge/verdicts.js'
import { PUMP_ROOM, signOf } from './signs.js'

/** What was seen but not understood leaves open what it could change, and fails nothing (contract of the service, 5). */
const image = (...couldBe: Unread['couldBe']): Unread => ({
  place: { element: 'drawing' },
  why: 'an image was not looked into',
  couldBe,
})
const withUnread = (sign: Sign, ...unread: Unread[]): Sign => ({ ...sign, unread })
const verdict = (sign: Sign, row: string) => judgementOf(sign, row)

const NO_BRAILLE = signOf(PUMP_ROOM, { braille: [] })
const NO_LETTERS = { ...signOf(PUMP_ROOM), lettering: [] }

describe('an unread part', () => {
  test('that could be braille: missing braille is no fault yet', () => {
    expect(verdict(NO_BRAILLE, '703.2/repeated-in-braille').verdict).toBe('fail')
    const sign = withUnread(NO_BRAILLE, image('braille'))
    for (const row of ['703.2/repeated-in-braille', '703.2/wording', '703.3.1/cell-spacing', '703.3.2/below-text'])
      expect(verdict(sign, row)).toMatchObject({ verdict: 'undetermined', reason: 'unreadable' })
  })

  test('that could be lettering: missing raised characters are no fault yet', () => {
    const painted = withUnread(NO_LETTERS, image('lettering'))
    for (const row of ['216.2/tactile-characters', '703.2.5/character-height', '703.2/wording'])
      expect(verdict(painted, row)).toMatchObject({ verdict: 'undetermined', reason: 'unreadable' })
  })

  test('beside a wrong wording leaves it open, since the rest of the text may be in it', () => {
    const wrong = signOf(PUMP_ROOM, { 'braille.0.lines': ['pump', '12'] })
    expect(verdict(wrong, '703.2/wording').verdict).toBe('fail')
    expect(verdict(withUnread(wrong, image('lettering')), '703.2/wording').verdict).toBe('undetermined')
  })

  test('does not hide a fault of what was measured', () => {
    const sign = withUnread(signOf(PUMP_ROOM, { 'braille.0.cellSpacing': 5 }), image('braille', 'lettering'))
    expect(verdict(sign, '703.3.1/cell-spacing').verdict).toBe('fail')
  })

  test('keeps what was measured well from passing for the whole sign', () => {
    const sign = withUnread(signOf(PUMP_ROOM), image('lettering'))
    expect(verdict(sign, '703.2.5/character-height')).toMatchObject({ verdict: 'undetermined', reason: 'unreadable' })
    expect(verdict(sign, '703.3.1/cell-spacing').verdict).toBe('pass')
  })

  test('that could be anything never makes a row fail', () => {
    const all = image('braille', 'lettering', 'pictogram', 'border', 'colour')
    for (const sign of [NO_BRAILLE, NO_LETTERS, signOf(PUMP_ROOM)]) {
      const fails = [...judgementsOf(withUnread(sign, all))].filter(([, j]) => j.verdict === 'fail').map(([row]) => row)
      expect(fails).toEqual([])
    }
  })
})

describe('a value that was not read', () => {
  const unreadable = { unknown: 'unreadable' as const, why: 'the characters are outlines' }
  test('is open with the reason that it has', () => {
    const sign = signOf(PUMP_ROOM)
    const outlined = { ...sign, lettering: sign.lettering.map((l) => ({ ...l, characterHeight: unreadable })) }
    expect(verdict(outlined, '703.2.5/character-height')).toMatchObject({
      verdict: 'undetermined',
      reason: 'unreadable',
    })
    expect(verdict(outlined, '703.2.6/stroke-thickness').reason).toBe('unreadable')
  })

  test('braille above unread characters is no fault, since it may repeat others', () => {
    const sign = signOf(PUMP_ROOM, { 'braille.0.origin': { x: 20, y: 5 } })
    expect(verdict(sign, '703.3.2/below-text').verdict).toBe('fail')
    const outlined = { ...sign, lettering: sign.lettering.map((l) => ({ ...l, text: unreadable })) }
    expect(verdict(outlined, '703.3.2/below-text').verdict).toBe('undetermined')
  })
})
