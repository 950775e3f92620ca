import { describe, expect, it } from 'vitest'
import { combine } from '../../src/sign/combine.js'
import { SignDescription } from '../../src/sign/description.js'
import { describe as describeSign } from '../../src/sign/describe.js'
import { faultsOf } from '../../src/sign/faults.js'
import { isKnown, type Fact, type Sign } from '../../src/sign/sign.js'
import { described, plainTranslator } from './described.js'

const signOf = (json: object): Sign => describeSign(described(json), plainTranslator)
const valueOf = <T>(fact: Fact<T> | undefined): T | undefined => (isKnown(fact) ? fact.value : undefined)
const faults = (json: object): string[] => {
  const parsed = SignDescription.safeParse({ use: 'permanent-room', ...json })
  return parsed.success ? [] : faultsOf(parsed.error, SignDescription, '/sign').map(({ pointer }) => pointer ?? '')
}

/** All places and sizes are invented. An inch is 25.4 mm by definition. */
describe('the installation of a description', () => {
  const DOOR = { distance: 10, leafWidth: 36, swing: 'toward-reader', hinge: 'far' }

  it('has every length in millimetres', () => {
    const { installation } = signOf({
      units: 'in',
      installation: {
        innerCorner: 20,
        neighbouringDoors: [{ ...DOOR, corner: { value: 500, unit: 'mm' } }],
        door: { edgeToJamb: 6, handleHeight: 40, latchToCorner: 4 },
      },
    })
    expect(installation.innerCorner).toBeCloseTo(508, 9)
    expect(installation.neighbouringDoors).toEqual([
      { ...DOOR, distance: 254, leafWidth: expect.closeTo(914.4, 9) as number, corner: 500 },
    ])
    expect(valueOf(installation.edgeToJamb)).toBeCloseTo(152.4, 9)
    expect(valueOf(installation.handleHeight)).toBe(1016)
    expect(valueOf(installation.latchToCorner)).toBeCloseTo(101.6, 9)
  })

  it('tells no neighbours from nobody having said', () => {
    expect(signOf({}).installation.neighbouringDoors).toBeUndefined()
    expect(signOf({ installation: { neighbouringDoors: [] } }).installation.neighbouringDoors).toEqual([])
  })

  it('keeps what is said of walls, jambs and controls', () => {
    const { installation } = signOf({
      installation: { wallColour: { lrv: 70 }, jambs: 'both', controlSide: 'left', door: { wallAtLatch: false } },
    })
    expect(valueOf(installation.wallColour)).toEqual({ luminance: 0.7 })
    expect([valueOf(installation.jambs), valueOf(installation.controlSide)]).toEqual(['both', 'left'])
    expect(valueOf(installation.wallAtLatch)).toBe(false)
    expect(isKnown(installation.clearWall)).toBe(false)
  })

  it('is refused by name where a key or a kind is not known, and where doors are without end', () => {
    expect(faults({ installation: { neighbouringDoors: [{ ...DOOR, hinges: 1 }] } })).toEqual([
      '/sign/installation/neighbouringDoors/0/hinges',
    ])
    expect(faults({ installation: { neighbouringDoors: [{ ...DOOR, hinge: 'left' }] } })).toEqual([
      '/sign/installation/neighbouringDoors/0/hinge',
    ])
    expect(faults({ installation: { neighbouringDoors: Array.from({ length: 50 }, () => DOOR) } })).toEqual([
      '/sign/installation/neighbouringDoors',
    ])
    expect(faults({ panel: { edge: 'sharp' }, installation: { door: { leafs: 'two' } } })).toEqual([
      '/sign/panel/edge',
      '/sign/installation/door/leafs',
    ])
  })
})

describe('readings in units of their own', () => {
  it('take no other unit, and lengths take none of these', () => {
    const reading = (quantity: string, unit: string) => faults({ measured: [{ quantity, values: [1], unit }] })
    for (const [quantity, unit] of [
      ['sign.gloss', 'gloss-units'],
      ['sign.illuminance', 'lx'],
      ['braille.wordGap', 'count'],
      ['braille.variation', 'ratio'],
      ['braille.domeRadius', 'in'],
    ])
      expect(reading(quantity, unit)).toEqual([])
    for (const [quantity, unit] of [
      ['sign.gloss', 'lx'],
      ['sign.illuminance', 'mm'],
      ['braille.wordGap', 'ratio'],
      ['braille.variation', 'mm'],
      ['braille.domeRadius', 'count'],
    ])
      expect(reading(quantity, unit)).toEqual(['/sign/measured/0/unit'])
  })

  it('are not converted, whatever bare lengths are in', () => {
    const sign = signOf({
      units: 'in',
      measured: [
        { quantity: 'sign.illuminance', values: [300] },
        { quantity: 'braille.domeRadius', values: [0.03], expandedUncertainty: 0.001 },
        { quantity: 'braille.domeRadius', values: [0.78], unit: 'mm' },
      ],
    })
    const [lux, inches, millimetres] = sign.measured
    expect(lux?.values).toEqual([300])
    expect(inches?.values[0]).toBeCloseTo(0.762, 9)
    expect(inches?.expandedUncertainty).toBeCloseTo(0.0254, 9)
    expect(millimetres?.values).toEqual([0.78])
  })
})

describe('beside a drawing', () => {
  it('the description adds what no drawing shows', () => {
    const drawn = signOf({
      panel: { width: 200, height: 100 },
      lettering: [{ text: 'ROOM' }],
      braille: [{ text: 'room' }],
      pictograms: [{ meaning: 'toilet' }],
      borders: [{ box: { x: 0, y: 0, width: 200, height: 100 } }],
    })
    const sign = combine(
      drawn,
      signOf({
        panel: { edge: 'rounded' },
        lettering: [{ strokeThicknessAtBase: 3, wordSpacing: 12, alignment: 'centred' }],
        braille: [{ alignment: 'flush-left' }],
        pictograms: [{ shape: 'circle', circleDiameter: 305, figureHeight: 90 }],
        borders: [{ box: { x: 0, y: 0, width: 200, height: 100 }, colour: 'white' }],
        installation: { clearWall: 80 },
      }),
    )
    expect(valueOf(sign.panel.edge)).toBe('rounded')
    const [set] = sign.lettering
    expect([set?.strokeThicknessAtBase, set?.wordSpacing].map(valueOf)).toEqual([3, 12])
    expect([valueOf(set?.alignment), valueOf(sign.braille[0]?.alignment)]).toEqual(['centred', 'flush-left'])
    expect(valueOf(sign.pictograms[0]?.symbol.circleDiameter)).toBe(305)
    expect(valueOf(sign.pictograms[0]?.figureHeight)).toBe(90)
    expect(valueOf(sign.borders[0]?.colour)?.luminance).toBeCloseTo(1, 9)
    expect(valueOf(sign.installation.clearWall)).toBe(80)
    expect(sign.assumptions.filter(({ about }) => about === 'conflict')).toEqual([])
  })
})
