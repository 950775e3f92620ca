import { describe, expect, test } from 'vitest'
import type { Gap, Measurement, Observation } from '../../src/measure/measurement.js'
import { measurer, QUANTITIES } from '../../src/measure/measurer.js'
import type { Scope } from '../../src/measure/quantity.js'
import { declared, isKnown, missing, type Sign } from '../../src/sign/sign.js'
import { drawnBorder, drawnSign, turned } from './drawn.js'
import { HANGS_ON } from './hangs-on.js'
import { PUMP_ROOM, signOf, translator, TWO_SETS, withValues } from './signs.js'

/**
 * What holds of every quantity on every sign (contract of the service, 3): a value has its place, a gap says why and where, and of what is
 * missing it is asked for. The signs are invented.
 */

type Json = Record<string, unknown>

const FULL = withValues(PUMP_ROOM, {
  'panel.edge': 'rounded',
  'lettering.0.strokeThicknessAtBase': 2.8,
  'lettering.0.characterSpacingAtBase': 3.6,
  'lettering.0.finish': 'matte',
  pictograms: [
    {
      meaning: 'pump',
      field: { x: 100, y: 5, width: 100, height: 12 },
      colour: '#000000',
      fieldColour: '#ffffff',
      finish: 'matte',
      figureHeight: 10,
    },
  ],
  borders: [{ box: { x: 1, y: 1, width: 258, height: 148 }, width: 2, raised: true }],
  'installation.viewingDistance': 1500,
})

const SCOPES: Record<string, Scope> = {
  touch: { parts: ['raised', 'both'] },
  sight: { parts: ['visual', 'both'] },
}

const all = (sign: Sign): { name: string; scope: string; measurement: Measurement }[] => {
  const measure = measurer(sign, translator)
  return Object.keys(QUANTITIES).flatMap((name) =>
    Object.entries(SCOPES).map(([scope, parts]) => ({ name, scope, measurement: measure(name, parts) })),
  )
}

const ELEMENT = /^(panel|installation|measured\/\d+|(lettering|braille|pictogram|border)\/\d+(\/line\/\d+)?)$/u
const REASONS = ['missing-fact', 'needs-judgement', 'unreadable', 'limit-reached']

const hasPlaces = ({ places }: Observation | Gap): boolean =>
  Array.isArray(places) && places.length > 0 && places.every(({ element }) => ELEMENT.test(element))

function fitsUnit({ value, min, max }: Observation, unit: Measurement['unit']): boolean {
  if (unit === 'truth') return typeof value === 'boolean'
  if (unit === 'kind') return typeof value === 'string' && value !== ''
  if (typeof value !== 'number') return value === true
  const [low, high] = [min ?? value, max ?? value]
  return [low, value, high].every(Number.isFinite) && low <= value && value <= high
}

const asksWell = ({ ask, reason }: Gap): boolean =>
  ask === undefined
    ? reason !== 'missing-fact'
    : /^\/(sign|drawing)(\/|$)/u.test(ask.pointer) && ask.ask.endsWith('?') && ask.choices?.length !== 0

/** What is wrong with a measurement; empty when nothing is. */
function faultsOf({ unit, method, observations, gaps, nothing }: Measurement): string[] {
  const faults: string[] = []
  if (method === '') faults.push('no method')
  if (observations.length + gaps.length === 0 ? !nothing : nothing !== undefined) faults.push(`nothing: ${nothing}`)
  for (const one of observations) {
    if (!hasPlaces(one)) faults.push(`value without a place: ${JSON.stringify(one)}`)
    if (!fitsUnit(one, unit)) faults.push(`value that is no ${unit}: ${JSON.stringify(one)}`)
    if (!['declared', 'drawn', 'measured'].includes(one.basis)) faults.push(`basis ${one.basis}`)
  }
  for (const gap of gaps) {
    if (!hasPlaces(gap)) faults.push(`gap without a place: ${JSON.stringify(gap)}`)
    if (!REASONS.includes(gap.reason) || !gap.why) faults.push(`gap without a reason: ${JSON.stringify(gap)}`)
    if (!asksWell(gap)) faults.push(`nothing is asked: ${JSON.stringify(gap)}`)
  }
  return faults
}

/** All single facts of a description, as dotted paths. */
const WHOLE = ['lines', 'origin', 'baseline', 'box', 'field', 'properNames']
const factsOf = (value: unknown, path: string[] = []): string[] =>
  value !== null && typeof value === 'object' && Object.keys(value).length > 0 && !WHOLE.includes(path.at(-1) ?? '')
    ? Object.entries(value as Json).flatMap(([key, member]) => factsOf(member, [...path, key]))
    : [path.join('.')]

const KEPT = ['units', 'mark', 'use', 'lettering.0.part', 'borders.0.box', 'borders.0.width']
const FACTS = factsOf(FULL).filter((path) => !KEPT.includes(path))
const without = (path: string): Sign => signOf(withValues(FULL, { [path]: undefined }))

