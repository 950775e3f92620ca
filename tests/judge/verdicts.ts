import { judge } from '../../src/judge/judge.js'
import type { Judgement } from '../../src/judge/finding.js'
import type { JudgeOptions } from '../../src/judge/types.js'
import { measurer } from '../../src/measure/measurer.js'
import type { Sign } from '../../src/sign/sign.js'
import { findStandards } from '../../src/standards/catalogue.js'
import { translator } from '../measure/signs.js'

const [ada] = findStandards(['us-ada-2010'])
const PLAIN: JudgeOptions = { decisionRule: 'simple', unitSystem: 'printed' }

/** All judgements of a sign by the 2010 ADA Standards, under the row's name without the standard's. */
export function judgementsOf(sign: Sign, options: Partial<JudgeOptions> = {}): Map<string, Judgement> {
  const all = judge(ada, sign, measurer(sign, translator), { ...PLAIN, ...options })
  return new Map(all.map((j) => [j.requirement.requirement.replace('us-ada-2010/', ''), j]))
}

export function judgementOf(sign: Sign, row: string, options: Partial<JudgeOptions> = {}): Judgement {
  const judgement = judgementsOf(sign, options).get(row)
  if (!judgement) throw new Error(`no row ${row}`)
  return judgement
}

/** Rows whose verdict differs between two signs. */
export function flipped(before: Sign, after: Sign): string[] {
  const [a, b] = [judgementsOf(before), judgementsOf(after)]
  return [...a.keys()].filter((row) => a.get(row)?.verdict !== b.get(row)?.verdict)
}

/** Rows of force `shall` that fail. */
export const failing = (sign: Sign): string[] =>
  [...judgementsOf(sign)].filter(([, j]) => j.verdict === 'fail' && j.requirement.force === 'shall').map(([row]) => row)
