import fc from 'fast-check'
import { describe, expect, it, vi } from 'vitest'
import type { CheckOptions } from '../../src/check.js'
import { SignDescription } from '../../src/sign/description.js'

/**
 * Much of a report is kept for the next one: what a row asks, how it does not apply, what was found where the values are the same.
 * Two programs that were asked the same questions the other way round must answer alike, byte for byte, and as JSON.stringify
 * writes it (ECMA-262). The signs are invented: their sizes lie on both sides of many limits, and are so few that most come again.
 */

const { constantFrom, record } = fc
const some = { requiredKeys: [] as [] }
const heights = constantFrom(12, 15.8, 15.875, 16, 19, 50.8, 60)
const sizes = constantFrom(0.4, 0.62, 0.75, 0.8, 0.9, 1.5, 1.55, 1.6, 2.4, 2.6, 3.4)

const sign = record({
  mark: constantFrom('K-1', 'K-2'),
  use: constantFrom('permanent-room', 'exit-door', 'directional', 'gift', 'transit-station'),
  lettering: fc.tuple(
    record(
      {
        part: constantFrom('both', 'raised', 'visual'),
        text: constantFrom('KILN', 'Kiln 2', 'GLAZE STORE'),
        characterHeight: heights,
        strokeThickness: sizes,
        relief: sizes,
        section: constantFrom('straight', 'rounded'),
        characterSpacing: sizes,
        finish: constantFrom('matte', 'satin', 'glossy'),
        colour: constantFrom('#1d2b3a', '#8899aa'),
      },
      some,
    ),
  ),
  braille: fc.tuple(
    record(
      {
        text: constantFrom('kiln', 'kiln 2', 'glaze store'),
        dotBaseDiameter: sizes,
        dotHeight: sizes,
        dotSpacing: sizes,
        cellSpacing: constantFrom(6, 6.1, 6.9, 7.62),
        origin: constantFrom({ x: 20, y: 60 }, { x: 20, y: 95 }),
      },
      some,
    ),
  ),
  installation: record({ panelBottomHeight: constantFrom(1200, 1300, 1500), viewingDistance: heights }, some),
  measured: constantFrom(
    [],
    [{ quantity: 'braille.dotHeight', values: [0.7, 0.75], expandedUncertainty: 0.02, instrument: 'gauge' }],
  ),
})

const question = record({
  sign: sign.map((body) => SignDescription.parse(body)),
  decisionRule: constantFrom<CheckOptions['decisionRule'][]>('simple', 'guarded'),
  unitSystem: constantFrom<CheckOptions['unitSystem'][]>('printed', 'both'),
  standards: constantFrom(['us-ada-2010'], ['us-ca-2019', 'au-aba'], ['kr-2020', 'us-ada-2010']),
})
type Question = typeof question extends fc.Arbitrary<infer T> ? T : never

/** A program that has kept nothing yet. @returns what it answers, as its own writer and as the language writes it */
async function program() {
  vi.resetModules()
  const { createTranslator } = await import('../../src/braille/engine.js')
  const { check } = await import('../../src/check.js')
  const { reportJson } = await import('../../src/report/json.js')
  const translator = createTranslator()
  return ({ sign, standards, ...rules }: Question) => {
    const report = check(
      { sign, standards: [...standards], options: { use: sign.use, ...rules, language: 'en' } },
      translator,
    )
    return { written: reportJson(report).toString('utf8'), plain: JSON.stringify(report) }
  }
}

describe('a report', () => {
  it('hangs on nothing that was asked before', async () => {
    const questions = fc.sample(question, { numRuns: 150, seed: 7 })
    const [one, other] = [await program(), await program()]
    const first = questions.map(one)
    const last = questions.toReversed().map(other).toReversed()
    first.forEach(({ written, plain }, i) => {
      expect(written).toBe(plain)
      expect(written).toBe(last[i]?.written)
    })
  })
})
