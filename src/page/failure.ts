import type { FastifyRequest } from 'fastify'
import { causeOf, readAway } from '../service/errors.js'
import type { ProblemCause } from '../service/problems.js'
import { PROBLEMS } from '../service/problem-table.js'
import type { FormError } from './form.js'

/** What could not be done with a form, as the form shows it. */

/** Problems that somebody can put right in the form; anything else is a page of its own. */
const OF_THE_FORM: ProblemCause['type'][] = [
  'busy',
  'invalid-description',
  'malformed-json',
  'no-signs',
  'not-now',
  'organisation-limit',
  'storage-full',
  'too-complex',
  'too-large',
  'unknown-standard',
]

export interface FormFailure {
  status: number
  errors: FormError[]
}

/**
 * @param controlAt the id of the control for a JSON Pointer into what was sent
 * @throws the error itself when it is none of the form
 */
export async function formFailure(
  error: unknown,
  request: FastifyRequest,
  controlAt: (pointer: string) => string,
): Promise<FormFailure> {
  const cause = error instanceof Error ? causeOf(error, request) : undefined
  if (!cause || !OF_THE_FORM.includes(cause.type)) throw error
  const { type, detail, errors } = cause
  if (type === 'too-large') await readAway(request.raw)
  const listed = errors.map((one) => ({ id: controlAt(one.pointer ?? ''), text: one.detail }))
  const whole = { id: controlAt(''), text: detail }
  return {
    status: PROBLEMS[type].status,
    errors: type === 'invalid-description' && listed.length > 0 ? listed : [whole, ...listed],
  }
}
