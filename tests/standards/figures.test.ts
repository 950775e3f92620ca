import { describe, expect, test } from 'vitest'
import { QUANTITIES } from '../../src/measure/measurer.js'
import { findStandards } from '../../src/standards/catalogue.js'
import type { Limit } from '../../src/standards/standard.js'
import { TABLE_41_2_B } from './es-tma-851-2021-figures.js'
import { figureOf, formOf, WITHOUT_FIGURES } from './printed.js'
import { TYPED } from './typed.js'

/** Every printed figure of every table against the figure that was typed a second time from the source. */

/** A clause as it stands in the name of a row: what is no letter, figure or dot becomes a dot. */
const inName = (clause: string): string => clause.replace(/[^A-Za-z0-9.]+/gu, '.').replace(/^\.|\.$/gu, '')

const unitOf = (limit: Limit): string => {
  switch (limit.kind) {
    case 'ratio':
      return 'ratio'
    case 'number':
      return limit.unit
    case 'one-of':
      return 'kind'
    case 'yes':
      return 'truth'
    default:
      return 'mm'
  }
}

describe.each(Object.entries(TYPED))('the table %s', (id, { FIGURES, EXCEPTIONS = [] }) => {
  const [standard] = findStandards([id])
  const { requirements: rows, sources, kind } = standard
  const rowOf = (row: string) => rows.find(({ requirement }) => requirement === `${id}/${row}`)

  test.each(FIGURES)('$row has the printed figure', (figure) => {
    const row = rowOf(figure.row)
    expect(row && figureOf(row.limit)).toEqual(formOf(figure))
  })

  if (EXCEPTIONS.length > 0)
    test.each(EXCEPTIONS)('$row has the printed figure when $when', (figure) => {
      const limit = rowOf(figure.row)?.exceptions.find((exception) => exception.when === figure.when)?.limit
      expect(limit && figureOf(limit)).toEqual(formOf(figure))
    })

  test('has no row with a figure that was not typed a second time', () => {
    const withFigures = rows.filter(({ limit }) => !WITHOUT_FIGURES.includes(limit.kind))
    expect(withFigures.map(({ requirement }) => requirement).sort()).toEqual(
      FIGURES.map(({ row }) => `${id}/${row}`).sort(),
    )
    const relaxed = rows.flatMap(({ requirement, exceptions }) =>
      exceptions.flatMap(({ limit }) => (limit && !WITHOUT_FIGURES.includes(limit.kind) ? [requirement] : [])),
    )
    expect(relaxed.sort()).toEqual(EXCEPTIONS.map(({ row }) => `${id}/${row}`).sort())
  })

  test('has each row once, under its own clause, and cites a source that is listed', () => {
    const names = rows.map(({ requirement }) => requirement)
    expect(new Set(names).size).toBe(names.length)
    for (const { requirement, clause, citation } of rows) {
      expect(requirement.split('/').slice(0, 2)).toEqual([id, inName(clause)])
      expect(Object.keys(sources)).toContain(citation.source)
    }
  })

  test('asks only for quantities that are defined, in the unit of its limits', () => {
    for (const { requirement, quantity, limit, exceptions } of rows)
      for (const one of [limit, ...exceptions.flatMap((exception) => exception.limit ?? [])])
        expect(`${requirement} ${QUANTITIES[quantity]?.unit}`).toBe(`${requirement} ${unitOf(one)}`)
  })

  test('prints millimetres that are the inches, rounded as the text rounds them', () => {
    for (const { requirement, limit } of rows) {
      const { inches, millimetres, nominalInches, nominal } = figureOf(limit)
      const pairs = [
        [inches?.min, millimetres?.min],
        [inches?.max, millimetres?.max],
        [nominalInches, nominal],
      ]
      for (const [inch, mm] of pairs)
        if (inch !== undefined && mm !== undefined)
          expect(Math.abs(inch * 25.4 - mm) / mm, requirement).toBeLessThan(0.06)
    }
  })

  test('leaves nothing out in silence, and binds only where a code or a standard does', () => {
    expect(standard.gaps.length).toBeGreaterThan(0)
    if (kind === 'reference-geometry') expect([...new Set(rows.map(({ force }) => force))]).toEqual(['advice'])
  })
})

test('the table of article 41.2.b of the Spanish order is met by its share on every line', () => {
  const limit = findStandards(['es-tma-851-2021'])[0]?.requirements.find(({ clause }) => clause === '41.2.b')?.limit
  if (limit?.kind !== 'distance-share') throw new Error('the row goes by distance')
  for (const [distance, height] of TABLE_41_2_B) expect(limit.share * distance).toBeCloseTo(height, 9)
})
