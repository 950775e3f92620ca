import { gradesOf } from '../braille/compare.js'
import type { BrailleCode } from '../sign/sign.js'
import { eachBlock, NO_BRAILLE } from './braille.js'
import { basisOfBlock, unreadCells } from './braille-reading.js'
import { nothing } from './facts.js'
import { cellsOf, type Pair } from './pairing.js'
import type { Found, Quantities, Quantity, Subject } from './quantity.js'
import { readAs, wrongCells } from './wrong-cells.js'

/**
 * In which grade the braille is. Datum: the cells are the translation of the raised text in it (2010 ADA Standards 703.3: contracted;
 * Australia, Canada and others: uncontracted), decided by the raised text where the cells say it, else by the cells alone. Both grades
 * are those of Unified English Braille.
 */

const expectedIn = (pair: Pair, grade: BrailleCode): string =>
  grade === 'ueb-contracted' ? pair.expected : pair.uncontracted

const inGrade =
  (grade: BrailleCode) =>
  (subject: Subject): Found => {
    const found = subject.pairs()
    const pairs = Array.isArray(found) ? found : []
    return eachBlock((block, n) => {
      const cells = cellsOf(block)
      if (cells === undefined) return { observations: [], gaps: unreadCells(block, n) }
      const paired = pairs.find((p) => p.grades.length > 0 && p.blocks.some((b) => b.n === n))
      const grades = paired?.grades ?? gradesOf(cells, subject.translator)
      if (!grades)
        return {
          observations: [],
          gaps: [{ reason: 'unreadable', why: 'the cells read in neither grade', places: [block.place] }],
        }
      const value = grades.includes(grade)
      const wrong =
        paired && !value
          ? wrongCells(
              paired.blocks.map((b) => b.block),
              paired.cells,
              [expectedIn(paired, grade)],
            )
          : undefined
      return {
        observations: [
          {
            value,
            basis: basisOfBlock(block),
            places: [...(wrong?.places ?? []), block.place],
            context: {
              cells,
              ...(paired && { expected: expectedIn(paired, grade) }),
              grades: grades.join(' and '),
            },
            ...(wrong && { remark: `The cells are ${cells}${readAs([block])}. ${wrong.text}` }),
          },
        ],
        gaps: [],
      }
    })(subject)
  }

/** Another code than Unified English Braille is read by a person: none is translated here. */
function nationalCode({ sign }: Subject): Found {
  if (sign.braille.length === 0) return nothing(NO_BRAILLE)
  const why =
    'only Unified English Braille is read here; whether the cells say the text in the code of the country is for one who reads it'
  return {
    observations: [],
    gaps: [{ reason: 'needs-judgement', why, places: sign.braille.map(({ place }) => place) }],
  }
}

const truth = (method: string, take: Quantity['take']): Quantity => ({
  unit: 'truth',
  method,
  couldBe: ['braille'],
  doubt: 'more',
  take,
})

export const GRADE: Quantities = {
  'braille.contracted': truth(
    'The grade in which the cells are the translation of the text.',
    inGrade('ueb-contracted'),
  ),
  'braille.uncontracted': truth(
    'The grade in which the cells are the translation of the text.',
    inGrade('ueb-uncontracted'),
  ),
  'braille.nationalCode': truth('By one who reads the code of the country.', nationalCode),
}
