import { isKnown, type BrailleBlock, type Sign } from '../sign/sign.js'
import { eachBlock } from './braille.js'
import { unplaced, unsized } from './dots.js'
import { basisOf, gapOf, nothing, PANEL_POINTER } from './facts.js'
import { extentOfBlock, frameOf, type Extent } from './frame.js'
import { raisedLettering } from './lettering.js'
import type { Gap } from './measurement.js'
import { isSurplus } from './pairing.js'
import { HEIGHT_ASK, leftEdge, lowerEdge } from './panel-edges.js'
import { baselineAsk } from './placing.js'
import { repeatedBy } from './position.js'
import type { Found, Quantities, Quantity, Subject } from './quantity.js'

/**
 * Where the braille stands: the gap below the text that it repeats, and the way to the edges of the panel.
 *
 * Datum: the gap runs from the baseline of the last raised line, descenders not counted, down to the upper edge of the first line's
 * uppermost dots (NCC 2022, S15C6, as reported, does not say to which edge of the braille; the edge of the dots is our reading). The
 * offsets run from the edge of the panel to the nearest edge of a dot (Orden TMA/851/2021 and the Dubai code, as read).
 */

/** The dots of a block, with what keeps any of them from being known. */
function edgesOf(block: BrailleBlock, n: number, sign: Sign): { extent: Extent | undefined; gaps: Gap[] } {
  const gaps = unplaced(block, n)
  if (!isKnown(block.dotBaseDiameter)) return { extent: undefined, gaps: [...gaps, unsized(block, n)] }
  return { extent: extentOfBlock(block, frameOf(sign)), gaps }
}

const NO_DOTS = 'The braille has no dots.'

const basisOfDots = ({ dotBaseDiameter }: BrailleBlock) =>
  isKnown(dotBaseDiameter) ? dotBaseDiameter : { basis: 'declared' as const }

const NOT_TOLD = 'the words do not tell which of the raised texts the braille repeats'

/** Whether the same text is repeated by several blocks, of which another stands higher. */
function isUnderOther(block: BrailleBlock, n: number, { sign, pairs }: Subject): boolean {
  const found = pairs()
  const blocks = Array.isArray(found) ? found.find((pair) => pair.blocks.some((b) => b.n === n))?.blocks : undefined
  const top = (one: BrailleBlock): number => extentOfBlock(one, frameOf(sign))?.top ?? Infinity
  return blocks !== undefined && blocks.some((other) => top(other.block) < top(block))
}

function textGap(block: BrailleBlock, n: number, subject: Subject): Found {
  const { sign } = subject
  const pairs = subject.pairs()
  if (isSurplus(pairs, n)) return nothing('The braille repeats none of the raised text, which other braille repeats.')
  const own = repeatedBy(n, pairs)
  const text = raisedLettering(sign).filter(({ lettering }) => !own || own.includes(lettering))
  if (text.length === 0) return nothing('The sign has no raised characters.')
  if (!own && text.length > 1 && sign.braille.length > 1)
    return { observations: [], gaps: [{ reason: 'needs-judgement', why: NOT_TOLD, places: [block.place] }] }
  if (isUnderOther(block, n, subject)) return nothing('Another block of braille stands between it and the text.')
  const { extent, gaps } = edgesOf(block, n, sign)
  const frame = frameOf(sign)
  const baselines = text.flatMap(({ lettering, n: m }) =>
    lettering.lines.map(({ baseline }) => {
      if (isKnown(baseline)) return { y: frame.of(baseline.value).y, basis: baseline.basis }
      gaps.push(gapOf(baseline, lettering.place, baselineAsk(baseline, lettering.place, 'lettering', m)))
      return undefined
    }),
  )
  if (gaps.length > 0) return { observations: [], gaps }
  if (!extent) return nothing(NO_DOTS)
  const known = baselines.filter((baseline) => baseline !== undefined)
  const below = extent.top - Math.max(...known.map(({ y }) => y))
  const places = [block.place, ...text.map(({ lettering }) => lettering.place)]
  const remark = below < 0 ? { remark: 'The braille does not stand below the raised text.' } : {}
  const basis = basisOf(basisOfDots(block), ...known)
  return { observations: [{ value: Math.max(0, below), basis, places, ...remark }], gaps: [] }
}

function offset(block: BrailleBlock, n: number, sign: Sign, side: 'left' | 'bottom'): Found {
  const { extent, gaps } = edgesOf(block, n, sign)
  const edge = side === 'left' ? leftEdge(sign) : lowerEdge(sign)
  if (!isKnown(edge)) {
    const ask = { pointer: `${PANEL_POINTER}/width`, ask: 'How wide is the panel?', unit: 'mm' as const }
    gaps.push(gapOf(edge, sign.panel.place, side === 'left' ? ask : HEIGHT_ASK))
  }
  if (gaps.length > 0 || !isKnown(edge)) return { observations: [], gaps }
  if (!extent) return nothing(NO_DOTS)
  const value = side === 'left' ? extent.left - edge.value : edge.value - extent.bottom
  return {
    observations: [{ value, basis: basisOf(basisOfDots(block), edge), places: [block.place, sign.panel.place] }],
    gaps: [],
  }
}

const row = (method: string, couldBe: Quantity['couldBe'], take: Quantity['take']): Quantity => ({
  unit: 'mm',
  method,
  couldBe,
  doubt: 'more',
  take,
})

export const BRAILLE_PLACE: Quantities = {
  'braille.textGap': row(
    'From the baseline of the last raised line, descenders not counted, down to the upper edge of the first dots below it.',
    ['braille', 'lettering'],
    (subject) => eachBlock((block, n) => textGap(block, n, subject))(subject),
  ),
  'braille.leftOffset': row('From the left edge of the panel to the nearest edge of a dot.', ['braille'], (subject) =>
    eachBlock((block, n) => offset(block, n, subject.sign, 'left'))(subject),
  ),
  'braille.bottomOffset': row(
    'From the lower edge of the panel up to the nearest edge of a dot.',
    ['braille'],
    (subject) => eachBlock((block, n) => offset(block, n, subject.sign, 'bottom'))(subject),
  ),
}
