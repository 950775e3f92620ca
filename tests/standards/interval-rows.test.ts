import { describe, expect, test } from 'vitest'
import { PUMP_ROOM, signOf, TWO_SETS, withValues } from '../measure/signs.js'
import { flipped, judgementOf } from '../judge/verdicts.js'
import { FIGURES, type Figure } from './ada-figures.js'

/** Every interval row at its ends, one step inside and one step outside, and no other row flips. Sizes beside the limits are invented. */

type Json = Record<string, unknown>

interface Case {
  base: Json
  /** What a description says when the quantity is `value` (mm or a share). */
  set: (value: number) => Record<string, unknown>
  /** Rows that hang on the same values and may flip with this one, with the reason beside the row below. */
  with?: string[]
  /** The verdict outside, where a condition is open. */
  outside?: 'undetermined'
  /** A value well inside, for rows whose base sign has none. */
  inside?: number
}

const letters = (key: string, n = 0) => `lettering.${n}.${key}`
const HEIGHT = 20
const STROKE = 2.6
const share =
  (key: string, of: number, n = 0) =>
  (value: number) => ({ [letters(key, n)]: value * of })
const own =
  (key: string, n = 0) =>
  (value: number) => ({ [letters(key, n)]: value })
const braille = (key: string) => (value: number) => ({ [`braille.0.${key}`]: value })

/** Characters of another height with stroke, gaps, lines and braille that keep their shares and distances. */
const scaled = (height: number): Record<string, unknown> => ({
  [letters('characterHeight')]: height,
  [letters('strokeThickness')]: 0.13 * height,
  [letters('baselineSpacing')]: 1.5 * height,
  [letters('baseline')]: { x: 20, y: 60 },
  'braille.0.origin': { x: 20, y: 60 + 1.5 * height + 20 },
  panel: { width: 600, height: 220, finish: 'matte', colour: '#ffffff' },
})

const LANDING = withValues(PUMP_ROOM, { use: 'elevator-landing', ...scaled(50.8) })

const BEVELLED = withValues(PUMP_ROOM, { 'lettering.0.section': 'bevelled', 'lettering.0.characterSpacingAtBase': 2 })

/** A raised frame `clear` mm below the last line of braille (or left of the text), everything else far away. */
const DOT_RADIUS = 1.55 / 2
const LOWEST_DOTS = 95 + 10.1 + 2 * 2.4
const FRAME_WIDTH = 2
const frame = (box: Json) => ({ borders: [{ box, width: FRAME_WIDTH, raised: true }] })
const frameBelow = (clear: number) =>
  frame({ x: -100, y: -100, width: 600, height: 100 + LOWEST_DOTS + DOT_RADIUS + clear + FRAME_WIDTH })
const frameLeft = (clear: number) => frame({ x: 20 - clear - FRAME_WIDTH, y: -100, width: 600, height: 600 })

const INFORMATION = withValues(PUMP_ROOM, {
  use: 'informational',
  lettering: [{ ...(TWO_SETS.lettering as Json[])[0] }],
  braille: [],
  'installation.panelBottomHeight': 1300,
})

const FIELD = { x: 10, y: 10, width: 160, height: 160 }
const WITH_PICTOGRAM = withValues(PUMP_ROOM, {
  panel: { width: 260, height: 400, finish: 'matte', colour: '#ffffff' },
  pictograms: [{ meaning: 'pump', field: FIELD, colour: '#000000', fieldColour: '#ffffff' }],
  'lettering.0.baseline': { x: 20, y: 220 },
  'braille.0.origin': { x: 20, y: 280 },
  'installation.panelBottomHeight': 1150,
})
const SYMBOL = withValues(WITH_PICTOGRAM, { use: 'symbol-of-accessibility' })

/** Luminance of the darker side for a contrast ratio against a background of luminance 0.8, as a reflectance in percent. */
const LIGHT = 80
const darkFor = (ratio: number) => ({ lrv: ((LIGHT / 100 + 0.05) / ratio - 0.05) * 100 })

