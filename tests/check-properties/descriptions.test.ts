import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { check } from '../../src/check.js'
import { SignDescription } from '../../src/sign/description.js'
import { MEASURABLE, type MeasurableQuantity } from '../../src/sign/quantities.js'
import { PUMP_ROOM, TWO_SETS, withValues } from '../measure/signs.js'
import { expectSame, isOnALimit, outcomeOf, type Outcome } from './outcomes.js'
import { STANDARDS, translator } from './signs.js'

/**
 * What may be done to a description without changing the sign that it describes. An inch is 25.4 mm by definition (international inch, 1959);
 * the rest follows from what JSON and the description mean (RFC 8259, 4: members have no order), so there is no outside value in it. The sizes
 * are invented: round about what the standards ask, and beyond it on both sides.
 */
const SEED = 703
const RUNS = { seed: SEED, numRuns: 100 }
/** Millimetres, or the unit of the value: a length goes through one multiplication and one division. */
const ARITHMETIC = 1e-9

type Json = string | number | boolean | null | Json[] | { [key: string]: Json }
type Members = Record<string, Json>

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** Places at which a value may be set or left out, and what may stand there. */
const VALUES: Record<string, fc.Arbitrary<number | string | boolean>> = {
  use: fc.constantFrom('permanent-room', 'exit-door', 'elevator-landing', 'gift'),
  'panel.width': between(150, 400),
  'lettering.0.characterHeight': between(13, 55),
  'lettering.0.strokeThickness': between(1, 6),
  'lettering.0.relief': between(0.5, 2),
  'lettering.0.characterSpacing': between(2, 12),
  'lettering.0.baselineSpacing': between(18, 60),
  'lettering.0.baseline.x': between(8, 40),
  'braille.0.dotBaseDiameter': between(1.3, 1.8),
  'braille.0.dotHeight': between(0.4, 1),
  'braille.0.dotSpacing': between(2.2, 2.7),
  'braille.0.cellSpacing': between(5.8, 7.8),
  'braille.0.lineSpacing': between(9.5, 11),
  'braille.0.origin.y': between(60, 130),
  'installation.panelBottomHeight': between(1000, 1600),
  'installation.door.latchToTextCentre': between(100, 400),
  'installation.viewingDistance': between(500, 6000),
}

const measured = fc.array(
  fc.record({
    quantity: fc.constantFrom('braille.dotHeight', 'braille.cellSpacing', 'raised.relief', 'contrast.reflectance'),
    values: fc.array(between(0.4, 8), { minLength: 1, maxLength: 4 }),
    expandedUncertainty: between(0, 0.05),
  }),
  { maxLength: 2 },
)

/** The signs of the tests of measuring, their sizes moved off the limits that they stand on. */
const PUMP = withValues(PUMP_ROOM, { 'lettering.0.relief': 1.05, 'braille.0.cellSpacing': 6.85 })
const TWO = withValues(TWO_SETS, {
  'lettering.0.strokeThickness': 4.1,
  'lettering.1.relief': 1.05,
  'braille.0.cellSpacing': 6.85,
})

const description: fc.Arbitrary<Members> = fc
  .tuple(
    fc.constantFrom(PUMP, TWO),
    fc.record(Object.fromEntries(Object.entries(VALUES).map(([path, value]) => [path, fc.option(value)]))),
    measured,
  )
  .map(([base, values, readings]) => {
    const set = Object.entries(values).flatMap(([path, value]) => (value === null ? [] : [[path, value] as const]))
    return withValues(base, { ...Object.fromEntries(set), measured: readings }) as Members
  })

function outcome(sign: Json, decisionRule: 'simple' | 'guarded' = 'simple'): Outcome {
  const parsed = SignDescription.parse(sign)
  const options = { use: parsed.use, decisionRule, unitSystem: 'printed', language: 'en' } as const
  return outcomeOf(check({ sign: parsed, standards: STANDARDS, options }, translator))
}

const MM_PER_INCH = 25.4
/** Numbers of a description that are no length. */
const NO_LENGTH = new Set(['characterProportion', 'lrv'])

/** Each length by `write`; measured values by `reading`. */
function rewritten(json: Json, write: (mm: number) => Json, reading: (entry: Members) => Members): Json {
  if (Array.isArray(json)) return json.map((item) => rewritten(item, write, reading))
  if (typeof json === 'number') return write(json)
  if (json === null || typeof json !== 'object') return json
  return Object.fromEntries(
    Object.entries(json).map(([key, value]) => {
      if (NO_LENGTH.has(key)) return [key, value]
      if (key === 'measured') return [key, (value as Members[]).map(reading)]
      return [key, rewritten(value, write, reading)]
    }),
  )
}

