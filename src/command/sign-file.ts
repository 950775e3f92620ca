import { readFile } from 'node:fs/promises'
import { parse } from 'secure-json-parse'
import { SignDescription } from '../sign/description.js'
import { faultsOf } from '../sign/faults.js'
import type { Upload } from '../submittals/upload.js'
import { UsageError } from './arguments.js'
import { codeOf, nameFromHere } from './files.js'
import { problemOf } from './problem.js'

/** Thrown where nothing can be checked; the message is for people. */
export class Unusable extends Error {}

/**
 * Gives the one drawing of the files its description.
 * @throws {UsageError} where it is not clear which sign is meant @throws {Unusable} for a file that is no description
 */
export async function describeSign(upload: Upload, path: string): Promise<Upload> {
  const [only, ...others] = upload.signs
  if (!only || others.length > 0 || only.sign)
    throw new UsageError(
      '--sign goes with one drawing that nothing else describes. For several, name each description like its drawing and give it as a FILE.',
    )
  return {
    ...upload,
    signs: [{ ...only, sign: await readDescription(path), files: [...only.files, nameFromHere(path)] }],
  }
}

async function readDescription(path: string): Promise<SignDescription> {
  const read = SignDescription.safeParse(await readJson(path))
  if (read.success) return read.data
  const errors = faultsOf(read.error, SignDescription)
  throw new Unusable(
    problemOf({ type: 'invalid-description', detail: `${path} is no description of a sign.`, errors }).detail,
  )
}

async function readJson(path: string): Promise<unknown> {
  let text
  try {
    text = await readFile(path, 'utf8')
  } catch (error) {
    throw new Unusable(`${path} cannot be read: ${codeOf(error)}.`)
  }
  try {
    return parse(text, { protoAction: 'error', constructorAction: 'error' }) as unknown
  } catch (error) {
    throw new Unusable(`${path} is not JSON: ${error instanceof Error ? error.message : String(error)}.`)
  }
}