const CASES: Record<string, Case> = {
  // Exactly 2 in satisfies both 407.2.3.1 and 703.2.5, so either side of it one of them fails; 407.2.3.2 has the same figure.
  '407.2.3.1/character-height': {
    base: LANDING,
    set: scaled,
    with: ['703.2.5/character-height', '407.2.3.2/character-height'],
  },
  '407.2.3.2/character-height': {
    base: LANDING,
    set: scaled,
    with: ['703.2.5/character-height', '407.2.3.1/character-height'],
    outside: 'undetermined',
  },
  '703.2.1/relief': { base: PUMP_ROOM, set: own('relief') },
  '703.2.4/proportion': { base: PUMP_ROOM, set: own('characterProportion') },
  '703.2.5/character-height': { base: PUMP_ROOM, set: scaled },
  '703.2.6/stroke-thickness': { base: PUMP_ROOM, set: share('strokeThickness', HEIGHT) },
  '703.2.6/stroke-thickness-min': { base: PUMP_ROOM, set: share('strokeThickness', HEIGHT) },
  '703.2.7/character-spacing-min': { base: PUMP_ROOM, set: own('characterSpacing') },
  '703.2.7/character-spacing-max': { base: PUMP_ROOM, set: share('characterSpacing', STROKE) },
  '703.2.7/character-spacing-base-min': { base: BEVELLED, set: own('characterSpacingAtBase') },
  // A description gives the left end only: inside the limit the right end leaves the row open. The braille starts at the same x.
  '703.2.7/border-clearance': {
    base: withValues(PUMP_ROOM, frameLeft(15)),
    set: frameLeft,
    with: ['703.3.2/border-clearance'],
  },
  '703.2.8/line-spacing': { base: PUMP_ROOM, set: share('baselineSpacing', HEIGHT) },
  '703.3.1/dot-base-diameter': { base: PUMP_ROOM, set: braille('dotBaseDiameter') },
  '703.3.1/dot-spacing': { base: PUMP_ROOM, set: braille('dotSpacing') },
  '703.3.1/cell-spacing': { base: PUMP_ROOM, set: braille('cellSpacing') },
  '703.3.1/dot-height': { base: PUMP_ROOM, set: braille('dotHeight') },
  '703.3.1/line-spacing': { base: PUMP_ROOM, set: braille('lineSpacing') },
  '703.3.2/character-clearance': {
    base: PUMP_ROOM,
    set: (clear) => ({ 'braille.0.origin': { x: 20, y: 70 + clear + DOT_RADIUS } }),
  },
  '703.3.2/border-clearance': { base: withValues(PUMP_ROOM, frameBelow(15)), set: frameBelow },
  '703.4.1/lowest-baseline': {
    base: PUMP_ROOM,
    set: (height) => ({ 'installation.panelBottomHeight': height - (150 - LOWEST_DOTS) }),
  },
  '703.4.1/highest-baseline': {
    base: PUMP_ROOM,
    set: (height) => ({ 'installation.panelBottomHeight': height - (150 - 40) }),
  },
  '703.4.2/floor-space': { base: PUMP_ROOM, set: (side) => ({ 'installation.door.latchToTextCentre': side / 2 }) },
  '703.5.1/contrast': {
    base: withValues(PUMP_ROOM, { 'panel.colour': { lrv: LIGHT } }),
    set: (ratio) => ({ [letters('colour')]: darkFor(ratio) }),
  },
  // Wherever the reflectances differ by 70 percent or a little less, the contrast ratio is below 3.
  '703.5.1/reflectance-contrast': {
    base: withValues(PUMP_ROOM, { 'panel.colour': { lrv: LIGHT } }),
    set: (contrast) => ({ [letters('colour')]: { lrv: LIGHT * (1 - contrast) } }),
    with: ['703.5.1/contrast'],
  },
  '703.5.4/proportion': { base: TWO_SETS, set: own('characterProportion') },
  '703.5.6/height-above-floor': {
    base: INFORMATION,
    set: (height) => ({ 'installation.panelBottomHeight': height - (150 - 70) }),
  },
  '703.5.7/stroke-thickness': { base: TWO_SETS, set: share('strokeThickness', HEIGHT) },
  '703.5.8/character-spacing': { base: TWO_SETS, set: share('characterSpacing', HEIGHT) },
  '703.5.9/line-spacing': { base: TWO_SETS, set: share('baselineSpacing', HEIGHT) },
  '703.6.1/field-height': { base: WITH_PICTOGRAM, set: (height) => ({ 'pictograms.0.field': { ...FIELD, height } }) },
  '703.6.2/contrast': {
    base: withValues(WITH_PICTOGRAM, { 'pictograms.0.fieldColour': { lrv: LIGHT } }),
    set: (ratio) => ({ 'pictograms.0.colour': darkFor(ratio) }),
  },
  '703.7.1/contrast': {
    base: withValues(SYMBOL, { 'pictograms.0.fieldColour': { lrv: LIGHT } }),
    set: (ratio) => ({ 'pictograms.0.colour': darkFor(ratio) }),
  },
  '307.4/headroom': {
    base: withValues(INFORMATION, { 'lettering.0.part': 'both', 'installation.panelBottomHeight': 2100 }),
    set: (height) => ({ 'installation.panelBottomHeight': height }),
    outside: 'undetermined',
  },
}

/** Rows that no value of a description decides: they are a person's to judge. */
const NOT_MEASURED = ['307.3/post-overhang']
/** Rows that stay open inside their limit, since a description gives one end of the characters only. */
const OPEN_INSIDE = ['703.2.7/border-clearance']

const STEP = { length: 0.01, share: 0.001 }
const ENDS = ['min', 'max'] as const

function endsOf({ inches, share }: Figure) {
  const ends = share ?? { min: inches?.min && inches.min * 25.4, max: inches?.max && inches.max * 25.4 }
  const step = share ? STEP.share : STEP.length
  return ENDS.flatMap((end) => {
    const at = ends[end]
    const inward = end === 'min' ? step : -step
    return at === undefined ? [] : [{ end, at, inside: at + inward, outside: at - inward }]
  })
}

describe.each(FIGURES.filter((f) => !NOT_MEASURED.includes(f.row)))('$row', (figure) => {
  const { row } = figure
  const { base, set, with: coupled = [], outside: beyond = 'fail' } = CASES[row]
  const sign = (value: number) => signOf(base, set(value))
  const inside = OPEN_INSIDE.includes(row) ? 'undetermined' : 'pass'

  test('the sign that the cases start from is inside', () =>
    expect(judgementOf(signOf(base), row).verdict).toBe(inside))

  test.each(endsOf(figure))('at the $end end and one step to either side', ({ at, inside: within, outside }) => {
    expect(judgementOf(sign(at), row)).toMatchObject({ verdict: inside })
    expect(judgementOf(sign(within), row)).toMatchObject({ verdict: inside })
    expect(judgementOf(sign(outside), row)).toMatchObject({ verdict: beyond })
    expect(flipped(sign(within), sign(outside)).filter((other) => !coupled.includes(other))).toEqual([row])
  })

  test('a pass has a value, and its margin is inside', () => {
    for (const { inside: within } of endsOf(figure)) {
      const { measurement, decisive, margin } = judgementOf(sign(within), row)
      expect(measurement?.observations.length).toBeGreaterThan(0)
      expect(typeof decisive[0]?.value).toBe('number')
      expect(margin).toBeGreaterThan(0)
    }
  })
})
