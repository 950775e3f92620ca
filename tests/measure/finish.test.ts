import { describe, expect, test } from 'vitest'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured } from './values.js'

/** 2010 ADA Standards 703.5.1: the finish of characters and of their background. */

type Json = Record<string, unknown>
const SET = (PUMP_ROOM.lettering as Json[])[0]
const at = (values: Json = {}) => signOf(PUMP_ROOM, values)

describe('the finish', () => {
  test('of the panel is that of what has none of its own, and is asked once', () => {
    const own = at({ 'lettering.0.finish': 'satin' })
    expect(measured(own, 'visual.finish').observations).toMatchObject([
      { value: 'matte', places: [{ element: 'panel' }] },
      { value: 'satin', places: [{ element: 'lettering/0' }] },
    ])
    const none = at({ 'panel.finish': undefined, lettering: [SET, { ...SET, text: 'PUMPS', lines: ['PUMPS'] }] })
    const { gaps } = measured(none, 'visual.finish')
    expect(gaps).toMatchObject([{ ask: { pointer: '/sign/panel/finish' } }])
    expect(gaps[0]?.ask?.choices).toContain('glossy')
    expect(measured(at({ lettering: [] }), 'visual.finish').nothing).toContain('no characters')
  })

  test('that a drawing leaves unread is open', () => {
    const sign = at()
    const finish = { unknown: 'unreadable' as const, why: 'a pattern' }
    const unread = { ...sign, lettering: sign.lettering.map((set) => ({ ...set, finish })) }
    expect(measured(unread, 'visual.finish').gaps).toMatchObject([
      { reason: 'unreadable', ask: { pointer: '/sign/lettering/0/finish', choices: expect.any(Array) as [] } },
    ])
  })
})
