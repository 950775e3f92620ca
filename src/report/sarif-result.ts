import type { Notification, Result } from 'sarif'
import type { Finding } from './finding-schema.js'
import { messageText, sarifLocation, spotLocation, type Artifact } from './sarif-location.js'
import { LEVELS } from './sarif-rule.js'
import type { Report } from './schema.js'

/** Findings as results of SARIF, and what was not looked at as notifications. */

/** Raise it when what a fingerprint is made of changes (SARIF 2.1.0, 3.27.17). */
const FINGERPRINT = 'finding/v1'

/** SARIF 2.1.0, 3.27.9: `open` had too little to decide, `review` is for a person; and 3.27.10: only `fail` has a level. */
function kindOf({ verdict, reason }: Finding): Result['kind'] {
  if (verdict === 'undetermined') return reason === 'needs-judgement' ? 'review' : 'open'
  return verdict === 'not-applicable' ? 'notApplicable' : verdict
}

export function resultOf(finding: Finding, ruleIndex: number, artifact: Artifact): Result {
  const { requirement, force, verdict, stage, reason, measured, limit, margin, unitSplit, message, remedy } = finding
  return {
    ruleId: requirement,
    ruleIndex,
    kind: kindOf(finding),
    level: verdict === 'fail' ? LEVELS[force] : 'none',
    message: { text: messageText(remedy ? `${message} ${remedy.text}` : message) },
    locations: finding.where.map((place) => sarifLocation(place, artifact)),
    partialFingerprints: { [FINGERPRINT]: finding.fingerprint },
    properties: { force, stage, reason, measured, limit, margin, unitSplit, remedy, places: finding.whereTotal },
  }
}

/** Whether anything of the report stands at a line of what was sent. */
export const isDrawn = ({ findings, ignored, unread }: Report): boolean =>
  ignored.length > 0 ||
  [...findings.flatMap((f) => f.where), ...unread.map((u) => u.where)].some((p) => p.source !== null)

/** What stands in the drawing and was not looked at or not understood, so that no reader takes silence for a pass. */
export function notificationsOf({ ignored, unread }: Report, artifact: Artifact): Notification[] {
  return [
    ...ignored.map(({ source, why }) => ({
      level: 'warning' as const,
      message: { text: messageText(why) },
      locations: [{ physicalLocation: spotLocation(source, artifact) }],
    })),
    ...unread.map(({ where, why }) => ({
      level: 'warning' as const,
      message: { text: messageText(why) },
      locations: [sarifLocation(where, artifact)],
    })),
  ]
}
