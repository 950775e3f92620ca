import { describe, expect, test } from 'vitest'
import { findStandards } from '../../src/standards/catalogue.js'
import { judgementOf } from '../judge/verdicts.js'
import { PUMP_ROOM, signOf } from '../measure/signs.js'
import { EXAMPLES } from './examples.js'

const [ada] = findStandards(['us-ada-2010'])
const VERDICTS = ['pass', 'fail', 'undetermined'] as const

test('every row has its examples', () => {
  const rows = ada.requirements.map((r) => r.requirement.replace('us-ada-2010/', ''))
  expect(Object.keys(EXAMPLES).sort()).toEqual(rows.sort())
})

describe.each(Object.entries(EXAMPLES))('%s', (row, example) => {
  test.each(VERDICTS.filter((v) => !example.never?.verdicts.includes(v)))('%s', (verdict) => {
    const description = example[verdict]
    if (!description) throw new Error(`no example of ${verdict}`)
    const judgement = judgementOf(signOf(description), row)
    expect(judgement.verdict).toBe(verdict)
    if (verdict === 'undetermined') {
      expect(judgement.reason).not.toBeNull()
      expect(judgement.gaps.every((gap) => gap.why.length > 0)).toBe(true)
    } else {
      expect(judgement.measurement?.observations.length).toBeGreaterThan(0)
      expect(judgement.decisive.length).toBeGreaterThan(0)
    }
  })

  test('not applicable to a directory, and it says why', () => {
    const { verdict, because } = judgementOf(signOf({ ...PUMP_ROOM, use: 'directory' }), row)
    expect(verdict).toBe('not-applicable')
    expect(because).toContain('216.1 Exception 1')
  })
})
