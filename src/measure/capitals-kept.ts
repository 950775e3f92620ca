import { CAPITAL, numbersApart, wordsOf, type PassageWord } from '../braille/passages.js'
import { TranslationError } from '../braille/translator.js'
import { basisOfBlock, unreadCells, unreadText } from './braille-reading.js'
import { NO_BRAILLE } from './braille.js'
import { basisOf, join, nothing } from './facts.js'
import { raisedLettering } from './lettering.js'
import { TOO_MANY, type Pair } from './pairing.js'
import type { Found, Quantities, Subject } from './quantity.js'

/**
 * Whether the capitals of the print carry capital signs in the cells (as signs in Australia do, report of the International Council on
 * English Braille, 2018). Word by word: a word with capitals and small letters has a sign for each run of capitals; a word in capitals
 * throughout has one sign or stands in a passage of capitals (Rules of Unified English Braille, 8.3 to 8.5). Lettering in capitals
 * throughout does not tell which words would be capitalised in running text: with signs at some words only, a person decides (our reading).
 */

/** A capital sign, and not the dash that begins with the same dot. */
const SIGN = new RegExp(`${CAPITAL}+(?![${CAPITAL}⠤⠄])`, 'gu')
const CAPITAL_RUNS = /\p{Lu}+/gu

const signsIn = (word: string): number => word.match(SIGN)?.length ?? 0
const runsIn = (word: string): number => word.match(CAPITAL_RUNS)?.length ?? 0
const isInCapitals = (word: string): boolean => /\p{Lu}/u.test(word) && !/\p{Ll}/u.test(word)

/** Whether the cells of a word carry the capitals of its print. */
function carries(print: string, word: PassageWord): boolean {
  if (word.inPassage) return isInCapitals(print) || runsIn(print) === 0
  return signsIn(word.cells) >= (isInCapitals(print) ? 1 : runsIn(print))
}

const SOME_ONLY =
  'the characters are all capitals, and some words of the braille have a capital sign and some have none'
const NOT_THE_SAME = 'the cells do not say the raised text, so its capitals cannot be found in them'

const judgement = ({ blocks }: Pair, why: string): Found => ({
  observations: [],
  gaps: [{ reason: 'needs-judgement', why, places: blocks.map(({ block }) => block.place) }],
})

function keptIn(pair: Pair): Found {
  const words = wordsOf(numbersApart(pair.cells))
  const prints = pair.print.trim().split(/\s+/u)
  if (pair.grades.length === 0 || words.length !== prints.length) return judgement(pair, NOT_THE_SAME)
  const capitalised = prints.flatMap((print, i) => (runsIn(print) > 0 ? [{ print, word: words[i] }] : []))
  if (capitalised.length === 0) return nothing('The raised characters have no capitals.')
  const without = capitalised.filter(({ print, word }) => !carries(print, word))
  if (isInCapitals(pair.print) && without.length > 0 && without.length < capitalised.length)
    return judgement(pair, SOME_ONLY)
  const named = without.map(({ print }) => `“${print}”`).join(', ')
  return {
    observations: [
      {
        value: without.length === 0,
        basis: basisOf(...pair.blocks.map(({ block }) => ({ basis: basisOfBlock(block) }))),
        places: pair.blocks.map(({ block }) => block.place),
        remark:
          without.length === 0
            ? 'Every word with a capital has a capital sign in the braille.'
            : `The braille of ${named} lacks a capital sign.`,
      },
    ],
    gaps: [],
  }
}

function capitalsKept(subject: Subject): Found {
  const { sign } = subject
  if (sign.braille.length === 0) return nothing(NO_BRAILLE)
  if (raisedLettering(sign).length === 0) return nothing('The sign has no raised characters.')
  const gaps = [...unreadText(subject), ...sign.braille.flatMap(unreadCells)]
  if (gaps.length > 0) return { observations: [], gaps }
  const pairs = subject.pairs()
  if (!Array.isArray(pairs)) {
    const why = pairs === TOO_MANY || !(pairs instanceof TranslationError) ? NOT_THE_SAME : pairs.message
    return {
      observations: [],
      gaps: [{ reason: 'needs-judgement', why, places: sign.braille.map(({ place }) => place) }],
    }
  }
  return join(pairs.map(keptIn), NO_BRAILLE)
}

export const CAPITALS_KEPT: Quantities = {
  'braille.capitalsKept': {
    unit: 'truth',
    method: 'The capitals of the raised text against the capital signs of the cells, word by word.',
    couldBe: ['braille', 'lettering'],
    doubt: 'more',
    take: capitalsKept,
  },
}
