import { describe, expect, it } from 'vitest'
import { check } from '../../../src/check.js'
import { POTTERY_ROOM } from '../../../src/sign/examples.js'
import { SignDescription } from '../../../src/sign/description.js'
import { comparedSign, type SignOfSet } from '../../../src/submittals/set-findings/compared-sign.js'
import { translator } from '../../braille/translator.js'

/** What is known of a sign before and after its check. The signs are invented; 25.4 mm to the inch by definition (1959). */

const pottery: SignDescription = SignDescription.parse(POTTERY_ROOM)
const of = (said: Partial<SignOfSet>) =>
  comparedSign({
    mark: 'P-117',
    location: '117',
    door: null,
    description: null,
    useAssumed: false,
    report: null,
    ...said,
  })

const reportOn = (sign: SignDescription, useAssumed: boolean) =>
  check(
    {
      sign,
      standards: ['us-ada-2010'],
      options: { use: sign.use, decisionRule: 'simple', unitSystem: 'printed', language: 'en', useAssumed },
    },
    translator(),
  )

describe('a described sign', () => {
  it('is compared by what was said of it', () => {
    expect(of({ description: pottery })).toMatchObject({
      use: 'permanent-room',
      wording: ['POTTERY 117'],
      families: ['Open Sans'],
      styles: ['sans-serif'],
      dotSpacings: [2.4],
      cellSpacings: [6.9],
    })
  })

  it('has its spacings in millimetres, whatever they were given in', () => {
    const inches = SignDescription.parse({
      units: 'in',
      use: 'permanent-room',
      braille: [{ dotSpacing: 0.1, cellSpacing: { value: 6.9, unit: 'mm' } }],
    })
    const { dotSpacings, cellSpacings } = of({ description: inches })
    expect(dotSpacings[0]).toBeCloseTo(2.54, 12)
    expect(cellSpacings).toEqual([6.9])
  })

  it('has no use when nobody said one', () => {
    expect(of({ description: pottery, useAssumed: true }).use).toBeNull()
  })

  it('has no wording when one of its letterings has none', () => {
    const half = SignDescription.parse({
      use: 'permanent-room',
      lettering: [{ text: 'LOOMS' }, { characterHeight: 20 }],
    })
    expect(of({ description: half }).wording).toBeNull()
  })

  it('of which nothing is known says nothing', () => {
    expect(of({})).toMatchObject({
      use: null,
      wording: null,
      families: [],
      styles: [],
      dotSpacings: [],
      cellSpacings: [],
    })
  })
})

describe('a checked sign', () => {
  it('is compared by what its report read', () => {
    const report = reportOn(pottery, false)
    expect(of({ description: pottery, report })).toMatchObject({
      use: 'permanent-room',
      wording: ['POTTERY 117'],
      dotSpacings: [2.4],
      cellSpacings: [6.9],
    })
    expect(of({ report }).styles).toEqual(['sans-serif'])
  })

  it('has no use when the report assumed it', () => {
    expect(of({ report: reportOn(pottery, true) }).use).toBeNull()
  })
})
