import { describe, expect, it } from 'vitest'
import { conditionMet } from '../../src/judge/scope.js'
import { CARRIERS, USES } from '../../src/sign/sign.js'
import { Condition } from '../../src/standards/standard.js'
import { decided } from '../../src/windows/setting.js'
import { PUMP_ROOM, signOf, TWO_SETS } from '../measure/signs.js'

/** What is decided without a sign must be what the judge says of every sign: the signs here are invented. */

const BARE = signOf({ use: 'permanent-room', lettering: [{ text: 'PUMP' }] })
const SIGNS = [BARE, signOf(PUMP_ROOM), signOf(TWO_SETS)]

describe.each(Condition.options)('%s', (condition) => {
  it('is decided for a use as the judge decides it for signs of that use', () => {
    for (const use of USES)
      for (const sign of SIGNS) {
        const found = decided(condition, { use })
        if (found !== undefined) expect(conditionMet(condition, { ...sign, use }).met, use).toBe(found)
      }
  })

  it('is decided for a carrier as the judge decides it for braille on it', () => {
    for (const carrier of CARRIERS) {
      const found = decided(condition, { use: 'permanent-room', carrier })
      const [sign] = SIGNS.slice(1)
      const made = { ...sign, braille: sign.braille.map((block) => ({ ...block, carrier })) }
      if (found !== undefined) expect(conditionMet(condition, made).met, carrier).toBe(found)
    }
  })
})

it('what hangs on the carrier is decided, but for the one whose row was not read', () => {
  const of = (carrier: (typeof CARRIERS)[number]) => decided('carrier-not-pvc', { use: 'permanent-room', carrier })
  expect([of('paper'), of('pvc'), of('stainless-steel')]).toEqual([true, false, undefined])
  expect(decided('several-tactile-lines', { use: 'permanent-room' })).toBeUndefined()
})
