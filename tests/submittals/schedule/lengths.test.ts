import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { decimalMark, readDecimal } from '../../../src/submittals/schedule/amount.js'
import { readLengthCell } from '../../../src/submittals/schedule/length-cell.js'
import { readSizeCell } from '../../../src/submittals/schedule/size-cell.js'

/**
 * Lengths as people write them. Expected values are arithmetic of the spelling itself: twelve inches to the foot, ten
 * millimetres to the centimetre. The spellings are common practice, no source.
 */

const POINTS = { mark: '.', delimiter: ',' } as const
const read = (text: string, unit: 'mm' | 'cm' | 'in' | null = null) => readLengthCell(text, unit, POINTS)

describe('a length', () => {
  it.each([
    ['15.9 mm', 15.9, 'mm'],
    ['15.9mm', 15.9, 'mm'],
    ['16 millimetres', 16, 'mm'],
    ['1.6 cm', 16, 'mm'],
    ['5/8 in', 0.625, 'in'],
    ['5/8"', 0.625, 'in'],
    ['5/8”', 0.625, 'in'],
    ["5/8''", 0.625, 'in'],
    ['⅝"', 0.625, 'in'],
    ['5⁄8 in.', 0.625, 'in'],
    ['1 1/4"', 1.25, 'in'],
    ['1-1/4"', 1.25, 'in'],
    ['1¼ in', 1.25, 'in'],
    ['.75 inches', 0.75, 'in'],
    ['2 IN', 2, 'in'],
    ['4\'-0"', 48, 'in'],
    ["5'", 60, 'in'],
    ['4\' 6 1/2"', 54.5, 'in'],
    ['4 ft 6 in', 54, 'in'],
    ['4′-6″', 54, 'in'],
    ['54" AFF', 54, 'in'],
    ['1350 mm A.F.F.', 1350, 'mm'],
  ] as const)('“%s” is %f %s', (text, value, unit) => {
    expect(read(text)).toEqual({ value: { value, unit } })
  })

  it('takes the unit of its heading only where it has none of its own', () => {
    expect(read('16', 'mm')).toEqual({ value: { value: 16, unit: 'mm' } })
    expect(read('5/8', 'in')).toEqual({ value: { value: 0.625, unit: 'in' } })
    expect(read('5/8"', 'mm')).toEqual({ value: { value: 0.625, unit: 'in' } })
    expect(readLengthCell(0.625, 'in', POINTS)).toEqual({ value: { value: 0.625, unit: 'in' } })
  })

  it.each([['16'], ['5/8'], ['0.75']])('“%s” without any unit is not guessed', (text) => {
    expect(read(text)).toEqual({ fault: expect.stringContaining('without a unit') as string })
    expect(readLengthCell(16, null, POINTS)).toHaveProperty('fault')
  })

  it.each([
    ['48"–60"'],
    ['5/8 to 3/4 in'],
    ['about 16 mm'],
    ['16 mm (5/8")'],
    ['5/0 in'],
    ['3 pt'],
    ['-5 mm'],
    ['1e3 mm'],
    ['five mm'],
    ['1 2 3 mm'],
    ['15..9 mm'],
    [''],
  ])('“%s” is no length', (text) => expect(read(text)).toHaveProperty('fault'))

  it('does not take a date for a fraction', () => {
    expect(readLengthCell(new Date(0), 'in', POINTS)).toEqual({ fault: expect.stringContaining('date') as string })
  })

  it('reads back every fraction of an inch that a tape shows', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 99 }),
        fc.integer({ min: 1, max: 63 }),
        fc.constantFrom(2, 4, 8, 16, 32, 64),
        (whole, over, under) => {
          const text = whole === 0 ? `${over}/${under}"` : `${whole} ${over}/${under}"`
          expect(read(text)).toEqual({ value: { value: whole + over / under, unit: 'in' } })
        },
      ),
      { numRuns: 200 },
    )
  })
})

