import { describe, expect, it } from 'vitest'
import { combine } from '../../src/sign/combine.js'
import { describe as describeSign } from '../../src/sign/describe.js'
import { isKnown, type Border, type Sign } from '../../src/sign/sign.js'
import { described, plainTranslator } from './described.js'

/**
 * Places of a description are counted from the panel's top left corner, to the reader's right and down (the contract of the service). On a
 * drawing whose letters lie otherwise they are somewhere else. All sizes are invented.
 */

const signOf = (json: object): Sign => describeSign(described(json), plainTranslator)

const border = (x: number) => ({ box: { x, y: 5, width: 100, height: 90 }, width: 2 })
const DRAWN = {
  lettering: [{ text: 'KILN', baseline: { x: 20, y: 40 } }],
  braille: [{ text: 'kiln', origin: { x: 20, y: 60 }, dotSpacing: 2.4, cellSpacing: 6.9 }],
  borders: [border(5)],
}
/** The sign as if it were drawn, its letters lying at an angle. */
function lying(rotation: number, mirrored = false): Sign {
  const sign = signOf(DRAWN)
  return {
    ...sign,
    lettering: sign.lettering.map((set) => ({ ...set, lie: { rotation, mirrored } })),
    braille: sign.braille.map((block) => ({ ...block, rotation, mirrored })),
  }
}
const SAID = signOf({
  lettering: [{ text: 'KILN', baseline: { x: 30, y: 50 } }],
  braille: [{ text: 'kiln', origin: { x: 30, y: 70 }, dotSpacing: 2.4, cellSpacing: 6.9 }],
  pictograms: [{ meaning: 'kiln', field: { x: 10, y: 10, width: 40, height: 160 } }],
  borders: [border(7), border(11)],
})
const placesOf = ({ lettering, braille, pictograms, borders }: Sign) => ({
  letters: lettering.map(({ lines: [line] }) => isKnown(line.baseline) && line.baseline.value),
  cells: braille.map(({ lines: [line] }) => isKnown(line.baseline) && line.baseline.value.x),
  fields: pictograms.map(({ field }) => isKnown(field)),
  borders: borders.map(({ box }: Border) => box.x),
})

describe('places of a description', () => {
  it.each([0, 0.9, -0.9, 359.5])('win over a drawing that shows the sign upright, at %d degrees', (rotation) => {
    const sign = combine(lying(rotation), SAID)
    expect(placesOf(sign)).toEqual({ letters: [{ x: 30, y: 50 }], cells: [30], fields: [true], borders: [7, 11] })
    expect(sign.unread).toEqual([])
  })

  it.each([
    [90, false],
    [-90, false],
    [180, false],
    [17, false],
    [1.1, false],
    [0, true],
  ])('are left out beside one that shows it at %d degrees, mirrored: %s', (rotation, mirrored) => {
    const sign = combine(lying(rotation, mirrored), SAID)
    expect(placesOf(sign)).toEqual({ letters: [{ x: 20, y: 40 }], cells: [20], fields: [false], borders: [5] })
    // What is drawn nowhere may be anywhere.
    expect(sign.unread).toMatchObject([{ couldBe: ['border'] }])
    expect(sign.assumptions.filter(({ about }) => about === 'conflict').map(({ text }) => text)).toEqual([
      expect.stringContaining('places that the description gives are left out'),
    ])
  })

  it('are not spoken of where the description gives none', () => {
    const sign = combine(lying(90), signOf({ lettering: [{ text: 'KILN', relief: 0.9 }] }))
    expect(sign.assumptions.filter(({ about }) => about === 'conflict')).toEqual([])
    expect(placesOf(sign).letters).toEqual([{ x: 20, y: 40 }])
  })

  it('are left out beside a panel that is drawn turned, and not for a turn that nobody sees', () => {
    const upright = lying(0)
    const on = (rotation: number) => ({ ...upright, panel: { ...upright.panel, turned: { rotation, corners: [] } } })
    expect(placesOf(combine(on(17), SAID)).letters).toEqual([{ x: 20, y: 40 }])
    expect(placesOf(combine(on(0.01), SAID)).letters).toEqual([{ x: 30, y: 50 }])
  })
})
