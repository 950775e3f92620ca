import { describe, expect, test } from 'vitest'
import { listStandards } from '../../src/standards/catalogue.js'
import { signOf, withValues } from '../measure/signs.js'
import { judgementBy } from './judged.js'
import { signFor } from './rowsigns.js'
import { TRUTHS } from './truths.js'

/** Every row that asks for a plain yes: a sign of which it is true, one of which it is not, or a person who judges it. */

const ROWS = listStandards().flatMap(({ id, requirements }) =>
  requirements
    .filter(({ limit }) => limit.kind === 'yes')
    .map((row) => ({ id, row, name: row.requirement.replace(`${id}/`, '') })),
)

describe.each(ROWS)('$id/$name', ({ id, row, name }) => {
  const { yes, no, never } = TRUTHS[row.quantity] ?? {}
  const { base, isOpen } = signFor(row)
  const judged = (values: Record<string, unknown>) => judgementBy(id, name, signOf(withValues(base, values)))

  if (yes) test('is true of a sign', () => expect(judged(yes).verdict).toBe('pass'))

  if (no) test('is not true of another', () => expect(judged(no).verdict).toBe(isOpen ? 'undetermined' : 'fail'))

  if (!yes && !no)
    test('is left to a person, and says why', () => {
      const { verdict, reason, gaps } = judged({})
      expect([verdict, reason]).toEqual(['undetermined', 'needs-judgement'])
      expect(gaps.every(({ why }) => why.length > 0)).toBe(true)
    })

  test('has its signs, or the reason why there is none', () => expect(yes && no ? 'both' : never).toBeTruthy())
})
