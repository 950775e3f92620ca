import rateLimit, { normalizeIP } from '@fastify/rate-limit'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { ServiceProblem } from '../problems.js'

/**
 * Counts requests and refuses those beyond the limit, telling both in the fields of draft-ietf-httpapi-ratelimit-headers-11.
 * Each process counts for itself, by windows that begin with the first request.
 */

const WINDOW_SECONDS = 60

export interface Counted {
  /** Whose requests are counted together. */
  whose: string
  /** The name of the policy in the fields. */
  policy: 'key' | 'address'
  /** Requests in a window. */
  quota: number
}

export type CountRequest = (request: FastifyRequest, reply: FastifyReply, counted: Counted) => Promise<void>

declare module 'fastify' {
  interface FastifyRequest {
    counted: Counted | null
  }
}

/** @returns a function that throws {ServiceProblem} `too-many-requests` for a request beyond the quota */
export async function installRateLimit(app: FastifyInstance): Promise<CountRequest> {
  await app.register(rateLimit, { global: false })
  app.decorateRequest('counted', null)
  const counter = () =>
    app.createRateLimit({
      timeWindow: WINDOW_SECONDS * 1000,
      keyGenerator: ({ counted }) => counted?.whose ?? '',
      max: ({ counted }) => counted?.quota ?? 0,
    })
  // Apart, so that calls from many addresses push no key out of the memory.
  const counters = { key: counter(), address: counter() }
  return async (request, reply, counted) => {
    request.counted = counted
    const state = await counters[counted.policy](request)
    if (state.isAllowed) return
    const { policy, quota } = counted
    void reply.headers({
      'ratelimit-policy': `"${policy}";q=${quota};w=${WINDOW_SECONDS}`,
      ratelimit: `"${policy}";r=${state.remaining};t=${state.ttlInSeconds}`,
    })
    if (!state.isExceeded) return
    const detail = `More than ${quota} requests came within ${WINDOW_SECONDS} seconds; ${state.ttlInSeconds} seconds are left.`
    throw new ServiceProblem(
      'too-many-requests',
      detail,
      [],
      { limit: quota, actual: quota + 1 },
      { 'retry-after': String(state.ttlInSeconds) },
    )
  }
}

/** An address as it is counted: of IPv6 the network that one customer gets. */
export const addressOf = (request: FastifyRequest): string => normalizeIP(request.ip)
