import { isKnown, type BrailleBlock, type Fact } from '../sign/sign.js'
import { join, nothing, pointerOf, take, type Ask } from './facts.js'
import { PLACING } from './placing.js'
import type { Found, Quantities, Quantity, Subject } from './quantity.js'

/**
 * The geometry of braille. Datum: spacings run from centre to centre, within a cell between neighbouring dots, from cell to
 * cell and from line to line between the same dot position; the diameter is that of the base, the height from the background to the
 * top of the dot (2010 ADA Standards, Table 703.3.1 with its note).
 */

export const NO_BRAILLE = 'The sign has no braille.'

export const eachBlock =
  (measure: (block: BrailleBlock, n: number) => Found) =>
  ({ sign }: Subject): Found =>
    join(sign.braille.map(measure), NO_BRAILLE)

type Field = 'dotBaseDiameter' | 'dotHeight' | 'dotSpacing' | 'cellSpacing' | 'lineSpacing' | 'dotShape'

const field = (key: Field, ask: Omit<Ask, 'pointer'>, method: string): Quantity => ({
  unit: key === 'dotShape' ? 'kind' : 'mm',
  method,
  couldBe: ['braille'],
  doubt: 'more',
  take: eachBlock((block, n) => {
    const absent = absence(key, block)
    if (absent !== undefined) return nothing(absent)
    const fact: Fact<number | string> | undefined = block[key]
    if (fact === undefined) return nothing('The braille has one line.')
    return take(fact, block.place, { ...ask, pointer: pointerOf(block.place, 'braille', n, key) })
  }),
})

/** Why a block has nothing to measure a field on, when it has nothing. Cells that are not known are taken to have it. */
function absence(key: Field, block: BrailleBlock): string | undefined {
  if (key === 'lineSpacing' && block.lines.length < 2) return 'The braille has one line.'
  if (
    key === 'cellSpacing' &&
    block.lines.length > 0 &&
    block.lines.every(({ cells }) => isKnown(cells) && cells.value.length < 2)
  )
    return 'No line of the braille has two cells.'
  return undefined
}

export const BRAILLE: Quantities = {
  'braille.dotBaseDiameter': field(
    'dotBaseDiameter',
    { ask: 'How wide are the braille dots at their base?', unit: 'mm' },
    'Across the base of a dot; of a drawn shape, the diameter of its least enclosing circle.',
  ),
  'braille.dotHeight': field(
    'dotHeight',
    { ask: 'How high are the braille dots?', unit: 'mm' },
    'From the background beside a dot up to its top.',
  ),
  'braille.dotSpacing': field(
    'dotSpacing',
    { ask: PLACING.dotSpacing, unit: 'mm' },
    'Centre to centre between neighbouring dots of one cell.',
  ),
  'braille.cellSpacing': field(
    'cellSpacing',
    { ask: PLACING.cellSpacing, unit: 'mm' },
    'Centre to centre between the same dot position of neighbouring cells; a blank counts as a cell.',
  ),
  'braille.lineSpacing': field(
    'lineSpacing',
    { ask: PLACING.lineSpacing, unit: 'mm' },
    'Centre to centre between the same dot position of a cell and the cell directly below.',
  ),
  'braille.dotShape': field(
    'dotShape',
    { ask: 'What shape are the braille dots?', choices: ['domed', 'rounded', 'flat', 'pointed'] },
    'The profile of a dot.',
  ),
}
