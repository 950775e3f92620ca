import type { Finding } from '../finding-schema.js'
import { Html, markup, NOTHING } from '../html-tag.js'
import { escaped } from '../markup.js'
import { outdatedWords, waiversFor, waiverWords } from '../overlay.js'
import type { SetEvidence, SetSign } from './evidence.js'
import { findingLines } from './finding-lines.js'
import { outcomeOf, whyNoReport, type Outcome } from './outcome.js'
import { partWords, problemPlace } from './words.js'

/**
 * The set for pipelines: JUnit XML, the subset that its readers share (the schema of the Jenkins plug-in, junit-10). A suite is a sign, a
 * case is a requirement that applies to it.
 */

export interface JunitOptions {
  /** What an undecided requirement is, and what is to be looked at in the set as a whole; skipped unless told otherwise. */
  undetermined?: 'skipped' | 'failure'
}

/** The element that a case holds; none for a pass. */
type Ending = 'failure' | 'skipped' | 'error'

interface Case {
  name: string
  ending: Ending | null
  type: string
  message: string
  lines: string[]
}

interface Suite {
  name: string
  properties: [string, string][]
  cases: Case[]
}

/** What each outcome ends as; null: the case passes. What does not apply is no case: nothing is asked of the sign. */
const ENDINGS: Record<Exclude<Outcome, 'not-applicable' | 'undetermined'>, Ending | null> = {
  pass: null,
  fail: 'failure',
  'fail-waived': 'skipped',
  'fail-advised': 'skipped',
  'undetermined-waived': 'skipped',
  'undetermined-advised': 'skipped',
}

/** @returns the whole document, in UTF-8 when it is written to a file */
export function setJunit(evidence: SetEvidence, options: JunitOptions = {}): string {
  const open = options.undetermined ?? 'skipped'
  const names = suiteNames(evidence.signs)
  const suites = [
    ...evidence.signs.map((sign, i) => suiteOf(sign, names[i] ?? sign.id, open)),
    wholeSet(evidence, open),
  ]
  const cases = suites.flatMap((suite) => suite.cases)
  return markup`<?xml version="1.0" encoding="UTF-8"?>
<testsuites name="${evidence.name}" tests="${cases.length}" failures="${count(cases, 'failure')}" errors="${count(cases, 'error')}">
${suites.map((suite) => suiteMarkup(suite, evidence.asOf))}</testsuites>
`.text
}

const count = (cases: Case[], ending: Ending): number => cases.filter((one) => one.ending === ending).length

/** Marks, each with the id of its sign where several signs have the same: pipelines know a case again by its names. */
function suiteNames(signs: SetSign[]): string[] {
  const seen = new Map<string, number>()
  for (const { mark } of signs) seen.set(mark, (seen.get(mark) ?? 0) + 1)
  return signs.map(({ mark, id }) => (seen.get(mark) === 1 && mark !== '' ? mark : `${mark} (${id})`.trim()))
}

function suiteOf(sign: SetSign, name: string, open: 'skipped' | 'failure'): Suite {
  const { id, mark, location, door, report } = sign
  const known = { sign: id, mark, location, door, report: report?.id, verdict: report?.verdict }
  const properties = Object.entries(known).filter((entry): entry is [string, string] => typeof entry[1] === 'string')
  const about = (type: string, message: string): Case => ({ name: 'report', ending: 'error', type, message, lines: [] })
  if (!report) return { name, properties, cases: [about('no-report', whyNoReport(sign))] }
  const outdated = outdatedWords(sign)
  const cases = report.findings.flatMap((finding) => caseOf(sign, finding, open) ?? [])
  return {
    name,
    properties,
    cases: [...(outdated === undefined ? [] : [about('outdated-report', outdated)]), ...cases],
  }
}

function caseOf(sign: SetSign, finding: Finding, open: 'skipped' | 'failure'): Case | undefined {
  const outcome = outcomeOf(sign, finding)
  if (outcome === 'not-applicable') return undefined
  const ending = outcome === 'undetermined' ? open : ENDINGS[outcome]
  const type = outcome === 'undetermined' ? (finding.reason ?? outcome) : outcome
  return {
    name: finding.requirement,
    ending,
    type,
    message: messageOf(sign, finding, outcome),
    lines: findingLines(finding),
  }
}

function messageOf(sign: SetSign, finding: Finding, outcome: Outcome): string {
  if (outcome === 'fail-waived' || outcome === 'undetermined-waived') {
    const waiver = waiversFor(sign, finding).find(({ standing }) => standing === 'in-force')
    return `waived: ${waiver ? waiverWords(waiver) : ''} ${finding.message}`
  }
  return outcome.endsWith('-advised') ? `${finding.force}: ${finding.message}` : finding.message
}

/** What no sign alone has: files that could not be used, and what a person should look at in the set. */
function wholeSet(evidence: SetEvidence, open: 'skipped' | 'failure'): Suite {
  const { id, name, state, signs, part, setFindings, intakeProblems } = evidence
  const unused = intakeProblems.map((problem): Case => {
    return { name: problemPlace(problem), ending: 'error', type: 'intake-problem', message: problem.detail, lines: [] }
  })
  const findings = setFindings.map(({ kind, marks, message }): Case => ({
    name: [kind, ...marks].join(' '),
    ending: open,
    type: kind,
    message,
    lines: [],
  }))
  return {
    name: `The set as a whole: ${name}`,
    properties: [
      ['submittal', id],
      ['state', state],
      ...(part ? [['part', partWords(part, signs)] as [string, string]] : []),
    ],
    cases: [...unused, ...findings],
  }
}

const suiteMarkup = ({ name, properties, cases }: Suite, timestamp: string): Html =>
  markup`<testsuite name="${name}" tests="${cases.length}" failures="${count(cases, 'failure')}" errors="${count(cases, 'error')}" skipped="${count(cases, 'skipped')}" timestamp="${timestamp}">
<properties>${properties.map(([key, value]) => markup`<property name="${key}" value="${value}"/>`)}</properties>
${cases.map((one) => caseMarkup(one, name))}</testsuite>
`

function caseMarkup({ name, ending, type, message, lines }: Case, suite: string): Html {
  const text = new Html(lines.map(escaped).join('\n'))
  const element = new Html(ending ?? '')
  const content = ending ? markup`<${element} type="${type}" message="${message}">${text}</${element}>` : NOTHING
  return markup`<testcase classname="${suite}" name="${name}">${content}</testcase>
`
}
