import { describe, expect, test } from 'vitest'
import { PUMP_ROOM, signOf, TWO_SETS } from './signs.js'
import { drawnSign } from './drawn.js'
import { measured } from './values.js'

/** What a sign provides at all, and what a person judges. The clauses are of the 2010 ADA Standards, the signs invented. */

type Json = Record<string, unknown>
const [sight, touch] = TWO_SETS.lettering as Json[]
const found = (quantity: string, values: Json = {}) => measured(signOf(PUMP_ROOM, values), quantity)
const SIGHT = { lettering: [sight] }
const PUMP = { pictograms: [{ meaning: 'pump' }] }

// 216.2 and 703.2: signs that designate rooms have raised characters
describe('raised characters', () => {
  const quantity = 'sign.tactileCharacters'

  test('are there, at their places', () => {
    expect(found(quantity).observations).toEqual([
      { value: true, basis: 'declared', places: [expect.objectContaining({ element: 'lettering/0' })] },
    ])
    expect(measured(signOf(TWO_SETS), quantity).observations[0]?.places).toMatchObject([{ element: 'lettering/1' }])
  })

  test('are not there, which the sign itself tells', () => {
    expect(found(quantity, SIGHT).observations).toMatchObject([
      { value: false, basis: 'declared', places: [{ element: 'panel' }], remark: 'The sign has no raised characters.' },
    ])
  })

  // 703.6.3: the descriptor of a pictogram has a row of its own
  test('are not asked of a pictogram alone that may name the room', () => {
    expect(found(quantity, { ...PUMP, lettering: [] }).nothing).toContain('descriptor')
    expect(found(quantity, { ...PUMP, ...SIGHT }).observations[0]?.value).toBe(false)
    const informs = { pictograms: [{ meaning: 'no smoking' }], lettering: [] }
    expect(found(quantity, informs).observations[0]?.value).toBe(false)
    const several = { pictograms: [{ meaning: 'no smoking' }, { meaning: 'pump' }], lettering: [] }
    expect(found(quantity, several).observations).toEqual([])
  })

  // 216.2, Exception: exterior signs that are not located at the door to the space they serve
  test('of an exterior sign are for a person', () => {
    const outside = { ...SIGHT, 'installation.approach': 'exterior' }
    expect(found(quantity, outside)).toMatchObject({ observations: [], gaps: [{ reason: 'needs-judgement' }] })
    expect(found(quantity, { 'installation.approach': 'exterior' }).observations[0]?.value).toBe(true)
    expect(found(quantity, { ...SIGHT, 'installation.approach': undefined }).observations[0]?.value).toBe(false)
  })

  // 810.6.1: at least one sign at each entrance of a station
  test('at a station are for a person where this sign has none', () => {
    const station = 'sign.stationTactileCharacters'
    expect(found(station, SIGHT)).toMatchObject({
      observations: [],
      gaps: [{ reason: 'needs-judgement', places: [{ element: 'panel' }] }],
    })
    expect(found(station).observations[0]?.value).toBe(true)
    expect(found(station, { ...PUMP, lettering: [] })).toMatchObject({ observations: [], gaps: [] })
  })
})

describe('characters for sight', () => {
  const quantity = 'sign.visualCharacters'
  const raised = { lettering: [touch] }

  test('are the set for sight, or the set for both', () => {
    expect(measured(signOf(TWO_SETS), quantity).observations).toEqual([
      { value: true, basis: 'declared', places: [expect.objectContaining({ element: 'lettering/0' })] },
    ])
    expect(found(quantity).observations[0]).not.toHaveProperty('remark')
    expect(found(quantity, { lettering: [] }).nothing).toBe('The sign has no characters.')
  })

  test('may be on another sign where a client describes raised ones alone', () => {
    expect(found(quantity, raised)).toMatchObject({
      observations: [],
      gaps: [{ reason: 'needs-judgement', places: [{ element: 'lettering/0' }] }],
    })
  })

  test('are the raised ones of a drawing that shows no others, which is said', () => {
    const drawn = drawnSign()
    const sign = { ...drawn, lettering: drawn.lettering.map((set) => ({ ...set, part: 'raised' as const })) }
    expect(measured(sign, quantity).observations[0]?.remark).toContain('taken to serve both')
  })
})

