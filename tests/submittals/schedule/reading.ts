import type { IntakeProblem } from '../../../src/report/set/evidence.js'
import { readSchedule } from '../../../src/submittals/schedule/read.js'
import type { Schedule, ScheduleRow } from '../../../src/submittals/upload.js'

/** Schedules of an invented weaving house, as text. */

export const NAME = 'signs.csv'

export const read = (content: string | Uint8Array, name = NAME): Promise<Schedule> =>
  readSchedule({ name, bytes: typeof content === 'string' ? new TextEncoder().encode(content) : content })

export const problem = (detail: RegExp, row: number | null = null, column: string | null = null) =>
  ({ file: NAME, row, column, detail: expectMatch(detail) }) as IntakeProblem

/** Vitest’s matcher has no type of its own that fits a text. */
const expectMatch = (detail: RegExp): unknown => ({ asymmetricMatch: (text: unknown) => detail.test(String(text)) })

/** The one row of a schedule of one sign: headings and cells, in any order. */
export async function readOne(cells: Record<string, string>): Promise<{ row: ScheduleRow; problems: IntakeProblem[] }> {
  const all = { Mark: 'W-1', Use: 'permanent-room', ...cells }
  const quoted = (texts: string[]) => texts.map((text) => `"${text.replaceAll('"', '""')}"`).join(',')
  const { rows, problems } = await read(`${quoted(Object.keys(all))}\r\n${quoted(Object.values(all))}\r\n`)
  const [row] = rows
  if (!row || rows.length > 1) throw new Error(`expected one row: ${JSON.stringify({ rows, problems })}`)
  return { row, problems }
}
