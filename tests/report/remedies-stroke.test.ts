import { expect, test } from 'vitest'
import { judge } from '../../src/judge/judge.js'
import { measurer } from '../../src/measure/measurer.js'
import { remedyFor } from '../../src/report/remedies.js'
import { findStandards } from '../../src/standards/catalogue.js'
import { PUMP_ROOM, signOf, translator } from '../measure/signs.js'

/**
 * A stroke of 2 to 7 mm (National Construction Code 2022, S15C3, as reported) that is at most 15 percent of the character height (2010
 * ADA Standards, 703.2.6): the change of the one must keep the other.
 */

const AUSTRALIA = 'au-ncc-2022/S15C3/stroke-width'
const STATES = 'us-ada-2010/703.2.6/stroke-thickness'

function remedyOf(row: string, characterHeight: number, strokeThickness: number) {
  const sign = signOf(PUMP_ROOM, {
    'lettering.0.characterHeight': characterHeight,
    'lettering.0.strokeThickness': strokeThickness,
  })
  const measure = measurer(sign, translator)
  const judgements = findStandards(['us-ada-2010', 'au-ncc-2022']).flatMap((standard) =>
    judge(standard, sign, measure, { decisionRule: 'simple', unitSystem: 'printed' }),
  )
  const judgement = judgements.find(({ requirement }) => requirement.requirement === row)
  return judgement && remedyFor(judgement, judgements)
}

test('a stroke in millimetres stays within its share of the height', () => {
  expect(remedyOf(AUSTRALIA, 17, 1.5)).toMatchObject({ min: 2, max: 2.55, unit: 'mm' })
  expect(remedyOf(AUSTRALIA, 60, 9.5)).toMatchObject({ min: 2, max: 7, unit: 'mm' })
})

test('a share of the height stays within the millimetres', () => {
  const remedy = remedyOf(STATES, 50, 9)
  expect(remedy).toMatchObject({ unit: 'ratio', max: 0.14 })
  expect(remedy?.min).toBeCloseTo(2 / 50, 6)
})

test('where no stroke keeps both, both are named', () => {
  expect(remedyOf(AUSTRALIA, 13, 1.5)).toMatchObject({
    aim: null,
    text: 'No width of the stroke satisfies both au-ncc-2022 S15C3 (not less than 2 mm and not more than 7 mm) and us-ada-2010 703.2.6 (15 percent maximum of the height of the character).',
  })
})
