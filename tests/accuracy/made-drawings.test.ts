import { expect, test } from 'vitest'
import { NAMES } from '../make/draw/names.js'
import { checked, made, notPassing, room, SETS } from '../make/draw/made.js'

/** The whole list of names, each drawn for each set of standards and checked: no exception. The names are invented. */

/** Milliseconds: it makes and checks two hundred drawings. */
const LONGEST = 300_000

test.each(SETS.map((set) => [set.join(' + '), set] as const))(
  '%s: every name',
  (_, set) => {
    const failed = NAMES.flatMap((name) => {
      const report = checked(made(room(name), set), set)
      return report.stages.drawing === 'pass' ? [] : [`${name}: ${notPassing(report).join('; ')}`]
    })
    expect(failed).toEqual([])
  },
  LONGEST,
)
