import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../../src/braille/engine.js'
import { signOfProgram } from '../../../src/make/gcode/sign.js'
import { isKnown } from '../../../src/sign/sign.js'

/** Programs as signs. “in” in uncontracted braille (UEB): i is dots 2 and 4, n dots 1, 3, 4 and 5; spacings of Table 703.3.1, invented places. */

const translator = createTranslator()
const sign = (program: string, isDescribed = false, dotBaseDiameter?: number) =>
  signOfProgram(
    new TextEncoder().encode(program),
    { use: 'permanent-room', ...(dotBaseDiameter !== undefined && { dotBaseDiameter }) },
    isDescribed,
    translator,
  )

const DOTS = [
  [2.4, 0],
  [0, 2.4],
  [6.2, 0],
  [8.6, 0],
  [8.6, 2.4],
  [6.2, 4.8],
]
/** @param top Y of the upper row, up */
const program = (left: number, top: number) =>
  [
    'G21 G90',
    ...DOTS.map(([x, y], i) => `${i === 0 ? 'G81 Z0.5 R3 ' : ''}X${(left + x).toFixed(1)} Y${(top - y).toFixed(1)}`),
  ].join('\n')

describe('a program as a sign', () => {
  it('reads as its braille, counted from the corner of the panel', () => {
    const { braille, assumptions } = sign(program(20, -40))
    expect(braille[0].lines[0].text).toBe('in')
    expect(braille[0].lines[0].dots.map(({ x, y }) => [x, y])).toContainEqual([22.4, 40])
    expect(isKnown(braille[0].dotSpacing) && braille[0].dotSpacing.value).toBeCloseTo(2.4, 6)
    expect(assumptions.map(({ text }) => text)).toEqual([
      'The zero of the program is taken for the top left corner of the panel, with Y upwards.',
    ])
  })

  it('reads the same with its zero below and to the right of the dots, and says that its place is not known', () => {
    const { braille, assumptions } = sign(program(-80, 60))
    expect(braille[0].lines[0].text).toBe('in')
    expect(assumptions[0].text).toContain('is not the top left corner of the panel')
  })

  it('leaves open all that a program does not show, unless a description says it', () => {
    expect(sign(program(20, -40)).unread.map(({ couldBe }) => couldBe)).toEqual([
      ['lettering', 'pictogram', 'border', 'colour'],
    ])
    expect(sign(program(20, -40), true).unread).toEqual([])
  })

  it('does not know how large the dots become, unless that is said', () => {
    expect(sign(program(20, -40)).braille[0].dotBaseDiameter).toMatchObject({ unknown: 'missing-fact' })
    expect(sign(program(20, -40), false, 1.55).braille[0].dotBaseDiameter).toMatchObject({
      value: 1.55,
      basis: 'declared',
    })
  })

  it('points to the lines of the program', () => {
    expect(sign(program(20, -40)).braille[0].place.source?.line).toBeGreaterThan(1)
  })
})
