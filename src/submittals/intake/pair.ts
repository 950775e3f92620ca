import type { IntakeProblem } from '../../report/set/evidence.js'
import { hasContent } from '../../sign/description.js'
import type { UploadedFile, UploadedSign } from '../upload.js'
import { signOf, type Claim } from './claim.js'
import { findNamed, namesOf } from './find-named.js'
import { grouped } from './grouped.js'
import { joined } from './join.js'
import { markKey, stemOf } from './names.js'
import { problem } from './problem.js'

/**
 * Which drawing, row and description are one sign. A drawing belongs to the row or entry that names it, else to the only one whose
 * mark it is named after. Where more than one may be meant, none is taken: each is checked by itself, and a problem says so.
 */

/** Names with numbers stand in the order of the numbers. One language for everybody, so that the order is the same everywhere. */
const BY_NAME = new Intl.Collator('en', { numeric: true })

/**
 * @param rows in the order of their schedules
 * @param entries of JSON files
 * @returns rows first, then entries, then drawings of their own by name
 */
export function pair(
  rows: Claim[],
  entries: Claim[],
  drawings: UploadedFile[],
): { signs: UploadedSign[]; problems: IntakeProblem[] } {
  const { claims, problems } = joined(rows, entries)
  const named = findNamed(claims, drawings)
  const used = new Set(named.found.values())
  const free = drawings.filter((drawing) => !used.has(drawing))
  const marked = findByMark(claims, free)
  problems.push(...named.problems, ...marked.problems)
  const signs: UploadedSign[] = []
  for (const claim of claims) {
    const drawing = named.found.get(claim) ?? marked.found.get(claim)
    const holds = drawing !== undefined || claim.drawing !== undefined || (claim.sign && hasContent(claim.sign))
    if (holds) signs.push(signOf(claim, drawing))
    else problems.push(problem(claim.file, `${claim.row === null ? 'holds a sign that ' : ''}${NOTHING}`, claim.row))
  }
  const taken = new Set([...used, ...marked.found.values()])
  const own = drawings.filter((drawing) => !taken.has(drawing)).sort((a, b) => BY_NAME.compare(a.name, b.name))
  if (rows.length > 0) problems.push(...own.filter(isUntold(problems)).map(({ name }) => problem(name, NO_ROW)))
  return { signs: [...signs, ...own.map(signOfDrawing)], problems }
}

/** Beside a schedule a drawing of its own is more often one with a slip in its name than one more sign. */
const NO_ROW = 'belongs to no row of a schedule, and is checked as a sign of its own.'

const isUntold = (problems: readonly IntakeProblem[]) => {
  const told = problems.map(({ file, detail }) => `${file} ${detail}`).join('\n')
  return ({ name }: UploadedFile): boolean => !told.includes(name)
}

const NOTHING = 'is left out: it has no drawing, and no lettering, braille or pictogram is described.'

const signOfDrawing = ({ name, bytes }: UploadedFile): UploadedSign => ({
  mark: stemOf(name),
  location: null,
  door: null,
  files: [name],
  drawing: bytes,
})

interface Found {
  found: Map<Claim, UploadedFile>
  problems: IntakeProblem[]
}

/** For those that neither hold nor name a drawing: the only one that is named after the mark, or after the entry's own file. */
function findByMark(claims: Claim[], drawings: UploadedFile[]): Found {
  const byMark = grouped(drawings, ({ name }) => [markKey(stemOf(name))])
  const without = claims.filter(({ drawing, wants }) => drawing === undefined && wants === null)
  const asking = grouped(without, ({ mark, ownFile }) =>
    [mark, ownFile]
      .map((name) => markKey(name ?? ''))
      .filter((key) => key !== '' && byMark.has(key))
      .slice(0, 1),
  )
  const found = new Map<Claim, UploadedFile>()
  const problems: IntakeProblem[] = []
  for (const [key, [claim, ...others]] of asking) {
    const [drawing, ...more] = byMark.get(key) ?? []
    if (!claim || !drawing) continue
    const name = claim.mark ?? claim.nameless
    if (others.length > 0) problems.push(problem(drawing.name, manySigns(name, others.length + 1)))
    else if (more.length > 0) problems.push(problem(claim.file, manyDrawings(name, [drawing, ...more]), claim.row))
    else found.set(claim, drawing)
  }
  return { found, problems }
}

const manySigns = (mark: string, count: number) =>
  `is named after “${mark}”, and ${count} signs have this mark: it was given to none and is checked by itself.`

const manyDrawings = (mark: string, drawings: UploadedFile[]) =>
  `has “${mark}”, and ${drawings.length} drawings are named after it (${namesOf(drawings)}): none was taken; each is checked by itself.`
