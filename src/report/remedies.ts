import type { Judgement } from '../judge/finding.js'
import { OPPOSITES } from '../windows/opposites.js'
import { domeInstead } from './dome-remedy.js'
import { noneSatisfies, onlyTheSame } from './excluding-words.js'
import type { Remedy } from './finding-schema.js'
import { namedRows, othersInPlay } from './in-play.js'
import { choices, sentence } from './sentences.js'
import { fixed, kept, MILLIMETRES_PER_INCH, type Ends, type Notation } from './numbers.js'
import { noWindow, thickerStroke } from './no-window.js'
import { worstValue } from './observed.js'
import { kindWords, notationFor, wordsFor } from './quantities.js'
import { aimIn, commonOf, inwards, windowFor, type Common, type NumericUnit } from './window.js'

/** What to change: the one quantity of a failed row, and to what. */

/** What to do where "set it to …" is no sentence, most of all where the answer is a yes. */
const DEEDS: Record<string, string> = {
  'braille.repeatsRaisedText': 'Add braille that repeats the raised text.',
  'braille.position': 'Move the braille below the whole text that it repeats.',
  'braille.contracted': 'Write the braille contracted.',
  'braille.uncontracted': 'Write the braille uncontracted, letter by letter.',
  'braille.capitalsKept': 'Put a capital sign in the braille where the print has a capital.',
  'braille.wording': 'Make the braille say what the raised text says.',
  'braille.controlWords': 'Write the braille as the table of the standard gives it.',
  'braille.capitals':
    'Take the capital signs out of the braille, other than those of names, initials and single letters.',
  'braille.dotShape': 'Give the dots a domed or rounded shape.',
  'raised.case': 'Set the raised text in capitals.',
  'raised.horizontal': 'Set the raised text and the braille level with the panel.',
  'raised.style': 'Use an upright sans-serif typeface of ordinary form.',
  'sign.roundedEdges': 'Round the edges of the panel.',
  'sign.tactileCharacters': 'Add raised characters, and braille that repeats them.',
  'sign.stationTactileCharacters': 'Add raised characters, and braille that repeats them.',
  'sign.visualCharacters': 'Add characters that are read by sight.',
  'pictogram.fieldClear': 'Move the characters and the braille out of the field of the pictogram.',
  'pictogram.descriptor': 'Put raised characters with braille directly below the field of the pictogram.',
}

/** What to do with braille that says the text, but does not lie as the letters do. */
const TURNED_BACK: Record<string, string | undefined> = {
  mirrored: 'Mirror the braille back, so that it lies as the letters do.',
  'letters-mirrored': 'Draw the letters and the braille the same way round.',
  'upside-down': 'Turn the braille by half a turn, so that it lies as the letters do.',
}

/** Quantities whose kinds are places of the sign. */
const MOVED = new Set(['installation.side'])

/**
 * The remedy of a failed judgement; null for any other verdict.
 * @param all every judgement of the check: the remedy of one row must not break another that the same change bears on
 */
export function remedyFor(judgement: Judgement, all: readonly Judgement[]): Remedy | null {
  if (judgement.verdict !== 'fail') return null
  const { unit } = judgement.limit
  if (unit === 'kind') return changeKind(judgement, all)
  return unit === 'truth' ? makeTrue(judgement, all) : numeric(judgement, unit, all)
}

/** A remedy without numbers. */
const inWords = (judgement: Judgement, text: string, expected: string | null = null): Remedy => ({
  quantity: judgement.requirement.quantity,
  min: null,
  max: null,
  aim: null,
  unit: judgement.limit.unit,
  expected,
  text,
  common: null,
})

/** To a kind that every row in play lets pass. */
function changeKind(judgement: Judgement, all: readonly Judgement[]): Remedy {
  const { quantity } = judgement.requirement
  const { name } = wordsFor(quantity)
  let kinds = judgement.limit.pass ?? []
  for (const row of othersInPlay(judgement, all)) {
    if (row.requirement.quantity !== quantity) continue
    const left = kinds.filter((kind) => row.limit.pass?.includes(kind))
    if (left.length === 0) return inWords(judgement, noneSatisfies(name, namedRows([judgement, row])))
    kinds = left
  }
  const expected = choices(kinds.map(kindWords))
  const text = DEEDS[quantity] ?? `Change the ${name} to ${expected}.`
  return inWords(judgement, MOVED.has(quantity) ? `Mount the sign ${expected}.` : text, expected)
}

function makeTrue(judgement: Judgement, all: readonly Judgement[]): Remedy {
  const { quantity, text: asked } = judgement.requirement
  const turn = TURNED_BACK[String(judgement.decisive[0]?.context?.['lying'])]
  if (turn !== undefined) return inWords(judgement, turn)
  const opposite = OPPOSITES.find((pair) => pair.includes(quantity))?.find((one) => one !== quantity)
  const against = othersInPlay(judgement, all).find(({ requirement }) => requirement.quantity === opposite)
  if (against) return inWords(judgement, onlyTheSame(namedRows([judgement, against])))
  const expected = expectedOf(judgement)
  const deed = DEEDS[quantity] ?? `Change the sign so that this holds: ${sentence(asked)}`
  return inWords(judgement, expected === null ? deed : `${deed} Expected: ${expected}`, expected)
}