// 407.2.3.1: a tactile star at the main entry level
describe('a star', () => {
  const quantity = 'sign.star'
  const writing = (text: string, part = 'both') => ({ lettering: [{ ...touch, part, text, lines: [text] }] })

  test('is drawn or written for touch', () => {
    expect(found(quantity, { pictograms: [{ meaning: 'pump' }, { meaning: 'tactile STAR' }] }).observations).toEqual([
      { value: true, basis: 'declared', places: [expect.objectContaining({ element: 'pictogram/1' })] },
    ])
    expect(found(quantity, writing('★ 1')).observations).toEqual([
      { value: true, basis: 'declared', places: [expect.objectContaining({ element: 'lettering/0' })] },
    ])
    const both = { ...writing('★ 1'), pictograms: [{ meaning: 'star' }] }
    expect(found(quantity, both).observations[0]?.places).toHaveLength(2)
  })

  test('else is for a person: it is needed at one level only', () => {
    const cases: Json[] = [
      {},
      writing('★ 1', 'visual'),
      writing('PUMP'),
      { pictograms: [{}, { meaning: 'starter' }] },
      { lettering: [{ part: 'raised', characterHeight: 20 }] },
    ]
    for (const values of cases)
      expect(found(quantity, values)).toMatchObject({
        observations: [],
        gaps: [{ reason: 'needs-judgement', places: [{ element: 'panel' }] }],
      })
  })
})

describe('what a client can say of the place', () => {
  // 407.2.3.1: on both jambs of the entrance of the hoistway
  test('whether both jambs carry the designation', () => {
    const jambs = (value?: string) => found('sign.bothJambs', { 'installation.jambs': value })
    expect(jambs('both').observations).toMatchObject([
      { value: true, basis: 'declared', places: [{ element: 'installation' }] },
    ])
    expect(jambs('one').observations[0]?.value).toBe(false)
    expect(jambs().gaps).toMatchObject([
      { reason: 'missing-fact', ask: { pointer: '/sign/installation/jambs', choices: ['both', 'one'] } },
    ])
  })

  // 407.4.7.1.1: immediately to the left of the control; its Exception: existing panels without room
  test('whether characters stand to the left of their control', () => {
    const side = (value?: string) => found('sign.leftOfControl', { 'installation.controlSide': value })
    expect(side('left').observations).toMatchObject([
      { value: true, basis: 'declared', places: [{ element: 'installation' }] },
    ])
    expect(side('right')).toMatchObject({
      observations: [],
      gaps: [{ reason: 'needs-judgement', places: [{ element: 'installation' }] }],
    })
    expect(side().gaps).toMatchObject([
      { reason: 'missing-fact', ask: { pointer: '/sign/installation/controlSide', choices: expect.any(Array) as [] } },
    ])
  })

  // decree 398/2009 Sb., annex 1, 3.2.1, as the table of that decree here cites it
  test('on which side of its control a designation stands, at a control only', () => {
    const side = (values: Json) => found('installation.controlSide', values)
    const control = { use: 'elevator-car-control' }
    expect(side({ ...control, 'installation.controlSide': 'right' }).observations).toMatchObject([
      { value: 'right', places: [{ element: 'installation' }] },
    ])
    expect(side(control).gaps).toMatchObject([{ ask: { pointer: '/sign/installation/controlSide' } }])
    expect(side(control).gaps[0]?.ask?.choices).toContain('left')
    expect(side({ 'installation.controlSide': 'right' }).nothing).toBe('The sign is not at a control.')
  })

  // 307.4: headroom
  test('how high the lower edge is', () => {
    expect(found('installation.headroom').observations).toMatchObject([
      { value: 1300, places: [{ element: 'installation' }] },
    ])
    expect(found('installation.headroom', { 'installation.panelBottomHeight': undefined }).gaps).toMatchObject([
      { ask: { pointer: '/sign/installation/panelBottomHeight', unit: 'mm' } },
    ])
  })
})

describe('matters for a person', () => {
  test.each(['sign.edges', 'sign.middleOfCharacters', 'sign.locator'])('%s, of raised characters only', (quantity) => {
    expect(found(quantity)).toMatchObject({ observations: [], gaps: [{ reason: 'needs-judgement' }] })
    expect(measured(signOf(TWO_SETS), quantity).gaps).toHaveLength(1)
    expect(found(quantity, SIGHT)).toMatchObject({ gaps: [], nothing: 'The sign has no raised characters.' })
  })

  test.each(['sign.parkingIdentification', 'sign.unreadClause', 'installation.overhang'])('%s, of any sign', (name) => {
    expect(found(name, SIGHT)).toMatchObject({ observations: [], gaps: [{ places: [{ element: 'panel' }] }] })
  })
})
