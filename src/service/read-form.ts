import type { FastifyRequest } from 'fastify'
import { nearest } from '../sign/faults.js'
import { ServiceProblem } from './problems.js'
import { LIMITS } from './settings.js'

const PARTS = ['drawing', 'program', 'sign', 'standards', 'options']

/**
 * The parts of a form by name, as bytes: a client may send each as a field or as a file.
 * @throws {ServiceProblem} for a part that is not known, given twice or larger than its limit.
 */
export async function readForm(request: FastifyRequest): Promise<Map<string, Buffer>> {
  const parts = new Map<string, Buffer>()
  for await (const part of partsOf(request)) {
    const name = nameOf(part)
    if (!PARTS.includes(name)) throw unknownPart(name)
    if (parts.has(name)) throw new ServiceProblem('malformed-request', `The form holds the part “${name}” twice.`)
    const bytes = part.type === 'file' ? await part.toBuffer().catch(rethrow) : bytesOf(part.value)
    const limit = name === 'drawing' || name === 'program' ? LIMITS.drawing : LIMITS.formField
    if (bytes.length > limit)
      throw new ServiceProblem('too-large', `The part “${name}” is larger than is read here.`, [], {
        limit,
        actual: bytes.length,
      })
    parts.set(name, bytes)
  }
  return parts
}

/**
 * The name of a part of a form. The multipart reader's types promise one; a part that was sent without has none.
 * @throws {ServiceProblem} `malformed-request`
 */
export function nameOf({ fieldname }: { fieldname: string | undefined }): string {
  if (fieldname === undefined) throw new ServiceProblem('malformed-request', 'A part of the form has no name.')
  return fieldname
}

async function* partsOf(request: FastifyRequest) {
  try {
    yield* request.parts()
  } catch (error) {
    rethrow(error)
  }
}

/**
 * The multipart reader throws a bare error, without a code, for a form that is none, and for one that ends in the middle of a file while
 * that is read.
 */
export function rethrow(error: unknown): never {
  if (error instanceof Error && 'code' in error) throw error
  throw new ServiceProblem('malformed-request', 'The form ends too early, or its Content-Type names no boundary.')
}

function unknownPart(name: string): ServiceProblem {
  const near = nearest(name, PARTS)
  const hint = near ? ` Did you mean “${near}”?` : ` Known parts are ${PARTS.join(', ')}.`
  return new ServiceProblem('malformed-request', `The form holds a part “${name}” that is not known here.${hint}`)
}

/** The multipart reader has already parsed a field that says it is JSON. */
const bytesOf = (value: unknown): Buffer => Buffer.from(typeof value === 'string' ? value : JSON.stringify(value))
