import type { PlacedHeading } from './heading-row.js'
import type { Complaint } from './grid.js'

/**
 * “Height” alone may be that of the letters, of the panel or above the floor; beside a width or a size it is the panel’s. So it is with
 * “Width”. For each such column: the bare heading, and the columns that make it sure.
 */
const BARE: Record<string, { bare: string; beside: readonly string[] }> = {
  height: { bare: 'height', beside: ['width', 'size'] },
  width: { bare: 'width', beside: ['height', 'size'] },
}

/** The columns that are sure, and what is said of the others. */
export function sureColumns(columns: readonly PlacedHeading[]): { columns: PlacedHeading[]; complaints: Complaint[] } {
  const doubtful = columns.filter(({ column, rank }) => {
    const rule = BARE[column.key]
    if (!rule || rank !== column.also.indexOf(rule.bare) + 1) return false
    return !columns.some((one) => rule.beside.includes(one.column.key))
  })
  return {
    columns: columns.filter((heading) => !doubtful.includes(heading)),
    complaints: doubtful.map(({ column, label }) => ({
      row: null,
      column: label,
      detail: `The heading does not say of what, so the column was not used. Head it “${column.heading}” or “Character height”, with its unit.`,
    })),
  }
}
