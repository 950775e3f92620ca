import type { Report } from '../report/schema.js'
import type { WaiverRow } from './store/tables.js'

/** Where a waiver stands against the latest report of its sign. */

export type Standing = 'in-force' | 'expired' | 'unused'

/** What of a finding a waiver needs to know. */
export type WaivedFinding = Pick<Report['findings'][number], 'fingerprint' | 'requirement' | 'verdict'>

/**
 * @param today as YYYY-MM-DD; a waiver holds to the end of its last day
 * @returns the standing, and the requirement of the finding that it lets stand
 */
export function standingOf(
  { fingerprint, expires }: Pick<WaiverRow, 'fingerprint' | 'expires'>,
  findings: readonly WaivedFinding[],
  today: string,
): { standing: Standing; requirement: string | null } {
  const found = findings.find((f) => f.fingerprint === fingerprint && isOpen(f))
  const requirement = found?.requirement ?? null
  if (!found) return { standing: 'unused', requirement }
  return { standing: expires !== null && expires < today ? 'expired' : 'in-force', requirement }
}

const isOpen = ({ verdict }: WaivedFinding): boolean => verdict === 'fail' || verdict === 'undetermined'
