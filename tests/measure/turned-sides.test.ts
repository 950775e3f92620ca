import { describe, expect, test } from 'vitest'
import { extentOfField, extentOfFigure } from '../../src/measure/field.js'
import { extentOfPanel, frameOf, isLevelWith, LEVEL_WITHIN } from '../../src/measure/frame.js'
import { lyingOf } from '../../src/measure/lie.js'
import { leftEdge, lowerEdge, panelSide } from '../../src/measure/panel-edges.js'
import { declared, missing, type Known, type Lettering, type Pictogram, type Sign } from '../../src/sign/sign.js'
import type { Box } from '../../src/geometry/box.js'
import { drawn, drawnSign, rectangle } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'

/** Sides and directions of signs that are drawn turned, by plain geometry. All sizes are invented. */

const WIDE = { x: 0, y: 0, width: 260, height: 150 }

/** The pump room's sign drawn on a panel of 260 by 150 mm, its characters lying at `degrees`, the panel itself at `sides`. */
function lying(degrees: number, sides?: number, more: Partial<Sign> = {}): Sign {
  const sign = drawnSign()
  const turned = sides === undefined ? {} : { turned: { rotation: sides, corners: rectangle(0, 0, 260, 150) } }
  return {
    ...sign,
    panel: { ...sign.panel, place: { element: 'panel', box: WIDE }, width: drawn(260), height: drawn(150), ...turned },
    lettering: sign.lettering.map((set) => ({ ...set, lie: { rotation: degrees, mirrored: false } })),
    ...more,
  }
}
const side = (sign: Sign, of: 'width' | 'height') => {
  const fact = panelSide(sign, of)
  return 'value' in fact ? fact.value : fact.unknown
}

describe('a side of the panel', () => {
  test.each([
    [0, 260, 150],
    [90, 150, 260],
    [180, 260, 150],
    [270, 150, 260],
    [-90, 150, 260],
  ])('is the reader’s, with the characters at %d degrees', (degrees, width, height) => {
    expect([side(lying(degrees), 'width'), side(lying(degrees), 'height')]).toEqual([width, height])
  })

  test('is told from the panel’s own turn', () => {
    expect(side(lying(30, 30), 'width')).toBe(260)
    expect(side(lying(120, 30), 'width')).toBe(150)
    expect(side(lying(120, 30), 'height')).toBe(260)
  })

  test('is not told where the characters run neither along nor across it', () => {
    expect(side(lying(15), 'width')).toBe('unreadable')
    expect(side(lying(0, 15), 'height')).toBe('unreadable')
  })

  test('that a client gives is the reader’s already', () => {
    const sign = lying(90)
    expect(side({ ...sign, panel: { ...sign.panel, width: declared(300) } }, 'width')).toBe(300)
    expect(side({ ...sign, panel: { ...sign.panel, width: missing() } }, 'width')).toBe('missing-fact')
  })

  test('that a client gives is not the other one, where the sign is drawn lying on its side', () => {
    const wide = { ...lying(90), panel: { ...lying(90).panel, width: declared(150) } }
    expect([side(wide, 'width'), side(wide, 'height')]).toEqual([150, 260])
    const high = { ...lying(270), panel: { ...lying(270).panel, height: declared(270) } }
    expect([side(high, 'width'), side(high, 'height')]).toEqual([150, 270])
    const unplaced = { ...wide, panel: { ...wide.panel, place: { element: 'panel' } } }
    expect(side(unplaced, 'height')).toBe('unreadable')
  })
})

describe('an edge of the panel', () => {
  const bottom = (sign: Sign) => lowerEdge(sign)
  const left = (sign: Sign) => leftEdge(sign)

  test('is that of the drawing as the reader has it', () => {
    expect(bottom(lying(0))).toEqual({ value: 150, basis: 'drawn' })
    expect(left(lying(0))).toEqual({ value: 0, basis: 'declared' })
    // read along the drawing's y axis: what is on the drawing's left is the reader's bottom
    expect(bottom(lying(90))).toEqual({ value: 0, basis: 'drawn' })
    expect(left(lying(90))).toEqual({ value: 0, basis: 'declared' })
    expect(left(lying(180))).toEqual({ value: -260, basis: 'declared' })
    expect(bottom(lying(180))).toEqual({ value: 0, basis: 'drawn' })
  })

  test('goes by a described height from where the top is drawn', () => {
    const sign = lying(0)
    const described = { ...sign, panel: { ...sign.panel, height: declared(170) } }
    expect(
      bottom({ ...described, panel: { ...described.panel, place: { element: 'panel', box: { ...WIDE, y: 10 } } } }),
    ).toEqual({ value: 180, basis: 'declared' })
  })

  test('is not told where the sign is drawn at an angle', () => {
    for (const edge of [bottom, left]) expect(edge(lying(15))).toMatchObject({ unknown: 'unreadable' })
    const bare = (degrees: number) => {
      const sign = lying(degrees)
      return { ...sign, panel: { ...sign.panel, place: { element: 'panel' } } }
    }
    for (const edge of [bottom, left]) expect(edge(bare(15))).toMatchObject({ unknown: 'unreadable' })
    expect(bottom(bare(90))).toEqual(drawn(150))
    expect(left(bare(90))).toMatchObject({ unknown: 'missing-fact', why: 'no panel is drawn' })
  })

  test('of a description is where its places are counted from', () => {
    const sign = signOf(PUMP_ROOM)
    const bare = { ...sign, panel: { ...sign.panel, place: { element: 'panel' } } }
    expect(left(bare)).toEqual({ value: 0, basis: 'declared' })
    expect(bottom(bare)).toMatchObject({ value: 150 })
    const source = { line: 1, column: 1 }
    expect(left({ ...sign, panel: { ...sign.panel, place: { element: 'panel', source } } })).toEqual({
      value: 0,
      basis: 'drawn',
    })
    expect(left({ ...lying(0), panel: { ...lying(0).panel, place: { element: 'panel', box: WIDE, source } } })).toEqual(
      {
        value: 0,
        basis: 'drawn',
      },
    )
  })
})

