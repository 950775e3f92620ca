import { isolated, markup, NOTHING, type Html } from '../../report/html-tag.js'
import type { Report } from '../../report/schema.js'
import type { Unit } from '../../sign/length.js'
import { MEASURABLE, type MeasurableQuantity } from '../../sign/quantities.js'
import { errorOf, selectField, textField, type Field, type TextInput } from '../form.js'
import type { ShownSign } from './gather.js'
import { othersOf, toMeasureOf, type ToMeasure } from './to-measure.js'
import type { Refilled } from './waive-form.js'

/** Entering what an instrument read: a row for each quantity that it would decide, and one for any other. */

export const OTHER = 'other'

export function measureForm({ submittal, kept }: ShownSign, report: Report, refilled?: Refilled): Html {
  const listed = toMeasureOf(report)
  const others = othersOf(report, listed)
  const own = refilled?.form === 'measure' ? refilled : undefined
  const fields = new Fields(own)
  return markup`<form method="post" action="/submittals/${submittal.id}/signs/${kept.sign.id}/measurements" aria-label="Enter measured values">
    <p>
      Fill in what one instrument read, and send; then the next. Several values of one quantity are parted by blanks; decimals stand behind a full
      stop. ± is the expanded uncertainty of the instrument, in the same unit; it may be left empty. Readings take the place of those of the
      same quantity that were given before.
    </p>
    ${fields.text({ id: 'instrument', label: 'Instrument', hint: 'What it is, and its number.' })}
    ${listed.map((one) => row(one, fields))} ${others.length === 0 ? NOTHING : otherRow(others, fields, listed[0]?.unit ?? 'mm')}
    ${fields.text({ id: 'author', label: 'Measured by', hint: 'May be left empty.' }, { autocomplete: 'name' })}
    <button type="submit">Enter and check again</button>
  </form>`
}

class Fields {
  constructor(private readonly own: Refilled | undefined) {}

  value = (id: string): string => this.own?.values.get(id) ?? ''
  text = (field: Field, input: TextInput = { autocomplete: 'off' }): Html =>
    textField({ ...field, error: errorOf(this.own?.errors ?? [], field.id) }, this.value(field.id), input)
  select = (field: Field, options: readonly (readonly [string, string])[], atFirst = ''): Html =>
    selectField(
      { ...field, error: errorOf(this.own?.errors ?? [], field.id) },
      options,
      this.own?.values.get(field.id) ?? atFirst,
    )
}

const LENGTHS = [
  ['mm', 'mm'],
  ['in', 'inches'],
] as const

const UNIT_WORDS: Record<Exclude<(typeof MEASURABLE)[MeasurableQuantity], 'length'>, string> = {
  ratio: 'as a ratio: 0.15 stands for 15 %',
  count: 'a count',
  lx: 'in lux',
  'gloss-units': 'in gloss units',
}

function row({ quantity, title, limits, unit }: ToMeasure, fields: Fields): Html {
  const own = MEASURABLE[quantity]
  const hint = limits.map(({ clause, printed }) => `${clause}: ${printed}`).join('; ')
  return markup`<fieldset>
    <legend>${title}</legend>
    <p class="hint">Allowed: ${isolated(hint)}</p>
    ${controls(quantity, own === 'length' ? undefined : UNIT_WORDS[own], fields, unit)}
  </fieldset>`
}

function otherRow(others: { quantity: string; title: string }[], fields: Fields, atFirst: Unit): Html {
  return markup`<fieldset>
    <legend>Any other quantity</legend>
    ${fields.select({ id: 'quantity', label: 'What was measured' }, [['', 'Nothing'], ...others.map(({ quantity, title }) => [quantity, `${title} (${quantity})`] as const)])}
    ${controls(OTHER, undefined, fields, atFirst)}
    <p class="hint">The unit counts for lengths; shares and proportions are given as ratios.</p>
  </fieldset>`
}

/** @param unit the one unit of what is no length */
function controls(name: string, unit: string | undefined, fields: Fields, atFirst: Unit): Html {
  return markup`<div class="reading-row">
    ${fields.text({ id: `values-${name}`, label: unit === undefined ? 'Values' : `Values, ${unit}` }, { isDecimal: true, autocomplete: 'off' })}
    ${unit === undefined ? fields.select({ id: `unit-${name}`, label: 'Unit' }, LENGTHS, atFirst) : NOTHING}
    ${fields.text({ id: `uncertainty-${name}`, label: '± (k = 2)' }, { isDecimal: true, autocomplete: 'off' })}
  </div>`
}
