import type { Notification, ReportingDescriptor, Result, Suppression } from 'sarif'
import { VERSION } from '../../version.js'
import type { Finding } from '../finding-schema.js'
import { plain } from '../markup.js'
import { waiversFor, waiverWords } from '../overlay.js'
import { ANALYSED, driver, sarifLog } from '../sarif.js'
import { DRAWING, messageText, type Artifact } from '../sarif-location.js'
import { isDrawn, notificationsOf, resultOf } from '../sarif-result.js'
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

/** @param base where this service is found, without a slash at the end, for the addresses of rules */
export function setSarif(evidence: SetEvidence, base?: string): string {
  const { id, name, state, standards, createdAt, asOf, signs, history } = evidence
  const checked = checkedSigns(signs)
  const rules = new Map<string, { index: number; rule: ReportingDescriptor }>()
  for (const { report } of checked) {
    for (const finding of report.findings) {
      if (!rules.has(finding.requirement))
        rules.set(finding.requirement, { index: rules.size, rule: ruleOf(finding, base) })
    }
  }
  const drawn = new Map(
    checked.filter(({ report }) => isDrawn(report)).map(({ artifact }) => [artifact.index, artifact]),
  )
  return sarifLog({
    tool: { driver: { ...driver(VERSION), rules: [...rules.values()].map(({ rule }) => rule) } },
    automationDetails: { id: `submittal/${id}` },
    language: 'en',
    columnKind: 'unicodeCodePoints',
    invocations: [
      {
        executionSuccessful: signs.every(({ report }) => report !== null),
        toolExecutionNotifications: [...checked.flatMap(signNotifications), ...setNotifications(evidence)],
      },
    ],
    artifacts: [...drawn.values()].map(({ uri, mimeType }) => ({ location: { uri }, mimeType, roles: ANALYSED })),
    results: checked.flatMap(({ sign, report, artifact }) =>
      report.findings.map((finding) =>
        signResult(sign, finding, resultOf(finding, rules.get(finding.requirement)?.index ?? -1, artifact)),
      ),
    ),
    properties: {
      ...{ submittal: id, name, state, standards, createdAt, asOf, history },
      caveats: [...new Set(checked.flatMap(({ report }) => report.caveats))],
      signs: signs.map(aboutSign),
    },
  })
}

/** Signs with their reports; drawings are numbered in the order of the signs, each once, those first at which something stands. */
function checkedSigns(signs: SetSign[]): Checked[] {
  const indices = new Map<string, number>()
  return signs.flatMap((sign) => {
    const { report } = sign
    if (!report) return []
    const uri = drawingAddress(sign)
    const known = indices.get(uri)
    const index = known ?? indices.size
    if (known === undefined && isDrawn(report)) indices.set(uri, index)
    return { sign, report, artifact: { ...DRAWING, uri, index } }
  })
}

/** The drawing as the upload names it, as a relative address (RFC 3986): no segment leads upwards or to a scheme. */
function drawingAddress({ id, files }: SetSign): string {
  const file = files.find((name) => SVG.test(name)) ?? `${id}.svg`
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
