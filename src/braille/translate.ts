import { Refusal } from '../refusal.js'
import type { BrailleCode } from '../sign/sign.js'
import type { Standard } from '../standards/standard.js'
import { lowerCaseButNames } from './casings.js'
import { blockBox, dotPositions, tidyCells, type Spacing } from './cells.js'
import { readingOf } from './compare.js'
import { breakLines } from './layout.js'
import { preparePrint } from './print.js'
import { spacingFor } from './spacing.js'
import type { Translation, TranslationRequest } from './translation-schema.js'
import { TranslationError, type Translator } from './translator.js'

/** What the standards asked for mean for a translation. */
export interface TranslationSetting {
  spacing: Spacing
  /** Whether only names and single letters keep their capitals, or the text is taken as it is. */
  capitals: 'as-written' | 'names-only'
  /** The grade that they ask for; undefined when they ask for both. */
  code: BrailleCode | undefined
}

const CAPITALS_QUANTITY = 'braille.capitals'
const CONTRACTED_QUANTITY = 'braille.contracted'
const UNCONTRACTED_QUANTITY = 'braille.uncontracted'
const DECIMALS = 1e4

/**
 * @param asked the standards that the request names; empty when it names none.
 * @param standard the standard whose spacing is used where none is named, where the named ones leave it open, and when they exclude each other.
 * @throws {Error} when `standard` has no braille spacing.
 */
export function settingFor(asked: readonly Standard[], standard: Standard): TranslationSetting {
  const spacing = spacingFor(asked, standard) ?? spacingFor([standard])
  if (!spacing) throw new Error(`${standard.id} has no rows for the spacing of braille.`)
  const asks = (quantity: string): boolean =>
    asked.some(({ requirements }) => requirements.some((row) => row.quantity === quantity && row.force === 'shall'))
  return { spacing, capitals: asks(CAPITALS_QUANTITY) ? 'names-only' : 'as-written', code: codeFor(asks) }
}

function codeFor(asks: (quantity: string) => boolean): BrailleCode | undefined {
  if (!asks(UNCONTRACTED_QUANTITY)) return 'ueb-contracted'
  return asks(CONTRACTED_QUANTITY) ? undefined : 'ueb-uncontracted'
}

/**
 * A text in braille (or braille read back), broken into lines and laid out.
 * @throws {Refusal} `untranslatable-text` when the text has no braille, or the cells no reading; `invalid-description` when the standards
 *   ask for both grades and the request chooses none.
 */
export function translateText(
  request: TranslationRequest,
  translator: Translator,
  setting: TranslationSetting,
): Translation {
  const code = request.code ?? setting.code
  if (code === undefined) throw new Refusal('invalid-description', BOTH, [{ detail: BOTH, pointer: '/code' }])
  const { text, cells } =
    request.cells === undefined
      ? forward(request, code, translator, setting)
      : backward(code, request.cells, translator)
  const { lines, tooWide } = breakLines(cells, request.width, setting.spacing)
  const place = { ...setting.spacing, origin: { x: 0, y: 0 } }
  const { width, height } = blockBox(lines, place)
  const { engine, version, tables, digest } = translator.identity
  return {
    text,
    cells,
    code,
    lines,
    size: { width: tidy(width), height: tidy(height), unit: 'mm' },
    spacing: { ...setting.spacing, unit: 'mm' },
    dots: dotPositions(lines, place).map(({ x, y }): [number, number] => [tidy(x), tidy(y)]),
    tooWide,
    engine: { engine, version, table: tables[code], digest },
  }
}

const BOTH = 'The standards ask for contracted and for uncontracted braille: say which with “code”.'

function forward(
  request: TranslationRequest,
  code: BrailleCode,
  translator: Translator,
  setting: TranslationSetting,
): { text: string; cells: string } {
  try {
    const written = preparePrint(request.text ?? '')
    const text = setting.capitals === 'names-only' ? lowerCaseButNames(written, request.properNames ?? []) : written
    const cells = translator.toCells(text, code)
    if (cells === '') throw new TranslationError('The text holds nothing but blanks.')
    return { text, cells }
  } catch (error) {
    if (error instanceof TranslationError) throw refuse(error.message, '/text')
    throw error
  }
}

function backward(code: BrailleCode, given: string, translator: Translator): { text: string; cells: string } {
  const cells = tidyCells(given)
  const text = readingOf(cells, code, translator)
  if (text !== undefined) return { text, cells }
  const other = code === 'ueb-contracted' ? 'ueb-uncontracted' : 'ueb-contracted'
  const inOther = readingOf(cells, other, translator)
  const hint = inOther === undefined ? '' : ` As ${other} they say “${inOther}”.`
  throw refuse(`No print text was found that ${code} writes as these cells.${hint}`, '/cells')
}

const refuse = (detail: string, pointer: string): Refusal =>
  new Refusal('untranslatable-text', detail, [{ detail, pointer }])

/** Binary noise off: a tenth of a micrometre is far below anything that is judged. */
const tidy = (value: number): number => Math.round(value * DECIMALS) / DECIMALS
