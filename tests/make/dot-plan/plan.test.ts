import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../../src/braille/engine.js'
import { readSign } from '../../../src/check.js'
import { lowParts } from '../../../src/make/dot-plan/head.js'
import { indexOf, MOST_PAIRS, precedenceOf } from '../../../src/make/dot-plan/precedence.js'
import { inputOfSign, planDots } from '../../../src/make/dot-plan/plan.js'
import { groupsOfPoints, MOST_READ } from '../../../src/make/dot-plan/point-groups.js'
import { MOST_DOTS, Points, type PlanSettings } from '../../../src/make/dot-plan/schema.js'
import { Refusal } from '../../../src/refusal.js'
import { SignDescription } from '../../../src/sign/description.js'
import { POTTERY_ROOM } from '../../../src/sign/examples.js'
import { DOT, HEAD, MACHINE, picture, points, travelOf } from './pictures.js'

/** What a plan says beyond its order: time, volume, cartridges, warnings. Sizes of heads and signs are invented. */

const translator = createTranslator()
const SETTINGS: PlanSettings = { head: HEAD, machine: MACHINE, dot: DOT, cartridge: { dots: 1000 } }
const plan = (dots: readonly [number, number][], more: PlanSettings = {}) =>
  planDots({ dots: points(dots), of: 'points' }, { ...SETTINGS, ...more })