describe('the frame of a sign', () => {
  test('is upright within half a degree of a quarter turn, and turned beyond', () => {
    expect(frameOf(lying(0.5)).rotation).toBe(0)
    expect(frameOf(lying(0.51)).rotation).toBe(0.51)
    expect(frameOf(lying(89.6)).rotation).toBe(90)
    expect(frameOf(lying(30.4, 30)).rotation).toBe(30)
    expect(frameOf(lying(-90)).rotation).toBe(-90)
  })

  test('turns and mirrors points as a reader sees them', () => {
    const at = (sign: Sign) => frameOf(sign).of({ x: 3, y: 5 })
    expect(at(lying(0))).toEqual({ x: 3, y: 5 })
    expect(at(lying(90))).toEqual({ x: 5, y: -3 })
    expect(at(lying(180))).toEqual({ x: -3, y: -5 })
    expect(at(lying(270))).toEqual({ x: -5, y: 3 })
    expect(at(lying(-90))).toEqual({ x: -5, y: 3 })
    const tilted = at(lying(30))
    expect(tilted.x).toBeCloseTo(3 * Math.cos(Math.PI / 6) + 5 * Math.sin(Math.PI / 6), 12)
    expect(tilted.y).toBeCloseTo(5 * Math.cos(Math.PI / 6) - 3 * Math.sin(Math.PI / 6), 12)
    const sign = lying(0)
    const mirrored = { ...sign, lettering: sign.lettering.map((l) => ({ ...l, lie: { rotation: 0, mirrored: true } })) }
    expect(at(mirrored)).toEqual({ x: -3, y: 5 })
  })

  test('goes by what is read by touch, and by the braille where no character lies anywhere', () => {
    const [set] = lying(0).lettering
    const sight: Lettering = { ...set, part: 'visual', lie: { rotation: 0, mirrored: false } }
    const touch: Lettering = { ...set, part: 'raised', lie: { rotation: 90, mirrored: false } }
    expect(frameOf({ ...lying(0), lettering: [sight, touch] }).rotation).toBe(90)
    expect(frameOf({ ...lying(0), lettering: [touch, sight] }).rotation).toBe(90)
    const sign = drawnSign()
    expect(frameOf({ ...sign, braille: sign.braille.map((b) => ({ ...b, rotation: 90 })) }).rotation).toBe(90)
  })

  test('runs along a panel within a degree', () => {
    expect(isLevelWith(90 + LEVEL_WITHIN - 1e-9, 0)).toBe(true)
    expect(isLevelWith(90 + LEVEL_WITHIN + 1e-9, 0)).toBe(false)
    expect(isLevelWith(0, 89)).toBe(true)
    expect(isLevelWith(45, 0)).toBe(false)
    const { panel } = lying(0)
    const of = (degrees: number, sides?: number) => extentOfPanel(lying(degrees, sides).panel, frameOf(lying(degrees)))
    expect(of(0)).toEqual({ left: 0, right: 260, top: 0, bottom: 150 })
    expect(of(15)).toBeUndefined()
    expect(of(15, 15)).toBeDefined()
    expect(of(15, 30)).toBeUndefined()
    expect(extentOfPanel({ ...panel, place: { element: 'panel' } }, frameOf(lying(0)))).toBeUndefined()
  })
})

