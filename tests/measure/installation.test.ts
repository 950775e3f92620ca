import { describe, expect, test } from 'vitest'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

const at = (values: Record<string, unknown>) =>
  signOf(PUMP_ROOM, Object.fromEntries(Object.entries(values).map(([k, v]) => [`installation.${k}`, v])))

describe('distances that a description gives', () => {
  test.each([
    ['architraveDistance', 'door.edgeToArchitrave', '/sign/installation/door/edgeToArchitrave'],
    ['jambDistance', 'door.edgeToJamb', '/sign/installation/door/edgeToJamb'],
    ['clearWall', 'clearWall', '/sign/installation/clearWall'],
    ['reach', 'nearestApproach', '/sign/installation/nearestApproach'],
  ])('%s is %s, in any unit, and is asked for', (quantity, field, pointer) => {
    expect(valuesOf(at({ [field]: 150 }), `installation.${quantity}`)).toEqual([150])
    // By definition of the international inch
    const [inInches] = valuesOf(at({ [field]: { value: 3, unit: 'in' } }), `installation.${quantity}`)
    expect(inInches).toBeCloseTo(76.2, 9)
    expect(valuesOf(at({ [field]: 0 }), `installation.${quantity}`)).toEqual([0])
    const { gaps } = measured(at({}), `installation.${quantity}`)
    expect(gaps.map(({ reason, ask }) => [reason, ask?.pointer])).toEqual([['missing-fact', pointer]])
  })
})

describe('the braille above the handle', () => {
  // Decree 398/2009 Sb., annex 3, 5.2: 200 mm above the handle. Lowest braille baseline by hand: 1450 - 95 - 10.1 - 4.8
  test('runs from the handle to the lowest braille baseline', () => {
    const [value] = valuesOf(at({ 'door.handleHeight': 1100 }), 'installation.aboveHandle')
    expect(value).toBeCloseTo(1340.1 - 1100, 9)
  })

  test('needs the handle and the braille’s place', () => {
    expect(reasonsOf(at({}), 'installation.aboveHandle')).toEqual(['missing-fact'])
    const unplaced = at({ 'door.handleHeight': 1100, panelBottomHeight: undefined })
    expect(measured(unplaced, 'installation.aboveHandle').gaps.map(({ ask }) => ask?.pointer)).toEqual([
      '/sign/installation/panelBottomHeight',
    ])
  })
})

describe('elevators', () => {
  const sign = (values: Record<string, unknown>) => signOf(PUMP_ROOM, values)

  // 2010 ADA Standards 407.2.3.1: on both jambs
  test('both jambs carry the sign, one does, or nobody said', () => {
    const jambs = (value: unknown) => sign({ use: 'elevator-landing', 'installation.jambs': value })
    expect(valuesOf(jambs('both'), 'sign.bothJambs')).toEqual([true])
    expect(valuesOf(jambs('one'), 'sign.bothJambs')).toEqual([false])
    expect(measured(jambs(undefined), 'sign.bothJambs').gaps[0]?.ask?.pointer).toBe('/sign/installation/jambs')
  })

  // 2010 ADA Standards 407.4.7.1.1: to the left; where an existing panel has no room, as near as possible
  test('characters to the left of their control pass; elsewhere a person decides', () => {
    const control = (value: unknown) => sign({ use: 'elevator-car-control', 'installation.controlSide': value })
    expect(valuesOf(control('left'), 'sign.leftOfControl')).toEqual([true])
    expect(reasonsOf(control('right'), 'sign.leftOfControl')).toEqual(['needs-judgement'])
    expect(reasonsOf(control(undefined), 'sign.leftOfControl')).toEqual(['missing-fact'])
  })
})
