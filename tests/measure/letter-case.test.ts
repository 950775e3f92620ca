import { describe, expect, test } from 'vitest'
import { missing } from '../../src/sign/sign.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured } from './values.js'

/** 2010 ADA Standards 703.2.2 and 703.5.2: the case of the letters. Words are invented. */

type Json = Record<string, unknown>
const at = (values: Json = {}) => signOf(PUMP_ROOM, values)

describe('the case of the letters', () => {
  const caseOf = (text: string, quantity = 'visual.case') =>
    measured(
      at({ 'lettering.0.text': text, 'lettering.0.lines': [text], 'lettering.0.baselineSpacing': undefined }),
      quantity,
    )

  // The Unicode Standard, general categories Lu, Ll and Lt
  test.each([
    ['PUMP', 'upper', true],
    ['pump', 'lower', false],
    ['Pump', 'mixed', false],
    ['ÉCOLE 2', 'upper', true],
    ['ǅUBA', 'mixed', false],
  ])('“%s” is %s', (text, kind, upper) => {
    expect(caseOf(text).observations).toMatchObject([
      {
        value: kind,
        basis: 'declared',
        places: [{ element: 'lettering/0' }],
        remark: `The characters read “${text}”.`,
      },
    ])
    expect(caseOf(text, 'raised.case').observations[0]?.value).toBe(upper)
  })

  test('is none of figures, and is asked where the words are not known', () => {
    expect(caseOf('12 – 14').nothing).toContain('no letters')
    const sign = at()
    const unread = { ...sign, lettering: sign.lettering.map((set) => ({ ...set, text: missing() })) }
    expect(measured(unread, 'raised.case')).toMatchObject({
      observations: [],
      gaps: [{ places: [{ element: 'lettering/0' }], ask: { pointer: '/sign/lettering/0/text' } }],
    })
  })
})
