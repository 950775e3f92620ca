import { describe, expect, test } from 'vitest'
import { reflectanceContrast } from '../../src/measure/contrast/lighter.js'
import { contrastRatio } from '../../src/measure/contrast/ratio.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, valuesOf } from './values.js'

const SEEN = { parts: ['visual' as const, 'both' as const] }
const on = (colour: unknown, panel: unknown) =>
  signOf(PUMP_ROOM, { 'lettering.0.colour': colour, 'panel.colour': panel })

describe('contrast ratio', () => {
  // WCAG 2.2, definition of contrast ratio: 1 to 21. W3C, Understanding 1.4.3: #777777 on white is 4.47, #767676 is 4.54.
  test.each([
    ['#000000', '#ffffff', 21],
    ['#ffffff', '#ffffff', 1],
    ['#777777', '#ffffff', 4.478],
    ['#767676', '#ffffff', 4.542],
  ])('%s on %s is %d', (a, b, ratio) => {
    expect(Number(valuesOf(on(a, b), 'contrast.characters', SEEN)[0])).toBeCloseTo(ratio, 2)
    expect(valuesOf(on(b, a), 'contrast.characters', SEEN)).toEqual(valuesOf(on(a, b), 'contrast.characters', SEEN))
  })

  test('is that of luminances given as reflectances, whichever is lighter', () => {
    expect(contrastRatio(0.3, 1)).toBeCloseTo(3, 12)
    expect(contrastRatio(1, 0.3)).toBeCloseTo(3, 12)
  })
})

describe('reflectance contrast', () => {
  // ADAAG 1991 (amended to 2002), A4.30.5: (B1 - B2) / B1; worked by hand: (85 - 10) / 85
  test('is the difference over the lighter', () => {
    expect(reflectanceContrast(0.85, 0.1)).toBeCloseTo(75 / 85, 12)
    expect(valuesOf(on({ lrv: 10 }, { lrv: 85 }), 'contrast.reflectance', SEEN)[0]).toBeCloseTo(75 / 85, 12)
  })

  test('is nothing between two black areas', () => expect(reflectanceContrast(0, 0)).toBe(0))
})

test('a colour that is not given is asked for where it would be added', () => {
  const pointers = (sign: ReturnType<typeof on>) =>
    measured(sign, 'contrast.characters', SEEN).gaps.map((gap) => gap.ask?.pointer)
  expect(pointers(on(undefined, '#ffffff'))).toEqual(['/sign/lettering/0/colour'])
  expect(pointers(on(undefined, undefined))).toEqual(['/sign/lettering/0/colour', '/sign/panel/colour'])
})
