import type { SetFinding } from '../../report/set/evidence.js'
import type { ComparedSign } from './compared-sign.js'
import { apart, listed } from './listing.js'

/**
 * Millimetres by which spacings may differ and count as one: what drawings of other programs are read to in our accuracy tests
 * (docs/accuracy.md), and above what inches and millimetres of one table lie apart when each is rounded. Ours; no standard
 * compares the signs of a set.
 */
export const READING_NOISE = 0.05

interface Spaced {
  spacing: number
  mark: string
}

/** Braille of more than one spacing: the dots of a cell, and the cells of a line. Each is a finding of its own. */
export function brailleSpacingDiffers(signs: readonly ComparedSign[]): SetFinding[] {
  return [
    ...differing('dot spacing', spaced(signs, 'dotSpacings')),
    ...differing('cell spacing', spaced(signs, 'cellSpacings')),
  ]
}

const spaced = (signs: readonly ComparedSign[], key: 'dotSpacings' | 'cellSpacings'): Spaced[] =>
  signs.flatMap((sign) => sign[key].map((spacing) => ({ spacing, mark: sign.mark })))

function differing(what: string, all: readonly Spaced[]): SetFinding[] {
  const groups = alike(all)
  if (groups.length < 2) return []
  const each = groups.map((group) => `${range(group)} (${listed([...new Set(group.map(({ mark }) => mark))])})`)
  return [
    {
      kind: 'braille-spacing-differs',
      marks: [...new Set(all.map(({ mark }) => mark))],
      message: `The ${what} of the braille is not the same throughout the set: ${apart(each)}.`,
    },
  ]
}

/** From the least up: a group holds what lies within the noise of its least. */
function alike(all: readonly Spaced[]): Spaced[][] {
  const groups: Spaced[][] = []
  for (const one of [...all].sort((a, b) => a.spacing - b.spacing)) {
    const group = groups.at(-1)
    if (group?.[0] && one.spacing - group[0].spacing <= READING_NOISE) group.push(one)
    else groups.push([one])
  }
  return groups
}

const DIGITS = 2

function range(group: readonly Spaced[]): string {
  const [least, most] = [group[0], group.at(-1)].map((one) => (one?.spacing ?? 0).toFixed(DIGITS))
  return least === most ? `${least} mm` : `${least} to ${most} mm`
}
