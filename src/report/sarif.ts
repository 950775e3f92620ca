import type { Log, Notification, ReportingDescriptor, Result, Run } from 'sarif'
import { standardOfRequirement } from '../standards/requirement-id.js'
import type { Finding } from './finding-schema.js'
import { messageText, sarifLocation, spotLocation, type Artifact } from './sarif-location.js'
import type { Report } from './schema.js'

/** The report for tools that read analysis results: SARIF 2.1.0, OASIS Standard, with its errata 01. */

const SCHEMA = 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json'

/** Raise it when what a fingerprint is made of changes (SARIF 2.1.0, 3.27.17). */
const FINGERPRINT = 'finding/v1'

/** One run: each row a rule, each finding a result, what was not looked at a notification. @param artifact what was drawn */
export function reportSarif(report: Report, artifact: Artifact): string {
  const { id, use, mark, verdict, stages, summary, standards, decisionRule, unitSystem, assumptions, caveats } = report
  const run: Run = {
    tool: {
      driver: {
        name: 'Fingertrue',
        version: report.engine.version,
        semanticVersion: report.engine.version,
        rules: report.findings.map(rule),
      },
    },
    automationDetails: { id: `check/${id}` },
    language: 'en',
    columnKind: 'unicodeCodePoints',
    invocations: [{ executionSuccessful: true, toolExecutionNotifications: notifications(report, artifact) }],
    ...(isDrawn(report) && {
      artifacts: [{ location: { uri: artifact.uri }, mimeType: artifact.mimeType, roles: ANALYSED }],
    }),
    results: report.findings.map((finding, i) => result(finding, i, artifact)),
    properties: {
      ...{ report: id, mark, use, verdict, stages, summary, decisionRule, unitSystem, assumptions, caveats },
      standards: standards.map(({ id, revision, title, digest, verdict }) => ({
        id,
        revision,
        title,
        digest,
        verdict,
      })),
    },
  }
  return JSON.stringify({ $schema: SCHEMA, version: '2.1.0', runs: [run] } satisfies Log)
}

/** Whether anything of the report stands at a line of what was sent. */
const isDrawn = ({ findings, ignored, unread }: Report): boolean =>
  ignored.length > 0 ||
  [...findings.flatMap((f) => f.where), ...unread.map((u) => u.where)].some((p) => p.source !== null)

const ANALYSED: ['analysisTarget'] = ['analysisTarget']

const LEVELS = { shall: 'error', should: 'warning', advice: 'note' } as const

function rule({
  requirement,
  clause,
  title,
  asks,
  force,
  stage,
  quantity,
  limit,
  citation,
}: Finding): ReportingDescriptor {
  return {
    id: requirement,
    shortDescription: { text: title },
    fullDescription: { text: asks },
    help: { text: `${citation.document}, ${citation.clause}. Allowed: ${limit.printed}. ${pageOf(requirement)}` },
    defaultConfiguration: { level: LEVELS[force] },
    properties: { clause, force, stage, quantity, limit, citation },
  }
}

/** A name of the page, not its address: where this service answers is not known to the report. */
const pageOf = (requirement: string): string =>
  `See docs/standards/${standardOfRequirement(requirement)}.md#${requirement.replaceAll('/', '-')}`

/** SARIF 2.1.0, 3.27.9: `open` had too little to decide, `review` is for a person; and 3.27.10: only `fail` has a level. */
function kindOf({ verdict, reason }: Finding): Result['kind'] {
  if (verdict === 'undetermined') return reason === 'needs-judgement' ? 'review' : 'open'
  return verdict === 'not-applicable' ? 'notApplicable' : verdict
}

function result(finding: Finding, ruleIndex: number, artifact: Artifact): Result {
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

/** What stands in the drawing and was not looked at or not understood, so that no reader takes silence for a pass. */
function notifications({ ignored, unread }: Report, artifact: Artifact): Notification[] {
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
