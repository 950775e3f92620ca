import type { Judgement } from '../judge/finding.js'
import { standardOfRequirement } from '../standards/requirement-id.js'
import type { NamedRow } from './excluding-words.js'

/** The rows that a change of the sign must keep, whichever standard they are of. */

/** Rows that decide a verdict and hold for this sign, other than the one that is to be mended. */
export const othersInPlay = (judgement: Judgement, all: readonly Judgement[]): Judgement[] =>
  all.filter((row) => row !== judgement && row.requirement.force === 'shall' && row.verdict !== 'not-applicable')

export const standardOf = ({ requirement }: Judgement): string => standardOfRequirement(requirement.requirement)

/** Each standard that was asked, once. */
export const standardsOf = (all: readonly Judgement[]): string[] => [...new Set(all.map(standardOf))]

/** Rows as a sentence names them: with their standards where these differ. */
export function namedRows(rows: readonly Judgement[]): NamedRow[] {
  const isOne = standardsOf(rows).length === 1
  return rows.map((row) => ({
    ...(!isOne && { standard: standardOf(row) }),
    clause: row.limit.clause,
    printed: row.limit.printed,
  }))
}
