import type { Location, Notification, ReportingDescriptor, Result, Suppression } from 'sarif'
import { VERSION } from '../../version.js'
import type { Finding } from '../finding-schema.js'
import { plain } from '../markup.js'
import { outdatedWords, waiversFor, waiverWords } from '../overlay.js'
import { ANALYSED, driver, sarifLog } from '../sarif.js'
import { DRAWING, messageText, type Artifact } from '../sarif-location.js'
import { notificationsOf, resultOf } from '../sarif-result.js'
import { ruleOf } from '../sarif-rule.js'
import type { Report } from '../schema.js'
import type { SetEvidence, SetSign } from './evidence.js'
import { whyNoReport } from './outcome.js'
import { problemPlace } from './words.js'

/**
 * The set for tools that read analysis results: SARIF 2.1.0. One run for all signs, each with an artifact of its own, since some readers
 * keep only the first runs of a log; each row is a rule once.
 */

/** Raise it when what names a sign changes. */
const SIGN = 'sign/v1'
const SVG = /\.svg$/i

interface Checked {
  sign: SetSign
  report: Report
  artifact: Artifact
}

export interface SarifOptions {
  /** Where this service is found, without a slash at the end, for the addresses of rules. */
  base?: string
  /** What becomes a result; all unless told otherwise. */
  results?: 'all' | 'failing'
}

/** `failing` is for readers that take every result for a complaint: the verdicts stay in the properties of the run. */
export function setSarif(evidence: SetEvidence, { base, results = 'all' }: SarifOptions = {}): string {
  const { id, name, state, standards, createdAt, asOf, signs, part, history } = evidence
  const checked = checkedSigns(signs)
  const rules = new Map<string, { index: number; rule: ReportingDescriptor }>()
  for (const { report } of checked) {
    for (const finding of report.findings) {
      if (!rules.has(finding.requirement))
        rules.set(finding.requirement, { index: rules.size, rule: ruleOf(finding, base) })
    }
  }
  const artifacts = new Map(checked.map(({ artifact }) => [artifact.index, artifact]))
  return sarifLog({
    tool: { driver: { ...driver(VERSION), rules: [...rules.values()].map(({ rule }) => rule) } },
    automationDetails: { id: `submittal/${id}` },
    language: 'en',
    columnKind: 'unicodeCodePoints',
    invocations: [
      {
        executionSuccessful: signs.every(({ report, outdated }) => report !== null && outdated === undefined),
        toolExecutionNotifications: [...checked.flatMap(signNotifications), ...setNotifications(evidence)],
      },
    ],
    artifacts: [...artifacts.values()].map(({ uri, mimeType }) => ({
      location: { uri },
      ...(mimeType !== '' && { mimeType }),
      roles: ANALYSED,
    })),
    results: checked.flatMap(({ sign, report, artifact }) =>
      report.findings
        .filter(({ verdict }) => results === 'all' || verdict === 'fail')
        .map((finding) => {
          const result = resultOf(finding, rules.get(finding.requirement)?.index ?? -1, artifact)
          return signResult(sign, finding, { ...result, locations: anchored(result.locations ?? [], artifact) })
        }),
    ),
    properties: {
      ...{ submittal: id, name, state, standards, createdAt, asOf, history, ...(part && { part }) },
      caveats: [...new Set(checked.flatMap(({ report }) => report.caveats))],
      signs: signs.map(aboutSign),
    },
  })
}

/** Signs with their reports; the files that they came from are numbered in the order of the signs, each once. */
function checkedSigns(signs: SetSign[]): Checked[] {
  const artifacts = new Map<string, Artifact>()
  return signs.flatMap((sign) => {
    const { report } = sign
    if (!report) return []
    const uri = fileAddress(sign)
    const mimeType = SVG.test(uri) ? DRAWING.mimeType : ''
    const artifact = artifacts.get(uri) ?? { uri, mimeType, index: artifacts.size }
    artifacts.set(uri, artifact)
    return { sign, report, artifact }
  })
}

/** What has no place in a file stands at the file: readers exist that refuse a log with a result that has no file. */
function anchored(locations: readonly Location[], { uri, index }: Artifact): Location[] {
  const physicalLocation = { artifactLocation: { uri, index } }
  return locations.length === 0 ? [{ physicalLocation }] : locations.map((one) => ({ physicalLocation, ...one }))
}

/** The drawing, or what else the sign came from, as a relative address (RFC 3986): no segment leads upwards or to a scheme. */
function fileAddress({ id, files }: SetSign): string {
  const file = files.find((name) => SVG.test(name)) ?? files[0] ?? `${id}.svg`
  const segments = plain(file)
    .split(/[/\\]+/)
    .filter((segment) => !['', '.', '..'].includes(segment))
  return segments.map(encodeURIComponent).join('/')
}

function signResult(sign: SetSign, finding: Finding, result: Result): Result {
  const { id, mark, location, door } = sign
  return {
    ...result,
    message: { text: `${messageText(mark)}: ${result.message.text}` },
    partialFingerprints: { ...result.partialFingerprints, [SIGN]: id },
    // All results of a run have this or none (3.27.23); where it is empty, nothing is suppressed.
    suppressions: waiversFor(sign, finding)
      .filter(({ standing }) => standing === 'in-force')
      .map((waiver): Suppression => ({
        kind: 'external',
        status: 'accepted',
        justification: plain(waiverWords(waiver)),
      })),
    properties: { ...result.properties, citation: finding.citation, sign: id, mark, location, door },
  }
}

const signNotifications = ({ sign, report, artifact }: Checked): Notification[] =>
  notificationsOf(report, artifact).map((notification) => ({
    ...notification,
    message: { text: `${messageText(sign.mark)}: ${notification.message.text}` },
    properties: { sign: sign.id },
  }))

/** Signs without a report and files that could not be used are errors, so that no reader takes silence for a pass. */
function setNotifications({ signs, intakeProblems, setFindings }: SetEvidence): Notification[] {
  const unchecked = signs.filter(({ report }) => report === null)
  return [
    ...unchecked.map((sign): Notification => ({
      level: 'error',
      message: { text: messageText(`${sign.mark}: ${whyNoReport(sign)}`) },
      properties: { sign: sign.id },
    })),
    ...signs.flatMap((sign): Notification[] => {
      const words = outdatedWords(sign)
      if (words === undefined) return []
      return [
        { level: 'error', message: { text: messageText(`${sign.mark}: ${words}`) }, properties: { sign: sign.id } },
      ]
    }),
    ...intakeProblems.map((problem): Notification => ({
      level: 'error',
      message: { text: messageText(`${problemPlace(problem)}: ${problem.detail}`) },
      properties: { ...problem },
    })),
    ...setFindings.map(({ kind, marks, message }): Notification => ({
      level: 'warning',
      message: { text: messageText(message) },
      properties: { kind, marks },
    })),
  ]
}

function aboutSign({ id, mark, location, door, files, report }: SetSign) {
  const judged = report && {
    ...{ report: report.id, use: report.use, verdict: report.verdict, stages: report.stages, summary: report.summary },
    assumptions: report.assumptions,
  }
  return { id, mark, location, door, files, ...judged }
}
