import type { Report } from '../schema.js'
import type { SetSign } from './evidence.js'

/** What the reports of a set have in common, so that it is said once. */

/** All findings under all standards, for what is told of clauses whatever the sign. */
export function mergedReports(signs: readonly SetSign[]): Pick<Report, 'standards' | 'findings'> {
  const standards = new Map<string, Report['standards'][number]>()
  for (const { report } of signs) for (const one of report?.standards ?? []) standards.set(one.id, one)
  return { standards: [...standards.values()], findings: signs.flatMap(({ report }) => report?.findings ?? []) }
}

/** Which programs made the reports and how they decided, each once. */
export function makersOf(signs: readonly SetSign[]): string[] {
  const lines = signs.flatMap(({ report }) => {
    if (!report) return []
    const { engine, decisionRule, unitSystem } = report
    const { braille } = engine
    const tables = Object.values(braille.tables).join(', ')
    return [
      `service version ${engine.version}; braille by ${braille.name} ${braille.version}, tables ${tables}, ${braille.digest}; decision rule ${decisionRule}; unit system ${unitSystem}`,
    ]
  })
  return [...new Set(lines)]
}
