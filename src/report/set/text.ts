import { numbered } from '../numbering.js'
import { block, capital, failure } from '../text.js'
import { REASON_WORDS, VERDICT_WORDS, verdictSentence } from '../words.js'
import type { Finding } from '../finding-schema.js'
import type { Report } from '../schema.js'
import type { SetEvidence, SetSign } from './evidence.js'
import { whyNoReport } from './outcome.js'
import { countWords, setCounts, setVerdict, standardsHeld } from './verdict.js'
import { FINDING_KINDS, findingWords, markOf, placeOf, problemPlace } from './words.js'

/**
 * A set for a terminal, eighty columns wide: of each sign what fails in full and what is undecided in short, then what is wrong with
 * the set, what could not be used, and last the verdict.
 */
export function setText(evidence: SetEvidence): string {
  const { signs, setFindings, intakeProblems } = evidence
  return [
    ...signs.flatMap(signLines),
    ...listed(
      'The set as a whole',
      setFindings,
      (finding) => `${FINDING_KINDS[finding.kind]}: ${findingWords(finding)}`,
    ),
    ...listed('Not used', intakeProblems, (problem) => `${problemPlace(problem)}: ${problem.detail}`),
    ...standardsHeld(signs).flatMap(({ standard, counts }) =>
      block('', `${standard.id}, revision ${standard.revision}: ${countWords(counts)}`),
    ),
    ...block('', `${VERDICT_WORDS[setVerdict(evidence)].toUpperCase()}. ${countWords(setCounts(signs))}`),
    '',
  ].join('\n')
}

function signLines(sign: SetSign): string[] {
  const { report, files } = sign
  const about = [placeOf(sign), files.join(', ')].filter((text) => text !== '').join('; ')
  const head = (verdict: string) => block('', `${markOf(sign)} (${about}): ${verdict}`)
  if (!report) return [...head('NOT CHECKED'), ...block('', whyNoReport(sign)), '']
  const { failing, undecided } = numbered(report)
  return [
    ...head(VERDICT_WORDS[report.verdict].toUpperCase()),
    ...block('', verdictSentence(report)),
    ...failing.flatMap(failure),
    ...openLines(undecided.map(({ finding }) => finding)),
    ...assumedLines(report),
    '',
  ]
}

/** Clauses by what keeps them from being decided, each once. */
function openLines(undecided: readonly Finding[]): string[] {
  const clauses = new Map<string, Set<string>>()
  for (const { reason, clause } of undecided) {
    const why = reason ? REASON_WORDS[reason] : 'undecided'
    clauses.set(why, (clauses.get(why) ?? new Set()).add(clause))
  }
  const lines = [...clauses].flatMap(([why, ids]) => block(`   ${capital(why)}: `, [...ids].join(', ')))
  return lines.length === 0 ? [] : ['', 'Undecided', ...lines]
}

/** Who relies on a verdict has to know what it was assumed on. */
const assumedLines = ({ assumptions }: Report): string[] =>
  assumptions.length === 0 ? [] : ['', 'Assumed', ...assumptions.flatMap(({ text }) => block('   ', text))]

const listed = <T>(heading: string, things: readonly T[], words: (thing: T) => string): string[] =>
  things.length === 0 ? [] : [heading, ...things.flatMap((thing) => block('   ', words(thing))), '']
