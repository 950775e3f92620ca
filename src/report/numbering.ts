import { standardOfRequirement } from '../standards/requirement-id.js'
import type { Finding } from './finding-schema.js'
import type { Report } from './schema.js'

/** The numbers by which the page, the drawing and the printed text speak of the same finding. */
export interface Numbered {
  number: number
  finding: Finding
}

export interface Numbers {
  failing: Numbered[]
  undecided: Numbered[]
}

const FORCES = ['shall', 'should', 'advice'] as const

/** The findings of one standard after those of another, as they were asked; of each, what a verdict depends on first. */
const inOrder = (report: Report, verdict: Finding['verdict']): Finding[] =>
  report.standards.flatMap(({ id }) => {
    const own = findingsOf(report, id).filter((f) => f.verdict === verdict)
    return FORCES.flatMap((force) => own.filter((f) => f.force === force))
  })

export const findingsOf = ({ findings }: Pick<Report, 'findings'>, standard: string): Finding[] =>
  findings.filter(({ requirement }) => standardOfRequirement(requirement) === standard)

/** Failures are numbered first, then what is undecided; within each by standard, and what a verdict depends on comes first. */
export function numbered(report: Report): Numbers {
  const failing = inOrder(report, 'fail')
  const undecided = inOrder(report, 'undetermined')
  return {
    failing: failing.map((finding, i) => ({ number: i + 1, finding })),
    undecided: undecided.map((finding, i) => ({ number: failing.length + i + 1, finding })),
  }
}

/** A clause with its standard before it where a sign is held against several. */
export const clauseOf = (
  { standards }: Pick<Report, 'standards'>,
  { requirement, clause }: Pick<Finding, 'requirement' | 'clause'>,
): string => (standards.length === 1 ? clause : `${standardOfRequirement(requirement)} ${clause}`)
