import { compareCells } from '../braille/compare.js'
import { TranslationError, type Translator } from '../braille/translator.js'
import { isKnown, type BrailleBlock, type BrailleCode, type Lettering, type Sign } from '../sign/sign.js'
import { raisedLettering } from './lettering.js'

/**
 * Which braille repeats which raised text. All of the braille may say all of the raised text, or each block may say the part
 * that stands above it (Access Board guide to chapter 7: separate blocks of text may each have their own braille).
 */
export interface Pair {
  blocks: { block: BrailleBlock; n: number }[]
  lettering: Lettering[]
  /** The grades in which the cells say the text; empty: they do not say it in any. */
  grades: BrailleCode[]
  cells: string
  print: string
  /** What the text is in contracted braille. */
  expected: string
}

/** The pairs; undefined where something is unread or not there; an error for a text that cannot be translated. */
export type Pairs = Pair[] | undefined | TranslationError

export const BLANK = '\u2800'

/** Blocks or letterings tried one by one against each other; more are only compared as a whole. */
const MOST_TRIED_APART = 12

/** All cells of a block, lines joined with a blank; undefined when a line is unread. */
export function cellsOf(block: BrailleBlock): string | undefined {
  const lines = block.lines.map(({ cells }) => (isKnown(cells) ? cells.value : undefined))
  return lines.length === 0 || lines.includes(undefined) ? undefined : lines.join(BLANK)
}

/** From top to bottom and from left to right, by what is known of their places; else as listed. */
function inReadingOrder<T extends { lines: Lettering['lines'] | BrailleBlock['lines'] }>(things: T[]): T[] {
  const placed = things.map((thing) => {
    const baseline = thing.lines[0]?.baseline
    return { thing, at: isKnown(baseline) ? baseline.value : undefined }
  })
  if (placed.some(({ at }) => at === undefined)) return things
  return placed
    .sort((a, b) => (a.at?.y ?? 0) - (b.at?.y ?? 0) || (a.at?.x ?? 0) - (b.at?.x ?? 0))
    .map(({ thing }) => thing)
}

/**
 * The pairs; undefined when a raised text or a block is unread or one of the two is not there.
 * @throws {TranslationError} when a text cannot be translated.
 */
export function pair(sign: Sign, translator: Translator): Pair[] | undefined {
  const lettering = inReadingOrder(raisedLettering(sign).map((l) => l.lettering))
  const numbered = sign.braille.map((block, n) => ({ block, n, lines: block.lines }))
  const blocks = inReadingOrder(numbered)
  if (lettering.length === 0 || blocks.length === 0) return undefined
  if (lettering.some(({ text }) => !isKnown(text)) || blocks.some(({ block }) => cellsOf(block) === undefined))
    return undefined
  const whole = compare(blocks, lettering, translator)
  if (whole.grades.length > 0 || (blocks.length === 1 && lettering.length === 1)) return [whole]
  const apart = Math.max(blocks.length, lettering.length) <= MOST_TRIED_APART
  return (apart && (inRuns(blocks, lettering, translator) ?? oneToOne(blocks, lettering, translator))) || [whole]
}

function compare(blocks: Pair['blocks'], lettering: Lettering[], translator: Translator): Pair {
  const cells = blocks.map(({ block }) => cellsOf(block)).join(BLANK)
  const print = lettering.map(({ text }) => (isKnown(text) ? text.value : '')).join(' ')
  const { grades, expected } = compareCells(cells, print, translator)
  return { blocks, lettering, grades, cells, print, expected: expected['ueb-contracted'] }
}

/** Each block says the next few letterings, in order. */
function inRuns(blocks: Pair['blocks'], lettering: Lettering[], translator: Translator): Pair[] | undefined {
  const [first, ...others] = blocks
  if (!first) return lettering.length === 0 ? [] : undefined
  for (let taken = 1; taken <= lettering.length - others.length; taken++) {
    const found = compare([first], lettering.slice(0, taken), translator)
    const rest = found.grades.length > 0 && inRuns(others, lettering.slice(taken), translator)
    if (rest) return [found, ...rest]
  }
  return undefined
}

/** Each block says one lettering, in any order. */
function oneToOne(blocks: Pair['blocks'], lettering: Lettering[], translator: Translator): Pair[] | undefined {
  if (blocks.length !== lettering.length) return undefined
  const left = [...lettering]
  const pairs = blocks.flatMap((block) => {
    const found = left.map((one) => compare([block], [one], translator)).find(({ grades }) => grades.length > 0)
    if (found) left.splice(left.indexOf(found.lettering[0]), 1)
    return found ?? []
  })
  return pairs.length === blocks.length ? pairs : undefined
}

/** Like `pair`, with a text that cannot be translated told as such. */
export function tryPair(sign: Sign, translator: Translator): Pairs {
  try {
    return pair(sign, translator)
  } catch (error) {
    if (error instanceof TranslationError) return error
    throw error
  }
}
