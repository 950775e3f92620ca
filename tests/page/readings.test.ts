import { describe, expect, it } from 'vitest'
import { numbersIn, readMeasured } from '../../src/page/sign/measured-values.js'
import { FACTS, readFacts, shownFact } from '../../src/page/sign/place-facts.js'
import { toMeasureOf } from '../../src/page/sign/to-measure.js'
import { oneLine, readWaiver } from '../../src/page/sign/waive-form.js'
import { setSign } from '../report/set/evidence-sample.js'

/** What the forms of a sign take, and what they ask for again. The values are invented. */

describe('numbers as they are typed', () => {
  it.each([
    ['0.71', [0.71]],
    ['0.71 0.74, 0.69;0.7\n.72', [0.71, 0.74, 0.69, 0.7, 0.72]],
    ['  ', []],
    ['48', [48]],
  ])('%j are read', (text, numbers) => {
    expect(numbersIn(text)).toEqual(numbers)
  })

  // A comma may part decimals or values: a wrong reading is worse than none.
  it.each(['0,71', '1,2,3', '0.7mm', '-1', '1e3', '48 1/2', '∞', '0x10'])('%j is asked for again', (text) => {
    expect(numbersIn(text)).toMatch(/is not read as a number/)
  })
})

describe('what is left to measure', () => {
  // The unit as the inspection sheet asks for it, so that nobody who fills in the page from paper changes a unit at each row.
  it.each([
    ['0.025 in (0.6 mm) to 0.037 in (0.9 mm)', 'in'],
    ['0.6 mm to 0.9 mm', 'mm'],
  ])('is asked for in the unit that the code prints first: %s', (printed, unit) => {
    const { report } = setSign('L-17')
    if (!report) throw new Error('the sample has a report')
    const findings = report.findings.map((one) => ({ ...one, limit: { ...one.limit, unit: 'mm' as const, printed } }))
    const units = toMeasureOf({ ...report, findings }).map((one) => one.unit)
    expect(units.length).toBeGreaterThan(0)
    expect(new Set(units)).toEqual(new Set([unit]))
  })
})

describe('measured values', () => {
  it('become readings, each with its unit, its uncertainty and the instrument', () => {
    const values = new URLSearchParams({
      instrument: 'Dial gauge 7',
      author: 'A. Mason',
      'values-braille.dotHeight': '0.028 0.029',
      'unit-braille.dotHeight': 'in',
      'uncertainty-braille.dotHeight': '0.001',
      'values-raised.strokeThickness': '0.15',
      quantity: 'raised.relief',
      'values-other': '0.9',
      'unit-other': 'mm',
    })
    const instrument = 'Dial gauge 7'
    expect(readMeasured(values)).toEqual({
      author: 'A. Mason',
      measured: [
        {
          quantity: 'braille.dotHeight',
          values: [0.028, 0.029],
          unit: 'in',
          expandedUncertainty: 0.001,
          instrument,
        },
        { quantity: 'raised.strokeThickness', values: [0.15], unit: 'ratio', instrument },
        { quantity: 'raised.relief', values: [0.9], unit: 'mm', instrument },
      ],
    })
  })

  it.each([
    [{}, 'instrument'],
    [{ 'values-braille.dotHeight': '0,7' }, 'values-braille.dotHeight'],
    [{ 'values-braille.dotHeight': '0.7', 'uncertainty-braille.dotHeight': '1 2' }, 'uncertainty-braille.dotHeight'],
    [{ 'values-other': '0.7' }, 'quantity'],
    [{ quantity: 'raised.relief' }, 'values-other'],
    [{ quantity: 'constructor', 'values-other': '1' }, 'quantity'],
    [{ 'values-braille.dotHeight': '0.7', author: 'x'.repeat(101) }, 'author'],
    [{ 'values-braille.dotHeight': '0.7', instrument: 'x'.repeat(101) }, 'instrument'],
  ])('that cannot be taken name the control: %j', (fields, control) => {
    const read = readMeasured(new URLSearchParams(fields))
    expect('errors' in read && read.errors.map(({ id }) => id)).toContain(control)
  })
})

