import { isKnown, type BrailleBlock, type Lettering, type WhyUnknown } from '../sign/sign.js'
import { eachBlock } from './braille.js'
import { isPlaced as isLinePlaced, unplaced } from './dots.js'
import { raisedLettering } from './lettering.js'
import { basisOf, gapOf, nothing } from './facts.js'
import { extentOfBlock, frameOf, isDrawn, linesOf, type Extent, type Frame } from './frame.js'
import { placeAsk } from './placing.js'
import { isSurplus, type Pairs } from './pairing.js'
import type { Found, Quantities, Subject } from './quantity.js'

/**
 * Where a block of braille is, seen from the raised text that it repeats.
 *
 * Datum: `below` when every dot lies below the last baseline of that text, `above` when every dot lies above its first line, else
 * `beside` (2010 ADA Standards 703.3.2: below the corresponding text, under the whole of a text of several lines).
 */

/** Top of the first line and bottom of the last; undefined when a line's place is not known. */
function spanOf(lettering: Lettering[], frame: Frame): Pick<Extent, 'top' | 'bottom'> | undefined {
  const lines = lettering.flatMap((l) => {
    const extents = linesOf(l, frame)
    return l.lines.map((line, i) => {
      const extent = extents[i]
      if (!isKnown(line.baseline)) return extent
      const baseline = frame.of(line.baseline.value).y
      return extent ? { ...extent, bottom: baseline } : { top: baseline, bottom: baseline }
    })
  })
  if (lines.length === 0 || lines.includes(undefined)) return undefined
  const known = lines.filter((line) => line !== undefined)
  return { top: Math.min(...known.map(({ top }) => top)), bottom: Math.max(...known.map(({ bottom }) => bottom)) }
}

function relation(block: Extent, text: Pick<Extent, 'top' | 'bottom'>): 'below' | 'above' | 'beside' {
  if (block.top >= text.bottom) return 'below'
  return block.bottom <= text.top ? 'above' : 'beside'
}

/** Characters and where they are. */
interface Text {
  lettering: Lettering[]
  span: Pick<Extent, 'top' | 'bottom'> | undefined
}

function textOf(lettering: Lettering[], frame: Frame): Text {
  return { lettering, span: spanOf(lettering, frame) }
}

/** The characters that a block repeats, where the words tell. */
export function repeatedBy(n: number, pairs: Pairs): Lettering[] | undefined {
  if (!Array.isArray(pairs)) return undefined
  return pairs.find((p) => p.grades.length > 0 && p.blocks.some((b) => b.n === n))?.lettering
}

/** Whether a block that may repeat any of several texts stands below one of them. */
const belowSome = (extent: Extent, lettering: Lettering[], frame: Frame): boolean =>
  lettering.some((one) => {
    const span = spanOf([one], frame)
    return span !== undefined && relation(extent, span) === 'below'
  })

const NOT_TOLD = 'the words do not tell which of the raised texts the braille repeats, and it stands below one of them'

const isPlaced = ({ lines }: Lettering): boolean =>
  lines.length > 0 && lines.every(({ baseline, outlines }) => isKnown(baseline) || outlines.length > 0)

const reasonOf = (unread: Lettering[]): WhyUnknown =>
  unread.every(({ text }) => !isKnown(text) && text.unknown === 'missing-fact') ? 'missing-fact' : 'unreadable'

/** @param all all raised characters, which a block is taken to repeat where the words do not tell. */
function positionOf(block: BrailleBlock, n: number, all: () => Text, subject: Subject): Found {
  const frame = frameOf(subject.sign)
  const extent = extentOfBlock(block, frame)
  const gaps = unplaced(block, n)
  if (!extent) return gaps.length > 0 ? { observations: [], gaps } : nothing('The braille has no dots.')
  const pairs = subject.pairs()
  if (isSurplus(pairs, n)) return nothing('The braille repeats none of the raised text, which other braille repeats.')
  const own = repeatedBy(n, pairs)
  const { lettering, span: text } = own ? textOf(own, frame) : all()
  if (!text) {
    const at = raisedLettering(subject.sign).find((l) => lettering.includes(l.lettering) && !isPlaced(l.lettering))
    const unknown = { unknown: 'missing-fact' as const, why: 'the place of the raised text is not given' }
    return { observations: [], gaps: [gapOf(unknown, block.place, at && placeAsk(at.lettering, at.n))] }
  }
  const value = relation(extent, text)
  // A line that is not placed lies below those before it, and may lie anywhere else.
  const [first] = block.lines
  if (gaps.length > 0 && value !== 'beside' && !(value === 'below' && first && isLinePlaced(first)))
    return { observations: [], gaps }
  const unread = lettering.filter((l) => !isKnown(l.text))
  if (value !== 'below' && unread.length > 0) {
    const why = 'the characters were not read, so it is not known which of them the braille repeats'
    return {
      observations: [],
      gaps: [{ reason: reasonOf(unread), why, places: [block.place, ...unread.map((l) => l.place)] }],
    }
  }
  if (value !== 'below' && !own && lettering.length > 1 && belowSome(extent, lettering, frame))
    return {
      observations: [],
      gaps: [{ reason: 'needs-judgement', why: NOT_TOLD, places: [block.place, ...lettering.map((l) => l.place)] }],
    }
  const basis = isDrawn(lettering, [block])
    ? 'drawn'
    : isKnown(block.dotBaseDiameter)
      ? basisOf(block.dotBaseDiameter)
      : 'declared'
  return { observations: [{ value, basis, places: [block.place, ...lettering.map((l) => l.place)] }], gaps: [] }
}

export const POSITION: Quantities = {
  'braille.position': {
    unit: 'kind',
    method: 'The braille dots against the baselines of the raised text that they repeat.',
    couldBe: ['braille', 'lettering'],
    doubt: 'more',
    take: (subject) => {
      const raised = raisedLettering(subject.sign).map(({ lettering }) => lettering)
      if (raised.length === 0) return nothing('The sign has no raised characters.')
      let found: Text | undefined
      const all = () => (found ??= textOf(raised, frameOf(subject.sign)))
      return eachBlock((block, n) => positionOf(block, n, all, subject))(subject)
    },
  },
}
