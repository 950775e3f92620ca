import type { Finding } from '../finding-schema.js'
import { isWaived, outdatedWords, type Overlay } from '../overlay.js'
import type { SetSign } from './evidence.js'

/**
 * What a finding of a set comes to, for formats that know less than a report does. `advised` is of a row that no verdict rests on; a
 * waiver changes how a finding is filed and never the finding.
 */
export const OUTCOMES = [
  'pass',
  'fail',
  'fail-waived',
  'fail-advised',
  'undetermined',
  'undetermined-waived',
  'undetermined-advised',
  'not-applicable',
] as const
export type Outcome = (typeof OUTCOMES)[number]

export function outcomeOf(overlay: Overlay, finding: Pick<Finding, 'verdict' | 'force' | 'fingerprint'>): Outcome {
  const { verdict, force } = finding
  if (verdict === 'pass' || verdict === 'not-applicable') return verdict
  if (isWaived(overlay, finding)) return `${verdict}-waived`
  return force === 'shall' ? verdict : `${verdict}-advised`
}

/** What is wrong with the report of a sign: that there is none, or that it is not the last word. */
export const reportProblem = (sign: SetSign): string | null =>
  sign.report ? (outdatedWords(sign) ?? null) : whyNoReport(sign)

/** Why a sign has no report, in a sentence or two: silence about it must not be taken for a pass. */
export const whyNoReport = ({ problem }: Pick<SetSign, 'problem'>): string =>
  problem ? `${problem.title}. ${problem.detail}` : 'This sign has not been checked yet.'