describe('braille beside characters', () => {
  const [block] = drawnSign().braille
  const [set] = drawnSign().lettering
  const at = (dots: number, letters: number, mirrored = [false, false]) =>
    lyingOf({ ...block, rotation: dots, mirrored: mirrored[0] }, [
      { ...set, lie: { rotation: letters, mirrored: mirrored[1] } },
    ])

  // a quarter turn is the nearest that is not the same direction: half of it, and one and a half, are between (our own figures)
  test.each([
    [0, 0, 'alike'],
    [45, 0, 'alike'],
    [46, 0, 'askew'],
    [0, 46, 'askew'],
    [135, 0, 'askew'],
    [136, 0, 'upside-down'],
    [0, 180, 'upside-down'],
    [350, 10, 'alike'],
    [10, 350, 'alike'],
    [-170, 170, 'alike'],
    [300, 240, 'askew'],
    [270, 80, 'upside-down'],
  ])('at %d and %d degrees lies %s', (dots, letters, expected) => expect(at(dots, letters)).toBe(expected))

  test('may be mirrored where they are not, or the other way round', () => {
    expect(at(0, 0, [true, false])).toBe('mirrored')
    expect(at(0, 0, [false, true])).toBe('letters-mirrored')
    expect(at(0, 0, [true, true])).toBe('alike')
  })

  test('of which nothing is known to lie anywhere lies as it is, if it is not mirrored', () => {
    expect(lyingOf(block, [{ ...set, lie: undefined }])).toBe('alike')
    expect(lyingOf({ ...block, mirrored: true }, [])).toBe('unknown')
    const second = { ...set, lie: { rotation: 180, mirrored: false } }
    expect(lyingOf(block, [{ ...set, lie: undefined }, second])).toBe('upside-down')
  })
})

describe('the field of a pictogram', () => {
  const box: Box = { x: 10, y: 20, width: 100, height: 160 }
  const [cos, sin] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)]
  const tilt = rectangle(0, 0, 100, 160).map(({ x, y }) => ({ x: cos * x - sin * y, y: sin * x + cos * y }))
  const pictogram = (more: Partial<Pictogram> = {}): Pictogram => {
    const [one] = signOf(PUMP_ROOM, { pictograms: [{ meaning: 'pump' }] }).pictograms
    return { ...one, ...more }
  }
  const field: Known<Box> = drawn(box)
  const outlines = { field: tilt, figure: [rectangle(30, 40, 20, 30)] }
  const sizeOf = (extent: ReturnType<typeof extentOfField>) =>
    extent && [extent.right - extent.left, extent.bottom - extent.top]

  test('is its box where the sign hangs straight, turned as the reader has it', () => {
    expect(sizeOf(extentOfField(pictogram(), field, frameOf(lying(0))))).toEqual([100, 160])
    expect(sizeOf(extentOfField(pictogram({ outlines }), field, frameOf(lying(90))))).toEqual([160, 100])
    expect(sizeOf(extentOfField(pictogram(), declared(box), frameOf(lying(0))))).toEqual([100, 160])
  })

  test('is told along its own sides where they run with the characters', () => {
    const [width, height] = sizeOf(extentOfField(pictogram({ outlines }), field, frameOf(lying(30, 30)))) ?? []
    expect(width).toBeCloseTo(100, 6)
    expect(height).toBeCloseTo(160, 6)
    expect(extentOfField(pictogram({ outlines }), field, frameOf(lying(15, 15)))).toBeUndefined()
  })

  test('that a client gives, or of which no outline is drawn, is its box all the same', () => {
    const frame = frameOf(lying(15, 15))
    expect(extentOfField(pictogram({ outlines }), declared(box), frame)).toBeDefined()
    expect(extentOfField(pictogram(), field, frame)).toBeDefined()
  })

  test('may be round: then it has no sides to run along', () => {
    const round = Array.from({ length: 90 }, (_, i) => ({
      x: 60 + 50 * Math.cos((i * Math.PI) / 45),
      y: 60 + 50 * Math.sin((i * Math.PI) / 45),
    }))
    const [width] =
      sizeOf(extentOfField(pictogram({ outlines: { ...outlines, field: round } }), field, frameOf(lying(15, 15)))) ?? []
    expect(width).toBeCloseTo(100, 0)
  })

  test('has a figure in it, of which the outline tells more than the box when it is turned', () => {
    const figure = { x: 30, y: 40, width: 20, height: 30 }
    expect(sizeOf(extentOfFigure(pictogram({ figure }), frameOf(lying(0))))).toEqual([20, 30])
    expect(sizeOf(extentOfFigure(pictogram({ figure, outlines }), frameOf(lying(90))))).toEqual([30, 20])
    const thin = {
      ...outlines,
      figure: [
        [
          { x: 0, y: 0 },
          { x: 10, y: 10 },
        ],
      ],
    }
    const [, height] = sizeOf(extentOfFigure(pictogram({ figure, outlines: thin }), frameOf(lying(45, 45)))) ?? []
    expect(height).toBeCloseTo(0, 9)
    expect(extentOfFigure(pictogram(), frameOf(lying(0)))).toBeUndefined()
  })
})
