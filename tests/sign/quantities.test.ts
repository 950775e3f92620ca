import { expect, it } from 'vitest'
import { MEASURABLE } from '../../src/sign/quantities.js'
import { listStandards } from '../../src/standards/catalogue.js'
import type { Limit } from '../../src/standards/standard.js'

const kindOf = (limit: Limit): string | undefined => {
  switch (limit.kind) {
    case 'ratio':
      return 'ratio'
    case 'number':
      return limit.unit
    case 'one-of':
    case 'yes':
      return undefined
    default:
      return 'length'
  }
}

it('knows each quantity that a standard limits by a number, by its kind', () => {
  const rows = listStandards().flatMap(({ requirements }) => requirements)
  const limited = rows.flatMap(({ quantity, limit }) => {
    const kind = kindOf(limit)
    return kind === undefined ? [] : [`${quantity} ${kind}`]
  })
  const known = Object.entries(MEASURABLE).map(([name, kind]) => `${name} ${kind}`)
  expect(known).toEqual(expect.arrayContaining(limited))
  expect(limited.length).toBeGreaterThan(20)
})
