import type { Polyline } from '../geometry/outline.js'
import { distanceBetween } from '../geometry/gap.js'
import { isKnown, type Lettering, type LetteringLine } from '../sign/sign.js'
import { gapOf, join, nothing, pointerOf, take, type Ask } from './facts.js'
import { extentOfOutlines, frameOf, type Frame } from './frame.js'
import { eachLettering } from './lettering.js'
import type { Found, Quantities } from './quantity.js'

/**
 * Least gap between neighbouring words of one line of raised characters, between their closest points (NCC 2022, S15C3, as reported). On a
 * drawing the outlines of a line are parted at as many of its widest gaps as it has words less one. Where such a gap is not clearly
 * wider than those that are left, the words are not told apart.
 */

const ASK: Omit<Ask, 'pointer'> = { ask: 'How wide is the least gap between neighbouring words?', unit: 'mm' }

/** A gap between words is so many times as wide as one between characters, at least. Our own figure. */
const CLEARLY_WIDER = 1.3

const ONE_WORD = 'No line of the characters has two words.'

const wordsIn = ({ text }: LetteringLine): number | undefined =>
  isKnown(text) ? text.value.split(/\s+/u).filter((word) => word !== '').length : undefined

/** Outlines that run together along the line, from its beginning. */
interface Run {
  left: number
  right: number
  outlines: Polyline[]
}

function runsOf(outlines: Polyline[], frame: Frame): Run[] {
  const placed = outlines.flatMap((outline): Run[] => {
    const extent = extentOfOutlines([outline], frame)
    return extent ? [{ left: extent.left, right: extent.right, outlines: [outline] }] : []
  })
  const runs: Run[] = []
  for (const one of placed.sort((a, b) => a.left - b.left)) {
    const last = runs.at(-1)
    if (last && one.left <= last.right) {
      last.right = Math.max(last.right, one.right)
      last.outlines.push(...one.outlines)
    } else runs.push(one)
  }
  return runs
}

/** The outlines of each word; undefined when the words are not told apart. */
function partedInWords(runs: Run[], words: number): Polyline[][] | undefined {
  const gaps = runs.slice(1).map((run, i) => ({ before: i + 1, width: run.left - runs[i].right }))
  const widest = [...gaps].sort((a, b) => b.width - a.width)
  const [least, next] = [widest[words - 2], widest[words - 1]]
  if (!least || (next && least.width < CLEARLY_WIDER * next.width)) return undefined
  const starts = widest
    .slice(0, words - 1)
    .map(({ before }) => before)
    .sort((a, b) => a - b)
  return [0, ...starts].map((start, i) => runs.slice(start, starts[i]).flatMap((run) => run.outlines))
}

const NOT_PARTED = 'the gaps between words are not clearly wider than those between characters'

function onLine(line: LetteringLine, words: number, frame: Frame): Found {
  const parted = partedInWords(runsOf(line.outlines, frame), words)
  if (!parted) return { observations: [], gaps: [gapOf({ unknown: 'unreadable', why: NOT_PARTED }, line.place)] }
  const gaps = parted.slice(1).map((word, i) => distanceBetween(parted[i], word).distance)
  const [min, max] = [Math.min(...gaps), Math.max(...gaps)]
  const value = gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length
  return { observations: [{ value, min, max, count: gaps.length, basis: 'drawn', places: [line.place] }], gaps: [] }
}

function wordSpacing(lettering: Lettering, n: number, frame: Frame): Found {
  const { lines, place, text, wordSpacing: said } = lettering
  const ask = { ...ASK, pointer: pointerOf(place, 'lettering', n, 'wordSpacing') }
  const counted = lines.map((line) => ({ line, words: wordsIn(line) }))
  if (counted.length > 0 && counted.every(({ words }) => words !== undefined && words < 2)) return nothing(ONE_WORD)
  const drawn = lines.some(({ outlines }) => outlines.length > 0)
  if (isKnown(said) || !drawn) return take(said, place, ask)
  return join(
    counted.map(({ line, words }) => {
      if (words === undefined) {
        const unread = isKnown(text) ? line.text : text
        return { observations: [], gaps: isKnown(unread) ? [] : [gapOf(unread, line.place, ask)] }
      }
      return words < 2 ? nothing(ONE_WORD) : onLine(line, words, frame)
    }),
    ONE_WORD,
  )
}

export const WORD_SPACING: Quantities = {
  'raised.wordSpacing': {
    unit: 'mm',
    method: 'Between the closest points of neighbouring words of one line.',
    couldBe: ['lettering'],
    doubt: 'more',
    take: eachLettering((lettering, n, sign) => wordSpacing(lettering, n, frameOf(sign))),
  },
}
