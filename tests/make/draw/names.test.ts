import { describe, expect, test } from 'vitest'
import { NAMES } from './names.js'
import { checked, made, notPassing, room, SETS } from './made.js'

/**
 * Every name is drawn for each set of standards and passes the drawing stage of its own check. Here a sample; the whole list is run by
 * tests/accuracy/made-drawings.test.ts. The names are invented.
 */

const EVERY = 20

describe.each(SETS.map((set) => [set.join(' + '), set] as const))('%s', (_, set) => {
  test.each(NAMES.filter((__, i) => i % EVERY === 0))('%s', (name) => {
    const drawn = made(room(name), set)
    const report = checked(drawn, set)
    expect(notPassing(report)).toEqual([])
    expect(report.stages.drawing).toBe('pass')
    expect(report.summary.fail).toBe(0)
  })
})

test('the list has two hundred different names', () => {
  expect(new Set(NAMES).size).toBe(200)
})
