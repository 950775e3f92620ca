import { describe, expect, test } from 'vitest'
import { checked, kiln, PRODUCT } from './kiln.js'

/** A drawing whose size has no unit. CSS Values 4, 6.2: a px is 1/96 inch; the drawing means millimetres, as its dots show. */

const unitless = kiln().replace('width="200mm" height="110mm"', 'width="200" height="110"')

describe('a scale that the dots contradict', () => {
  const report = checked(unitless, PRODUCT)

  test('is said before anything else', () => {
    expect(report.caveats[0]).toMatch(/^The scale is doubtful: at 1 unit = 1 mm/)
    expect(report.assumptions[0]).toEqual({ about: 'scale', text: report.caveats[0] })
  })

  test('is asked for first, with the rows that fail by it', () => {
    const [question] = report.questions
    expect(question).toMatchObject({ pointer: '/options/scale', unit: 'mm' })
    expect(question?.decides).toContain('us-ada-2010/703.3.1/dot-spacing')
    const fails = report.findings.filter(({ verdict }) => verdict === 'fail').map(({ requirement }) => requirement)
    expect(fails).toEqual(expect.arrayContaining(question?.decides ?? []))
  })

  test('is settled by the answer', () => {
    const answered = checked(unitless, PRODUCT, { scale: 1 })
    expect(answered.questions.map(({ pointer }) => pointer)).not.toContain('/options/scale')
    expect(answered.findings.filter(({ verdict }) => verdict === 'fail')).toEqual([])
  })
})

test('a drawing with units is asked for no scale', () => {
  const report = checked(kiln(), PRODUCT)
  expect(report.questions.map(({ pointer }) => pointer)).not.toContain('/options/scale')
  expect(report.caveats.join()).not.toContain('doubtful')
})
