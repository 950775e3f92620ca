import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import { check, type CheckOptions } from '../../src/check.js'
import { Refusal } from '../../src/refusal.js'
import type { Report } from '../../src/report/schema.js'
import { drawingOf, truths, type Truth } from './truth.js'

/**
 * Whole checks of drawings written by hand and by Inkscape, against the truth written by the program that made them
 * (tests/drawings/README.md). Nothing wrong may be said; what depends on outlined letters may stay undetermined.
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

/** These drawings hold their dots as a clip path, as markers or as pixels, which are not resolved. */
const NOT_RESOLVED = /^hand-dot-(clip|marker-stroke|marker-user|raster)$/

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

describe('faults that do not depend on outlined letters are found, not left open', () => {
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
  ]
  it.each(decided)('%s fails %s', (name, clause) => {
    expect([...clausesThat(run(name), 'fail')]).toEqual([clause])
  })
})

describe('live text is measured', () => {
  it.each(truths.filter((t) => t.text_live).map((t) => [t.name, t] as const))(
    '%s: text, height, stroke and gap',
    (name, truth: Truth) => {
      const report = run(name)
      const line = truth.raised_lines![0]!
      expect(report.reading.lettering.map((l) => l.text).join(' ')).toBe(line.text)
      expect(report.reading.lettering[0]!.characterHeight).toBeCloseTo(line.cap_height, 1)
      const gap = report.findings.find((f) => f.requirement.endsWith('703.2.7/character-spacing-min'))
      expect(gap?.measured?.min).toBeCloseTo(line.letter_gap, 1)
    },
  )
})
