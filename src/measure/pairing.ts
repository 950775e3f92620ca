import { compareCells } from '../braille/compare.js'
import { joinDivided } from '../braille/layout.js'
import { numbersApart } from '../braille/passages.js'
import { TranslationError, type Translator } from '../braille/translator.js'
import { isKnown, type BrailleBlock, type BrailleCode, type Lettering, type Sign } from '../sign/sign.js'
import { frameOf } from './frame.js'
import { raisedLettering } from './lettering.js'
import { readingOrders } from './reading-order.js'

/**
 * Which braille repeats which raised text. Each block may say the part that stands above it, or all of the braille all of the raised
 * text (Access Board guide to chapter 7: separate blocks of text may each have their own braille). Braille that repeats none of it may
 * stand beside: 2010 ADA Standards 703.2 asks only that the raised text is repeated.
 */
export interface Pair {
  blocks: Numbered[]
  lettering: Lettering[]
  /** The grades in which the cells say the text; empty: they do not say it in any. */
  grades: BrailleCode[]
  cells: string
  print: string
  /** What the text is in contracted braille. */
  expected: string
  /** What it is in uncontracted braille. */
  uncontracted: string
}

interface Numbered {
  block: BrailleBlock
  n: number
}

/** There are more texts or blocks than are tried against each other, and as a whole they do not say the same. */
export const TOO_MANY = 'too-many'

/** The pairs; undefined where something is unread or not there; an error for a text that cannot be translated. */
export type Pairs = Pair[] | undefined | typeof TOO_MANY | TranslationError

export const BLANK = '\u2800'

/** Blocks or letterings tried one by one against each other; more are only compared as a whole. */
const MOST_TRIED_APART = 12

/** Rows of dots in a cell, less one: from the first to the last there are as many dot spacings. */
const SPACINGS_IN_CELL = 2

/** All cells of a block, lines joined with a blank; undefined when a line is unread. */
export function cellsOf(block: BrailleBlock): string | undefined {
  const lines = block.lines.map(({ cells }) => (isKnown(cells) ? cells.value : undefined))
  return lines.length === 0 || lines.includes(undefined) ? undefined : lines.join(BLANK)
}

const linesOf = (block: BrailleBlock): string[] =>
  block.lines.flatMap(({ cells }) => (isKnown(cells) ? [cells.value] : []))

/** Whether a block repeats none of the raised text, all of which other braille repeats. */
export const isSurplus = (pairs: Pairs, n: number): boolean =>
  Array.isArray(pairs) &&
  pairs.every(({ grades }) => grades.length > 0) &&
  !pairs.some(({ blocks }) => blocks.some((block) => block.n === n))

/**
 * The pairs; undefined when a raised text or a block is unread or one of the two is not there.
 * @throws {TranslationError} when a text cannot be translated.
 */
export function pair(sign: Sign, translator: Translator): Exclude<Pairs, TranslationError> {
  const lettering = raisedLettering(sign).map((l) => l.lettering)
  const blocks = sign.braille.map((block, n) => ({ block, n, lines: block.lines }))
  if (lettering.length === 0 || blocks.length === 0) return undefined
  if (lettering.some(({ text }) => !isKnown(text)) || blocks.some(({ block }) => cellsOf(block) === undefined))
    return undefined
  if (lettering.length === 1 && blocks.length === 1) return [compare(blocks, lettering, translator)]
  const frame = frameOf(sign)
  const texts = readingOrders(lettering, frame, ({ characterHeight: h }) => (isKnown(h) ? h.value : 0))
  const cells = readingOrders(blocks, frame, ({ block: { dotSpacing: d } }) =>
    isKnown(d) ? SPACINGS_IN_CELL * d.value : 0,
  )
  const few = Math.max(blocks.length, lettering.length) <= MOST_TRIED_APART
  for (const text of texts)
    for (const block of cells) {
      const found = few ? apart(block, text, translator) : together(block, text, translator)
      if (found) return found
    }
  return few ? [compare(cells[0] ?? blocks, texts[0] ?? lettering, translator)] : TOO_MANY
}

