import { describe, expect, it } from 'vitest'
import { describe as describeSign } from '../../src/sign/describe.js'
import { POTTERY_ROOM } from '../../src/sign/examples.js'
import { isKnown } from '../../src/sign/sign.js'
import { described, plainTranslator } from './described.js'

const signOf = (json: object) => describeSign(described(json), plainTranslator)

describe('a described sign', () => {
  it('holds every length in millimetres, from inches by one multiplication', () => {
    const sign = signOf({
      units: 'in',
      panel: { width: 8, height: { value: 100, unit: 'mm' } },
      lettering: [{ relief: 0.03125, characterHeight: 0.75, baseline: { x: 1, y: 2 } }],
    })
    expect(sign.panel.width).toEqual({ value: 8 * 25.4, basis: 'declared' })
    expect(sign.panel.height).toEqual({ value: 100, basis: 'declared' })
    expect(sign.lettering[0]?.relief).toEqual({ value: 0.03125 * 25.4, basis: 'declared' })
    expect(sign.panel.place.box).toEqual({ x: 0, y: 0, width: 8 * 25.4, height: 100 })
  })

  it('has a missing fact for everything that is not given', () => {
    const sign = signOf({ lettering: [{}], braille: [{}], pictograms: [{}] })
    const holders: object[] = [sign.panel, ...sign.lettering, ...sign.braille, ...sign.pictograms, sign.installation]
    const facts = holders
      .flatMap((holder): unknown[] => Object.values(holder))
      .filter((fact) => typeof fact === 'object' && fact !== null && ('value' in fact || 'unknown' in fact)) as object[]
    expect(facts.length).toBeGreaterThan(25)
    expect(facts.filter((fact) => 'value' in fact)).toEqual([])
    expect(facts.every((fact) => 'unknown' in fact && fact.unknown === 'missing-fact')).toBe(true)
  })

  it('points each place into the body of the request', () => {
    const sign = signOf(POTTERY_ROOM)
    expect(sign.lettering[0]?.place.pointer).toBe('/sign/lettering/0')
    expect(sign.braille[0]?.place.pointer).toBe('/sign/braille/0')
    expect(sign.braille[0]?.lines[0]?.place.pointer).toBe('/sign/braille/0/text')
    expect(sign.panel.place.pointer).toBe('/sign/panel')
  })

  it('says what it assumed, and nothing when all is said', () => {
    const about = (json: object) => signOf(json).assumptions.map((assumption) => assumption.about)
    expect(about({ lettering: [{ text: 'A' }], braille: [{ text: 'a' }] })).toEqual([
      'units',
      'borders',
      'pictograms',
      'part',
      'braille-code',
    ])
    expect(about(POTTERY_ROOM)).toEqual([])
  })

  it('says when a text and its lines differ', () => {
    const sign = signOf({ ...POTTERY_ROOM, lettering: [{ part: 'both', text: 'ROOM 1', lines: ['ROOM', '2'] }] })
    expect(sign.assumptions.map(({ about }) => about)).toEqual(['conflict'])
  })
})

describe('described lettering', () => {
  it('has the baselines one spacing apart, downwards', () => {
    const [lettering] = signOf({
      lettering: [{ lines: ['A', 'B', 'C'], baseline: { x: 20, y: 45 }, baselineSpacing: 29 }],
    }).lettering
    expect(lettering?.lines.map((line) => line.baseline)).toEqual(
      [45, 74, 103].map((y) => ({ value: { x: 20, y }, basis: 'declared' })),
    )
  })

  it('does not know the later baselines without their spacing', () => {
    const [lettering] = signOf({ lettering: [{ lines: ['A', 'B'], baseline: { x: 20, y: 45 } }] }).lettering
    expect(lettering?.lines.map((line) => isKnown(line.baseline))).toEqual([true, false])
  })

  it('reads its lines where the text says something else', () => {
    const [lettering] = signOf({ lettering: [{ text: 'PUMP', lines: ['Boiler', 'Room'] }] }).lettering
    expect(lettering?.text).toEqual({ value: 'Boiler Room', basis: 'declared' })
  })

  it('is one line of unknown words when no text is given, where it is said to be', () => {
    const [lettering] = signOf({ lettering: [{ baseline: { x: 20, y: 45 } }] }).lettering
    expect(lettering?.lines).toMatchObject([
      { text: { unknown: 'missing-fact' }, baseline: { value: { x: 20, y: 45 } } },
    ])
  })

  it('is for sight on a sign that nobody need read by touch, when no part is given', () => {
    const part = (use: string) => signOf({ use, lettering: [{ text: 'A' }] }).lettering[0]?.part
    expect([part('permanent-room'), part('directional'), part('informational')]).toEqual(['both', 'visual', 'visual'])
  })

  it('has no spacing of baselines when it is one line, even if one is given', () => {
    expect(signOf({ lettering: [{ text: 'A', baselineSpacing: 29 }] }).lettering[0]?.baselineSpacing).toBeUndefined()
  })

  it('takes finish and background from the panel, its own finish first', () => {
    const sign = signOf({
      panel: { finish: 'matte', colour: 'white' },
      lettering: [{ text: 'A' }, { text: 'B', finish: 'glossy' }],
    })
    expect(sign.lettering.map(({ finish }) => isKnown(finish) && finish.value)).toEqual(['matte', 'glossy'])
    expect(sign.lettering.map(({ background }) => isKnown(background) && background.value.css)).toEqual([
      'white',
      'white',
    ])
  })
})

describe('measured values', () => {
  it('come in millimetres with their uncertainty, ratios as they are', () => {
    const sign = signOf({
      units: 'in',
      lettering: [{}],
      measured: [
        { quantity: 'braille.dotHeight', values: [0.03], expandedUncertainty: 0.001, instrument: 'dial gauge' },
        { quantity: 'braille.dotHeight', values: [0.7], unit: 'mm' },
        { quantity: 'raised.strokeThickness', values: [0.14] },
      ],
    })
    expect(sign.measured.map(({ values }) => values)).toEqual([[0.03 * 25.4], [0.7], [0.14]])
    expect(sign.measured[0]?.expandedUncertainty).toBe(0.001 * 25.4)
  })
})
