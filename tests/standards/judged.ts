import type { Judgement } from '../../src/judge/finding.js'
import { judge } from '../../src/judge/judge.js'
import { measurer } from '../../src/measure/measurer.js'
import type { Sign } from '../../src/sign/sign.js'
import { findStandards } from '../../src/standards/catalogue.js'
import { translator } from '../measure/signs.js'

/** All judgements of a sign by one standard, under the rows' names without the standard's. */
export function judgedBy(id: string, sign: Sign): Map<string, Judgement> {
  const [standard] = findStandards([id])
  if (!standard) throw new Error(`no standard ${id}`)
  const all = judge(standard, sign, measurer(sign, translator), { decisionRule: 'simple', unitSystem: 'printed' })
  return new Map(all.map((j) => [j.requirement.requirement.replace(`${id}/`, ''), j]))
}

/** The judgement of one row. */
export function judgementBy(id: string, row: string, sign: Sign): Judgement {
  const judgement = judgedBy(id, sign).get(row)
  if (!judgement) throw new Error(`no row ${id}/${row}`)
  return judgement
}

/** Rows whose verdict differs between two signs. */
export function flippedBy(id: string, before: Sign, after: Sign): string[] {
  const [a, b] = [judgedBy(id, before), judgedBy(id, after)]
  return [...a.keys()].filter((row) => a.get(row)?.verdict !== b.get(row)?.verdict)
}
