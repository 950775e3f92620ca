import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { draw } from '../../../src/make/draw/draw.js'
import { SignOrder } from '../../../src/make/draw/order.js'
import { Refusal } from '../../../src/refusal.js'
import { USES } from '../../../src/sign/sign.js'
import { findStandards, listStandards } from '../../../src/standards/catalogue.js'
import { translator } from '../../braille/translator.js'

/** Whatever is ordered within the schema, the answer is a drawing or a refusal that says why. All values are invented. */

const length = fc.double({ min: 0.001, max: 100_000, noNaN: true })
const sensible = fc.double({ min: 5, max: 400, noNaN: true })
const either = fc.oneof(sensible, length)
const text = fc.oneof(
  fc.string({ minLength: 1, maxLength: 60 }),
  fc.string({ unit: fc.constantFrom(...'ABCxyz 019-.,/&'), minLength: 1, maxLength: 120 }),
)
const order = fc.record(
  {
    use: fc.constantFrom(...USES),
    lettering: fc.tuple(
      fc.record(
        {
          text,
          typeface: fc.record({ family: fc.constantFrom('Open Sans', 'Arimo', 'Tinos', 'DejaVu Sans Mono') }),
          characterHeight: either,
          alignment: fc.constantFrom('flush-left', 'centred', 'flush-right'),
          colour: fc.constantFrom('#000', 'white', 'rgb(1 2 3)', '"><script>'),
        },
        { requiredKeys: ['text'] },
      ),
    ),
    panel: fc.record({ width: either, height: either }),
    border: fc.record({ width: either, inset: either }, { requiredKeys: ['width'] }),
    pictogram: fc.record({ meaning: fc.constant('women'), fieldHeight: either }, { requiredKeys: ['meaning'] }),
    installation: fc.record({ viewingDistance: length }),
  },
  { requiredKeys: ['use', 'lettering'] },
)
const standards = fc.uniqueArray(fc.constantFrom(...listStandards().map(({ id }) => id)), {
  minLength: 1,
  maxLength: 3,
})

describe('any order', () => {
  test('gives a drawing or a refusal', () => {
    let drawn = 0
    fc.assert(
      fc.property(order, standards, (asked, ids) => {
        const parsed = SignOrder.safeParse(asked)
        if (!parsed.success) return
        try {
          const { drawing } = draw(parsed.data, findStandards(ids), translator())
          drawn++
          expect(drawing).not.toMatch(/NaN|Infinity|undefined|<script/u)
        } catch (error) {
          if (!(error instanceof Refusal)) throw error
          expect(error.detail).not.toMatch(/NaN|undefined/u)
          if (error.type === 'cannot-satisfy') expect(error.conflicts?.length).toBeGreaterThan(0)
        }
      }),
      { numRuns: 150 },
    )
    expect(drawn).toBeGreaterThan(0)
  })
})