describe('a decimal mark', () => {
  it.each([
    [['15.9', '2.4'], ',', '.'],
    [['15,9', '2,4'], ',', ','],
    [['15,9', '2.4'], ',', 'mixed'],
    [['1,234'], ',', null],
    [['1,234'], ';', ','],
    [['1.234'], ';', ','],
    [['1.234,5'], ',', ','],
    [['0,750'], ',', ','],
    [['1,234,567'], ',', null],
    [[], null, null],
  ] as const)('of %j divided by “%s” is %s', (numbers, delimiter, mark) => {
    expect(decimalMark(numbers, delimiter)).toBe(mark)
  })

  it.each([
    ['1,234', null, ',', 'ambiguous'],
    ['1,234', 'mixed', ',', 'ambiguous'],
    ['1.234', 'mixed', ',', 'ambiguous'],
    ['1,234', ',', ';', 1.234],
    ['1,220', '.', ',', 1220],
    ['1.220', ',', ';', 1220],
    ['1,220', '.', ';', 'ambiguous'],
    ['1.234', null, ',', 1.234],
    ['1.234,5', '.', ',', 1234.5],
    ['1,234.5', '.', ',', 1234.5],
    ['0,750', null, ',', 0.75],
    ['1,23,4', null, ',', null],
    ['12,34.5', '.', ',', null],
    ['1.2.3', '.', ',', null],
  ] as const)('“%s” where the file says %s and “%s” divides is %s', (written, mark, delimiter, value) => {
    expect(readDecimal(written, mark, delimiter)).toBe(value)
  })

  it('never changes a number that has one reading', () => {
    const number = fc.tuple(fc.integer({ min: 0, max: 999_999 }), fc.integer({ min: 10, max: 99 }))
    fc.assert(
      fc.property(number, fc.constantFrom('.', ',', 'mixed', null), ([whole, hundredths], mark) => {
        for (const used of ['.', ','])
          expect(readDecimal(`${whole}${used}${hundredths}`, mark, ',')).toBe(Number(`${whole}.${hundredths}`))
      }),
      { numRuns: 200 },
    )
  })
})

describe('a size', () => {
  const size = (text: string, heading = 'Panel size', unit: 'mm' | 'in' | null = null) =>
    readSizeCell(text, heading, unit, POINTS)
  const inches = (width: number, height: number, orderAssumed: boolean) => ({
    value: { width: { value: width, unit: 'in' }, height: { value: height, unit: 'in' }, orderAssumed },
  })

  it.each([
    ['8 x 6 in', 'Size', inches(8, 6, true)],
    ['8" × 6"', 'Size', inches(8, 6, true)],
    ['8 by 6 in', 'Size (W x H)', inches(8, 6, false)],
    ['8 x 6 in', 'Size (H x W)', inches(6, 8, false)],
    ['8"W x 6"H', 'Size', inches(8, 6, false)],
    ['8"H x 6"W', 'Size', inches(6, 8, false)],
    ['8 in high x 6 in wide', 'Size', inches(6, 8, false)],
    ['8 1/2 x 5 1/2 in', 'Size', inches(8.5, 5.5, true)],
  ])('“%s” under “%s”', (text, heading, expected) => {
    expect(size(text, heading)).toEqual(expected)
  })

  it('has a unit behind both for both, before that of its heading', () => {
    expect(size('8 x 6 in', 'Size', 'mm')).toEqual(inches(8, 6, true))
    expect(size('2 x 1.5 cm')).toEqual({
      value: { width: { value: 20, unit: 'mm' }, height: { value: 15, unit: 'mm' }, orderAssumed: true },
    })
  })

  it.each([['8 x 6'], ['8 in'], ['8 x 6 x 1 in'], ['8"W x 6"W'], ['large'], ['x'], ['8 x']])(
    '“%s” is no size',
    (text) => {
      expect(size(text)).toHaveProperty('fault')
    },
  )
})