describe('facts of the place of a sign', () => {
  const KNOWN = {
    panelBottomHeight: 51,
    side: 'latch',
    door: { leafWidth: { value: 914.4, unit: 'mm' }, swing: 'away' },
    neighbouringDoors: [{ distance: 40, leafWidth: 36, swing: 'away', hinge: 'near' }],
    wallColour: { lrv: 60 },
  }
  const shown = (unit: 'mm' | 'in') =>
    new URLSearchParams([
      ['place-unit', unit],
      ...FACTS.map((fact): [string, string] => [`place-${fact.path.join('.')}`, shownFact(KNOWN, fact, 'in', unit)]),
    ])

  it('that are sent as they were shown stay as they were, in either unit, and those without a control too', () => {
    for (const unit of ['mm', 'in'] as const)
      expect(readFacts(shown(unit), KNOWN, 'in')).toEqual({
        installation: {
          panelBottomHeight: { value: 51, unit: 'in' },
          side: 'latch',
          door: { leafWidth: { value: 914.4, unit: 'mm' }, swing: 'away' },
          neighbouringDoors: [
            {
              distance: { value: 40, unit: 'in' },
              leafWidth: { value: 36, unit: 'in' },
              swing: 'away',
              hinge: 'near',
            },
          ],
          wallColour: { lrv: 60 },
        },
      })
  })

  it('are taken away by an empty control and changed in the unit of the form', () => {
    const values = shown('in')
    values.set('place-side', '')
    values.set('place-door.swing', '')
    values.set('place-door.leafWidth', '')
    values.set('place-panelBottomHeight', '50.5')
    const read = readFacts(values, KNOWN, 'in')
    expect('installation' in read && read.installation).toMatchObject({
      panelBottomHeight: { value: 50.5, unit: 'in' },
    })
    expect('installation' in read && read.installation).not.toHaveProperty('side')
    expect('installation' in read && read.installation).not.toHaveProperty('door')
  })

  it('may say that there is no other door, and take that back', () => {
    const none = new URLSearchParams({ 'place-no-other-door': 'yes' })
    expect(readFacts(none, {}, 'mm')).toEqual({ installation: { neighbouringDoors: [] } })
    expect(readFacts(new URLSearchParams(), { neighbouringDoors: [] }, 'mm')).toEqual({ installation: {} })
  })

  it.each([
    [{ 'place-panelBottomHeight': '1,3' }, 'place-panelBottomHeight'],
    [{ 'place-side': 'ceiling' }, 'place-side'],
    [{ 'place-door.leafWidth': '0' }, 'place-door.leafWidth'],
  ])('that cannot be taken name the control: %j', (fields, control) => {
    const read = readFacts(new URLSearchParams(fields), {}, 'mm')
    expect('errors' in read && read.errors.map(({ id }) => id)).toEqual([control])
  })
})

describe('a waiver', () => {
  it('needs a reason, an authority and a person', () => {
    const read = readWaiver(new URLSearchParams({ fingerprint: 'abc', reason: ' ' }), 3)
    expect('errors' in read && read.errors.map(({ id }) => id)).toEqual([
      'waive-3-reason',
      'waive-3-authority',
      'waive-3-author',
    ])
  })

  it('keeps its reason in one line, and holds until withdrawn where no day is given', () => {
    const fields = {
      fingerprint: 'abc',
      reason: 'Tiled.\r\n\r\nSeen.',
      authority: 'V 12',
      author: 'R. Ferrante',
      expires: '',
    }
    const read = readWaiver(new URLSearchParams(fields), 1)
    expect('waiver' in read && read.waiver).toEqual({
      fingerprint: 'abc',
      reason: 'Tiled. Seen.',
      authority: 'V 12',
      author: 'R. Ferrante',
      expires: null,
    })
    expect(oneLine(' a \n b ')).toBe('a b')
  })

  it('takes no day that is none', () => {
    const fields = { fingerprint: 'abc', reason: 'x', authority: 'y', author: 'z', expires: '2027-02-30' }
    const read = readWaiver(new URLSearchParams(fields), 1)
    expect('errors' in read && read.errors.map(({ id }) => id)).toEqual(['waive-1-expires'])
  })
})
