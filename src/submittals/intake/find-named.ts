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
    if (claim.wants === null) continue
    const [drawing, ...others] = byName.get(nameKey(claim.wants)) ?? []
    if (!drawing)
      problems.push(
        problem(claim.file, `asks for the drawing “${shownName(claim.wants)}”, which is not in the upload.`, claim.row),
      )
    else if (others.length > 0)
      problems.push(problem(claim.file, manyMeant(shownName(claim.wants), [drawing, ...others]), claim.row))
    else found.set(claim, drawing)
  }
  return { found, problems }
}

const manyMeant = (wanted: string, drawings: UploadedFile[]) =>
  `asks for the drawing “${wanted}”, which may be any of ${drawings.length} (${namesOf(drawings)}): none was taken. Write the folder before the name.`

/** The first few names, for a message. */
export const namesOf = (files: UploadedFile[]): string =>
  [...files.slice(0, NAMES_SHOWN).map(({ name }) => `“${name}”`), ...(files.length > NAMES_SHOWN ? ['…'] : [])].join(
    ', ',
  )
