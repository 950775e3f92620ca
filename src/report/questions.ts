import type { Judgement } from '../judge/finding.js'
import type { Unit } from '../sign/length.js'
import type { ReportQuestion, ReportToMeasure } from './schema.js'

/** What the client could add, what a person could measure. */

/** Where the description stands in a request: its bare lengths are in its own unit. */
const DESCRIPTION = '/sign/'

/**
 * The questions of all gaps that left a row undetermined, one for each place in the request.
 * @param units what a bare length of the description means, so that one that is added as it was asked for is right
 */
export function questionsOf(judgements: readonly Judgement[], units: Unit = 'mm'): ReportQuestion[] {
  const byPointer = new Map<string, ReportQuestion>()
  for (const { verdict, gaps, requirement } of judgements) {
    if (verdict !== 'undetermined') continue
    for (const { ask } of gaps) {
      if (!ask) continue
      const question = byPointer.get(ask.pointer) ?? {
        pointer: ask.pointer,
        ask: ask.ask,
        unit: ask.unit === 'mm' && ask.pointer.startsWith(DESCRIPTION) ? units : (ask.unit ?? null),
        choices: ask.choices ?? null,
        decides: [],
      }
      if (!question.decides.includes(requirement.requirement)) question.decides.push(requirement.requirement)
      byPointer.set(ask.pointer, question)
    }
  }
  return [...byPointer.values()]
}

/** Everything undetermined that a gauge or a tape would decide: on the product, on site, or a length of the drawing. */
export function toMeasureOf(judgements: readonly Judgement[]): ReportToMeasure[] {
  return judgements.filter(isForTheBench).map(({ requirement, limit }) => ({
    requirement: requirement.requirement,
    clause: requirement.clause,
    title: requirement.title,
    stage: requirement.stage,
    limit: limit.printed,
    how: requirement.howToMeasure,
  }))
}

function isForTheBench({ verdict, reason, requirement, limit }: Judgement): boolean {
  if (verdict !== 'undetermined' || reason === 'needs-judgement') return false
  return requirement.stage !== 'drawing' || limit.unit === 'mm' || limit.unit === 'ratio'
}