const isLength = ({ quantity }: Members) => MEASURABLE[quantity as MeasurableQuantity] === 'length'

const inInches = (entry: Members): Members =>
  isLength(entry)
    ? {
        ...entry,
        unit: 'in',
        values: (entry.values as number[]).map((mm) => mm / MM_PER_INCH),
        expandedUncertainty: (entry.expandedUncertainty as number) / MM_PER_INCH,
      }
    : entry

const asItIs = (entry: Members): Members => (isLength(entry) ? { ...entry, unit: 'mm' } : entry)

function reordered(json: Json, next: () => number): Json {
  if (Array.isArray(json)) return json.map((item) => reordered(item, next))
  if (json === null || typeof json !== 'object') return json
  const left = Object.entries(json)
  const members: [string, Json][] = []
  while (left.length > 0)
    for (const [key, value] of left.splice(next() % left.length, 1)) members.push([key, reordered(value, next)])
  return Object.fromEntries(members)
}

/** A value that lies within the arithmetic of its limit is generated away: either verdict of it would be right. */
function holds(sign: Members, changed: Json, rule: 'simple' | 'guarded' = 'simple'): void {
  const was = outcome(sign, rule)
  fc.pre(!isOnALimit(was, ARITHMETIC))
  expectSame(outcome(changed, rule), was, ARITHMETIC)
}

const rule = fc.constantFrom('simple' as const, 'guarded' as const)

describe(`a description says the same sign (seed ${SEED})`, () => {
  test('in inches', () => {
    fc.assert(
      fc.property(description, rule, (sign, by) => {
        const inches = rewritten(sign, (mm) => mm / MM_PER_INCH, inInches) as Members
        holds(sign, { ...inches, units: 'in' }, by)
      }),
      RUNS,
    )
  })

  test('with the unit at each length, some in inches and some in millimetres', () => {
    fc.assert(
      fc.property(description, fc.constantFrom('mm', 'in'), fc.infiniteStream(fc.boolean()), (sign, units, inch) => {
        const write = (mm: number): Json =>
          inch.next().value === true ? { value: mm / MM_PER_INCH, unit: 'in' } : { value: mm, unit: 'mm' }
        const mixed = rewritten(sign, write, units === 'in' ? inInches : asItIs) as Members
        holds(sign, { ...mixed, units })
      }),
      RUNS,
    )
  })

  test('with its keys in any order', () => {
    fc.assert(
      fc.property(description, fc.infiniteStream(fc.nat()), (sign, numbers) => {
        const changed = reordered(sign, () => numbers.next().value as number)
        const was = outcome(sign)
        // The same numbers: not even the arithmetic may differ.
        expect(outcome(changed)).toEqual(was)
      }),
      RUNS,
    )
  })

  test('with sets of characters and blocks of braille in any order', () => {
    fc.assert(
      fc.property(description, fc.boolean(), (sign, alsoBraille) => {
        const more = {
          ...(sign.braille as Members[])[0],
          text: 'level 3',
          lines: ['level 3'],
          origin: { x: 20, y: 200 },
        }
        const full = {
          ...sign,
          panel: { ...(sign.panel as Members), height: 260 },
          braille: [...(sign.braille as Json[]), more],
        }
        const lettering = [...(sign.lettering as Json[])].reverse()
        const changed = { ...full, lettering, ...(alsoBraille && { braille: [...full.braille].reverse() }) }
        expectSame(unnumbered(outcome(changed)), unnumbered(outcome(full)), ARITHMETIC)
      }),
      RUNS,
    )
  })
})

/** Entries are named by their number, and the reading lists them in their order: neither is compared. */
const unnumbered = ({ verdicts, values, read }: Outcome): Outcome => ({
  verdicts: Object.fromEntries(
    Object.entries(verdicts).map(([name, said]) => {
      const [verdict = '', reason = '', ...elements] = said.split(' ')
      return [name, [verdict, reason, ...elements.map((e) => e.replace(/\d+/u, 'n')).sort()].join(' ')]
    }),
  ),
  values,
  read: sortedDeep(read),
})

function sortedDeep(value: unknown): unknown {
  if (Array.isArray(value)) return value.map((item) => JSON.stringify(item)).sort()
  if (value === null || typeof value !== 'object') return value
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, sortedDeep(item)]))
}
