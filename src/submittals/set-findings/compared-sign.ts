import type { Report } from '../../report/schema.js'
import type { SignDescription } from '../../sign/description.js'
import { toMillimetres, type Length } from '../../sign/length.js'
import type { Use } from '../../sign/vocabulary.js'

/** What of a sign is compared with the others of its set. What is not known is null or empty, and nothing is found by it. */
export interface ComparedSign {
  mark: string
  location: string | null
  door: string | null
  /** Null where nobody said it: a use that was assumed tells nothing. */
  use: Use | null
  /** All lines of its lettering; null when one of them is not known. */
  wording: string[] | null
  families: string[]
  styles: string[]
  /** Millimetres, one for each block of braille. */
  dotSpacings: number[]
  cellSpacings: number[]
}

export interface SignOfSet {
  mark: string
  location: string | null
  door: string | null
  description: SignDescription | null
  /** Nobody said what the described sign is for (`ScheduleRow.useAssumed`). */
  useAssumed: boolean
  report: Report | null
}

/** What is known of a sign: what its report read, and before there is one, what was said of it. Typefaces are only ever said. */
export function comparedSign({ mark, location, door, description, useAssumed, report }: SignOfSet): ComparedSign {
  const typefaces = (description?.lettering ?? []).flatMap(({ typeface }) => typeface ?? [])
  const styles = typefaces.flatMap(({ style }) => style ?? [])
  return {
    mark,
    location,
    door,
    use: report ? useIn(report) : useAssumed ? null : (description?.use ?? null),
    wording: report ? linesRead(report) : linesSaid(description),
    families: typefaces.flatMap(({ family }) => family ?? []),
    styles: styles.length > 0 ? styles : stylesIn(report),
    dotSpacings: spacings('dotSpacing', description, report),
    cellSpacings: spacings('cellSpacing', description, report),
  }
}

const useIn = ({ use, assumptions }: Report): Use | null =>
  assumptions.some(({ about }) => about === 'use') ? null : use

function linesRead({ reading }: Report): string[] | null {
  const lines = reading.lettering.flatMap(({ text }) => text ?? [])
  return lines.length === reading.lettering.length && lines.length > 0 ? lines : null
}

function linesSaid(description: SignDescription | null): string[] | null {
  const letterings = description?.lettering ?? []
  const lines = letterings.flatMap(({ text, lines: inLines }) => inLines ?? text ?? [])
  const all = letterings.every(({ text, lines: inLines }) => (inLines ?? text) !== undefined)
  return all && lines.length > 0 ? lines : null
}

const STYLE_OF_RAISED = 'raised.style'

const stylesIn = (report: Report | null): string[] => [
  ...new Set(
    (report?.findings ?? []).flatMap(({ quantity, measured }) =>
      quantity === STYLE_OF_RAISED && typeof measured?.value === 'string' ? [measured.value] : [],
    ),
  ),
]

function spacings(
  key: 'dotSpacing' | 'cellSpacing',
  description: SignDescription | null,
  report: Report | null,
): number[] {
  if (report) return report.reading.braille.flatMap((block) => block[key] ?? [])
  const units = description?.units ?? 'mm'
  return (description?.braille ?? []).flatMap((block) => inMillimetres(block[key], units))
}

const inMillimetres = (length: Length | undefined, units: 'mm' | 'in'): number[] =>
  length === undefined ? [] : [toMillimetres(length, units)]
