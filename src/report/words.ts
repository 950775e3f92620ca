import type { Finding, ReportStage, ReportVerdict } from './finding-schema.js'
import type { Report } from './schema.js'

/** The words that every form of the report shares. */

export const VERDICT_WORDS: Record<ReportVerdict, string> = {
  pass: 'Passes',
  fail: 'Fails',
  undetermined: 'Undecided',
  'not-applicable': 'Not applicable',
}

/** A sign beside each word, so that nothing depends on colour. */
export const VERDICT_SYMBOLS: Record<ReportVerdict, string> = {
  pass: '✓',
  fail: '✗',
  undetermined: '?',
  'not-applicable': '–',
}

export const STAGE_WORDS: Record<ReportStage, string> = {
  drawing: 'Drawing',
  product: 'Finished product',
  site: 'On site',
}

export const REASON_WORDS: Record<NonNullable<Finding['reason']>, string> = {
  'missing-fact': 'not given',
  'within-uncertainty': 'within uncertainty',
  'needs-judgement': 'needs judgement',
  unreadable: 'could not be read',
  'limit-reached': 'limit reached',
}

export const FORCE_WORDS: Record<Finding['force'], string> = {
  shall: 'required',
  should: 'recommended',
  advice: 'advice',
}

/** The name of the sign: its mark or, without one, what it says. */
export function signName({ mark, reading }: Report): string {
  const lettering = reading.lettering.map((line) => line.text)
  const braille = reading.braille.flatMap((block) => block.lines.map((line) => line.text))
  const names = [mark ?? '', joined(lettering), joined(braille)].map((name) => name.trim())
  return names.find((name) => name !== '') ?? 'Sign without a mark'
}

const joined = (parts: (string | null)[]): string => parts.filter((part) => part !== null).join(' ')

const plural = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`

/** The verdict in one sentence. */
export function verdictSentence(report: Pick<Report, 'verdict' | 'findings'>): string {
  const decisive = report.findings.filter((f) => f.force === 'shall')
  const fails = decisive.filter((f) => f.verdict === 'fail').length
  const open = decisive.filter((f) => f.verdict === 'undetermined').length
  const undecided = open === 0 ? '' : ` ${plural(open, 'requirement is', 'requirements are')} undecided.`
  switch (report.verdict) {
    case 'fail':
      return `The sign fails ${plural(fails, 'requirement', 'requirements')}.${undecided}`
    case 'undetermined':
      return `Nothing was found to fail, but the sign cannot pass yet.${undecided}`
    case 'pass':
      return 'The sign passes every requirement that applies to it, as far as it was looked at.'
    case 'not-applicable':
      return 'No requirement of these standards applies to this sign.'
  }
}
