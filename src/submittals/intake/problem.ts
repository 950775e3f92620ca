import type { IntakeProblem } from '../../report/set/evidence.js'

/**
 * What could not be used, as one sentence for people that names the file.
 * @param why the words that follow the name
 * @param row of a schedule, as a spreadsheet numbers it
 */
export const problem = (file: string, why: string, row: number | null = null): IntakeProblem => ({
  file,
  row,
  column: null,
  detail: `${row === null ? `“${file}”` : `Row ${row} of “${file}”`} ${why}`,
})

export const tooLarge = (size: number, limit: number): string =>
  `has ${size} bytes; at most ${limit} are read of such a file.`
