import { TranslationError, type Translator } from '../braille/translator.js'
import { BRAILLE_CODES } from '../sign/sign.js'

/**
 * How familiar a run of braille cells is: the likelihood of its pairs of cells, counted over words that stand on signs and
 * smoothed (add-k smoothing of a bigram model; D. Jurafsky and J. H. Martin, Speech and Language Processing, chapter 3).
 * Upside down or mirrored cells are cells too, but in an order that no word has. Only used to choose between readings that
 * geometry leaves open.
 */
export type Familiarity = (cells: string) => number

/** Words that often stand on signs. Common practice, no source; they decide nothing but which of several readings is meant. */
export const SIGN_WORDS: ReadonlySet<string> = new Set(
  (
    'exit room stair stairs stairway elevator lift restroom restrooms toilet toilets men women mens womens family all gender unisex ' +
    'wc bath bathroom shower showers locker conference meeting board office offices lobby reception information floor level ground ' +
    'basement roof area refuge rescue assistance emergency fire hose extinguisher door only no smoking authorized personnel staff ' +
    'storage store electrical mechanical janitor custodian utility closet kitchen cafe cafeteria dining break lounge mail copy ' +
    'library reading classroom class lab laboratory gym pool hall auditorium theater theatre stage dressing gate platform track ' +
    'ticket tickets waiting dock pier garden house museum gallery shop gift print map entrance entry in out push pull up down left ' +
    'right north south east west main private public employees nurse doctor clinic exam ray pharmacy chapel prayer quiet study ' +
    'suite unit apartment laundry trash recycling garage parking accessible route to use case of and the for not is do data server ' +
    'telephone water first aid security manager principal training workshop music art science computer center centre'
  ).split(' '),
)

/** Names and everyday words beside them, so that the pairs of cells are those of the language and not of a few words. */
const MORE =
  'anderson baker carter davis edwards fisher garcia harris ingram jackson kelly lopez miller nelson owens parker quinn roberts ' +
  'smith taylor underwood vance walker young zimmer maple oak river harbor light stone bridge mill orchid rose lantern tower forest ' +
  'valley meadow spring summer autumn winter morning evening king queen prince castle church school college market street square ' +
  'bank hotel station airport hospital patient visitor student teacher children adult animal bird fish horse honey bread coffee ' +
  'sugar tea milk paper pencil window mirror table chair carpet blue green yellow orange purple black white silver golden little ' +
  'great under over after before between through against every other people world history ancient modern record archive equipment ' +
  'maintenance control supply service delivery research treatment therapy surgery imaging dental vision hearing speech record'

const ROOMS = [
  '1',
  '2',
  '3',
  '10',
  '12',
  '14',
  '204',
  '215',
  '308',
  '361',
  '417',
  '529',
  '640',
  '752',
  '873',
  '986',
  'a1',
  'b 2',
]

/** Number of different cells. */
const ALPHABET = 64
const SMOOTHING = 0.2
/** The cell before the first and after the last. */
const EDGE = '\u2800'

const known = new WeakMap<Translator, Familiarity>()

export function likelihoodIn(translator: Translator): Familiarity {
  const before = known.get(translator)
  if (before) return before
  const pairs = new Map<string, number>()
  const firsts = new Map<string, number>()
  const add = <K>(counts: Map<K, number>, key: K) => counts.set(key, (counts.get(key) ?? 0) + 1)
  for (const word of [...SIGN_WORDS, ...MORE.split(' '), ...ROOMS])
    for (const code of BRAILLE_CODES)
      for (const pair of pairsOf(cellsOrNothing(translator, word, code))) {
        add(pairs, pair)
        add(firsts, pair[0])
      }
  const familiarity: Familiarity = (cells) =>
    pairsOf(cells).reduce((sum, pair) => {
      const seen = (pairs.get(pair) ?? 0) + SMOOTHING
      return sum + Math.log(seen / ((firsts.get(pair[0]) ?? 0) + SMOOTHING * ALPHABET))
    }, 0)
  known.set(translator, familiarity)
  return familiarity
}

function pairsOf(cells: string): string[] {
  const edged = [EDGE, ...cells, EDGE]
  return edged.slice(1).map((cell, i) => edged[i] + cell)
}

function cellsOrNothing(translator: Translator, word: string, code: (typeof BRAILLE_CODES)[number]): string {
  try {
    return translator.toCells(word, code)
  } catch (error) {
    if (error instanceof TranslationError) return ''
    throw error
  }
}
