import { letterRuns, wordsOfNames } from './casings.js'
import { gradesOf, readingOf } from './compare.js'
import { CAPITAL } from './passages.js'
import type { Translator } from './translator.js'

/**
 * Where braille on a sign may have capital signs. 2010 ADA Standards, 703.3.1: only before the first word of a sentence,
 * before proper nouns and names, individual letters of the alphabet, initials and acronyms.
 *
 * Readings of ours, as the text does not settle them: a letter that stands next to a digit, a hyphen or a slash (204A, B-2) is
 * an individual letter; a sentence is known by its full stop, question mark or exclamation mark; whether a word is a name or
 * an acronym is decided by the list of proper names alone. A missing capital sign is no fault: the clause permits them, it does
 * not ask for them.
 */
export interface CapitalsVerdict {
  /**
   * `none`: no capital sign; `allowed`: all are; `needs-names`: it depends on which words are names; `wrong`: at least one is not;
   * `unreadable`: there are signs that may be capital signs on words that were not read.
   */
  verdict: 'none' | 'allowed' | 'needs-names' | 'wrong' | 'unreadable'
  /** The words that are not allowed, or that depend on names, as read. */
  words: string[]
  /** One sentence for people. */
  remark: string
}

/** A capital sign. A dash and a long dash have the same dot before their last cell (Rules of Unified English Braille, 7.2). */
const HAS_CAPITAL = new RegExp(`${CAPITAL}(?!⠤)`, 'u')

const SENTENCE_END = /[.!?]["'\u201d\u2019)]*$/u

/**
 * @param cells the block's cells, lines joined with a blank.
 * @param properNames names and acronyms, in any case, each of one word or more; undefined when nobody said.
 */
export function judgeCapitals(cells: string, translator: Translator, properNames?: readonly string[]): CapitalsVerdict {
  if (!HAS_CAPITAL.test(cells)) return NONE
  const readings = (gradesOf(cells, translator) ?? []).map((code) => readingOf(cells, code, translator) ?? '')
  const [verdict, ...others] = readings.map((text) => judgeText(text, properNames))
  if (verdict === undefined) return unreadable('The braille was not read, so its capital signs cannot be placed.')
  const differing = others.some((other) => other.verdict !== verdict.verdict)
  return differing
    ? unreadable(
        `The braille can be read as ${listed(readings)}, and its capital signs are judged differently in each.`,
      )
    : verdict
}

const NONE: CapitalsVerdict = { verdict: 'none', words: [], remark: 'The braille has no capital sign.' }

const unreadable = (remark: string): CapitalsVerdict => ({ verdict: 'unreadable', words: [], remark })

function judgeText(text: string, properNames: readonly string[] | undefined): CapitalsVerdict {
  const words = wordsWithCapitals(text)
  if (words.all.length === 0) return NONE
  if (words.open.length === 0) {
    const remark = 'Capital signs stand only before single letters or the first word of a sentence.'
    return { verdict: 'allowed', words: [], remark }
  }
  if (properNames === undefined) {
    const remark = `Capital signs before ${listed(words.open)} are allowed only for names, initials and acronyms; the sign does not say which words are.`
    return { verdict: 'needs-names', words: words.open, remark }
  }
  const names = wordsOfNames(properNames)
  const wrong = words.open.filter((word) => !names.has(plain(word)) && !names.has(plain(word).replace(/'s$/u, '')))
  if (wrong.length === 0) {
    return { verdict: 'allowed', words: [], remark: 'Every word with a capital sign is a listed name or acronym.' }
  }
  const remark = `Capital signs before ${listed(wrong)}, which ${wrong.length === 1 ? 'is no' : 'are no'} listed name or acronym.`
  return { verdict: 'wrong', words: wrong, remark }
}

/** Words with a capital; `open` are those that only a list of names can settle. */
function wordsWithCapitals(text: string): { all: string[]; open: string[] } {
  const all: string[] = []
  const open: string[] = []
  const tokens = text.split(' ')
  for (const [index, token] of tokens.entries()) {
    for (const [place, run] of letterRuns(token).entries()) {
      if (run === run.toLowerCase()) continue
      all.push(run)
      const single = Array.from(run).length === 1
      if (!single && !(place === 0 && startsSentence(tokens, index) && isCapitalised(run))) open.push(run)
    }
  }
  return { all, open: [...new Set(open)] }
}

/** Whether a word is the first of a sentence: what follows it ends like one, and what is before it ended one. */
function startsSentence(tokens: string[], index: number): boolean {
  const before = tokens[index - 1]
  const closed = before === undefined || SENTENCE_END.test(before)
  return closed && tokens.slice(index).some((token) => SENTENCE_END.test(token)) && tokens.length - index > 1
}

/** One capital at the front: a word in capitals throughout is no ordinary first word. */
const isCapitalised = (word: string): boolean => word.slice(1) === word.slice(1).toLowerCase()

const plain = (word: string): string => word.toLowerCase().replaceAll('\u2019', "'")

const listed = (words: string[]): string => words.map((word) => `“${word}”`).join(', ')
