import { describe, expect, test } from 'vitest'
import { measurer, QUANTITIES } from '../../src/measure/measurer.js'
import { MEASURABLE } from '../../src/sign/quantities.js'
import { judgementOf } from '../judge/verdicts.js'
import { drawn, drawnSign, known } from './drawn.js'
import { PUMP_ROOM, signOf, translator } from './signs.js'
import { measured, valuesOf } from './values.js'

describe('a measured quantity', () => {
  const gauge = {
    quantity: 'braille.dotHeight',
    values: [0.7, 0.5, 0.74],
    unit: 'mm',
    expandedUncertainty: 0.02,
    instrument: 'dial gauge',
  }
  const sign = signOf(PUMP_ROOM, { measured: [gauge] })

  test('wins over the declared value and keeps every reading', () => {
    const { observations } = measured(sign, 'braille.dotHeight')
    expect(observations).toHaveLength(1)
    expect(observations[0]).toMatchObject({
      min: 0.5,
      max: 0.74,
      count: 3,
      uncertainty: 0.01,
      basis: 'measured',
      instrument: 'dial gauge',
    })
    expect(observations[0]?.value).toBeCloseTo((0.7 + 0.5 + 0.74) / 3, 12)
  })

  test('fails on its worst reading although the mean is inside', () => {
    const judgement = judgementOf(sign, '703.3.1/dot-height')
    expect(judgement.verdict).toBe('fail')
    expect(judgement.margin).toBeCloseTo(0.5 - 0.635, 12)
  })

  test('in inches is converted once', () => {
    const inches = signOf(PUMP_ROOM, { measured: [{ ...gauge, values: [0.025], unit: 'in' }] })
    expect(judgementOf(inches, '703.3.1/dot-height').verdict).toBe('pass')
  })

  test('settles what was not read', () => {
    const unread = {
      ...sign,
      unread: [{ place: { element: 'drawing' }, why: 'an image', couldBe: ['braille' as const] }],
    }
    expect(measured(unread, 'braille.dotHeight').gaps).toEqual([])
  })
})

describe('the measurer', () => {
  test('measures each quantity once for each scope', () => {
    const measure = measurer(signOf(PUMP_ROOM), translator)
    const scope = {}
    expect(measure('braille.wording', scope)).toBe(measure('braille.wording', scope))
    expect(measure('raised.characterHeight', { parts: ['both'] })).not.toBe(
      measure('raised.characterHeight', { parts: ['raised'] }),
    )
  })

  test('knows every quantity that a client may measure, and no name of the object prototype', () => {
    for (const [name, kind] of Object.entries(MEASURABLE))
      expect(`${name} ${QUANTITIES[name]?.unit}`).toBe(`${name} ${kind === 'length' ? 'mm' : kind}`)
    const numbers = Object.entries(QUANTITIES).filter(([, { unit }]) => unit !== 'kind' && unit !== 'truth')
    expect(Object.keys(MEASURABLE).sort()).toEqual(numbers.map(([name]) => name).sort())
    for (const name of ['braille.nothing', 'constructor'])
      expect(() => measurer(signOf(PUMP_ROOM), translator)(name, {})).toThrow(RangeError)
  })

  test('says how every quantity is measured', () => {
    for (const { method } of Object.values(QUANTITIES)) expect(method).toMatch(/\.$/u)
  })
})

