import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import { check, type CheckOptions } from '../../src/check.js'
import { Refusal } from '../../src/refusal.js'
import type { Report } from '../../src/report/schema.js'
import { drawingOf, truths, type Truth } from './truth.js'

/**
 * Whole checks of drawings written by hand and by Inkscape, against the truth written by the program that made them
 * (tests/drawings/README.md). Nothing wrong may be said.
 */

const translator = createTranslator()
const options: CheckOptions = { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' }
const run = (name: string): Report =>
  check({ drawing: drawingOf(name), standards: ['us-ada-2010'], options }, translator)

const shall = (report: Report) => report.findings.filter((f) => f.force === 'shall')
const clausesThat = (report: Report, verdict: string) =>
  new Set(
    shall(report)
      .filter((f) => f.verdict === verdict)
      .map((f) => f.clause),
  )
const trimmed = (cells: string) => cells.replace(/^\u2800+|\u2800+$/gu, '')

/** This drawing holds its dots as pixels, which are not read. */
const NOT_RESOLVED = /^hand-dot-raster$/

const readable = truths.filter((t) => !t.expectProblem)
const withDots = readable.filter((t) => t.dots_state === 'match' && !NOT_RESOLVED.test(t.name))

describe('drawings against their truth', () => {
  it.each(withDots.map((t) => [t.name, t] as const))('%s: every dot, the cells and the spacings', (name, truth) => {
    const { reading } = run(name)
    expect(reading.braille.flatMap((b) => b.lines.map((l) => trimmed(l.cells ?? '')))).toEqual(
      (truth.braille_lines ?? []).map((l) => trimmed(l.unicode)),
    )
    expect(reading.braille.reduce((sum, b) => sum + b.dots, 0)).toBe(truth.dots?.length)
    for (const [quantity, value] of Object.entries(truth.measured ?? {})) {
      for (const block of reading.braille) {
        const found = block[quantity as 'dotSpacing' | 'cellSpacing' | 'dotBaseDiameter' | 'lineSpacing']
        if (found !== null) expect(found, quantity).toBeCloseTo(value, 1)
      }
    }
  })

  it.each(readable.map((t) => [t.name, t] as const))('%s: no clause fails that the sign satisfies', (name, truth) => {
    const allowed = [...(truth.violates ?? []), ...(truth.violates_also_acceptable ?? [])]
    for (const clause of clausesThat(run(name), 'fail')) expect(allowed).toContain(clause)
  })

  it.each(readable.map((t) => [t.name, t] as const))(
    '%s: what the sign violates is failed or open, never passed over',
    (name, truth) => {
      const report = run(name)
      const failed = clausesThat(report, 'fail')
      const open = clausesThat(report, 'undetermined')
      const told = (clause: string) =>
        failed.has(clause) || open.has(clause) || (truth.violates_also_acceptable ?? []).some((c) => failed.has(c))
      for (const clause of truth.violates ?? []) expect(told(clause), clause).toBe(true)
    },
  )

  it.each(truths.filter((t) => t.expectProblem).map((t) => [t.name, t.expectProblem] as const))(
    '%s is refused: %s',
    (name, problem) => {
      expect(() => run(name)).toThrow(Refusal)
      try {
        run(name)
      } catch (error) {
        expect((error as Refusal).type).toBe(problem)
      }
    },
  )
})

describe('faults are found, not left open', () => {
  const decided: [string, string][] = [
    ['hand-edge-max-plain', '703.3.1'],
    ['hand-edge-min-plain', '703.3.1'],
    ['hand-x-dot12-plain', '703.3.1'],
    ['hand-x-pitch27-plain', '703.3.1'],
    ['hand-x-grade1-plain', '703.3'],
    ['hand-x-lowcontrast-plain', '703.5.1'],
    ['hand-x-lowcontrast-hex8', '703.5.1'],
    ['hand-x-lower-live', '703.2.2'],
    ['hand-x-par-meet-scaled', '703.3.1'],
    ['hand-x-pict120-plain', '703.6.1'],
    ['hand-x-cap12-plain', '703.2.5'],
    ['hand-x-cap60-plain', '703.2.5'],
    ['hand-x-stroke25-plain', '703.2.6'],
    ['hand-x-leading120-plain', '703.2.8'],
    ['hand-x-mismatch-plain', '703.2'],
    ['inkscape-x-missingdot-combined', '703.2'],
  ]
  it.each(decided)('%s fails %s', (name, clause) => {
    expect([...clausesThat(run(name), 'fail')]).toEqual([clause])
  })
})

describe('lettering is read and measured, live or outlined', () => {
  /** Letters drawn sheared, turned or with two decimals are measured to within this many millimetres of their design. */
  const WITHIN = 0.15

  it.each(readable.map((t) => [t.name, t] as const))('%s: text, height and gap', (name, truth: Truth) => {
    const report = run(name)
    const lines = truth.raised_lines ?? []
    expect(report.reading.lettering.map((l) => l.text).join(' ')).toBe(lines.map((l) => l.text).join(' '))
    for (const lettering of report.reading.lettering) {
      expect(Math.abs((lettering.characterHeight ?? NaN) - (lines[0]?.cap_height ?? NaN))).toBeLessThan(WITHIN)
    }
    const gap = report.findings.find((f) => f.requirement.endsWith('703.2.7/character-spacing-min'))
    const least = Math.min(...lines.map((l) => l.letter_gap))
    if (Number.isFinite(least)) expect(Math.abs((gap?.measured?.min ?? NaN) - least)).toBeLessThan(WITHIN)
  })
})
