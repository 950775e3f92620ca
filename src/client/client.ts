import createFetch, { type Client as Calls } from 'openapi-fetch'
import { problemErrorOf } from './problem.js'
import { retrying, type Fetch, type RetryOptions } from './retry.js'
import type { paths } from './schema.js'

/**
 * Every call of the service, typed by its OpenAPI document: `client.GET('/v1/standards/{id}', { params: { path: { id } } })`. `data` is
 * the answer; what is no success is thrown as a `ProblemError`. Other forms than JSON are had by `parseAs`.
 */
export type Client = Calls<paths, Json>
type Json = 'application/json'

export interface ClientOptions {
  /** Where the service is found, such as `http://127.0.0.1:8080`. */
  baseUrl: string
  /** API key, where the service asks for one. */
  key?: string
  /** How often and how long to ask again; `most: 0` never does. */
  retry?: Partial<RetryOptions>
  /** Instead of the one of the platform. */
  fetch?: Fetch
}

const RETRY: RetryOptions = { most: 4, longest: 30 }

export function createClient({ baseUrl, key, retry, fetch = globalThis.fetch }: ClientOptions): Client {
  const client = createFetch<paths, Json>({
    baseUrl,
    fetch: retrying(fetch, { ...RETRY, ...retry }),
    ...(key !== undefined && { headers: { authorization: `Bearer ${key}` } }),
  })
  client.use({
    onResponse: async ({ response }) => {
      if (!response.ok) throw await problemErrorOf(response)
    },
  })
  return client
}