describe('heights above the floor', () => {
  // By hand: the panel's lower edge is 1300 mm up and y = 150; baselines at y = 40 and 70, braille at y = 99.8 and 109.9
  test('run to the lowest braille baseline and to the highest raised baseline', () => {
    for (const sign of [signOf(PUMP_ROOM), drawnSign()]) {
      expect(Number(valuesOf(sign, 'installation.lowestBaseline')[0])).toBeCloseTo(1300 + 150 - 109.9, 9)
      expect(Number(valuesOf(sign, 'installation.highestBaseline')[0])).toBeCloseTo(1300 + 150 - 40, 9)
    }
  })

  // Contract of the service, 2: the description wins. By hand: 1300 + 300 - 40 with the described height
  test('count a described panel height from where the drawing has the top', () => {
    const sign = drawnSign()
    const panel = { ...sign.panel, place: { ...sign.panel.place, box: { x: 0, y: 0, width: 260, height: 150 } } }
    const high = { ...sign, panel: { ...panel, height: known(300) } }
    expect(valuesOf(high, 'installation.highestBaseline')).toEqual([1300 + 300 - 40])
    const asDrawn = { ...sign, panel: { ...panel, height: drawn(150) } }
    expect(valuesOf(asDrawn, 'installation.highestBaseline')).toEqual([1300 + 150 - 40])
  })

  test('run to the lowest raised baseline where there is no braille', () => {
    expect(valuesOf(signOf(PUMP_ROOM, { braille: [] }), 'installation.lowestBaseline')).toEqual([1300 + 150 - 70])
  })

  test('do not ask for a baseline that can be neither the lowest nor the highest', () => {
    const sign = drawnSign()
    const [set] = sign.lettering
    const unread = { unknown: 'unreadable' as const, why: 'outlines' }
    const withoutBaseline = (n: number) => ({
      ...sign,
      lettering: [{ ...set, lines: set.lines.map((line, i) => (i === n ? { ...line, baseline: unread } : line)) }],
    })
    expect(measured(withoutBaseline(1), 'installation.lowestBaseline').gaps).toEqual([])
    expect(measured(withoutBaseline(1), 'installation.highestBaseline').gaps).toEqual([])
    expect(measured(withoutBaseline(0), 'installation.highestBaseline').gaps[0]?.reason).toBe('unreadable')
  })

  test('ask for the panel, its place or the text, whichever is missing', () => {
    const asked = (path: string) =>
      measured(signOf(PUMP_ROOM, { [path]: undefined }), 'installation.highestBaseline').gaps.map(
        (gap) => gap.ask?.pointer,
      )
    expect(asked('installation.panelBottomHeight')).toEqual(['/sign/installation/panelBottomHeight'])
    expect(asked('panel.height')).toContain('/sign/panel/height')
    expect(asked('lettering.0.baseline')).toContain('/sign/lettering/0/baseline')
  })
})

describe('characters', () => {
  test('figures alone have no case; one character has no neighbour; one line has no spacing', () => {
    const five = signOf(PUMP_ROOM, { 'lettering.0.text': '5', 'lettering.0.lines': ['5'] })
    for (const quantity of [
      'raised.case',
      'raised.characterSpacing',
      'raised.characterSpacingInStrokes',
      'raised.lineSpacing',
    ])
      expect(measured(five, quantity)).toMatchObject({ observations: [], gaps: [] })
  })

  test('a share carries the uncertainties of both lengths', () => {
    const sign = signOf(PUMP_ROOM)
    const lettering = sign.lettering.map((l) => ({
      ...l,
      strokeThickness: { value: 2.6, basis: 'drawn' as const, uncertainty: 0.03 },
      characterHeight: { value: 20, basis: 'drawn' as const, uncertainty: 0.2 },
    }))
    const [observation] = measured({ ...sign, lettering }, 'raised.strokeThickness').observations
    // JCGM 100:2008, 5.1.2: u²(q) = (u(s)/h)² + (s·u(h)/h²)², worked by hand
    expect(observation?.uncertainty).toBeCloseTo(Math.sqrt((0.03 / 20) ** 2 + ((2.6 * 0.2) / 400) ** 2), 12)
    expect(observation).toMatchObject({ value: 0.13, basis: 'drawn' })
  })

  test('without a section, the gap at the foot is not asked for, and it says what stands', () => {
    const scope = { parts: ['both' as const], sections: ['bevelled' as const, 'rounded' as const, 'other' as const] }
    const { nothing } = measured(
      signOf(PUMP_ROOM, { 'lettering.0.section': undefined }),
      'raised.characterSpacingAtBase',
      scope,
    )
    expect(nothing).toContain('must be measured as well')
    expect(measured(signOf(PUMP_ROOM), 'raised.characterSpacingAtBase', scope).nothing).not.toContain(
      'must be measured',
    )
  })

  test('without a section, a figure of the foot says that the sides are not straight', () => {
    const scope = { parts: ['both' as const], sections: ['bevelled' as const, 'rounded' as const, 'other' as const] }
    const told = { 'lettering.0.strokeThicknessAtBase': 8 }
    const open = { ...told, 'lettering.0.section': undefined }
    expect(measured(signOf(PUMP_ROOM, open), 'raised.strokeAtBase', scope).observations).toMatchObject([{ value: 0.4 }])
    expect(measured(signOf(PUMP_ROOM, open), 'raised.characterSpacingAtBase', scope).gaps).toHaveLength(1)
    expect(measured(signOf(PUMP_ROOM, told), 'raised.strokeAtBase', scope).observations).toEqual([])
  })
})
