import type { IntakeProblem } from '../../report/set/evidence.js'
import type { Claim } from './claim.js'
import { grouped } from './grouped.js'
import { merge } from './merge.js'
import { markKey } from './names.js'
import { problem } from './problem.js'

/** Rows of schedules and entries of JSON with the same mark become one; of a mark that stands more than once on a side, none do. */

export function joined(rows: Claim[], entries: Claim[]): { claims: Claim[]; problems: IntakeProblem[] } {
  const rowsByMark = grouped(rows, (row) => [keyOf(row)])
  const entriesByMark = grouped(entries, (entry) => [entryKey(entry, rowsByMark)])
  const problems: IntakeProblem[] = []
  const merged = new Map<Claim, Claim>()
  const gone = new Set<Claim>()
  for (const [key, same] of entriesByMark) {
    const there = rowsByMark.get(key) ?? []
    const [row] = there
    const [entry] = same
    if (key === '' || !row || !entry) continue
    if (there.length > 1 || same.length > 1) {
      for (const { file, mark, nameless } of same) problems.push(problem(file, notJoined(mark ?? nameless)))
      continue
    }
    const { claim, disagreements } = merge(row, entry)
    merged.set(row, claim)
    gone.add(entry)
    if (disagreements.length > 0) problems.push(problem(entry.file, differs(row, disagreements)))
  }
  const left = entries.filter((entry) => !gone.has(entry))
  return { claims: [...rows.map((row) => merged.get(row) ?? row), ...left], problems }
}

const keyOf = ({ mark }: Claim): string => markKey(mark ?? '')

/** By its mark, else by the name of its own file, as long as a row has it. */
function entryKey(entry: Claim, rows: Map<string, Claim[]>): string {
  const byMark = keyOf(entry)
  if (rows.has(byMark) || entry.ownFile === null) return byMark
  const byFile = markKey(entry.ownFile)
  return rows.has(byFile) ? byFile : byMark
}

const notJoined = (mark: string) =>
  `describes “${mark}”, a mark that stands more than once: it was joined to no row of a schedule and is checked by itself.`

const differs = ({ file, row, mark }: Claim, keys: string[]) =>
  `and row ${row} of “${file}” describe “${mark}” differently (${keys.map((key) => `“${key}”`).join(', ')}): what this file says was taken.`
