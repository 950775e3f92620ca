import type { Translator } from '../braille/translator.js'
import type { MeasuredQuantity, Sign, Unread } from '../sign/sign.js'
import { asMeasured, mean, standardUncertainty } from './as-measured.js'
import { ALIGNMENT } from './alignment.js'
import { BRAILLE_PLACE } from './braille-place.js'
import { CAPITALS_KEPT } from './capitals-kept.js'
import { CONTROL_SIDE } from './control-side.js'
import { DOME } from './dome.js'
import { GRADE } from './grade.js'
import { LEVEL } from './level.js'
import { PANEL } from './panel.js'
import { SYMBOL } from './symbol.js'
import { VARIATION } from './variation.js'
import { WORD_GAP } from './word-gap.js'
import { WORD_SPACING } from './word-spacing.js'
import { BORDER } from './border.js'
import { BRAILLE } from './braille.js'
import { BRAILLE_READING } from './braille-reading.js'
import { CLEARANCE } from './clearance.js'
import { CONTRAST } from './contrast/contrast.js'
import { SURROUNDINGS } from './contrast/surroundings.js'
import { ELEVATOR } from './elevator.js'
import { FINISH } from './finish.js'
import { onlyNumbers } from './finite.js'
import { INSTALLATION } from './installation.js'
import { LETTER_CASE } from './letter-case.js'
import { LETTERING } from './lettering.js'
import { MOUNTING } from './mounting.js'
import { MATTERS } from './matters.js'
import type { Measurement, Observation } from './measurement.js'
import { tryPair, type Pairs } from './pairing.js'
import { PICTOGRAM } from './pictogram.js'
import { POSITION } from './position.js'
import type { Found, Quantities, Quantity, Scope, Subject } from './quantity.js'
import { SIGN } from './sign.js'
import { SYMBOL_FRAME } from './symbol-frame.js'
import { TOUCH } from './touch.js'
import { VISUAL_HEIGHT } from './visual-height.js'

/** Every quantity that a row may ask for, by name. */
export const QUANTITIES: Quantities = {
  ...ALIGNMENT,
  ...BRAILLE_PLACE,
  ...CAPITALS_KEPT,
  ...DOME,
  ...GRADE,
  ...LEVEL,
  ...PANEL,
  ...SYMBOL,
  ...VARIATION,
  ...WORD_GAP,
  ...WORD_SPACING,
  ...BORDER,
  ...BRAILLE,
  ...BRAILLE_READING,
  ...CLEARANCE,
  ...CONTRAST,
  ...CONTROL_SIDE,
  ...ELEVATOR,
  ...FINISH,
  ...INSTALLATION,
  ...LETTER_CASE,
  ...LETTERING,
  ...MOUNTING,
  ...MATTERS,
  ...PICTOGRAM,
  ...POSITION,
  ...SIGN,
  ...SURROUNDINGS,
  ...SYMBOL_FRAME,
  ...TOUCH,
  ...VISUAL_HEIGHT,
}

/** What is known of a quantity on one sign. */
export type Measure = (quantity: string, scope: Scope) => Measurement

/**
 * Measures one sign, each quantity once for each scope. A value taken with an instrument replaces what was declared or drawn;
 * a part of the sign that was not understood leaves open what it could change.
 * @throws {RangeError} for a quantity that nobody defined: a fault of a table, not of the sign.
 */
export function measurer(given: Sign, translator: Translator): Measure {
  const sign = asMeasured(given)
  const taken = new Map<string, Map<string, Measurement>>()
  let found: { pairs: Pairs } | undefined
  const pairs = (): Pairs => (found ??= { pairs: tryPair(sign, translator) }).pairs
  return (name, scope) => {
    const key = keyOf(scope)
    let inScope = taken.get(key)
    const before = inScope?.get(name)
    if (before) return before
    const quantity = Object.hasOwn(QUANTITIES, name) ? QUANTITIES[name] : undefined
    if (!quantity) throw new RangeError(`the quantity ${name} is not defined`)
    const measurement = take(name, quantity, { sign, translator, scope, pairs })
    if (!inScope) taken.set(key, (inScope = new Map<string, Measurement>()))
    inScope.set(name, measurement)
    return measurement
  }
}

/** The rows of a table ask with the same few scopes again and again. */
const keys = new WeakMap<Scope, string>()

function keyOf(scope: Scope): string {
  const before = keys.get(scope)
  if (before !== undefined) return before
  const key = `${scope.parts?.join() ?? ''} ${scope.sections?.join() ?? ''}`
  keys.set(scope, key)
  return key
}

function take(name: string, quantity: Quantity, subject: Subject): Measurement {
  const { sign } = subject
  const { unit, method } = quantity
  const found = withUnread(onlyNumbers(quantity.take(subject)), quantity, sign.unread)
  const readings =
    sign.measured.length > 0 ? sign.measured.filter((m) => m.quantity === name && m.values.length > 0) : []
  // A reading settles what the sign has; it puts nothing on a sign that has nothing to measure it on.
  if (readings.length === 0 || found.observations.length + found.gaps.length === 0)
    return measurementOf(name, quantity, found)
  const beside = quantity.beside?.(subject)
  const observations = readings.map((reading) => ({ ...observed(reading), ...beside }))
  return { quantity: name, unit, method, observations, gaps: [] }
}

function measurementOf(name: string, { unit, method }: Quantity, { observations, gaps, nothing }: Found): Measurement {
  const measurement: Measurement = { quantity: name, unit, method, observations, gaps }
  if (nothing !== undefined) measurement.nothing = nothing
  return measurement
}

function observed(reading: MeasuredQuantity): Observation {
  const { values, instrument, place } = reading
  const uncertainty = standardUncertainty(reading)
  return {
    value: mean(values),
    min: Math.min(...values),
    max: Math.max(...values),
    count: values.length,
    ...(uncertainty !== undefined && { uncertainty }),
    basis: 'measured',
    ...(instrument !== undefined && { instrument }),
    sample: values,
    places: [place],
  }
}

/** What the unread parts of a sign leave open. */
function withUnread(found: Found, { couldBe, doubt }: Quantity, unread: Unread[]): Found {
  if (unread.length === 0) return found
  const hiding = unread.filter((part) => part.couldBe.some((kind) => couldBe.includes(kind)))
  if (hiding.length === 0) return found
  const gaps = hiding.map(({ place, why }) => ({ reason: 'unreadable' as const, why, places: [place] }))
  const no = found.observations.some(({ value }) => value === false)
  if (doubt === 'no' && !no) return found
  const observations = doubt === 'more' ? found.observations : found.observations.filter(({ value }) => value !== false)
  return { observations, gaps: [...found.gaps, ...gaps] }
}
