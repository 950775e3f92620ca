import type { Measured } from './finding-schema.js'
import { notationFor } from './quantities.js'
import type { Notation } from './numbers.js'
import type { Report } from './schema.js'

/** What a finding rests on, for people: said or assumed, drawn or measured; with what, how often, how surely. */

/** Coverage factor of an expanded uncertainty (JCGM 100:2008, 6.2). */
const COVERAGE = 2
/** An uncertainty is told in two digits (JCGM 100:2008, 7.2.6). */
const DIGITS = 2

const FORMS: Record<Notation, { factor: number; unit: string }> = {
  length: { factor: 1, unit: ' mm' },
  percent: { factor: 100, unit: ' %' },
  'to-one': { factor: 1, unit: '' },
  times: { factor: 1, unit: ' times' },
  count: { factor: 1, unit: '' },
  lx: { factor: 1, unit: ' lx' },
  'gloss-units': { factor: 1, unit: ' gloss units' },
}

/** "Measured with dial gauge 4711, 5 values, ± 0.03 mm (k = 2)". */
export function evidenceWords(measured: Measured, quantity: string): string {
  return [source(measured), ...values(measured), ...spread(measured, quantity)].join(', ')
}

function source({ basis, instrument }: Measured): string {
  if (basis === 'declared') return 'Declared or assumed, not measured'
  return basis === 'drawn'
    ? 'Taken from the drawing'
    : `Measured with ${instrument ?? 'an instrument that is not named'}`
}

function values({ basis, count }: Measured): string[] {
  if (basis === 'declared') return []
  if (count > 1) return [`${count} values`]
  return basis === 'measured' ? ['one value'] : []
}

function spread({ basis, uncertainty, unit }: Measured, quantity: string): string[] {
  if (uncertainty === null) return basis === 'measured' ? ['uncertainty not given'] : []
  if (uncertainty === 0) return []
  const { factor, unit: written } = FORMS[notationFor(quantity, unit)]
  const expanded = Number((COVERAGE * factor * uncertainty).toPrecision(DIGITS))
  return [`± ${expanded}${written} (k = ${COVERAGE})`]
}

/** Every instrument that a value of the report was got with, in the order of the findings. */
export function instrumentsOf({ findings }: Report): string[] {
  const named = findings.flatMap(({ measured }) => (measured?.instrument ? [measured.instrument] : []))
  return [...new Set(named)]
}
