import type { Finding } from './finding-schema.js'
import type { Report } from './schema.js'

/** The numbers by which the page, the drawing and the printed text speak of the same finding. */
export interface Numbered {
  number: number
  finding: Finding
}

const FORCES = ['shall', 'should', 'advice'] as const

const byForce = (findings: readonly Finding[]): Finding[] =>
  FORCES.flatMap((force) => findings.filter((f) => f.force === force))

/** Failures are numbered first, then what is undecided; within each, what a verdict depends on comes first. */
export function numbered(report: Report): { failing: Numbered[]; undecided: Numbered[] } {
  const failing = byForce(report.findings.filter((f) => f.verdict === 'fail'))
  const undecided = byForce(report.findings.filter((f) => f.verdict === 'undetermined'))
  return {
    failing: failing.map((finding, i) => ({ number: i + 1, finding })),
    undecided: undecided.map((finding, i) => ({ number: failing.length + i + 1, finding })),
  }
}
