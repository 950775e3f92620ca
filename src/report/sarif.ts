import type { Log, Run } from 'sarif'
import type { Artifact } from './sarif-location.js'
import { isDrawn, notificationsOf, resultOf } from './sarif-result.js'
import { ruleOfSign } from './sarif-rule.js'
import type { Report } from './schema.js'

/** The report for tools that read analysis results: SARIF 2.1.0, OASIS Standard, with its errata 01. */

const SCHEMA = 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json'

/** The tool, without its rules, as every run names it. */
export const driver = (version: string) => ({ name: 'Fingertrue', version, semanticVersion: version })

export const ANALYSED: ['analysisTarget'] = ['analysisTarget']

/** One run as a whole log. */
export const sarifLog = (run: Run): string =>
  JSON.stringify({ $schema: SCHEMA, version: '2.1.0', runs: [run] } satisfies Log)

/**
 * One run: each row a rule, each finding a result, what was not looked at a notification.
 * @param artifact what was drawn
 * @param base where this service is found, without a slash at the end, for the addresses of rules
 */
export function reportSarif(report: Report, artifact: Artifact, base?: string): string {
  const { id, use, mark, verdict, stages, summary, standards, decisionRule, unitSystem, assumptions, caveats } = report
  return sarifLog({
    tool: {
      driver: { ...driver(report.engine.version), rules: report.findings.map((finding) => ruleOfSign(finding, base)) },
    },
    automationDetails: { id: `check/${id}` },
    language: 'en',
    columnKind: 'unicodeCodePoints',
    invocations: [{ executionSuccessful: true, toolExecutionNotifications: notificationsOf(report, artifact) }],
    ...(isDrawn(report) && {
      artifacts: [{ location: { uri: artifact.uri }, mimeType: artifact.mimeType, roles: ANALYSED }],
    }),
    results: report.findings.map((finding, i) => resultOf(finding, i, artifact)),
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
  })
}
