import type { z } from 'zod'
import { MeasurementsRequest } from '../../service/submittals/change-requests.js'
import { faultsOf } from '../../sign/faults.js'
import type { MeasuredDescription } from '../../sign/measured-description.js'
import { MEASURABLE, MEASURABLE_QUANTITIES, type MeasurableQuantity } from '../../sign/quantities.js'
import type { FormError } from '../form.js'
import { OTHER } from './measure-form.js'
import { isMeasurable } from './to-measure.js'
import { oneLine } from './waive-form.js'

/** Reads the form of measured values. A number that could be meant in two ways is asked for again, never guessed. */

type Read = { measured: MeasuredDescription[]; author: string | undefined } | { errors: FormError[] }

export function readMeasured(values: URLSearchParams): Read {
  const errors: FormError[] = []
  const entries: { name: string; measured: MeasuredDescription }[] = []
  for (const name of [...MEASURABLE_QUANTITIES, OTHER]) {
    const written = values.get(`values-${name}`)?.trim() ?? ''
    const quantity = name === OTHER ? (values.get('quantity') ?? '') : name
    if (written === '' && (name !== OTHER || quantity === '')) continue
    if (!isMeasurable(quantity)) errors.push({ id: 'quantity', text: 'Choose what was measured.' })
    else {
      const read = readRow(name, quantity, written, values)
      if ('errors' in read) errors.push(...read.errors)
      else entries.push({ name, measured: read.measured })
    }
  }
  if (errors.length > 0) return { errors }
  if (entries.length === 0) return { errors: [{ id: firstRow(values), text: 'Enter at least one measured value.' }] }
  const author = oneLine(values.get('author') ?? '')
  const asked = { measured: entries.map(({ measured }) => measured), ...(author !== '' && { author }) }
  const parsed = MeasurementsRequest.safeParse(asked)
  if (!parsed.success)
    return {
      errors: errorsOf(
        parsed.error,
        entries.map(({ name }) => name),
      ),
    }
  return { measured: asked.measured, author: author === '' ? undefined : author }
}

const firstRow = (values: URLSearchParams): string =>
  [...values.keys()].find((name) => name.startsWith('values-')) ?? 'instrument'

function readRow(
  name: string,
  quantity: MeasurableQuantity,
  written: string,
  values: URLSearchParams,
): { measured: MeasuredDescription } | { errors: FormError[] } {
  const numbers = numbersIn(written)
  if (typeof numbers === 'string') return { errors: [{ id: `values-${name}`, text: numbers }] }
  const uncertainty = numbersIn(values.get(`uncertainty-${name}`) ?? '')
  if (typeof uncertainty === 'string' || uncertainty.length > 1)
    return { errors: [{ id: `uncertainty-${name}`, text: 'Give the uncertainty as one number, or leave it empty.' }] }
  if (numbers.length === 0) return { errors: [{ id: `values-${name}`, text: 'Enter at least one value.' }] }
  const own = MEASURABLE[quantity]
  const [expandedUncertainty] = uncertainty
  const instrument = oneLine(values.get('instrument') ?? '')
  return {
    measured: {
      quantity,
      values: numbers,
      unit: own === 'length' ? (values.get(`unit-${name}`) === 'in' ? 'in' : 'mm') : own,
      ...(expandedUncertainty !== undefined && { expandedUncertainty }),
      ...(instrument !== '' && { instrument }),
    },
  }
}

const DECIMAL = /^(?:\d+(?:\.\d+)?|\.\d+)$/u

/** The numbers of a text, parted by blanks, semicolons, or commas before a blank. @returns what is wrong, where one is none */
export function numbersIn(text: string): number[] | string {
  const parts = text.split(/[\s;]+|,(?=\s|$)/u).filter((part) => part !== '')
  const odd = parts.find((part) => !DECIMAL.test(part))
  if (odd !== undefined)
    return `“${odd}” is not read as a number. Write decimals behind a full stop (0.71) and part values by blanks.`
  return parts.map(Number)
}

function errorsOf(error: z.ZodError, names: string[]): FormError[] {
  return faultsOf(error, MeasurementsRequest).map(({ pointer = '', detail }) => {
    const [, index, part] = /^\/(?:measured\/)?(\d+)\/(\w+)/u.exec(pointer) ?? []
    const name = names[Number(index)]
    if (name === undefined) return { id: 'author', text: detail }
    if (part === 'instrument') return { id: 'instrument', text: detail }
    return { id: part === 'expandedUncertainty' ? `uncertainty-${name}` : `values-${name}`, text: detail }
  })
}
