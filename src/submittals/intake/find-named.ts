import type { IntakeProblem } from '../../report/set/evidence.js'
import type { UploadedFile } from '../upload.js'
import type { Claim } from './claim.js'
import { grouped } from './grouped.js'
import { nameKey, shownName, waysToName } from './names.js'
import { problem } from './problem.js'

/** Drawings that a row or an entry asks for by the name of their file. Several may ask for one: a design that is made many times. */

const NAMES_SHOWN = 3

export function findNamed(
  claims: Claim[],
  drawings: UploadedFile[],
): { found: Map<Claim, UploadedFile>; problems: IntakeProblem[] } {
  const found = new Map<Claim, UploadedFile>()
  const problems: IntakeProblem[] = []
  if (claims.every(({ wants }) => wants === null)) return { found, problems }
  const byName = grouped(drawings, ({ name }) => waysToName(name))
  for (const claim of claims) {
    const { file, row, wants } = claim
    if (wants === null) continue
    const fitting = byName.get(nameKey(wants)) ?? []
    const [drawing] = fitting
    if (!drawing) problems.push(problem(file, notThere(shownName(wants)), row))
    else if (fitting.length > 1) problems.push(problem(file, manyMeant(shownName(wants), fitting), row))
    else found.set(claim, drawing)
  }
  return { found, problems }
}

const notThere = (wanted: string) => `asks for the drawing “${wanted}”, which is not in the upload.`

const manyMeant = (wanted: string, drawings: UploadedFile[]) =>
  `asks for the drawing “${wanted}”, which may be any of ${drawings.length} (${namesOf(drawings)}): none was taken. Write the folder before the name.`

/** The first few names, for a message. */
export const namesOf = (files: UploadedFile[]): string =>
  [...files.slice(0, NAMES_SHOWN).map(({ name }) => `“${name}”`), ...(files.length > NAMES_SHOWN ? ['…'] : [])].join(
    ', ',
  )
