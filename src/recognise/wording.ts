import { TranslationError, type Translator } from '../braille/translator.js'
import { BRAILLE_CODES } from '../sign/sign.js'
import { likelihoodIn, SIGN_WORDS, type Familiarity } from './familiar.js'

/**
 * How well a run of cells reads: whether it says one of the expected texts, whether it is the translation of anything, and
 * whether that is wording of the kind that stands on signs. Only used to choose between readings that geometry leaves open.
 */
export interface Wording {
  /** The cells are the translation of an expected text, capital signs aside. */
  expected: boolean
  /** Print text, only when translating it forward gives exactly the cells. */
  text?: string
  /** 0 to 1: none, plausible or well-known words. */
  quality: number
  /** Contracted, uncontracted or no code confirms the text. */
  contracted: boolean
  /** Logarithm of how likely the cells follow one another in wording of signs. */
  familiarity: number
}

/** Expected texts longer or more than this are not tried. */
const LONGEST_EXPECTED = 200
const MOST_EXPECTED = 60
/** Distinct runs of cells that are translated back for one drawing. */
export const MOST_RUNS = 1500
const LONGEST_RUN = 200

const LETTERS = /^(?:[a-z]+(?:['’-][a-z]+)*|[A-Z][a-z]*|[A-Z]+)$/
const NUMBER = /^(?:[A-Za-z]?-?\d+[A-Za-z]?|\d+[-–/]\d+)$/
const VOWEL = /[aeiouy]/i

export class WordingJudge {
  private readonly known = new Map<string, Wording>()
  private readonly expectedCells: Set<string>
  private readonly familiarity: Familiarity

  constructor(
    private readonly translator: Translator,
    expected: readonly string[],
  ) {
    this.expectedCells = new Set(this.forms(expected))
    this.familiarity = likelihoodIn(translator)
  }

  /** Undefined when too many runs were judged already. */
  judge(cells: string): Wording | undefined {
    const before = this.known.get(cells)
    if (before) return before
    if (this.known.size >= MOST_RUNS || cells.length > LONGEST_RUN) return undefined
    const wording = this.fresh(cells)
    this.known.set(cells, wording)
    return wording
  }

  /** Whether the cells say an expected text, or all of them one after another. */
  says(cells: string): boolean {
    return this.expectedCells.has(plain(cells))
  }

  private fresh(cells: string): Wording {
    const expected = this.says(cells)
    const familiarity = this.familiarity(cells)
    for (const code of BRAILLE_CODES) {
      const text = this.translator.toText(cells, code)
      if (text !== undefined && text !== '')
        return { expected, text, quality: qualityOf(text), contracted: code === 'ueb-contracted', familiarity }
    }
    return { expected, quality: 0, contracted: false, familiarity }
  }

  private *forms(expected: readonly string[]): Iterable<string> {
    const texts = expected.slice(0, MOST_EXPECTED)
    for (const text of new Set([...texts, texts.join(' ')])) {
      if (text.trim() === '' || text.length > LONGEST_EXPECTED) continue
      for (const code of BRAILLE_CODES) {
        try {
          yield plain(this.translator.toCells(text.toLowerCase().trim().replace(/\s+/gu, ' '), code))
        } catch (error) {
          if (!(error instanceof TranslationError)) throw error
        }
      }
    }
  }
}

/** Cells without capital signs (dot 6; its terminator is dot 6, dot 3): what a capital changes is not the wording. */
const plain = (cells: string): string =>
  cells
    .replace(/\u2820\u2804/gu, '')
    .replace(/\u2820/gu, '')
    .replace(/^\u2800+|\u2800+$/gu, '')

function qualityOf(text: string): number {
  const words = text.split(/\s+/u).filter((word) => word !== '')
  const letters = words.reduce((sum, word) => sum + word.length, 0)
  if (letters === 0) return 0
  let plausible = 0
  let wellKnown = 0
  for (const word of words) {
    const spoken = LETTERS.test(word) && (word.length === 1 || VOWEL.test(word))
    if (spoken || NUMBER.test(word)) plausible += word.length
    if (word.length > 1 && SIGN_WORDS.has(word.toLowerCase())) wellKnown += word.length
    else if (NUMBER.test(word) && words.length > 1) wellKnown += word.length / 2
  }
  return (plausible + wellKnown) / (2 * letters)
}
