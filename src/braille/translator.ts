import type { BrailleCode } from '../sign/sign.js'

/**
 * Translation between print and braille, as the rest of the program sees it. Pure: the same text gives the same cells.
 * Cells are Unicode braille (U+2800 to U+283F), a blank is U+2800.
 */
export interface Translator {
  /** Name, version, tables and a digest of the tables, for reports. */
  readonly identity: { engine: string; version: string; tables: Record<BrailleCode, string>; digest: string }
  /**
   * Print to cells, capital signs where the text has capitals.
   * @throws {TranslationError} when the text is too long or holds a character that the tables do not know.
   */
  toCells(text: string, code: BrailleCode): string
  /**
   * Cells to the print text that gives exactly these cells when translated forward in `code`; undefined when none is
   * found. Never a guess.
   */
  toText(cells: string, code: BrailleCode): string | undefined
}

export class TranslationError extends Error {}

/** What a run of cells says when it is held against a print text (either may be in any case). */
export interface CellsVerdict {
  /** The cells are the translation in one grade or the other, capital signs aside. */
  saysTheSame: boolean
  /** The grades in which they are; both when the words have no contraction. */
  grades: BrailleCode[]
}
