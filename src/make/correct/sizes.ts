import type { Finding } from '../../report/finding-schema.js'
import { isKnown, type BrailleBlock, type Fact } from '../../sign/sign.js'
import { NotCorrectable } from './outcome.js'

/** The sizes of a block of braille: those that fail at what the remedy aims at, all others as they were drawn. */
export interface BlockSizes {
  diameter: number
  dotSpacing: number
  cellSpacing: number
  lineSpacing: number
}

export const SIZE_QUANTITIES = [
  'braille.dotBaseDiameter',
  'braille.dotSpacing',
  'braille.cellSpacing',
  'braille.lineSpacing',
] as const

const UNREAD = 'The sizes of the braille were not read from the drawing.'

/**
 * @param failed rows that this block breaks
 * @returns why not, where a size is not known or no value satisfies all standards asked
 */
export function sizesFor(block: BrailleBlock, failed: readonly Finding[]): BlockSizes | NotCorrectable {
  const size = (
    quantity: (typeof SIZE_QUANTITIES)[number],
    fact: Fact<number> | undefined,
  ): number | NotCorrectable => {
    const value = isKnown(fact) ? fact.value : undefined
    const broken = failed.filter((row) => row.quantity === quantity)
    const [first] = broken
    if (!first) return value ?? new NotCorrectable(UNREAD)
    const { remedy } = first
    if (!remedy || remedy.aim === null) return new NotCorrectable(remedy?.text ?? UNREAD)
    // The mean may be well where a single dot stands off its place.
    const inside = value !== undefined && value >= (remedy.min ?? -Infinity) && value <= (remedy.max ?? Infinity)
    return inside ? value : remedy.aim
  }
  const diameter = size('braille.dotBaseDiameter', block.dotBaseDiameter)
  const dotSpacing = size('braille.dotSpacing', block.dotSpacing)
  const cellSpacing = size('braille.cellSpacing', block.cellSpacing)
  const lineSpacing = block.lines.length > 1 ? size('braille.lineSpacing', block.lineSpacing) : 0
  for (const one of [diameter, dotSpacing, cellSpacing, lineSpacing]) if (one instanceof NotCorrectable) return one
  return { diameter, dotSpacing, cellSpacing, lineSpacing } as BlockSizes
}
