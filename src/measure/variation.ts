import { isKnown, type Basis, type BrailleBlock, type Fact, type Place, type Sign } from '../sign/sign.js'
import { readingOf } from './as-measured.js'
import { NO_BRAILLE } from './braille.js'
import { join, nothing } from './facts.js'
import type { Found, Quantities } from './quantity.js'

/**
 * How much one size of the braille varies within one sign: the greatest deviation of a dot diameter, a dot height or a spacing from its
 * mean, as a share of the mean (Australian Braille Authority's sizes for signs: whatever the sizes, no more than 1 % on one sign; how a
 * deviation is taken is our reading). A single figure tells nothing of how the dots vary.
 */

const SIZES = {
  dotBaseDiameter: 'dot base diameter',
  dotHeight: 'dot height',
  dotSpacing: 'dot spacing',
  cellSpacing: 'cell spacing',
  lineSpacing: 'braille line spacing',
} as const
type Size = keyof typeof SIZES

/** Values of one size: where it was read several times, the extremes and the mean stand for them. */
interface Values {
  min: number
  max: number
  /** Weighted sum, for the mean of several blocks. */
  sum: number
  count: number
  basis: Basis
  places: Place[]
}

function valuesOf(fact: Fact<number> | undefined, place: Place): Values[] {
  if (!isKnown(fact)) return []
  const { value, min = value, max = value, count = 1, basis, places } = fact
  return [{ min, max, sum: value * count, count, basis, places: places && places.length > 0 ? places : [place] }]
}

/** Whether a block has the size at all: one line has no distance of lines, one cell none of cells. */
function has(size: Size, { lines, cellSpacing }: BrailleBlock): boolean {
  if (size === 'lineSpacing') return lines.length > 1
  if (size !== 'cellSpacing') return true
  return isKnown(cellSpacing) || lines.some(({ cells }) => !isKnown(cells) || cells.value.length > 1)
}

function variationOf(size: Size, sign: Sign): Found {
  const blocks = sign.braille.filter((block) => has(size, block))
  if (blocks.length === 0) return nothing(NO_BRAILLE)
  const reading = readingOf(sign, `braille.${size}`)
  const values = reading
    ? valuesOf(reading, sign.panel.place)
    : blocks.flatMap((block) => valuesOf(block[size], block.place))
  const count = values.reduce((n, one) => n + one.count, 0)
  const open = !reading && values.length < blocks.length
  const found: Found = { observations: [], gaps: [] }
  if (count > 1) {
    const mean = values.reduce((sum, one) => sum + one.sum, 0) / count
    const least = Math.min(...values.map(({ min }) => min))
    const most = Math.max(...values.map(({ max }) => max))
    found.observations.push({
      value: Math.max(most - mean, mean - least) / mean,
      count,
      basis: values.find(({ basis }) => basis !== 'declared')?.basis ?? 'declared',
      places: values.flatMap(({ places }) => places),
      remark: `Of the ${SIZES[size]}.`,
    })
  }
  // A figure that was declared, or read once, tells nothing of how the others differ; a drawing shows all that it has.
  if (values.length === 0 || open || values.some((one) => one.count < 2 && one.basis !== 'drawn'))
    found.gaps.push({
      reason: 'missing-fact',
      why: `a single figure does not tell how much the ${SIZES[size]} varies`,
      places: blocks.map(({ place }) => place),
      ask: {
        pointer: '/sign/measured',
        ask: `What is the ${SIZES[size]} at several places (braille.${size})?`,
        unit: 'mm',
      },
    })
  return found
}

export const VARIATION: Quantities = {
  'braille.variation': {
    unit: 'ratio',
    method: 'Greatest deviation of a dot diameter, dot height or spacing from its mean on the sign, over the mean.',
    couldBe: ['braille'],
    doubt: 'more',
    take: ({ sign }) =>
      sign.braille.length === 0
        ? nothing(NO_BRAILLE)
        : join(
            (Object.keys(SIZES) as Size[]).map((size) => variationOf(size, sign)),
            NO_BRAILLE,
          ),
  },
}
