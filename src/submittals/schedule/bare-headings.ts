import type { PlacedHeading } from './heading-row.js'
import type { Complaint } from './grid.js'

/** “Height” alone may be that of the letters, of the panel or above the floor; beside “Width” it is the panel’s, and the other way round. */
const BESIDE: Record<string, { bare: string; other: string }> = {
  height: { bare: 'height', other: 'width' },
  width: { bare: 'width', other: 'height' },
}

/** The columns that are sure, and what is said of the others. */
export function sureColumns(columns: readonly PlacedHeading[]): { columns: PlacedHeading[]; complaints: Complaint[] } {
  const doubtful = columns.filter(({ column, rank }) => {
    const rule = BESIDE[column.key]
    return rule && rank === column.also.indexOf(rule.bare) + 1 && !columns.some((one) => one.column.key === rule.other)
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
