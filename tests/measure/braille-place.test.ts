import { describe, expect, test } from 'vitest'
import { drawnSign } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

/** The pump room: last baseline at y = 70, braille from y = 95, dots 1.55 mm wide, 2.4 mm apart, lines 10.1 mm apart, panel 260 by 150. */
const at = (values: Record<string, unknown> = {}) => signOf(PUMP_ROOM, values)

describe('the gap below the text', () => {
  // NCC 2022, S15C6, as reported: 8 mm, descenders not counted
  test('runs from the last baseline to the upper edge of the first dots', () => {
    expect(valuesOf(at(), 'braille.textGap')[0]).toBeCloseTo(95 - 1.55 / 2 - 70, 9)
    const near = at({ 'braille.0.origin': { x: 20, y: 70 + 8 + 1.55 / 2 } })
    expect(valuesOf(near, 'braille.textGap')[0]).toBeCloseTo(8, 9)
  })

  test('is none where the braille does not stand below', () => {
    const { observations } = measured(at({ 'braille.0.origin': { x: 20, y: 10 } }), 'braille.textGap')
    expect(observations).toMatchObject([{ value: 0, remark: expect.stringContaining('not stand below') as string }])
  })

  test('is open without the place of either or the width of the dots', () => {
    const pointers = (values: Record<string, unknown>) =>
      measured(at(values), 'braille.textGap').gaps.map(({ ask }) => ask?.pointer)
    expect(pointers({ 'lettering.0.baseline': undefined })).toContain('/sign/lettering/0/baseline')
    expect(pointers({ 'braille.0.origin': undefined })).toContain('/sign/braille/0/origin')
    expect(pointers({ 'braille.0.dotBaseDiameter': undefined })).toEqual(['/sign/braille/0/dotBaseDiameter'])
  })

  test('is that of each text to its own braille', () => {
    const [set] = PUMP_ROOM.lettering as Record<string, unknown>[]
    const [block] = PUMP_ROOM.braille as Record<string, unknown>[]
    const one = (text: string, y: number) => ({ ...set, text, lines: [text], baseline: { x: 20, y } })
    const dots = (text: string, y: number) => ({ ...block, lines: undefined, text, origin: { x: 20, y } })
    const sign = at({
      lettering: [one('PUMP', 30), one('ROOM', 90)],
      braille: [dots('pump', 45), dots('room', 110)],
    })
    const values = valuesOf(sign, 'braille.textGap').map(Number)
    expect(values[0]).toBeCloseTo(15 - 1.55 / 2, 9)
    expect(values[1]).toBeCloseTo(20 - 1.55 / 2, 9)
    const other = at({ lettering: [one('PUMP', 30), one('ROOM', 90)], braille: [dots('hall', 45), dots('shed', 110)] })
    expect(reasonsOf(other, 'braille.textGap')).toEqual(['needs-judgement', 'needs-judgement'])
  })

  // the words only tell texts apart where there are several texts and several blocks
  test('is told of a wrong wording too where it can only be the one text or the one block', () => {
    const [block] = PUMP_ROOM.braille as Record<string, unknown>[]
    const hall = { ...block, lines: undefined, text: 'hall' }
    const oneText = at({ braille: [hall, { ...hall, text: 'shed', origin: { x: 20, y: 120 } }] })
    expect(reasonsOf(oneText, 'braille.textGap')).toEqual([])
    expect(valuesOf(oneText, 'braille.textGap')[0]).toBeCloseTo(95 - 1.55 / 2 - 70, 9)
    const [set] = PUMP_ROOM.lettering as Record<string, unknown>[]
    const one = (text: string, y: number) => ({ ...set, text, lines: [text], baseline: { x: 20, y } })
    const oneBlock = at({ lettering: [one('PUMP', 30), one('ROOM', 80)], braille: [hall] })
    expect(valuesOf(oneBlock, 'braille.textGap')[0]).toBeCloseTo(95 - 1.55 / 2 - 80, 9)
  })
})

describe('the way to the edges of the panel', () => {
  // Orden TMA/851/2021 and the Dubai code: 10 to 30 mm from the left and the lower edge
  test('runs from the edge of the dots', () => {
    expect(valuesOf(at(), 'braille.leftOffset')[0]).toBeCloseTo(20 - 1.55 / 2, 9)
    expect(valuesOf(at(), 'braille.bottomOffset')[0]).toBeCloseTo(150 - (95 + 10.1 + 4.8) - 1.55 / 2, 9)
  })

  test('on the left is known without the size of the panel, below it is not', () => {
    const sign = at({ 'panel.width': undefined, 'panel.height': undefined })
    expect(valuesOf(sign, 'braille.leftOffset')[0]).toBeCloseTo(20 - 1.55 / 2, 9)
    expect(measured(sign, 'braille.bottomOffset').gaps.map(({ ask }) => ask?.pointer)).toEqual(['/sign/panel/height'])
  })

  test('is open on a drawing without a panel', () => {
    const sign = drawnSign()
    const bare = { ...sign, panel: { ...sign.panel, place: { element: 'panel' } } }
    expect(reasonsOf(bare, 'braille.leftOffset')).toEqual(['missing-fact'])
  })
})
