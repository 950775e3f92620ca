import { expect } from 'vitest'
import type { Finding } from '../../src/report/finding-schema.js'
import type { Report } from '../../src/report/schema.js'

/** What a check came to, without what follows from how the drawing was written: lines, ids, boxes, assumptions. */

export interface Outcome {
  /** By requirement: the verdict, why it is open, and of what it speaks. */
  verdicts: Record<string, string>
  /** By requirement: value, least, greatest and margin; last the margin, but for whole things, in which there is no arithmetic. */
  values: Record<string, (number | string | boolean | null)[]>
  read: unknown
}

const outcome = ({ verdict, reason, where }: Finding): string =>
  [verdict, reason ?? '', ...where.map(({ element }) => element).sort()].join(' ')

export function outcomeOf({ findings, reading }: Report): Outcome {
  const measured = findings.filter((finding) => finding.measured !== null)
  return {
    verdicts: Object.fromEntries(findings.map((finding) => [finding.requirement, outcome(finding)])),
    values: Object.fromEntries(
      measured.map(({ requirement, measured: m, margin }) => [
        requirement,
        [m?.value ?? null, m?.min ?? null, m?.max ?? null, m?.unit === 'count' ? null : margin],
      ]),
    ),
    read: {
      lettering: reading.lettering.map(({ text, part }) => [text, part]),
      braille: reading.braille.map(({ lines, dots, mirrored }) => [lines.map(({ cells }) => cells), dots, mirrored]),
      pictograms: reading.pictograms.length,
      borders: reading.borders.length,
    },
  }
}

/** Noise of drawn coordinates that every limit allows (docs/judging.md), millimetres; a verdict turns at the limit or that far beyond it. */
const NOISE = 0.001

/** Whether some value lies so near to where its verdict turns that what may be added to it decides. */
export const isOnALimit = ({ values }: Outcome, within: number): boolean =>
  Object.values(values).some((all) => {
    const margin = all.at(-1)
    return typeof margin === 'number' && Math.min(Math.abs(margin), Math.abs(margin + NOISE)) <= 2 * within
  })

/** @param within millimetres, or the unit of the value */
export function expectSame(is: Outcome, was: Outcome, within: number): void {
  expect(is.read).toEqual(was.read)
  expect(is.verdicts).toEqual(was.verdicts)
  expect(Object.keys(is.values)).toEqual(Object.keys(was.values))
  for (const [requirement, values] of Object.entries(is.values))
    values.forEach((value, i) => {
      const before = was.values[requirement][i]
      if (typeof value !== 'number' || typeof before !== 'number') expect(value, requirement).toBe(before)
      else expect(Math.abs(value - before), `${requirement}: ${value} for ${before}`).toBeLessThanOrEqual(within)
    })
}
