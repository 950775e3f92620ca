import { attempt } from './attempt.js'
import type { Bench } from './bench.js'
import { PLACING, SPACING, WORDING } from './braille.js'
import { lifted } from './lift.js'
import { failing, type Sheet } from './sheet.js'

/** The step that puts the braille right: all of it at once, else each matter by itself. */
export function brailleStep(sheet: Sheet, bench: Bench): Sheet {
  const all = failing(sheet.report, [...WORDING, ...SPACING, ...PLACING])
  if (all.length === 0) return sheet
  const whole = attempt(sheet, all, bench) ?? lifted(sheet, all, bench)
  if (whole) return whole.sheet
  const matters = [WORDING, SPACING, PLACING].map((quantities) => failing(sheet.report, quantities))
  if (matters.filter((rows) => rows.length > 0).length < 2) return sheet
  return matters.reduce((so, rows) => (rows.length > 0 ? (attempt(so, rows, bench)?.sheet ?? so) : so), sheet)
}
