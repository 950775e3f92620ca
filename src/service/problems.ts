import { z } from 'zod'
import type { Exclusion, Fault } from '../refusal.js'
import { PROBLEMS, type ProblemType } from './problem-table.js'

/** Problem documents (RFC 9457): their shape, and the way from a cause to a document. */

export const PROBLEM_MEDIA_TYPE = 'application/problem+json'

/** The address of a problem's page, which is also its type. */
export const problemAddress = (type: ProblemType): string => `/docs/problems/${type}`

export const Problem = z
  .strictObject({
    type: z.string().describe('The address of the page that explains this problem.'),
    title: z.string(),
    status: z.int().min(400).max(599),
    detail: z.string(),
    instance: z.string().describe('Names this one occurrence; the logs have it too.'),
    errors: z
      .array(
        z.strictObject({
          detail: z.string(),
          pointer: z.string().optional().describe('JSON Pointer into the body.'),
          parameter: z.string().optional().describe('Name of the query parameter or of the part of the form.'),
          line: z.int().positive().optional(),
          column: z.int().positive().optional(),
        }),
      )
      .optional(),
    limit: z.number().optional(),
    actual: z.number().optional(),
    conflicts: z
      .array(
        z.strictObject({
          quantity: z.string().describe('What cannot be had; `panel.size` where the room is too small.'),
          requirements: z.array(z.string()),
          text: z.string().describe('The same for people.'),
        }),
      )
      .optional()
      .describe('Of `cannot-satisfy`: what keeps the wish from being fulfilled.'),
  })
  .meta({ id: 'Problem', description: 'What went wrong (RFC 9457).' })
export type Problem = z.infer<typeof Problem>

export interface ServiceFault extends Fault {
  parameter?: string
}

/** Thrown by the service for a request that it cannot answer; the core throws `Refusal`, which has the same fields. */
export class ServiceProblem extends Error {
  constructor(
    readonly type: ProblemType,
    readonly detail: string,
    readonly errors: ServiceFault[] = [],
    readonly excess?: { limit: number; actual: number },
    readonly headers: Record<string, string> = {},
  ) {
    super(detail)
    this.name = 'ServiceProblem'
  }
}

/** What is known of a problem before it has an occurrence. */
export type ProblemCause = Pick<ServiceProblem, 'type' | 'detail' | 'errors' | 'excess'> & {
  conflicts?: readonly Exclusion[]
}

export function problemOf({ type, detail, errors, excess, conflicts }: ProblemCause, requestId: string): Problem {
  const { status, title } = PROBLEMS[type]
  return {
    type: problemAddress(type),
    title,
    status,
    detail,
    instance: `urn:uuid:${requestId}`,
    ...(errors.length > 0 && { errors }),
    ...excess,
    ...(conflicts && { conflicts: [...conflicts] }),
  }
}
