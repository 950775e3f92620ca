import { describe, expect, test } from 'vitest'
import { findStandards } from '../../src/standards/catalogue.js'
import { signOf } from '../measure/signs.js'
import type { Figure } from './figure.js'
import { flippedBy, judgementBy } from './judged.js'
import { signFor } from './rowsigns.js'
import { letters } from './settings.js'
import { TYPED } from './typed.js'

/** Every row whose limit goes by the distance of the reader, at its limit and one step to either side, and no row of another quantity flips. */

const INCH = 25.4
const FOOT = 12
const STEP = 0.01

/** A least height in millimetres, at a distance and where it hangs on that with the height of the baseline above the floor. */
interface Case {
  distance: number
  least: number
  baseline?: number
}

/** Distances in millimetres at which a share of them is proved, all invented. */
const DISTANCES = [900, 1500, 4000]
/** How far above the floor the baselines of a band without an upper end are proved, in inches. */
const ANY_HEIGHT = 150

function casesOf({ bands = [], perFoot = 0, steps = [], perDistance }: Figure): Case[] {
  const banded = bands.flatMap(([upTo, height, from]) =>
    [0, 1, 5].map((feet) => ({
      distance: (from + feet * FOOT) * INCH,
      least: (height + feet * perFoot) * INCH,
      baseline: Math.min(upTo, ANY_HEIGHT) * INCH,
    })),
  )
  const stepped = steps.flatMap(([upTo, least], i) => {
    const before = steps[i - 1]?.[0] ?? 0
    return [before + 1, upTo].map((distance) => ({ distance, least }))
  })
  const { share = 0, upTo = Infinity } = perDistance ?? {}
  const shared = perDistance ? [...DISTANCES, upTo, 2 * upTo].filter(Number.isFinite) : []
  return [...banded, ...stepped, ...shared.map((distance) => ({ distance, least: share * Math.min(distance, upTo) }))]
}

const PANEL_HEIGHT = 150
const BASELINE = 100
const FIELD = { x: 10, y: 10, width: 160 }

/** One line of characters, so that its baseline is the highest and the lowest. */
const ONE_LINE = {
  [letters(0, 'text')]: 'Pumps',
  [letters(0, 'lines')]: ['Pumps'],
  [letters(0, 'baseline')]: { x: 20, y: BASELINE },
}

const SETTERS: Record<string, (height: number) => Record<string, unknown>> = {
  'visual.characterHeight': (height) => ({ ...ONE_LINE, [letters(0, 'characterHeight')]: height }),
  'raised.characterHeight': (height) => ({ [letters(0, 'characterHeight')]: height }),
  'pictogram.figureHeight': (height) => ({
    pictograms: [{ meaning: 'pump', field: { ...FIELD, height: 400 }, figureHeight: height }],
  }),
  'symbol.frameHeight': (height) => ({ pictograms: [{ meaning: 'wheelchair', field: { ...FIELD, height } }] }),
}

const goesByDistance = ({ bands, steps, perDistance }: Figure): boolean => Boolean(bands ?? steps ?? perDistance)

const ROWS = Object.entries(TYPED).flatMap(([id, { FIGURES }]) =>
  FIGURES.filter(goesByDistance).map((figure) => ({ id, name: figure.row, figure })),
)

describe.each(ROWS)('$id/$name', ({ id, name, figure }) => {
  const row = findStandards([id])[0]?.requirements.find(({ requirement }) => requirement === `${id}/${name}`)
  const set = row && SETTERS[row.quantity]
  if (!row || !set) throw new Error(`no way to set ${id}/${name}`)
  const { base, isOpen } = signFor(row)
  const sign = (height: number, { distance, baseline }: Case) =>
    signOf(base, {
      ...set(height),
      'installation.viewingDistance': distance,
      ...(baseline !== undefined && { 'installation.panelBottomHeight': baseline - (PANEL_HEIGHT - BASELINE) }),
    })
  const same = findStandards([id])[0]?.requirements.filter(({ quantity }) => quantity === row.quantity) ?? []

  test.each(casesOf(figure))('from $distance mm, at least $least mm (baseline $baseline)', (one) => {
    const verdict = (height: number) => judgementBy(id, name, sign(height, one)).verdict
    expect(verdict(one.least + 1e-9)).toBe('pass')
    expect(verdict(one.least + STEP)).toBe('pass')
    expect(verdict(one.least - STEP)).toBe(isOpen ? 'undetermined' : 'fail')
    const flipped = flippedBy(id, sign(one.least + STEP, one), sign(one.least - STEP, one)).map((r) => `${id}/${r}`)
    expect(flipped).toContain(`${id}/${name}`)
    expect(flipped.filter((other) => same.every(({ requirement }) => requirement !== other))).toEqual([])
  })

  const last = figure.steps?.at(-1)?.[0]
  if (last !== undefined)
    test('beyond the last distance of the table a person decides', () => {
      expect(judgementBy(id, name, sign(1000, { distance: last + 1, least: 0 }))).toMatchObject({
        verdict: 'undetermined',
        reason: 'needs-judgement',
      })
    })
})
