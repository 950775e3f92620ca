import type { Limit } from '../../src/standards/standard.js'
import type { Ends, Figure } from './figure.js'

/** The printed figures of a table's limits, in the form in which they are typed a second time. */

/** Limits that print no figure. */
export const WITHOUT_FIGURES: Limit['kind'][] = ['one-of', 'yes']

const ends = ({ min, max }: Ends): Ends => ({ ...(min !== undefined && { min }), ...(max !== undefined && { max }) })

type Banded = Extract<Limit, { kind: 'by-viewing-distance' }>

/** A table by viewing distance, in the inches that it prints; every band adds the same for each foot. */
function bandsOf({ bands }: Banded): Pick<Figure, 'bands' | 'perFoot'> {
  const inches = (length: { in?: number | undefined } | undefined): number => (length ? (length.in ?? NaN) : Infinity)
  const [perFoot, ...others] = new Set(bands.map(({ perStep, step }) => (inches(perStep) * FOOT) / inches(step)))
  if (perFoot === undefined || others.length > 0) throw new Error('the bands add different lengths for a foot')
  return { bands: bands.map(({ baselineTo, base, from }) => [inches(baselineTo), inches(base), inches(from)]), perFoot }
}

const FOOT = 12

/** A limit in the form of a typed figure. */
export function figureOf(limit: Limit): Omit<Figure, 'row'> {
  switch (limit.kind) {
    case 'length':
      return { ...(limit.in && { inches: ends(limit.in) }), millimetres: ends(limit.mm) }
    case 'ratio':
      return { share: ends(limit) }
    case 'number':
      return { number: ends(limit) }
    case 'nominal':
      return {
        ...(limit.in !== undefined && { nominalInches: limit.in }),
        ...(limit.mm !== undefined && { nominal: limit.mm }),
        ...(limit.slack && { isCapped: true }),
      }
    case 'distance-share':
      return { perDistance: { share: limit.share, ...(limit.upTo !== undefined && { upTo: limit.upTo }) } }
    case 'distance-steps':
      return { steps: limit.steps.map(({ upTo, min }): [number, number] => [upTo, min]) }
    case 'by-viewing-distance':
      return bandsOf(limit)
    case 'one-of':
    case 'yes':
      return {}
  }
}

/** The figure without the name of its row and of the condition that it holds under. */
export function formOf(figure: Figure & { when?: string }): Omit<Figure, 'row'> {
  const form: Partial<Figure & { when: string }> = { ...figure }
  delete form.row
  delete form.when
  return form
}
