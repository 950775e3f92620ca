import { describe, expect, test } from 'vitest'
import { missing, type Sign } from '../../src/sign/sign.js'
import { drawn, drawnSign, rectangle } from './drawn.js'
import { PUMP_ROOM, signOf, TWO_SETS } from './signs.js'
import { measured, RAISED } from './values.js'

/**
 * The datum of each height: 2010 ADA Standards 703.4.1 (baselines), NCC 2022, S15C2, as reported (edges of all that is felt, the one line of
 * characters), ADAAG 1991, 4.30.6 (middle). The pump room: panel 150 mm high at 1300 mm; baselines at y = 40 and 70, characters 20 mm high;
 * dots from y = 95.
 */

type Json = Record<string, unknown>
const of = (sign: Sign, name: string) => measured(sign, `installation.${name}`)
const at = (values: Json = {}) => signOf(PUMP_ROOM, values)

describe('every height', () => {
  test('says what it is of and from where it was taken', () => {
    const lines = (name: string) => of(at(), name).observations.map(({ basis, places }) => [basis, places[0]?.element])
    expect(lines('lowestBaseline')).toEqual([['declared', 'braille/0/line/1']])
    expect(lines('highestBaseline')).toEqual([['declared', 'lettering/0/line/0']])
    expect(lines('raisedLowestBaseline')).toEqual([['declared', 'lettering/0/line/1']])
    expect(lines('highestTactile')).toEqual([['declared', 'lettering/0/line/0']])
    expect(lines('lowestTactile')).toEqual([['declared', 'braille/0']])
    expect(lines('centreHeight')).toEqual([['declared', 'panel']])
    expect(lines('tactileLine')[0]?.[0]).toBe('declared')
    expect(of(at(), 'centreHeight').observations[0]?.context).toEqual({ panelBottomHeight: 1300 })
    expect(of(at(), 'tactileLine').observations[0]?.context).toEqual({ panelBottomHeight: 1300 })
    expect(of(drawnSign(), 'highestTactile').observations[0]?.basis).toBe('drawn')
    expect(of(drawnSign(), 'tactileLine').observations[0]?.basis).toBe('drawn')
  })

  test('is of what is read by touch, the braille alone where no characters are raised', () => {
    const sight = signOf(TWO_SETS, { lettering: [(TWO_SETS.lettering as Json[])[0]] })
    // braille of TWO_SETS: y = 165 on a panel of 240 mm at 1225 mm
    expect(of(sight, 'highestBaseline').observations[0]?.value).toBeCloseTo(1225 + 240 - 165 - 4.8, 9)
    expect(of(sight, 'raisedLowestBaseline').nothing).toBe('The sign has no raised characters.')
    expect(of(sight, 'tactileLine').nothing).toBe('The sign has no raised characters.')
    const bare = at({ lettering: [], braille: [] })
    for (const name of ['lowestBaseline', 'highestBaseline', 'lowestTactile', 'highestTactile'])
      expect(of(bare, name).nothing).toBe('The sign has nothing to read by touch.')
    for (const name of ['brailleBaselineLowest', 'brailleBaselineHighest', 'brailleHighest'])
      expect(of(bare, name).nothing).toBe('The sign has no braille.')
    expect(of(bare, 'topHeight').nothing).toBe('The sign has nothing on it.')
    const set = { ...signOf(PUMP_ROOM).lettering[0], lines: [] }
    expect(of({ ...at(), lettering: [set] }, 'highestBaseline').observations[0]?.places[0]?.element).toMatch(
      /^braille/u,
    )
  })

  test('for sight is of the lowest characters in view', () => {
    const { observations } = measured(at(), 'visual.heightAboveFloor', { parts: ['visual', 'both'] })
    expect(observations[0]?.value).toBe(1380)
    const sight = signOf(TWO_SETS)
    expect(measured(sight, 'visual.heightAboveFloor', { parts: ['visual'] }).observations[0]?.value).toBe(
      1225 + 240 - 70,
    )
    expect(measured(at({ lettering: [] }), 'visual.heightAboveFloor', RAISED).nothing).toContain('no characters')
  })
})

