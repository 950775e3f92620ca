import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { LONGEST_CELL, LONGEST_VALUE, MOST_COLUMNS, MOST_ROWS } from '../../../src/submittals/schedule/grid.js'
import { MOST_PROBLEMS } from '../../../src/submittals/schedule/read.js'
import { MOST_INFLATED } from '../../../src/submittals/schedule/unpack.js'
import { comparedSign } from '../../../src/submittals/set-findings/compared-sign.js'
import { RULES, setFindings } from '../../../src/submittals/set-findings/set-findings.js'
import { headingRows, unusedRows, wordRows } from './page-tables.js'
import { read } from './reading.js'

/** docs/schedules.md and its example say what the code does, both ways. */

const docs = new URL('../../../docs/', import.meta.url)
const page = readFileSync(new URL('schedules.md', docs), 'utf8')

/** The rows of the table below this head. */
function rowsBelow(head: string): string[] {
  const lines = page.split('\n')
  const first = lines.indexOf(head) + 2
  expect(first, head).toBeGreaterThan(2)
  return lines.slice(
    first,
    lines.findIndex((line, at) => at >= first && !line.startsWith('|')),
  )
}

describe('the page', () => {
  it('has every heading that is known, and no other', () => {
    expect(rowsBelow('| heading | its cells | also known as |')).toEqual(headingRows())
    expect(rowsBelow('| heading | also known as |')).toEqual(unusedRows())
  })

  it('has every word that a cell may hold, and no other', () => {
    expect(rowsBelow('| column | word | may also be written |')).toEqual(wordRows())
  })

  it('has every kind of finding of a set, and no other', () => {
    const kinds = rowsBelow('| finding | what it says |').map((row) => row.split('`')[1])
    expect(kinds).toEqual(Object.keys(RULES))
  })

  it('has the limits', () => {
    const numbers = rowsBelow('| what | most |').map((row) => Number(row.split('|')[2]?.replaceAll(',', '')))
    expect(numbers).toEqual([MOST_ROWS, MOST_COLUMNS, LONGEST_CELL, LONGEST_VALUE, MOST_PROBLEMS, MOST_INFLATED])
  })
})

describe('the example', () => {
  const example = () => read(readFileSync(new URL('examples/schedule.csv', docs)))

  it('is read without a problem', async () => {
    const { rows, problems } = await example()
    expect(problems).toEqual([])
    expect(rows.map(({ row, mark }) => [row, mark])).toEqual([
      [4, 'K-104'],
      [5, 'K-106'],
      [6, 'W-2B'],
      [7, 'S-3'],
      [8, 'X-1'],
    ])
  })

  it('names drawings that are there, with the marks and uses of their descriptions', async () => {
    for (const { drawing, mark, sign } of (await example()).rows) {
      expect(readFileSync(new URL(`examples/${drawing ?? ''}`, docs), 'utf8')).toContain('<svg')
      const description = readFileSync(new URL(`examples/${(drawing ?? '').replace('.svg', '.json')}`, docs), 'utf8')
      expect(JSON.parse(description)).toMatchObject({ mark, use: sign.use })
    }
  })

  it('lists a door that has no sign, and nothing else is found', async () => {
    const { rows, doors } = await example()
    const signs = rows.map(({ mark, location, door, sign, useAssumed = false }) =>
      comparedSign({ mark: mark ?? '', location, door, description: sign, useAssumed, report: null }),
    )
    expect(setFindings(signs, doors)).toEqual([
      expect.objectContaining({ kind: 'door-without-sign', message: expect.stringContaining('Door 108') as string }),
    ])
  })
})