const CHECK = {
  standards: ['us-ada-2010'],
  options: { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' },
} as const
const signOf = (svg: string) =>
  readSign({ ...CHECK, standards: [...CHECK.standards], drawing: new TextEncoder().encode(svg) }, translator)

/** “in” in uncontracted braille, in mm, on a panel of 60 by 50 with a raised bar beside it. */
const drawn = (bar: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="80mm" height="70mm" viewBox="0 0 80 70">
<rect id="panel" x="10" y="10" width="60" height="50" fill="#eee"/>${bar}<g id="braille">${[
    [32.4, 40],
    [30, 42.4],
    [36.2, 40],
    [38.6, 40],
    [38.6, 42.4],
    [36.2, 44.8],
  ]
    .map(([x, y]) => `<circle cx="${x}" cy="${y}" r="0.775"/>`)
    .join('')}</g></svg>`
const warned = (svg: string, more: PlanSettings = {}) =>
  planDots(inputOfSign(signOf(svg), true), { ...SETTINGS, ...more }).warnings.map(({ kind, count }) => [kind, count])

describe('the volume', () => {
  it('is that of spherical caps: V = πh(3a² + h²)/6', () => {
    // By hand for a base of 1.55 mm and a height of 0.7 mm: 0.8400 mm³.
    const { volume } = plan(picture(36))
    expect(volume).toBeCloseTo((36 * Math.PI * 0.7 * (3 * 0.775 ** 2 + 0.7 ** 2)) / 6, 9)
    expect((volume ?? 0) / 36).toBeCloseTo(0.84, 3)
  })

  it('is not told when nobody said how high the dots stand', () => {
    const { volume, assumptions } = plan(picture(9), { dot: { baseDiameter: 1.5 } })
    expect(volume).toBeNull()
    expect(assumptions.map(({ text }) => text).join()).toContain('dot.height')
  })
})

describe('the time', () => {
  it('is every move at its rate and the dwell of each dot, worked out by hand', () => {
    // Two dots 30 mm apart: 30 mm at 50 mm/s, four times 2.5 mm at 1000 mm/min, two dwells.
    const two: [number, number][] = [
      [0, 0],
      [30, 0],
    ]
    expect(plan(two).seconds).toBeCloseTo(30 / 50 + (4 * 2.5 * 60) / 1000 + 0.4, 9)
  })

  it('with ramps is longer: up to the rate and down from it, or two ramps on a short way', () => {
    // At 100 mm/s² the rate of 50 mm/s takes 25 mm of ramps: 30 mm take 30/50 + 50/100 s, and 4 mm take 2·√(4/100) s.
    const seconds = (apart: number) =>
      plan(
        [
          [0, 0],
          [apart, 0],
        ],
        { machine: { ...MACHINE, acceleration: 100 } },
      ).seconds
    const setting = seconds(30) - (30 / 50 + 50 / 100)
    expect(seconds(4) - setting).toBeCloseTo(2 * Math.sqrt(4 / 100), 9)
    expect(setting).toBeGreaterThan(plan([[0, 0]]).seconds * 2)
  })

  it('is near that of practice: 4835 dots of one picture took about an hour and a half (common practice, no source)', () => {
    // An eighth of an inch of plunge; rates and dwell that give the 1.1 s a dot are invented.
    const settings: PlanSettings = {
      head: { ...HEAD, lift: 4, plunge: 3.175 },
      machine: { travelRate: 1000, plungeRate: 600, dwell: 0.2 },
    }
    const { seconds, baselineSeconds } = plan(picture(4835), settings)
    expect(seconds / 4835).toBeGreaterThan(0.8)
    expect(seconds).toBeLessThan(5400)
    expect(baselineSeconds).toBeGreaterThan(seconds)
  })
})

describe('cartridges', () => {
  it('hold no more than they do, and leave no dot out', () => {
    const { cartridges } = plan(picture(250), { cartridge: { dots: 60 } })
    // 250 dots, 60 a cartridge: no more of them than there must be.
    expect(cartridges).toHaveLength(5)
    expect(cartridges[0].from).toBe(0)
    expect(cartridges.at(-1)?.to).toBe(249)
    cartridges.forEach(({ from, to, dots, volume }, i) => {
      expect(dots).toBe(to - from + 1)
      expect(dots).toBeLessThanOrEqual(60)
      expect(volume).toBeCloseTo(dots * 0.84, 2)
      if (i > 0) expect(from).toBe(cartridges[i - 1].to + 1)
    })
  })

  it('are changed between words where the order allows it', () => {
    const words: [number, number][] = [0, 24.8, 49.6, 74.4].flatMap((left) =>
      [0, 6.2, 12.4].flatMap((cell) => [0, 2.4, 4.8].map((y): [number, number] => [left + cell, y])),
    )
    const groups = groupsOfPoints(points(words), translator)
    expect(new Set(groups?.word).size).toBe(4)
    expect(new Set(groups?.cell).size).toBe(12)
    const { cartridges, warnings } = planDots(
      { dots: points(words), groups, of: 'points' },
      { ...SETTINGS, cartridge: { dots: 20 } },
    )
    expect(cartridges.map(({ dots, after }) => [dots, after])).toEqual([
      [18, 'word'],
      [18, 'end'],
    ])
    expect(warnings).toEqual([])
  })

  it('know nothing of the words of more points than are read', () => {
    expect(groupsOfPoints(points(picture(MOST_READ + 1)), translator)).toBeUndefined()
  })

  it('that cannot but be changed inside a cell say so', () => {
    const cell: [number, number][] = [
      [0, 0],
      [0, 2.4],
      [0, 4.8],
      [2.4, 0],
    ]
    const groups = groupsOfPoints(
      points([...cell, ...cell.map(([x, y]): [number, number] => [x + 6.2, y])]),
      translator,
    )
    const one = planDots({ dots: points(cell), groups, of: 'points' }, { ...SETTINGS, cartridge: { dots: 3 } })
    expect(one.warnings.map(({ kind, count }) => [kind, count])).toEqual([['split-in-cell', 1]])
    expect(plan(picture(20), { cartridge: { dots: 15 } }).warnings.map(({ kind }) => kind)).toEqual(['split-unknown'])
  })
})

describe('warnings', () => {
  it('none, where the head has room', () => {
    expect(warned(drawn(''))).toEqual([])
  })

  it('of a wall that the tip meets, and of none that it passes by', () => {
    // The bar ends 0.4 mm, or 0.6 mm, from the middle of the leftmost dot, at x = 30; the tip is 0.5 mm wide to each side.
    const bar = (x: number) => `<path data-part="raised" d="M${x - 3} 20h3v30h-3z"/>`
    expect(warned(drawn(bar(29.6)))).toEqual([['near-wall', 1]])
    expect(warned(drawn(bar(29.4)))).toEqual([])
  })

  it('of a wall under a low body, but not when the body passes above it', () => {
    const bar = '<path data-part="raised" d="M24 20h3v30h-3z"/>'
    const head = { ...HEAD, bodyDiameter: 6.4, bodyClearance: 2, offset: { x: 0, y: 0 } }
    expect(warned(drawn(bar), { head }).filter(([kind]) => kind === 'near-wall')).toEqual([['near-wall', 1]])
    expect(warned(drawn(bar), { head: { ...head, bodyClearance: 3 } })).toEqual([])
  })

  it('of dots over the edge of the panel', () => {
    const narrow = drawn('').replace('width="60"', 'width="29"')
    // The reading of the drawing, too, doubts what lies over the edge.
    expect(warned(narrow)).toEqual([
      ['near-edge', 2],
      ['unread', 1],
    ])
  })

  it('of a tip that goes below the surface', () => {
    expect(warned(drawn(''), { head: { ...HEAD, plunge: 3.2 } })).toEqual([['below-surface', 6]])
  })

  it('of dots whose bases run together, and of a tip that meets a dot either way', () => {
    const near = (apart: number) =>
      plan([
        [0, 0],
        [apart, 0],
      ]).warnings.map(({ kind }) => kind)
    expect(near(1.5)).toEqual(['dots-merge'])
    expect(near(1.2)).toEqual(['dots-merge', 'tip-over-dot'])
    expect(near(1.6)).toEqual([])
  })
})

describe('heads that no order helps', () => {
  const faults = (head: object) => {
    try {
      plan(picture(5), { head: { ...HEAD, ...head } })
    } catch (error) {
      if (error instanceof Refusal) return error.errors.map(({ pointer }) => pointer)
    }
    return []
  }
  it('are refused with the place to mend', () => {
    expect(faults({ lift: DOT.height })).toContain('/head/lift')
    expect(faults({ lift: DOT.height + 0.01, plunge: 0.5 })).toEqual([])
    expect(faults({ approach: { angle: 0, length: 2, height: 2.6 } })).toEqual(['/head/approach/height'])
  })
})

describe('what was not looked at', () => {
  const said = (input: Parameters<typeof planDots>[0]) =>
    planDots(input, SETTINGS)
      .assumptions.map(({ about }) => about)
      .filter((about) => about === 'walls' || about === 'panel')

  it('is said: of bare points all that is beside them', () => {
    expect(said({ dots: points(picture(5)), of: 'points' })).toEqual(['walls', 'panel'])
  })

  it('is said of characters whose outlines are not known', () => {
    expect(said(inputOfSign(signOf(drawn('')), true))).toEqual([])
    const described = readSign(
      { ...CHECK, standards: ['us-ada-2010'], sign: SignDescription.parse(POTTERY_ROOM) },
      translator,
    )
    expect(said(inputOfSign(described, false))).toEqual(['walls'])
  })
})

describe('limits', () => {
  const refusal = (run: () => unknown): Partial<Refusal> | undefined => {
    try {
      run()
      return undefined
    } catch (error) {
      if (error instanceof Refusal) return { type: error.type, excess: error.excess }
      throw error
    }
  }

  it('of dots', () => {
    const dots = new Array<{ x: number; y: number }>(MOST_DOTS + 1).fill({ x: 0, y: 0 })
    const excess = { limit: MOST_DOTS, actual: MOST_DOTS + 1 }
    expect(refusal(() => planDots({ dots, of: 'points' }, SETTINGS))).toEqual({ type: 'too-complex', excess })
    const place: [number, number][] = new Array<[number, number]>(MOST_DOTS).fill([0, 0])
    expect(Points.safeParse(place).success).toBe(true)
    expect(Points.safeParse([...place, [0, 0]]).success).toBe(false)
  })

  it('of pairs that the head reaches over: just under and just over', () => {
    // All in one place: each dot meets them all, itself too.
    const pairs = (count: number) => {
      const dots = { x: new Float64Array(count), y: new Float64Array(count) }
      return refusal(() => precedenceOf(dots, lowParts(HEAD), DOT.baseDiameter, indexOf(dots)))
    }
    const most = Math.floor(Math.sqrt(MOST_PAIRS))
    expect(pairs(most)).toBeUndefined()
    expect(pairs(most + 1)).toMatchObject({ type: 'too-complex', excess: { limit: MOST_PAIRS } })
  })
})

describe('the dots of a sign', () => {
  it('are those of its braille, from the corner of its panel', () => {
    const { sequence, zero, dots, dot } = planDots(inputOfSign(signOf(drawn('')), true), { head: HEAD })
    expect(dots).toBe(6)
    expect(zero.of).toBe('panel')
    expect(zero.x).toBeCloseTo(10, 9)
    expect(zero.y).toBeCloseTo(10, 9)
    expect(dot.baseDiameter).toBeCloseTo(1.55, 6)
    expect(travelOf(sequence)).toBeGreaterThan(0)
    expect(sequence.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).sort()).toEqual(
      ['30.0 42.4', '32.4 40.0', '36.2 40.0', '36.2 44.8', '38.6 40.0', '38.6 42.4'].sort(),
    )
  })
})
