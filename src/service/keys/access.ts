import type { RouteOptions } from 'fastify'
import type { Scope } from '../../submittals/keys/scopes.js'

/**
 * What each route asks of whoever calls it. It is worked out when the route is made, from its own address, never from the
 * address of a request, which can be written in many ways.
 */

export type Access =
  /** For anybody. */
  | { for: 'anybody' }
  /** A page for anybody, which shows more to those who are signed in. */
  | { for: 'visitors' }
  /** A key with the scope; a session too where it reads evidence; null: any key. */
  | { for: 'keys'; scope: Scope | null; sessions: boolean }
  /** A page for those who are signed in with a key that has the scope. */
  | { for: 'signed-in'; scope: Scope }

declare module 'fastify' {
  interface FastifyContextConfig {
    access?: Access
  }
}

/** By the first part of an address below /v1: the scope for reading and the one for anything else. */
const FAMILIES: Record<string, { read: Scope | null; change: Scope }> = {
  checks: { read: 'check', change: 'check' },
  readings: { read: 'check', change: 'check' },
  translations: { read: 'check', change: 'check' },
  drawings: { read: 'check', change: 'check' },
  corrections: { read: 'check', change: 'check' },
  'dot-plans': { read: 'check', change: 'check' },
  standards: { read: null, change: 'admin' },
  submittals: { read: 'read', change: 'write' },
  webhooks: { read: 'read', change: 'write' },
  keys: { read: 'admin', change: 'admin' },
}

/** Outside /v1, by the first part of the address. */
const FOR_ANYBODY = [
  'livez',
  'readyz',
  'metrics',
  'docs',
  'openapi.json',
  'assets',
  'favicon.ico',
  'sign-in',
  'sign-out',
]

export const isReading = (method: string): boolean => method === 'GET' || method === 'HEAD'

/** @throws {TypeError} for a route of a family that is not known here: nothing is open by oversight */
export function accessOf({ url, method, config }: Pick<RouteOptions, 'url' | 'method' | 'config'>): Access {
  if (config?.access) return config.access
  const reading = [method].flat().every(isReading)
  const [first = '', family = ''] = url.split('/').slice(1)
  if (first === 'v1') {
    const scopes = FAMILIES[family]
    if (!scopes) throw new TypeError(`It is not said who may call ${url}.`)
    return {
      for: 'keys',
      scope: reading ? scopes.read : scopes.change,
      sessions: reading && family === 'submittals',
    }
  }
  if (url === '/' && reading) return { for: 'visitors' }
  if (first === 'submittals') return { for: 'signed-in', scope: reading ? 'read' : 'write' }
  if (FOR_ANYBODY.includes(first)) return { for: 'anybody' }
  throw new TypeError(`It is not said who may call ${url}.`)
}
