import type { Finding } from '../../report/finding-schema.js'
import { attempt } from './attempt.js'
import type { Bench } from './bench.js'
import { PLACING, SPACING, WORDING } from './braille.js'
import { lifted } from './lift.js'
import { failing, type Sheet } from './sheet.js'

/** Braille that is set anew can be judged on more than before, once. */
const MOST_ROUNDS = 2

/** The step that puts the braille right, with what shows only then. */
export function brailleStep(sheet: Sheet, bench: Bench): Sheet {
  const seen = new Set<string>()
  let now = sheet
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const rows = failing(now.report, [...WORDING, ...SPACING, ...PLACING])
    if (rows.every(({ requirement }) => seen.has(requirement))) break
    for (const { requirement } of rows) seen.add(requirement)
    now = oneRound(now, rows, bench)
  }
  return now
}

/** All of it at once, else each matter by itself. */
function oneRound(sheet: Sheet, all: readonly Finding[], bench: Bench): Sheet {
  const whole = attempt(sheet, all, bench) ?? lifted(sheet, all, bench)
  if (whole) return whole.sheet
  const matters = [WORDING, SPACING, PLACING].map((quantities) => failing(sheet.report, quantities))
  if (matters.filter((rows) => rows.length > 0).length < 2) return sheet
  return matters.reduce((so, rows) => (rows.length > 0 ? (attempt(so, rows, bench)?.sheet ?? so) : so), sheet)
}
