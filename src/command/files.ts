import { readFile, stat } from 'node:fs/promises'
import { relative, resolve, sep } from 'node:path'
import type { IntakeProblem } from '../report/set/evidence.js'
import { shownName } from '../submittals/intake/names.js'
import { problem } from '../submittals/intake/problem.js'
import type { UploadedFile } from '../submittals/upload.js'

/** Bytes of all files of one run together: as much as the service takes at once. */
export const MOST_BYTES = 100 * 1024 * 1024

/**
 * The files by their names from the working folder on, as pipelines name them. One that cannot be read is a problem and loses no
 * other.
 */
export async function readFiles(
  paths: readonly string[],
): Promise<{ files: UploadedFile[]; problems: IntakeProblem[] }> {
  const files: UploadedFile[] = []
  const problems: IntakeProblem[] = []
  let left = MOST_BYTES
  for (const path of new Set(paths.map((given) => resolve(given)))) {
    const name = nameFromHere(path)
    try {
      const about = await stat(path)
      const why = about.isDirectory() ? FOLDER : about.size > left ? TOO_MUCH : undefined
      if (why === undefined) {
        files.push({ name, bytes: await readFile(path) })
        left -= about.size
      } else problems.push(problem(shownName(name), why))
    } catch (error) {
      problems.push(problem(shownName(name), `cannot be read: ${codeOf(error)}.`))
    }
  }
  return { files, problems }
}

/** As pipelines name files, whatever the system. */
export const nameFromHere = (path: string): string => relative('.', resolve(path)).split(sep).join('/')

const FOLDER = 'is a folder. Name the files in it.'
const TOO_MUCH = `is left out: the files of one run may have ${MOST_BYTES} bytes together. Check them in several runs.`

const WORDS: Record<string, string> = {
  ENOENT: 'there is no such file',
  EACCES: 'access is not allowed',
}

export function codeOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : 'the reason is not known'
  return WORDS[code] ?? code
}
