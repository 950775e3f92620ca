import { lowerCaseButNames } from '../../braille/casings.js'
import { cellWords } from '../../braille/cells.js'
import { breakLines } from '../../braille/layout.js'
import { lineWidth, BLANK, type Spacing } from '../../braille/cells.js'
import { preparePrint } from '../../braille/print.js'
import { TranslationError, type Translator } from '../../braille/translator.js'
import type { Pair } from '../../measure/pairing.js'
import type { Report } from '../../report/schema.js'
import { isKnown, type BrailleCode, type Sign } from '../../sign/sign.js'
import { NotCorrectable } from './outcome.js'
import { failing, rowsInForce } from './sheet.js'

/** What the cells of a block should be: the print that it repeats, in the code, grade and capitals that the standards ask. */

const EXCLUDED =
  'One of the standards asks for contracted braille and another for uncontracted: no braille is both, unless the words have no contraction.'

/** The words of cells that a pair should say. */
export function cellsFor(pair: Pair, report: Report, sign: Sign, translator: Translator): string[] | NotCorrectable {
  const asks = (quantity: string) => rowsInForce(report, [quantity]).length > 0
  const [contracted, uncontracted] = [asks('braille.contracted'), asks('braille.uncontracted')]
  if (contracted && uncontracted) return new NotCorrectable(EXCLUDED)
  const code: BrailleCode = contracted
    ? 'ueb-contracted'
    : uncontracted
      ? 'ueb-uncontracted'
      : (pair.grades[0] ?? 'ueb-contracted')
  // Cells that say the text tell which of its words are capitalised, which print in capitals does not.
  const keepsCasing =
    pair.grades.length > 0 && failing(report, ['braille.capitals', 'braille.capitalsKept']).length === 0
  if (keepsCasing) return cellWords(code === 'ueb-contracted' ? pair.expected : pair.uncontracted)
  try {
    const print = preparePrint(pair.print)
    const inSmall = !asks('braille.capitalsKept') && (asks('braille.capitals') || print === print.toUpperCase())
    return cellWords(translator.toCells(inSmall ? lowerCaseButNames(print, sign.properNames ?? []) : print, code))
  } catch (error) {
    if (!(error instanceof TranslationError)) throw error
    return new NotCorrectable(`The print has no braille: ${error.message}`)
  }
}

/** How many words of cells each line of a block has. */
const counted = (lines: readonly string[]): number[] => lines.map((line) => cellWords(line).length)

/** Words shared out over lines of so many words each; undefined when the counts are not theirs. */
export function sharedOut(words: readonly string[], counts: readonly number[]): string[] | undefined {
  if (counts.reduce((sum, n) => sum + n, 0) !== words.length || counts.includes(0)) return undefined
  let at = 0
  return counts.map((n) => words.slice(at, (at += n)).join(BLANK))
}

/**
 * Ways to break words into lines, the most like what was there first: as the braille was broken, as the print is, then to the width of
 * what was there, and narrower.
 */
export function breaksOf(words: readonly string[], pair: Pair, spacing: Spacing): string[][] {
  const old = pair.blocks.flatMap(({ block }) => block.lines.map(({ cells }) => (isKnown(cells) ? cells.value : '')))
  const print = pair.lettering.flatMap(({ lines }) =>
    lines.map(({ text }) => (isKnown(text) ? text.value.trim().split(/\s+/u).filter(Boolean).length : 0)),
  )
  const width = Math.max(...old.map((line) => lineWidth(Array.from(line).length, spacing)))
  const cells = words.join(BLANK)
  const widths = [1, 1.25, 0.8, 0.65, 0.5, Infinity].map((share) => share * width)
  const ways = [
    sharedOut(words, counted(old)),
    sharedOut(words, print),
    ...widths.map((most) => breakLines(cells, most, spacing).lines),
  ].filter((way) => way !== undefined)
  const seen = new Set<string>()
  return ways.filter((way) => {
    const key = way.join('\n')
    return seen.has(key) ? false : seen.add(key)
  })
}
