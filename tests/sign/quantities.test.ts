import { expect, it } from 'vitest'
import { MEASURABLE } from '../../src/sign/quantities.js'
import { listStandards } from '../../src/standards/catalogue.js'

it('knows each quantity that a standard limits by a number, by its kind, and no other', () => {
  const rows = listStandards().flatMap(({ requirements }) => requirements)
  const limited = rows.flatMap(({ quantity, limit }): [string, string][] => {
    if (limit.kind === 'ratio') return [[quantity, 'ratio']]
    return limit.kind === 'length' || limit.kind === 'by-viewing-distance' ? [[quantity, 'length']] : []
  })
  expect(MEASURABLE).toEqual(Object.fromEntries(limited))
})