/** The words or cells that the measurement expected, when it said so. */
function expectedOf(judgement: Judgement): string | null {
  const expected = judgement.decisive[0]?.context?.['expected']
  return typeof expected === 'string' && expected !== '' ? expected : null
}

function numeric(judgement: Judgement, unit: NumericUnit, all: readonly Judgement[]): Remedy {
  const dome = domeInstead(judgement, all)
  if (dome) return setting(dome.row, dome.window, 'mm', commonOf(dome.row, all))
  const window = windowFor(judgement, all)
  const common = commonOf(judgement, all)
  if ('ends' in window) return setting(judgement, window.ends, unit, common, worstValue(judgement))
  const instead = thickerStroke(judgement, window.against, all)
  if (instead) return setting(instead.row, instead.window, 'ratio', commonOf(instead.row, all))
  return inWords(judgement, noWindow(judgement, window))
}

/**
 * The value to set a quantity to.
 * @param from what it is now, where the aim should stay near it
 */
function setting(
  judgement: Judgement,
  window: Ends,
  unit: NumericUnit,
  common: Common | undefined,
  from?: number,
): Remedy {
  const { quantity } = judgement.requirement
  const aim = aimIn(window, unit, from)
  const text = sentenceFor(judgement, aim, window, unit)
  return {
    quantity,
    min: kept(window.min),
    max: kept(window.max),
    aim: aim === null ? null : kept(aim),
    unit,
    expected: null,
    text,
    common: common ? { min: kept(common.ends.min), max: kept(common.ends.max), standards: common.standards } : null,
  }
}

function sentenceFor(judgement: Judgement, aim: number | null, window: Ends, unit: NumericUnit): string {
  const { quantity } = judgement.requirement
  const { name } = wordsFor(quantity)
  if (aim === null) return `Bring the ${name} within its limit.`
  if (unit === 'mm') return `Set the ${name} to ${trimmed(aim)} mm (${lengths(window)})${panelAt(judgement, aim)}.`
  const to = ratios(judgement, aim, window, unit)
  return quantity.startsWith('contrast.')
    ? `Choose colours that bring the ${name} to ${to}.`
    : `Set the ${name} to ${to}.`
}

/** Of a height above the floor: where its panel then hangs, when that is known. */
function panelAt(judgement: Judgement, aim: number): string {
  const [value, edge] = [worstValue(judgement), judgement.decisive[0]?.context?.['panelBottomHeight']]
  if (value === undefined || typeof edge !== 'number') return ''
  return `, which puts the lower edge of the panel ${trimmed(edge + aim - value)} mm above the floor`
}

const MM_DECIMALS = 2
const IN_DECIMALS = 3

function lengths(window: Ends): string {
  const inches = (end: number | undefined) => (end === undefined ? undefined : end / MILLIMETRES_PER_INCH)
  const mm = inwards(window, MM_DECIMALS)
  const inch = inwards({ min: inches(window.min), max: inches(window.max) }, IN_DECIMALS)
  const bound = window.max === undefined ? 'at least ' : window.min === undefined ? 'at most ' : ''
  return `${bound}${span(mm)} mm or ${span(inch)} in`
}

function span({ min, max }: { min?: string; max?: string }): string {
  if (min === undefined || max === undefined) return min ?? max ?? ''
  return min === max ? min : `${min} to ${max}`
}

const trimmed = (value: number): string => String(Number(value.toFixed(6)))

const SUFFIX: Partial<Record<Notation, string>> = {
  percent: ' %',
  'to-one': ':1',
  times: ' times',
  lx: ' lx',
  'gloss-units': ' gloss units',
}

/** For shares: what they are a share of, and the same in millimetres when that length is known. */
function ratios(judgement: Judgement, aim: number, window: Ends, measured: NumericUnit): string {
  const { quantity } = judgement.requirement
  const notation = notationFor(quantity, measured)
  const factor = notation === 'percent' ? 100 : 1
  const unit = SUFFIX[notation] ?? ''
  const scaled = (end: number | undefined) => (end === undefined ? undefined : end * factor)
  const { of } = wordsFor(quantity)
  const whole = wholeOf(judgement)
  const inMillimetres = whole === undefined ? '' : `, which is ${fixed(aim * whole, MM_DECIMALS)} mm here`
  const bound = window.max === undefined ? 'at least ' : window.min === undefined ? 'at most ' : ''
  const ends = `${bound}${span(inwards({ min: scaled(window.min), max: scaled(window.max) }, 0))}${unit}`
  return `${trimmed(aim * factor)}${unit}${of ? ` ${of}` : ''} (${ends})${inMillimetres}`
}

/** The length in millimetres that the ratio is a share of, when the measurement gave it. */
function wholeOf(judgement: Judgement): number | undefined {
  const context = judgement.decisive[0]?.context
  const of = wordsFor(judgement.requirement.quantity).of ?? ''
  const whole = of.includes('stroke')
    ? context?.['strokeThickness']
    : of.includes('height')
      ? context?.['characterHeight']
      : undefined
  return typeof whole === 'number' && Number.isFinite(whole) ? whole : undefined
}
