import { isKnown, type BrailleBlock, type BrailleLine } from '../sign/sign.js'
import { eachBlock } from './braille.js'
import { basisOfBlock, unreadCells } from './braille-reading.js'
import { nothing } from './facts.js'
import type { Observation } from './measurement.js'
import { BLANK } from './pairing.js'
import type { Found, Quantities } from './quantity.js'

/** Blank cells between the words of one line of braille, the least and the most of a block. */

const BETWEEN_WORDS = new RegExp(`(?<=[^${BLANK}])${BLANK}+(?=[^${BLANK}])`, 'gu')

const gapsOf = ({ cells }: BrailleLine): number[] =>
  isKnown(cells) ? (cells.value.match(BETWEEN_WORDS) ?? []).map((blanks) => blanks.length) : []

function wordGap(block: BrailleBlock, n: number): Found {
  const gaps = unreadCells(block, n)
  const counts = block.lines.flatMap(gapsOf)
  if (counts.length === 0) return gaps.length > 0 ? { observations: [], gaps } : nothing('No line has two words.')
  const observation: Observation = {
    value: counts.reduce((sum, count) => sum + count, 0) / counts.length,
    min: Math.min(...counts),
    max: Math.max(...counts),
    count: counts.length,
    basis: basisOfBlock(block),
    places: [block.place],
  }
  return { observations: [observation], gaps }
}

export const WORD_GAP: Quantities = {
  'braille.wordGap': {
    unit: 'count',
    method: 'Blank cells between two words of one line.',
    couldBe: ['braille'],
    doubt: 'more',
    take: eachBlock(wordGap),
  },
}