function compare(blocks: Numbered[], lettering: Lettering[], translator: Translator): Pair {
  const print = lettering.map(printOf).join(' ')
  const parted = blocks.map(({ block }) => cellsOf(block)).join(BLANK)
  const divided = joinDivided(blocks.flatMap(({ block }) => linesOf(block)))
  const whole = compareCells(parted, print, translator)
  // A word that was divided at its own hyphen goes on without a blank (Rules of Unified English Braille 2013, 10.13).
  const other = divided === parted || whole.saysTheSame ? whole : compareCells(divided, print, translator)
  const [cells, { grades, expected }] = other.saysTheSame && !whole.saysTheSame ? [divided, other] : [parted, whole]
  const { 'ueb-contracted': contracted, 'ueb-uncontracted': uncontracted } = expected
  return { blocks, lettering, grades, cells, print, expected: contracted, uncontracted }
}

const printOf = ({ text }: Lettering): string => (isKnown(text) ? text.value : '')

const saying = (pair: Pair): Pair | undefined => (pair.grades.length > 0 ? pair : undefined)

function together(blocks: Numbered[], lettering: Lettering[], translator: Translator): Pair[] | undefined {
  const whole = saying(compare(blocks, lettering, translator))
  return whole && [whole]
}

/** As many blocks as possible in pairs that say the same, in the order of reading, else in any order. */
function apart(blocks: Numbered[], lettering: Lettering[], translator: Translator): Pair[] | undefined {
  const inOrder = inRuns(blocks, lettering, translator)
  return inOrder && blocksIn(inOrder) === blocks.length ? inOrder : (oneToOne(blocks, lettering, translator) ?? inOrder)
}

const wordsOfBlock = ({ block }: Numbered): number =>
  numbersApart(cellsOf(block) ?? '')
    .split(BLANK)
    .filter(Boolean).length

const wordsOfText = (lettering: Lettering): number => printOf(lettering).split(/\s+/u).filter(Boolean).length

/**
 * Runs of blocks that say runs of letterings, all letterings in order: with as few blocks left over as possible, and among those in as many
 * pairs. A run of as many words is compared; any other cannot say the same.
 */
function inRuns(blocks: Numbered[], lettering: Lettering[], translator: Translator): Pair[] | undefined {
  const [blockWords, textWords] = [blocks.map(wordsOfBlock), lettering.map(wordsOfText)]
  const known = new Map<string, Pair[] | undefined>()
  const from = (i: number, k: number): Pair[] | undefined => {
    if (k === lettering.length) return []
    if (i === blocks.length) return undefined
    const key = `${i} ${k}`
    if (!known.has(key)) known.set(key, bestOf([...pairedFrom(i, k), from(i + 1, k)]))
    return known.get(key)
  }
  const pairedFrom = (i: number, k: number): (Pair[] | undefined)[] =>
    runsFrom(i, k).map(({ j, l }) => {
      const found = saying(compare(blocks.slice(i, j), lettering.slice(k, l), translator))
      const rest = found && from(j, l)
      return rest && [found, ...rest]
    })
  /** Ends of runs with as many words of braille as of print. */
  const runsFrom = (i: number, k: number): { j: number; l: number }[] => {
    const runs: { j: number; l: number }[] = []
    let [l, print, braille] = [k, 0, 0]
    for (let j = i + 1; j <= blocks.length; j++) {
      braille += blockWords[j - 1] ?? 0
      while (print < braille && l < lettering.length) print += textWords[l++] ?? 0
      if (print === braille) runs.push({ j, l })
    }
    return runs
  }
  return from(0, 0)
}

const blocksIn = (pairs: Pair[]): number => pairs.reduce((sum, { blocks }) => sum + blocks.length, 0)

const bestOf = (found: (Pair[] | undefined)[]): Pair[] | undefined =>
  found
    .filter((pairs) => pairs !== undefined)
    .sort((a, b) => blocksIn(b) - blocksIn(a) || b.length - a.length)
    .at(0)

/** Each lettering is said by a block of its own, in any order. */
function oneToOne(blocks: Numbered[], lettering: Lettering[], translator: Translator): Pair[] | undefined {
  const left = [...blocks]
  const pairs = lettering.flatMap((text) => {
    const found = left.map((block) => saying(compare([block], [text], translator))).find((pair) => pair !== undefined)
    if (found)
      left.splice(
        left.findIndex((block) => found.blocks.includes(block)),
        1,
      )
    return found ?? []
  })
  return pairs.length === lettering.length ? pairs : undefined
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
