import { describe, expect, test } from 'vitest'
import { drawnSign, rectangle } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

/**
 * Where the descriptor of a pictogram stands. 2010 ADA Standards 703.6.3: directly below the field; that this is below its lower edge and
 * under some part of it, no farther than the field is high, is the project's own reading. The field is invented: from 10 to 170 mm both ways.
 */

const QUANTITY = 'pictogram.descriptor'
const described = signOf(PUMP_ROOM, {
  'panel.height': 600,
  pictograms: [
    { meaning: 'pump', field: { x: 10, y: 10, width: 160, height: 160 }, colour: '#000000', fieldColour: '#ffffff' },
  ],
})

/** Lines of drawn characters, each 30 mm wide and 20 mm high, with their upper left corners here. */
function linesAt(...corners: [number, number][]) {
  const sign = drawnSign({ pictograms: described.pictograms })
  const lettering = sign.lettering.map((set) => ({
    ...set,
    lines: corners.flatMap(([x, y]) =>
      set.lines.slice(0, 1).map((line) => ({ ...line, outlines: [rectangle(x, y, 30, 20)] })),
    ),
  }))
  return { ...sign, lettering }
}
const standsAt = (...corners: [number, number][]) => valuesOf(linesAt(...corners), QUANTITY)

describe('characters', () => {
  test('may touch the lower edge of the field, and not reach above it', () => {
    expect(standsAt([50, 170])).toEqual([true])
    expect(standsAt([50, 169.9])).toEqual([false])
  })

  test('stand under some part of the field, not beside it', () => {
    expect(standsAt([169.9, 180])).toEqual([true])
    expect(standsAt([170, 180])).toEqual([false])
    expect(standsAt([-19.9, 180])).toEqual([true])
    expect(standsAt([-20, 180])).toEqual([false])
    expect(standsAt([-100, 180])).toEqual([false])
  })

  test('farther below than the field is high are left to a person', () => {
    expect(standsAt([50, 330])).toEqual([true])
    for (const top of [330.1, 340, 500]) {
      const { observations, gaps } = measured(linesAt([50, top]), QUANTITY)
      expect([observations, gaps.map(({ reason }) => reason)]).toEqual([[], ['needs-judgement']])
    }
  })

  test('need one line below the field, wherever others stand', () => {
    expect(standsAt([50, 180], [200, 40])).toEqual([true])
    expect(standsAt([200, 40], [50, 180])).toEqual([true])
    expect(reasonsOf(linesAt([200, 40], [50, 180]), QUANTITY)).toEqual([])
    expect(reasonsOf(linesAt([200, 40]), QUANTITY)).toEqual([])
  })
})

describe('what is asked', () => {
  const withText = (unknown: 'missing-fact' | 'unreadable') => ({
    ...described,
    lettering: described.lettering.map((set) => ({ ...set, text: { unknown, why: 'it is not there' } })),
  })

  test('is the text where it was not given, and nothing where it could not be read', () => {
    expect(measured(withText('missing-fact'), QUANTITY).gaps).toMatchObject([
      {
        reason: 'missing-fact',
        ask: { pointer: '/sign/lettering/0/text', ask: 'What do the raised characters say?' },
      },
    ])
    const [unread] = measured(withText('unreadable'), QUANTITY).gaps
    expect(unread?.reason).toBe('unreadable')
    expect(unread).not.toHaveProperty('ask')
  })

  test('is nothing where nothing is raised: there is no descriptor', () => {
    const bare = { ...described, lettering: [] }
    expect(measured(bare, QUANTITY)).toMatchObject({
      observations: [{ value: false, places: described.pictograms.map(({ place }) => place) }],
      gaps: [],
    })
  })
})
