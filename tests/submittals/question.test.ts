import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import { check } from '../../src/check.js'
import { SignDescription } from '../../src/sign/description.js'
import { POTTERY_ROOM } from '../../src/sign/examples.js'
import { questionOf, type KeptSign } from '../../src/submittals/question.js'
import { EXAMPLE_DRAWING } from '../../src/service/example-drawing.js'

/** What a kept sign asks is what its upload would have asked at POST /v1/checks; what was added since is added. Invented sign. */

const STANDARDS = ['us-ada-2010']
const bare: KeptSign = { mark: 'A-1', description: null, options: {}, installation: null, measured: [] }
const translator = createTranslator()

describe('the question of a kept sign', () => {
  it('is judged as the bare drawing is', () => {
    const drawing = new TextEncoder().encode(EXAMPLE_DRAWING)
    const options = { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' } as const
    const plain = check({ drawing, standards: STANDARDS, options: { ...options, useAssumed: true } }, translator)
    const kept = check(questionOf({ ...bare, drawing }, STANDARDS, {}), translator)
    const judged = (report: typeof plain) => report.findings.map((f) => [f.requirement, f.verdict, f.measured])
    expect(judged(kept)).toEqual(judged(plain))
    expect(kept.assumptions).toEqual(plain.assumptions)
    expect(kept.mark).toBe('A-1')
  })

  it('takes the use that was said of the sign, then of the set, then assumes one', () => {
    const of = (sign: Partial<KeptSign>, set = {}) => questionOf({ ...bare, ...sign }, STANDARDS, set).options
    const assumed = { description: { use: 'permanent-room' as const }, options: { useAssumed: true } }
    expect(of({ description: { use: 'exit-door' } }, { use: 'directory' })).toMatchObject({ use: 'exit-door' })
    expect(of(assumed, { use: 'directional' })).toMatchObject({ use: 'directional' })
    expect(of(assumed, { use: 'directional' }).useAssumed).toBeUndefined()
    expect(of(assumed)).toMatchObject({ use: 'permanent-room', useAssumed: true })
    expect(of({})).toMatchObject({ use: 'permanent-room', useAssumed: true })
  })

  it('lets later readings of a quantity take the place of earlier ones', () => {
    const height = (value: number) => ({ quantity: 'braille.dotHeight' as const, values: [value], unit: 'mm' as const })
    const description = SignDescription.parse({ ...POTTERY_ROOM, measured: [height(0.5)] })
    const { sign } = questionOf({ ...bare, description, measured: [height(0.6), height(0.7)] }, STANDARDS, {})
    expect(sign?.measured).toEqual([height(0.7)])
  })
})
