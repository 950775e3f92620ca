import { describe, expect, test } from 'vitest'
import { conditionMet } from '../../src/judge/scope.js'
import { listStandards } from '../../src/standards/catalogue.js'
import { Condition, type Requirement } from '../../src/standards/standard.js'
import { PUMP_ROOM, signOf, withValues } from '../measure/signs.js'
import { judgementBy } from './judged.js'
import { signFor } from './rowsigns.js'
import { SWITCHES } from './switches.js'

/** Every condition of every row and of every exception, on and off. */

const ROWS = listStandards().flatMap(({ id, requirements }) =>
  requirements.map((row) => ({ id, row, name: row.requirement.replace(`${id}/`, '') })),
)

/** A sign of a row with what a condition says; the use stays one that the row is in force for. */
const withSaid = (row: Requirement, said: Record<string, unknown>) => withValues(signFor(row).base, said)

const conditioned = ROWS.flatMap((one) => one.row.scope.when.map((condition) => ({ ...one, condition })))
const excepted = ROWS.flatMap((one) => one.row.exceptions.map((exception) => ({ ...one, exception })))

describe.each(conditioned)('$id/$name when $condition', ({ id, row, name, condition }) => {
  const { on, off, isOpen } = SWITCHES[condition]

  test('holds, and the row is in force', () => {
    const sign = signOf(signFor(row).base)
    expect(conditionMet(condition, signOf(withSaid(row, on))).met).toBe(isOpen ? 'open' : true)
    expect(judgementBy(id, name, sign).verdict).not.toBe('not-applicable')
  })

  // A use that the row is not in force for is no way out of its condition.
  const use = row.scope.uses.find((one) => one === off?.use)
  if (off && (use !== undefined || off.use === undefined))
    test('does not hold, and the row says why it is not in force', () => {
      const sign = signOf(withSaid(row, off))
      expect(conditionMet(condition, sign).met).toBe(false)
      const { verdict, because } = judgementBy(id, name, sign)
      expect(verdict).toBe('not-applicable')
      expect(because).not.toBe('')
    })
})

describe.each(excepted)('$id/$name except when $exception.when', ({ id, row, name, exception }) => {
  const { on, off, isOpen } = SWITCHES[exception.when]
  const signed = (said: Record<string, unknown>) => signOf(withSaid(row, said))

  test('holds', () => {
    const judgement = judgementBy(id, name, signed(on))
    if (isOpen) expect(conditionMet(exception.when, signed(on)).met).toBe('open')
    else if (exception.exempt) expect(judgement.verdict).toBe('not-applicable')
    else expect(judgement.limit.clause).toBe(exception.clause)
  })

  if (off)
    test('does not hold', () => {
      const judgement = judgementBy(id, name, signed(off))
      expect(judgement.verdict).not.toBe('not-applicable')
      expect(judgement.limit.clause).toBe(row.clause)
    })
})

test('every condition that a row may name has its signs', () => {
  expect(Condition.options.filter((condition) => SWITCHES[condition] === undefined)).toEqual([])
})

// Korean Braille Regulations, general rule 7: a row for stainless steel exists whose figures were not reported
test('braille on steel outside the limits for paper is left to a person', () => {
  const base = signOf(PUMP_ROOM, { 'braille.0.carrier': 'stainless-steel', 'braille.0.cellSpacing': 7.1 })
  expect(judgementBy('kr-2020', '7/cell-spacing', base)).toMatchObject({
    verdict: 'undetermined',
    reason: 'needs-judgement',
  })
  expect(judgementBy('kr-2020', '7/cell-spacing-pvc', base).verdict).toBe('not-applicable')
})

// Korean Braille Regulations, general rule 7: 5.5 to 6.9 mm on paper and stickers, 5.5 to 7.3 mm on PVC
test.each([
  [6.8, 'pass'],
  [7.1, 'undetermined'],
])(
  'braille on PVC and on paper of one sign, %s mm: what fits both passes, the rest is left to a person',
  (cell, is) => {
    const [block] = PUMP_ROOM.braille as Record<string, unknown>[]
    const on = (carrier: string, y: number) => ({ ...block, carrier, cellSpacing: cell, origin: { x: 20, y } })
    const sign = signOf({ ...PUMP_ROOM, braille: [on('pvc', 90), on('paper', 130)] })
    expect(judgementBy('kr-2020', '7/cell-spacing', sign).verdict).toBe(is)
    expect(judgementBy('kr-2020', '7/cell-spacing-pvc', sign).verdict).toBe('not-applicable')
  },
)
