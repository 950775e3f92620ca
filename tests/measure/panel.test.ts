import { describe, expect, test } from 'vitest'
import { drawnBorder } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

/** Sizes are invented; the rows that ask for them are in the tables. */
const at = (values: Record<string, unknown> = {}) => signOf(PUMP_ROOM, values)

describe('the panel', () => {
  test('has a width and a height', () => {
    expect(valuesOf(at(), 'sign.width')).toEqual([260])
    expect(valuesOf(at(), 'sign.height')).toEqual([150])
    expect(measured(at({ 'panel.width': undefined }), 'sign.width').gaps[0]?.ask?.pointer).toBe('/sign/panel/width')
  })

  test('has rounded edges or square ones; a chamfer is for a person', () => {
    expect(valuesOf(at({ 'panel.edge': 'rounded' }), 'sign.roundedEdges')).toEqual([true])
    expect(valuesOf(at({ 'panel.edge': 'square' }), 'sign.roundedEdges')).toEqual([false])
    expect(reasonsOf(at({ 'panel.edge': 'chamfered' }), 'sign.roundedEdges')).toEqual(['needs-judgement'])
    expect(measured(at(), 'sign.roundedEdges').gaps[0]?.ask?.pointer).toBe('/sign/panel/edge')
  })

  test.each([
    ['sign.gloss', 'gloss-units'],
    ['sign.illuminance', 'lx'],
  ])('%s is only read off an instrument', (quantity, unit) => {
    const { gaps } = measured(at(), quantity)
    expect(gaps).toMatchObject([{ reason: 'missing-fact', ask: { pointer: '/sign/measured', unit } }])
    const read = at({ measured: [{ quantity, values: [30, 34], unit }] })
    expect(measured(read, quantity).observations).toMatchObject([{ value: 32, min: 30, max: 34, basis: 'measured' }])
    expect(measured(read, quantity).unit).toBe(unit)
    // A bare figure is in the one unit that the quantity has, whatever the lengths are in
    const bare = at({ units: 'in', measured: [{ quantity, values: [30] }] })
    expect(valuesOf(bare, quantity)).toEqual([30])
  })
})

describe('the border', () => {
  test('has a width, drawn or described, raised or not', () => {
    const box = { x: 0, y: 0, width: 260, height: 150 }
    expect(valuesOf(at({ borders: [{ box, width: 6, raised: false }] }), 'border.width')).toEqual([6])
    expect(valuesOf({ ...at(), borders: [drawnBorder(0, 0, 260, 150, 4)] }, 'border.width')).toEqual([4])
    expect(reasonsOf(at({ borders: [{ box }] }), 'border.width')).toEqual(['missing-fact'])
    expect(measured(at(), 'border.width').nothing).toContain('no border')
  })
})
