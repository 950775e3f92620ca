import { describe, expect, test } from 'vitest'
import type { Verdict } from '../../src/judge/finding.js'
import { findStandards } from '../../src/standards/catalogue.js'
import type { Requirement } from '../../src/standards/standard.js'
import { signOf } from '../measure/signs.js'
import type { Ends, Figure } from './figure.js'
import { flippedBy, judgementBy } from './judged.js'
import { signFor } from './rowsigns.js'
import { TYPED } from './typed.js'

/** Every interval row of every table at its ends, one step inside and one step outside, and no row of another quantity flips. */

const INCH = 25.4

/** Rows that no value of a description or of a gauge decides, with the reason. */
const BY_PERSON: Record<string, string> = {
  'us-ada-2010/307.3/post-overhang': 'only a sign on posts in a circulation path is concerned',
}

/** One end of a limit, and how far from it the neighbouring cases are, in the quantity's unit. */
interface Case {
  end: 'min' | 'max'
  at: number
  /** What is one step further in; for a bare figure what is on the other side. */
  inside?: number
  outside: number
}

const STEP = { length: 0.01, share: 0.001, number: 1 }

function both({ min, max }: Ends, scale: number, step: number): Case[] {
  const one = min !== undefined && min === max
  const ends: Case[] = []
  if (min !== undefined)
    ends.push({ end: 'min', at: min * scale, outside: min * scale - step, ...(!one && { inside: min * scale + step }) })
  if (max !== undefined)
    ends.push({ end: 'max', at: max * scale, outside: max * scale + step, ...(!one && { inside: max * scale - step }) })
  return ends
}

function casesOf(figure: Figure, firstUnit: 'in' | 'mm', step: number | undefined): Case[] {
  const { inches, millimetres, share, number, nominal, nominalInches } = figure
  if (share) return both(share, 1, step ?? STEP.share)
  if (number) return both(number, 1, step ?? STEP.number)
  const bare = firstUnit === 'in' ? nominalInches && nominalInches * INCH : nominal
  if (bare !== undefined) return both({ min: bare, max: bare }, 1, step ?? STEP.length)
  if (firstUnit === 'in' && inches) return both(inches, INCH, step ?? STEP.length)
  return millimetres ? both(millimetres, 1, step ?? STEP.length) : []
}

/** What stands outside an end: a figure without a range is left to a person, but above one that is capped. */
function verdictOutside({ nominal, nominalInches, isCapped }: Figure, end: 'min' | 'max', isOpen: boolean): Verdict {
  const bare = nominal !== undefined || nominalInches !== undefined
  return isOpen || (bare && !(isCapped && end === 'max')) ? 'undetermined' : 'fail'
}

const flips = (row: Requirement, couples: string[], others: Requirement[]): string[] =>
  others
    .filter(({ quantity }) => quantity === row.quantity || couples.some((name) => quantity.startsWith(name)))
    .map(({ requirement }) => requirement)

const provable = ({ row, bands, steps, perDistance }: Figure, id: string): boolean =>
  !bands && !steps && !perDistance && BY_PERSON[`${id}/${row}`] === undefined

describe.each(Object.entries(TYPED))('the table %s', (id, { FIGURES }) => {
  const [{ requirements, firstUnit }] = findStandards([id])

  describe.each(FIGURES.filter((figure) => provable(figure, id)))('$row', (figure) => {
    const { row: name } = figure
    const row = requirements.find(({ requirement }) => requirement === `${id}/${name}`)
    if (!row) throw new Error(`no row ${id}/${name}`)
    const { base, setting, isOpen } = signFor(row)
    const sign = (value: number, end: 'min' | 'max') => signOf(base, setting.set(value, end))
    const verdict = (value: number, end: 'min' | 'max') => judgementBy(id, name, sign(value, end)).verdict
    const within: Verdict = setting.isOpenInside ? 'undetermined' : 'pass'
    const allowed = flips(row, setting.couples ?? [], requirements)

    test.each(casesOf(figure, firstUnit, setting.step))('at the $end end and one step to either side', (one) => {
      const { end, at, inside, outside } = one
      expect(verdict(at, end)).toBe(within)
      if (inside !== undefined) expect(verdict(inside, end)).toBe(within)
      expect(verdict(outside, end)).toBe(verdictOutside(figure, end, isOpen))
      const flipped = flippedBy(id, sign(inside ?? at, end), sign(outside, end)).map((other) => `${id}/${other}`)
      expect(flipped).toContain(`${id}/${name}`)
      expect(flipped.filter((other) => !allowed.includes(other))).toEqual([])
    })

    test('a pass has a value', () => {
      for (const { end, at } of casesOf(figure, firstUnit, setting.step)) {
        const { measurement, decisive } = judgementBy(id, name, sign(at, end))
        expect(measurement?.observations.length).toBeGreaterThan(0)
        expect(typeof decisive[0]?.value).toBe('number')
      }
    })
  })
})
