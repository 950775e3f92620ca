import { capitalised } from './casings.js'
import { accented, SIGNS } from './spelling.js'

/**
 * Contracted cells read part by part. A candidate only: the reader keeps what translates forward to the same cells.
 * Source: The Rules of Unified English Braille, 2nd edition 2013, sections 10.3 and 10.4 (strong), 10.6 (lower), 10.7 (initial-letter) and
 * 10.8 (final-letter contractions).
 */
const LETTERS = 'abcdefghijklmnopqrstuvwxyz'
const LETTER_CELLS = '⠁⠃⠉⠙⠑⠋⠛⠓⠊⠚⠅⠇⠍⠝⠕⠏⠟⠗⠎⠞⠥⠧⠺⠭⠽⠵'

const STRONG = pairs('⠯ and ⠿ for ⠷ of ⠮ the ⠾ with ⠡ ch ⠣ gh ⠩ sh ⠹ th ⠱ wh ⠫ ed ⠻ er ⠳ ou ⠪ ow ⠌ st ⠜ ar ⠬ ing')
const INITIAL_LETTER = pairs(
  '⠐⠙ day ⠐⠑ ever ⠐⠋ father ⠐⠓ here ⠐⠅ know ⠐⠇ lord ⠐⠍ mother ⠐⠝ name ⠐⠕ one ⠐⠏ part ⠐⠟ question ⠐⠗ right ' +
    '⠐⠎ some ⠐⠞ time ⠐⠥ under ⠐⠺ work ⠐⠽ young ⠐⠮ there ⠐⠡ character ⠐⠹ through ⠐⠱ where ⠐⠳ ought ' +
    '⠘⠥ upon ⠘⠺ word ⠘⠮ these ⠘⠹ those ⠘⠱ whose ⠸⠉ cannot ⠸⠓ had ⠸⠍ many ⠸⠎ spirit ⠸⠺ world ⠸⠮ their',
)
const FINAL_LETTER = pairs(
  '⠨⠙ ound ⠨⠑ ance ⠨⠝ sion ⠨⠎ less ⠨⠞ ount ⠰⠑ ence ⠰⠛ ong ⠰⠇ ful ⠰⠝ tion ⠰⠎ ness ⠰⠞ ment ⠰⠽ ity',
)
const LOWER_AT_START = pairs('⠆ be ⠒ con ⠲ dis ⠢ en ⠔ in')
const LOWER_INSIDE = pairs('⠂ ea ⠆ bb ⠒ cc ⠖ ff ⠶ gg ⠢ en ⠔ in')
const LOWER_AT_END = pairs('⠢ en ⠔ in')
const LETTER_PAIRS: [string, string][] = Array.from(LETTER_CELLS, (cell, index) => [cell, LETTERS.charAt(index)])

function pairs(list: string): [cells: string, print: string][] {
  const parts = list.split(' ')
  return parts.flatMap((cells, index) => (index % 2 === 0 ? [[cells, parts[index + 1] ?? ''] as [string, string]] : []))
}

/** Shortforms and a wordsign (sections 10.9 and 10.5) that the engine reads back as something else. */
const WHOLE_WORDS = new Map(pairs('⠋⠌ first ⠟⠅ quick ⠢ enough'))

/** One word of contracted cells, each contraction written out; undefined when a cell is none of those known here. */
export function expand(word: string): string | undefined {
  const signs = /^⠠{0,2}/u.exec(word)?.[0] ?? ''
  const known = WHOLE_WORDS.get(word.slice(signs.length))
  if (known !== undefined)
    return signs.length === 0 ? known : signs.length === 1 ? capitalised(known) : known.toUpperCase()
  let print = ''
  let capitals: Capitals = 'none'
  for (let at = 0; at < word.length;) {
    const capital = capitalSignAt(word, at, capitals)
    if (capital) {
      capitals = capital.then
      at += capital.length
      continue
    }
    if (at === 0 && word.startsWith('⠰')) {
      at += 1
      continue
    }
    const accent = accented(word, at)
    const found = accent ?? partAt(word, at, print)
    if (!found) return undefined
    const [cells, text] = found
    if (capitals === 'run') print += text.toUpperCase()
    else if (capitals === 'next') print += text.charAt(0).toUpperCase() + text.slice(1)
    else print += text
    if (capitals === 'next' || !/^\p{L}+$/u.test(text)) capitals = 'none'
    at += cells.length
  }
  return print
}

type Capitals = 'none' | 'next' | 'run'

function capitalSignAt(word: string, at: number, capitals: Capitals): { then: Capitals; length: number } | undefined {
  if (word.startsWith('⠠⠠', at)) return { then: 'run', length: 2 }
  if (capitals === 'run' && word.startsWith('⠠⠄', at)) return { then: 'none', length: 2 }
  if (word.startsWith('⠠', at) && !word.startsWith('⠠⠤', at)) return { then: 'next', length: 1 }
  return undefined
}

/** The first part that the cells from `at` on begin with; what a lower cell means depends on its place in the word. */
function partAt(word: string, at: number, before: string): [string, string] | undefined {
  const afterLetter = /\p{L}$/u.test(before)
  const rest = word.slice(at + 1)
  const beforeLetter = rest !== '' && !SIGNS.some(([cells]) => rest === cells)
  const lower = !afterLetter ? LOWER_AT_START : beforeLetter ? LOWER_INSIDE : LOWER_AT_END
  const tables = [afterLetter ? FINAL_LETTER : [], INITIAL_LETTER, STRONG, lower, LETTER_PAIRS, SIGNS]
  for (const table of tables) {
    const found = table.find(([cells]) => word.startsWith(cells, at))
    if (found) return [found[0], found[1]]
  }
  return undefined
}
