import type { ReportVerdict } from '../finding-schema.js'
import type { Report } from '../schema.js'
import { isWaived } from '../overlay.js'
import type { SetEvidence, SetSign } from './evidence.js'

/** What the signs of a set say together. */

export interface SetCounts {
  pass: number
  fail: number
  undetermined: number
  notApplicable: number
  /** Signs without a report. */
  unchecked: number
}

export function setCounts(signs: readonly SetSign[]): SetCounts {
  const of = (verdict: ReportVerdict) => signs.filter(({ report }) => report?.verdict === verdict).length
  return {
    pass: of('pass'),
    fail: of('fail'),
    undetermined: of('undetermined'),
    notApplicable: of('not-applicable'),
    unchecked: signs.filter(({ report }) => report === null).length,
  }
}

/**
 * `fail` if any sign fails. A set passes when each of its signs does and nothing is open about the set itself: a sign without a
 * report, a row that could not be used or a door without a sign leaves it undetermined, and so does evidence of some of its signs only.
 * Waivers change nothing.
 */
export function setVerdict({ signs, part, setFindings, intakeProblems, state }: SetEvidence): ReportVerdict {
  const { pass, fail, undetermined, unchecked } = setCounts(signs)
  if (fail > 0) return 'fail'
  const isWhole = state === 'done' && !part && unchecked + setFindings.length + intakeProblems.length === 0
  if (undetermined > 0 || signs.length === 0 || !isWhole) return 'undetermined'
  return pass > 0 ? 'pass' : 'not-applicable'
}

const signs = (count: number): string => `${count} ${count === 1 ? 'sign' : 'signs'}`

/** "2 signs fail, 1 sign passes, 3 signs are undecided." */
export function countWords({ pass, fail, undetermined, notApplicable, unchecked }: SetCounts): string {
  const of = (count: number, one: string, many: string) =>
    count === 0 ? [] : [`${signs(count)} ${count === 1 ? one : many}`]
  const parts = [
    ...of(fail, 'fails', 'fail'),
    ...of(undetermined, 'is undecided', 'are undecided'),
    ...of(pass, 'passes', 'pass'),
    ...of(notApplicable, 'falls under no requirement', 'fall under no requirement'),
    ...of(unchecked, 'has no report', 'have no report'),
  ]
  return parts.length === 0 ? 'There is no sign in it.' : `${parts.join(', ')}.`
}

export const STATE_WORDS: Record<SetEvidence['state'], string> = {
  queued: 'Not begun: no sign has been checked yet.',
  running: 'Not finished: signs are still being checked.',
  done: 'Finished.',
  cancelled: 'Stopped before all signs were checked.',
}

/** The standards that signs of the set were held against, each revision once, with how many signs pass it. */
export function standardsHeld(
  signs: readonly SetSign[],
): { standard: Report['standards'][number]; counts: SetCounts }[] {
  const held = new Map<string, { standard: Report['standards'][number]; counts: SetCounts }>()
  for (const { report } of signs)
    for (const standard of report?.standards ?? []) {
      const key = `${standard.id}@${standard.revision} ${standard.digest}`
      const counts = { pass: 0, fail: 0, undetermined: 0, notApplicable: 0, unchecked: 0 }
      const one = held.get(key) ?? { standard, counts }
      one.counts[standard.verdict === 'not-applicable' ? 'notApplicable' : standard.verdict]++
      held.set(key, one)
    }
  return [...held.values()]
}

/** What one sign has of each: failing, undecided, and of these the waived; advice left out. */
export function tally({ report, ...overlay }: SetSign): { fails: number; open: number; waived: number } {
  const decisive = (report?.findings ?? []).filter(({ force }) => force === 'shall')
  const unmet = decisive.filter(({ verdict }) => verdict === 'fail' || verdict === 'undetermined')
  const fails = unmet.filter(({ verdict }) => verdict === 'fail').length
  return {
    fails,
    open: unmet.length - fails,
    waived: unmet.filter((finding) => isWaived(overlay, finding)).length,
  }
}

/** How many required findings of all signs are waived. */
export const waivedIn = (signs: readonly SetSign[]): number => signs.reduce((sum, sign) => sum + tally(sign).waived, 0)
