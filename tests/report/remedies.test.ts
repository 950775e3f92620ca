import { describe, expect, it } from 'vitest'
import { remedyFor } from '../../src/report/remedies.js'
import { aimIn, windowFor } from '../../src/report/window.js'
import { CELL_SPACING, judgement, observation, requirement, sampleJudgements } from './sample.js'

describe('remedies', () => {
  // The ends are those of the 2010 ADA Standards, Table 703.3.1; the aim is our choice.
  it('lies inside both printed units and says so in both', () => {
    const row = judgement()
    expect(remedyFor(row, [row])).toEqual({
      quantity: 'braille.cellSpacing',
      min: 6.1214,
      max: 7.6,
      aim: 6.9,
      unit: 'mm',
      expected: null,
      text: 'Set the cell spacing to 6.9 mm (6.13 to 7.60 mm or 0.241 to 0.299 in).',
      common: null,
    })
  })

  // Windows as printed in the 2010 ADA Standards, Table 703.3.1, in inches times 25.4.
  it.each([
    ['dot base diameter', 0.059 * 25.4, 0.063 * 25.4],
    ['dot height', 0.025 * 25.4, 0.037 * 25.4],
    ['dot spacing', 0.09 * 25.4, 0.1 * 25.4],
    ['line spacing', 0.395 * 25.4, 0.4 * 25.4],
  ])('aims well inside the window of the %s', (_, min, max) => {
    const aim = aimIn({ min, max }, 'mm') ?? 0
    const quarter = (max - min) / 4
    expect(aim).toBeGreaterThanOrEqual(min + quarter)
    expect(aim).toBeLessThanOrEqual(max - quarter)
  })

  // 2010 ADA Standards 703.2.5: 5/8 inch to 2 inches. That an aim stays near what was drawn is our choice.
  it('aims a step inside the end that was crossed, where a window is wide', () => {
    const window = { min: 15.875, max: 50.8 }
    expect(aimIn(window, 'mm', 10)).toBe(16.7)
    expect(aimIn(window, 'mm', 60)).toBe(48.2)
    expect(aimIn({ min: 0.05, max: 0.1 }, 'mm', 0.01)).toBe(0.08)
    expect(aimIn({ min: 6.1214, max: 7.6 }, 'mm', 5.8)).toBe(6.9)
  })

  it('aims a step inside a single end, whichever it is', () => {
    expect(aimIn({ min: 3.175 }, 'mm')).toBe(3.4)
    expect(aimIn({ max: 1524 }, 'mm')).toBe(1447)
    expect(aimIn({ max: 0.05 }, 'mm')).toBe(0.025)
    expect(aimIn({}, 'mm')).toBeNull()
  })

  it('does not break another row on the same quantity', () => {
    const row = judgement()
    const narrower = judgement({
      verdict: 'pass',
      requirement: requirement('invented/1/cell-spacing'),
      limit: { ...CELL_SPACING, min: 7, max: 8, other: undefined },
    })
    expect(windowFor(row, [row, narrower])).toEqual({ ends: { min: 7, max: 7.6 } })
    const advice = { ...narrower, requirement: requirement('invented/1/cell-spacing', { force: 'advice' as const }) }
    expect(windowFor(row, [row, advice])).toEqual(windowFor(row, [row]))
  })

  it('gives no number where another row leaves none, and names both', () => {
    const row = judgement()
    const elsewhere = judgement({
      verdict: 'pass',
      requirement: requirement('invented/1/cell-spacing'),
      limit: { ...CELL_SPACING, min: 9, max: 10, other: undefined, clause: '1', printed: '9 mm to 10 mm' },
    })
    expect(windowFor(row, [row, elsewhere])).toEqual({ of: row, against: elsewhere })
    expect(remedyFor(row, [row, elsewhere])).toMatchObject({
      min: null,
      max: null,
      aim: null,
      text: 'No cell spacing satisfies both us-ada-2010 703.3.1 (0.241 inch (6.1 mm) to 0.300 inch (7.6 mm)) and invented 1 (9 mm to 10 mm).',
    })
  })

  it('names the share in millimetres when the whole is known', () => {
    const all = sampleJudgements()
    const stroke = all.find((j) => j.requirement.quantity === 'raised.strokeThickness')
    expect(stroke && remedyFor(stroke, all)?.text).toBe(
      'Set the stroke thickness to 14 % of the character height (at most 15 %), which is 2.80 mm here.',
    )
  })

  it('gives the expected cells of a wording failure', () => {
    const seen = [observation(false, { context: { expected: '⠗⠕⠕⠍' } })]
    const row = judgement({
      requirement: requirement('us-ada-2010/703.2/wording', { quantity: 'braille.wording' }),
      limit: { kind: 'yes', unit: 'truth', printed: 'repeated in braille', clause: '703.2' },
      decisive: seen,
    })
    expect(remedyFor(row, [row])).toMatchObject({
      expected: '⠗⠕⠕⠍',
      text: 'Make the braille say what the raised text says. Expected: ⠗⠕⠕⠍',
    })
  })

  it('is there for failures only', () => {
    const all = sampleJudgements()
    for (const row of all) expect(remedyFor(row, all) !== null).toBe(row.verdict === 'fail')
  })
})
