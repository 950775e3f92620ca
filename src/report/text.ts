import type { Finding } from './finding-schema.js'
import { plain } from './markup.js'
import { numbered, type Numbered } from './numbering.js'
import type { Report } from './schema.js'
import { wrapped } from './svg-legend.js'
import { FORCE_WORDS, REASON_WORDS, signName, STAGE_WORDS, VERDICT_WORDS, verdictSentence } from './words.js'

const COLUMNS = 80
const LABEL = 10

/** The report for a terminal, eighty columns wide: the verdict, each failing clause, the list of what is undecided. */
export function reportText(report: Report): string {
  const { failing, undecided } = numbered(report)
  const stages = (['drawing', 'product', 'site'] as const).map(
    (stage) => `${STAGE_WORDS[stage].toLowerCase()}: ${VERDICT_WORDS[report.stages[stage]].toLowerCase()}`,
  )
  return [
    ...block('', `${signName(report)}: ${VERDICT_WORDS[report.verdict].toUpperCase()}`),
    ...block('', verdictSentence(report)),
    ...block('', `${capital(stages.join('; '))}.`),
    ...block('', `Standards: ${report.standards.map((s) => `${s.id}@${s.revision}`).join(', ')}. Report ${report.id}.`),
    ...failing.flatMap(failure),
    ...(undecided.length === 0 ? [] : ['', 'Undecided', ...undecided.flatMap(open)]),
    '',
  ].join('\n')
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** Lines of text, the first behind `lead` and the others under it. */
export function block(lead: string, text: string): string[] {
  const rest = ' '.repeat(lead.length)
  return wrapped(plain(text), COLUMNS - lead.length).map((line, i) => (i === 0 ? lead : rest) + line)
}

const labelled = (label: string, text: string): string[] => block(`   ${label.padEnd(LABEL)}`, text)

const forceNote = (finding: Finding): string => (finding.force === 'shall' ? '' : ` (${FORCE_WORDS[finding.force]})`)

/** A failing finding: what was found, what is allowed, what to change. */
export function failure({ number, finding }: Numbered): string[] {
  return [
    '',
    ...block('', `${number}. ${finding.clause} ${finding.title}${forceNote(finding)}: FAILS`),
    ...labelled('found', finding.message),
    ...labelled('allowed', finding.limit.printed),
    ...(finding.remedy ? labelled('change', finding.remedy.text) : []),
  ]
}

const open = ({ number, finding }: Numbered): string[] =>
  block(
    `${number}. `.padStart(4),
    `${finding.clause} ${finding.title}${forceNote(finding)}: ${finding.reason ? REASON_WORDS[finding.reason] : ''}`,
  )
