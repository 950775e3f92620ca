import type { Judgement } from '../judge/finding.js'
import type { Unit } from '../sign/length.js'
import type { Sign } from '../sign/sign.js'
import type { Finding } from './finding-schema.js'
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

/**
 * What to ask when the scale that was taken is doubtful: rows that fail by it may fail for no other reason.
 * @param findings those of the report
 */
export function scaleQuestion(sign: Sign, findings: readonly Finding[]): ReportQuestion[] {
  const doubt = sign.assumptions.find(({ about, isDoubtful }) => about === 'scale' && isDoubtful)
  if (!doubt) return []
  const decides = findings.filter((f) => f.verdict === 'fail' && f.measured?.basis === 'drawn' && f.limit.unit === 'mm')
  const ask = `How many millimetres is one unit of the drawing? ${doubt.text}`
  const names = decides.map(({ requirement }) => requirement)
  return [{ pointer: '/options/scale', ask, unit: 'mm', choices: null, decides: names }]
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
