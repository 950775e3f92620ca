import { retryAfterOf } from './problem.js'

/** Asking again where the service says that it may be asked again. */

export type Fetch = (request: Request) => Promise<Response>

export interface RetryOptions {
  /** Times that a request is sent again at most. */
  most: number
  /** Seconds that are waited at most before one of them; who is told to wait longer gets the answer instead. */
  longest: number
}

/** Sent twice, these change nothing twice (RFC 9110, 9.2.2). */
const IDEMPOTENT = ['GET', 'HEAD', 'OPTIONS', 'PUT', 'DELETE']
/** These only ask, although they are sent by POST: nothing is kept. */
const ASKING = /^\/v1\/(checks|readings|translations|drawings|corrections|dot-plans)$/
/** Too many requests; for the moment not available. */
const LATER = [429, 503]
const MILLISECONDS = 1000

/**
 * A fetch that waits as `Retry-After` says and sends the request again: only one that may be sent twice, by its method, by what it asks
 * or by its Idempotency-Key. A connection that breaks is an error as ever.
 */
export function retrying(fetch: Fetch, { most, longest }: RetryOptions): Fetch {
  return async (request) => {
    for (let left = maySendAgain(request) ? most : 0; ; left--) {
      // A body can be read once only.
      const response = await fetch(left > 0 ? request.clone() : request)
      const wait = LATER.includes(response.status) ? retryAfterOf(response) : undefined
      if (left === 0 || wait === undefined || wait > longest) return response
      await response.body?.cancel()
      await pause(wait * MILLISECONDS, request.signal)
    }
  }
}

function maySendAgain({ method, url, headers }: Request): boolean {
  if (IDEMPOTENT.includes(method) || headers.has('idempotency-key')) return true
  return method === 'POST' && ASKING.test(new URL(url).pathname.replace(/^.*(?=\/v1\/)/, ''))
}

/** @throws the reason of the signal when it says to stop */
export const pause = (milliseconds: number, signal?: AbortSignal): Promise<void> =>
  new Promise((resolve, reject) => {
    signal?.throwIfAborted()
    const stop = () => {
      clearTimeout(timer)
      reject(signal?.reason instanceof Error ? signal.reason : new Error('The wait was stopped.'))
    }
    const timer = setTimeout(() => {
      signal?.removeEventListener('abort', stop)
      resolve()
    }, milliseconds)
    signal?.addEventListener('abort', stop, { once: true })
  })
