import { describe, expect, test } from 'vitest'
import type { Sign } from '../../src/sign/sign.js'
import { drawnSign } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured } from './values.js'

/** Lines level with the panel, on drawings that lie at invented angles. */

type Json = Record<string, unknown>
const at = (values: Json = {}) => signOf(PUMP_ROOM, values)

describe('level with the panel', () => {
  const LEVEL = 'raised.horizontal'
  const lying = (letters: number | undefined, dots: number, sides?: number): Sign => {
    const sign = drawnSign()
    return {
      ...sign,
      panel: { ...sign.panel, ...(sides !== undefined && { turned: { rotation: sides, corners: [] } }) },
      lettering: sign.lettering.map((l) => ({
        ...l,
        ...(letters !== undefined && { lie: { rotation: letters, mirrored: false } }),
      })),
      braille: sign.braille.map((b) => ({
        ...b,
        rotation: dots,
        place: { ...b.place, source: { line: 1, column: 1 } },
      })),
    }
  }
  const values = (sign: Sign) => measured(sign, LEVEL).observations.map(({ value }) => value)

  test('are lines within a degree of each other and of the panel', () => {
    expect(values(lying(0, 1))).toEqual([true, true])
    expect(values(lying(0, 1.01))).toEqual([true, false])
    expect(values(lying(0, 359.5))).toEqual([true, true])
    expect(values(lying(30, 30, 30))).toEqual([true, true])
    expect(measured(lying(30, 30), LEVEL).gaps).toMatchObject([
      { reason: 'unreadable', places: [{ element: 'lettering/0' }] },
      { reason: 'unreadable', places: [{ element: 'braille/0' }] },
    ])
    expect(values(lying(0, 180))).toEqual([true, false])
  })

  test('say whether they were drawn', () => {
    expect(measured(lying(0, 0), LEVEL).observations).toMatchObject([{ basis: 'drawn' }, { basis: 'drawn' }])
    expect(measured(at(), LEVEL).observations[0]).toMatchObject({
      basis: 'declared',
      places: [{ element: 'lettering/0' }],
      remark: 'The lines of a description run level with the panel.',
    })
    expect(measured(at({ lettering: [], braille: [] }), LEVEL).nothing).toBeDefined()
  })

  test('were not read where outlines or cells were not', () => {
    expect(measured(lying(undefined, 0), LEVEL).gaps).toMatchObject([{ places: [{ element: 'lettering/0' }] }])
    const cells = (unknown: 'unreadable' | 'missing-fact') => {
      const sign = lying(0, 0)
      const braille = sign.braille.map((b) => ({
        ...b,
        lines: b.lines.map((line, i) => (i === 0 ? { ...line, cells: { unknown, why: 'no cells' } } : line)),
      }))
      return measured({ ...sign, braille }, LEVEL).gaps.length
    }
    expect([cells('unreadable'), cells('missing-fact')]).toEqual([1, 0])
  })
})