const SET = withValues({ set: (PUMP_ROOM.lettering as Json[])[0] }, { 'set.baselineSpacing': undefined }).set as Json
const BLOCK = withValues({ block: (PUMP_ROOM.braille as Json[])[0] }, { 'block.lineSpacing': undefined }).block as Json
const many = (one: (i: number) => Json): Json[] => Array.from({ length: 13 }, (_, i) => one(i + 1))
const quarter = { a: 0, b: 1, c: -1, d: 0, e: 300, f: 10 }
const drawn = drawnSign({ borders: [drawnBorder(5, 5, 400, 300, 4)] })
const SIGNS: Record<string, Sign> = {
  'a described sign': signOf(FULL),
  'two sets of characters': signOf(TWO_SETS),
  'a drawn sign': drawn,
  'a sign drawn turned': turned(drawn, quarter, 90),
  'a sign drawn askew': turned(drawn, { a: 0.8, b: 0.6, c: -0.6, d: 0.8, e: 0, f: 0 }, 36.8699),
  'nothing but characters for sight': signOf(TWO_SETS, {
    lettering: [(TWO_SETS.lettering as Json[])[0]],
    braille: [],
  }),
  'nothing but braille': signOf(FULL, { lettering: [], pictograms: [], borders: [] }),
  'nothing but a pictogram': signOf(FULL, { lettering: [], braille: [] }),
  'hardly anything': signOf({ units: 'mm', use: 'permanent-room', lettering: [{ part: 'both' }], braille: [{}] }),
  'a car control': signOf(FULL, { use: 'elevator-car-control' }),
  'a landing': signOf(FULL, { use: 'elevator-landing' }),
  'a station': signOf(FULL, { use: 'transit-station', installation: undefined }),
  'words that no table of braille knows': {
    ...signOf(FULL),
    lettering: signOf(FULL).lettering.map((set) => ({ ...set, text: declared('泵房') })),
  },
  'more texts than are tried apart': signOf(FULL, {
    lettering: many((i) => ({ ...SET, text: 'PUMP', lines: ['PUMP'], baseline: { x: 20, y: 20 * i } })),
    braille: many((i) => ({ ...BLOCK, lines: ['room'], origin: { x: 20, y: 20 * i } })),
  }),
  'braille that was not read': {
    ...drawn,
    braille: drawn.braille.map((block) => ({
      ...block,
      lines: block.lines.map((line) => ({ ...line, cells: { unknown: 'unreadable' as const, why: 'no cells' } })),
    })),
  },
  'characters that were not read': {
    ...drawn,
    lettering: drawn.lettering.map((set) => ({ ...set, text: { unknown: 'unreadable' as const, why: 'no words' } })),
  },
  'characters drawn without their baselines': {
    ...drawn,
    lettering: drawn.lettering.map((set) => ({
      ...set,
      lines: set.lines.map((line) => ({ ...line, baseline: missing('no baseline') })),
    })),
  },
}

describe.each(Object.entries(SIGNS))('of %s', (_, sign) => {
  test('every value has a place and a fitting kind, and every gap says why', () => {
    const faults = all(sign).flatMap(({ name, measurement }) => faultsOf(measurement).map((f) => `${name}: ${f}`))
    expect([...new Set(faults)]).toEqual([])
  })
})

const isDescribed = ({ basis }: Observation) => basis === 'declared'

test('of a description nothing is drawn', () => {
  const found = all(signOf(FULL)).flatMap(({ measurement }) => measurement.observations)
  expect(found.filter((one) => !isDescribed(one))).toEqual([])
})

const keyOf = ({ reason, why, ask }: Gap) => JSON.stringify([reason, why, ask?.pointer])
const gapsBefore = () =>
  new Map(all(signOf(FULL)).map(({ name, scope, measurement }) => [`${name} ${scope}`, measurement.gaps.map(keyOf)]))
let before: Map<string, string[]> | undefined

describe.each(FACTS)('without %s', (path) => {
  let known: ReturnType<typeof all> | undefined
  const found = () => (known ??= all(without(path)))

  test('every value has a place and a fitting kind, and every gap says why', () => {
    const faults = found().flatMap(({ name, measurement }) => faultsOf(measurement).map((f) => `${name}: ${f}`))
    expect([...new Set(faults)]).toEqual([])
  })

  test('what hangs on it is open, and nothing else', () => {
    const all = (before ??= gapsBefore())
    const opened = found().flatMap(({ name, scope, measurement }) => {
      const open = all.get(`${name} ${scope}`) ?? []
      return measurement.gaps.some((gap) => !open.includes(keyOf(gap))) ? [name] : []
    })
    expect([...new Set(opened)].sort()).toEqual([...(HANGS_ON[path] ?? [])].sort())
  })
})

test('what is known of a fact is known of no other sign', () => {
  expect(isKnown(without('panel.width').panel.width)).toBe(false)
  expect(isKnown(signOf(FULL).panel.width)).toBe(true)
})
