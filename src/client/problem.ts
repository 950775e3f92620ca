import type { components } from './schema.js'

export type Problem = components['schemas']['Problem']

const MEDIA_TYPE = 'application/problem+json'

/** An answer that is a problem (RFC 9457), or any other that is no success: then `problem` is undefined. */
export class ProblemError extends Error {
  constructor(
    readonly status: number,
    readonly problem: Problem | undefined,
    /** Seconds after which to ask again, where the answer says so. */
    readonly retryAfter: number | undefined,
  ) {
    super(problem ? `${problem.title}. ${problem.detail}` : `The service answered with status ${status}.`)
    this.name = 'ProblemError'
  }

  /** The last part of `type`, such as `scale-unknown`; each has a page under /docs/problems/. */
  get kind(): string | undefined {
    return this.problem?.type.split('/').at(-1)
  }
}

export async function problemErrorOf(response: Response): Promise<ProblemError> {
  const isProblem = response.headers.get('content-type')?.startsWith(MEDIA_TYPE) ?? false
  const problem = isProblem ? ((await response.json()) as Problem) : undefined
  return new ProblemError(response.status, problem, retryAfterOf(response))
}

/** Seconds (RFC 9110, 10.2.3). The service gives no dates. */
export function retryAfterOf({ headers }: Response): number | undefined {
  const seconds = Number(headers.get('retry-after') ?? Number.NaN)
  return Number.isFinite(seconds) && seconds >= 0 ? seconds : undefined
}
