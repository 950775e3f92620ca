import { lowerCaseButNames } from '../../braille/casings.js'
import { preparePrint } from '../../braille/print.js'
import { TranslationError, type Translator } from '../../braille/translator.js'
import { Refusal } from '../../refusal.js'
import type { SignOrder } from './order.js'
import type { Wanted } from './wanted.js'

/** What the sign says in print and in braille. */

export interface Wording {
  /** Lines that the client settled; undefined when the lines are free. */
  settled: string[] | undefined
  text: string
  /** The cells of the whole text; undefined where no braille is asked. */
  cells: string | undefined
}

/**
 * Print in capitals, but where the braille keeps the capitals of the print and no standard asks for capitals: there it is as written.
 * Braille in small letters but for names, or with the capitals of the print, as the standards ask; where they ask neither, print in
 * capitals throughout is taken for small letters, since it does not tell which words would be capitalised.
 * @throws {Refusal} `untranslatable-text` when the text has no braille
 */
export function wordingOf(order: SignOrder, wanted: Wanted, translator: Translator): Wording {
  const [{ text: said, lines: saidLines }] = order.lettering
  const lines = (saidLines ?? [said ?? '']).map(tidy)
  const written = lines.join(' ')
  const asWritten = wanted.part === 'visual' || (wanted.capitals === 'kept' && !wanted.asks('raised.case'))
  const print = (line: string): string => (asWritten ? line : line.toUpperCase())
  const cells = wanted.part === 'visual' ? undefined : cellsOf(written, order, wanted, translator)
  return { settled: saidLines && lines.map(print), text: print(written), cells }
}

const tidy = (text: string): string => text.normalize('NFC').trim().replace(/\s+/gu, ' ')

const isAllCapitals = (text: string): boolean => text === text.toUpperCase()

function cellsOf(written: string, { properNames = [] }: SignOrder, wanted: Wanted, translator: Translator): string {
  const inSmall = wanted.capitals === 'names-only' || (wanted.capitals === 'free' && isAllCapitals(written))
  try {
    const text = preparePrint(written)
    return translator.toCells(inSmall ? lowerCaseButNames(text, properNames) : text, wanted.code)
  } catch (error) {
    if (!(error instanceof TranslationError)) throw error
    throw new Refusal('untranslatable-text', error.message, [
      { detail: error.message, pointer: '/sign/lettering/0/text' },
    ])
  }
}
