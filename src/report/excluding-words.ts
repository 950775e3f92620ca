/** Sentences on rows that cannot be satisfied together. */

/** A row as such a sentence names it: with its standard where there are several. */
export interface NamedRow {
  standard?: string
  clause: string
  printed: string
}

const named = ({ standard, clause, printed }: NamedRow): string =>
  `${standard === undefined ? '' : `${standard} `}${clause} (${printed})`

/** "A, B and C". */
const together = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items[items.length - 1]}`

/**
 * "No cell spacing satisfies both A and B."
 * @param name the words for the quantity
 */
export const noneSatisfies = (name: string, rows: readonly NamedRow[]): string =>
  `No ${name} satisfies ${rows.length === 2 ? 'both ' : ''}${together(rows.map(named))}${rows.length > 2 ? ' together' : ''}.`

/** Of rows that ask for opposite things. */
export const onlyTheSame = (rows: readonly NamedRow[]): string =>
  `${together(rows.map(named))} ask for opposite things: only a text that comes out the same either way satisfies both.`