describe('what may reach beyond a line', () => {
  const said = (text: string, more: Json = {}) =>
    at({
      'lettering.0.text': text,
      'lettering.0.lines': [text],
      'lettering.0.baselineSpacing': undefined,
      braille: [],
      ...more,
    })

  test.each(['Jumping', 'QUAY', 'A, B', 'A; B', 'pump'])('“%s” may hang below its baseline', (text) => {
    expect(of(said(text), 'lowestTactile')).toMatchObject({
      gaps: [{ reason: 'missing-fact', places: [{ element: 'lettering/0/line/0' }], ask: { pointer: '/drawing' } }],
    })
    expect(of(said(text), 'highestTactile').gaps).toEqual([])
  })

  // The Unicode Standard, canonical decomposition: the mark of É stands apart when it is taken apart
  test.each(['CAFÉ', 'Ärzte', 'Škoda'])('“%s” may stand above its capitals', (text) => {
    expect(of(said(text), 'highestTactile').gaps).toMatchObject([{ ask: { pointer: '/drawing' } }])
  })

  test('is no higher than the characters again', () => {
    const high = (y: number) =>
      of(said('CAFÉ', { pictograms: [{ meaning: 'pump', field: { x: 0, y, width: 9, height: 9 } }] }), 'topHeight')
    // characters from y = 20 to 40: a mark stands no higher than y = 0
    expect(high(0).gaps).toEqual([])
    expect(high(1).gaps).toHaveLength(1)
    expect(high(0).observations[0]?.value).toBe(1450)
  })

  test('is open without the lower edge, once', () => {
    const sign = said('QUAY', { 'panel.height': undefined })
    expect(of(sign, 'lowestTactile').gaps.map(({ ask }) => ask?.pointer)).toContain('/sign/panel/height')
  })
})

describe('the upper edge of all that is on a sign', () => {
  const box = { x: 10, y: 3, width: 20, height: 12 }

  test('may be that of a figure without a field, or of its field', () => {
    const sign = at({ pictograms: [{ meaning: 'pump' }] })
    const figure = { ...sign, pictograms: sign.pictograms.map((p) => ({ ...p, figure: box })) }
    expect(of(figure, 'topHeight').observations).toMatchObject([
      { value: 1447, basis: 'drawn', places: [{ element: 'pictogram/0' }] },
    ])
    const field = at({ pictograms: [{ meaning: 'pump', field: box }] })
    expect(of(field, 'topHeight').observations).toMatchObject([{ value: 1447, basis: 'declared' }])
    expect(of(sign, 'topHeight').gaps).toMatchObject([
      { places: [{ element: 'pictogram/0' }], ask: { pointer: '/sign/pictograms/0/field' } },
    ])
  })

  test('is not told of a field that lies askew', () => {
    const sign = drawnSign()
    const [pictogram] = at({ pictograms: [{ meaning: 'pump', field: box }] }).pictograms
    const askew: Sign = {
      ...sign,
      lettering: sign.lettering.map((set) => ({ ...set, lie: { rotation: 15, mirrored: false } })),
      pictograms: [{ ...pictogram, field: drawn(box), outlines: { field: rectangle(10, 3, 20, 12), figure: [] } }],
    }
    expect(of(askew, 'topHeight').gaps).toEqual(
      expect.arrayContaining([expect.objectContaining({ reason: 'unreadable', places: [pictogram.place] })]),
    )
  })
})

describe('what is not known', () => {
  test('is asked for once for each line of characters', () => {
    const sign = at({ 'lettering.0.characterHeight': undefined })
    expect(of(sign, 'tactileLine').gaps.map(({ ask }) => ask?.pointer)).toEqual(['/sign/lettering/0/characterHeight'])
    const lost = at({ 'lettering.0.baseline': undefined })
    const { observations, gaps } = of(lost, 'tactileLine')
    expect(observations).toEqual([])
    expect(new Set(gaps.map(({ why, ask }) => `${why} ${ask?.pointer}`)).size).toBe(gaps.length)
  })

  test('of the middle is the panel’s height or its place', () => {
    const gaps = (values: Json) => of(at(values), 'centreHeight').gaps.map(({ ask }) => ask?.pointer)
    const [bottom, height] = ['/sign/installation/panelBottomHeight', '/sign/panel/height']
    expect(gaps({ 'panel.height': undefined })).toEqual([height])
    expect(gaps({ 'installation.panelBottomHeight': undefined })).toEqual([bottom])
    expect(gaps({ 'panel.height': undefined, 'installation.panelBottomHeight': undefined })).toEqual([bottom, height])
  })

  test('of one block of braille leaves open what another does not settle', () => {
    const sign = at()
    const [block] = sign.braille
    const lost = { ...block, lines: block.lines.map((line) => ({ ...line, dots: [], baseline: missing() })) }
    const two = { ...sign, braille: [block, lost] }
    expect(of(two, 'brailleHighest').observations).toHaveLength(1)
    expect(of(two, 'brailleHighest').gaps.map(({ ask }) => ask?.pointer)).toEqual(['/sign/braille/0/origin'])
    const unsized = { ...sign, braille: [{ ...block, dotBaseDiameter: missing() }] }
    expect(of(unsized, 'brailleHighest')).toMatchObject({
      observations: [],
      gaps: [{ ask: { pointer: '/sign/braille/0/dotBaseDiameter' } }],
    })
  })
})
