import { boxContains } from '../../geometry/box.js'
import type { Finding } from '../../report/finding-schema.js'
import { isKnown } from '../../sign/sign.js'
import { attempt, breaking, ELSEWHERE } from './attempt.js'
import type { Bench } from './bench.js'
import { PLACING, SPACING } from './braille.js'
import { CHARACTER_SPACING, gapsSet, windowOf } from './gaps.js'
import { LINE_SPACING, linesSetApart } from './lines.js'
import { NotCorrectable, type Rewrite } from './outcome.js'
import { failing, offenders, type Sheet } from './sheet.js'
import { compared, tried, type Trial } from './trial.js'

/** The step that sets characters and their lines apart; the braille follows where they come too near to it. */
export function letterStep(sheet: Sheet, bench: Bench): Sheet {
  const wider = failing(sheet.report, CHARACTER_SPACING).reduce((so, row) => oneRow(so, row, gapWays, bench), sheet)
  return failing(wider.report, LINE_SPACING).reduce((so, row) => oneRow(so, row, lineWays, bench), wider)
}

type Ways = (sheet: Sheet, row: Finding, numbers: readonly number[]) => (() => Rewrite | NotCorrectable)[]

const gapWays: Ways = (sheet, row, numbers) => [
  () => {
    const stroke = sheet.sign.lettering[numbers[0]]?.strokeThickness
    const window = windowOf(row, isKnown(stroke) ? stroke.value : undefined)
    return window ? gapsSet(sheet, numbers, window) : new NotCorrectable(row.remedy?.text ?? NO_AIM)
  },
]

const NO_AIM = 'No distance satisfies all that is asked.'

/** Upwards first: the braille then stays where it is. */
const lineWays: Ways = (sheet, row, numbers) =>
  (['last', 'first'] as const).map((anchor) => () => linesSetApart(sheet, row, numbers, anchor))

function oneRow(sheet: Sheet, { requirement }: Finding, waysOf: Ways, bench: Bench): Sheet {
  const row = sheet.report.findings.find((one) => one.requirement === requirement)
  if (row?.verdict !== 'fail') return sheet
  const numbers = offenders(row, 'lettering', sheet.sign.lettering.length)
  for (const way of waysOf(sheet, row, numbers)) {
    const rewrite = way()
    const outcome = rewrite instanceof NotCorrectable ? rewrite.why : borneOut(sheet, rewrite, requirement, bench)
    if (typeof outcome !== 'string') return outcome.sheet
    bench.reasons.set(requirement, outcome)
  }
  return sheet
}

const OVER_THE_EDGE = 'The characters would come too near to the edge of the panel, which is too small for them.'
const STILL = 'It was tried, and the drawing failed in the same way.'

/** The trial, with the braille put right after the characters have moved; or why not. */
function borneOut(before: Sheet, rewrite: Rewrite, requirement: string, bench: Bench): Trial | string {
  const trial = tried(before, rewrite, bench)
  if (!trial) return ELSEWHERE
  if (!trial.mended.includes(requirement)) return STILL
  if (!keepsOffTheEdge(before, trial.sheet)) return OVER_THE_EDGE
  if (trial.broken.length === 0) return trial
  const braille = failing(trial.sheet.report, [...SPACING, ...PLACING])
  const followed = braille.length > 0 ? attempt(trial.sheet, braille, bench) : undefined
  if (!followed) return breaking(trial.broken)
  const outcome = compared(before.report, followed.sheet.report)
  return outcome.broken.length > 0 ? breaking(outcome.broken) : { ...followed, ...outcome }
}

/** Millimetres between characters and the edge of the panel; where they stood nearer before, as much as then. Our choice. */
const FROM_EDGE = 5

function keepsOffTheEdge(before: Sheet, after: Sheet): boolean {
  const panel = after.sign.panel.place.box
  if (!panel) return true
  const within = ({ sign }: Sheet, margin: number): boolean =>
    sign.lettering.every(({ place: { box } }) => !box || boxContains(panel, box, -margin))
  return within(after, FROM_EDGE) || (!within(before, FROM_EDGE) && within(after, 0))
}
