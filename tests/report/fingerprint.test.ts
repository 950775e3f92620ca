import { describe, expect, test } from 'vitest'
import { check, type CheckInput } from '../../src/check.js'
import { SignDescription } from '../../src/sign/description.js'
import { PUMP_ROOM, translator, withValues } from '../measure/signs.js'

/** What the contract of the service says: the fingerprint of a finding is the same whatever else changes. Sizes are invented. */

type Json = Record<string, unknown>

const OPTIONS: CheckInput['options'] = {
  use: 'permanent-room',
  decisionRule: 'simple',
  unitSystem: 'printed',
  language: 'en',
}

const LOW = { ...(PUMP_ROOM.lettering as Json[])[0], characterHeight: 14, strokeThickness: 1.5 }
const FOR_SIGHT = { part: 'visual', text: 'Ring the bell', baseline: { x: 20, y: 20 } }
const SIGN: Json = { ...PUMP_ROOM, lettering: [LOW] }

/** The fingerprints of what fails, by row. */
function printsOf(description: Json): Record<string, string> {
  const sign = SignDescription.parse(description)
  const { findings } = check({ sign, standards: ['us-ada-2010'], options: OPTIONS }, translator)
  return Object.fromEntries(
    findings.filter((f) => f.verdict === 'fail').map((f) => [f.requirement.replace('us-ada-2010/', ''), f.fingerprint]),
  )
}

const HEIGHT = '703.2.5/character-height'

describe('the fingerprint of a finding', () => {
  test('stays when other characters are put before the ones that fail, with a mark and without', () => {
    for (const mark of ['P-1', undefined]) {
      const sign = withValues(SIGN, { mark })
      const before = printsOf(sign)[HEIGHT]
      expect(before).toMatch(/^[0-9a-f]+$/)
      expect(printsOf({ ...sign, lettering: [FOR_SIGHT, LOW] })[HEIGHT]).toBe(before)
    }
  })

  test('stays when another quantity is measured first', () => {
    const low = { quantity: 'raised.relief', values: [0.5] }
    const other = { quantity: 'braille.dotHeight', values: [0.75] }
    const before = printsOf({ ...PUMP_ROOM, measured: [low] })['703.2.1/relief']
    expect(before).toMatch(/^[0-9a-f]+$/)
    expect(printsOf({ ...PUMP_ROOM, measured: [other, low] })['703.2.1/relief']).toBe(before)
  })

  test('is another for another sign, for other words and for the second of two that say the same', () => {
    const before = printsOf(SIGN)[HEIGHT]
    const others = [
      { ...SIGN, mark: 'P-2' },
      { ...SIGN, lettering: [{ ...LOW, lines: ['PUMP HALL', '12'], text: 'PUMP HALL 12' }] },
      { ...SIGN, lettering: [(PUMP_ROOM.lettering as Json[])[0], LOW] },
    ]
    const prints = others.map((other) => printsOf(other)[HEIGHT])
    expect(new Set([before, ...prints]).size).toBe(others.length + 1)
    expect(prints).not.toContain(undefined)
  })
})
