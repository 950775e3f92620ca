import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { NOBODY, type Keeping } from '../../submittals/keeping.js'
import type { Holder } from '../../submittals/keys/holder.js'
import type { KeyRing } from '../../submittals/keys/key-ring.js'
import { sessionHolder } from '../../submittals/keys/sessions.js'
import { ServiceProblem } from '../problems.js'
import type { Settings } from '../settings.js'
import { accessOf, isReading, type Access } from './access.js'
import { demandHost } from './hosts.js'
import { addressOf, type CountRequest } from './rate-limit.js'
import { sessionOf } from './session-cookie.js'
import { siteOf } from './site.js'

/** Who calls, whether they may, and whether they call too often. Runs before anything of a request is read but its head. */

export interface GuardDependencies {
  settings: Pick<Settings, 'auth' | 'hosts' | 'rateLimit'>
  keeping: Keeping
  ring: KeyRing
  count: CountRequest
}

export interface GuardedRoute {
  url: string
  methods: string[]
  access: Access
}

declare module 'fastify' {
  interface FastifyInstance {
    /** Every route that there is, with what it asks for. */
    guarded: GuardedRoute[]
  }
  interface FastifyRequest {
    /** Whose key it is that was sent, or that the session was opened with. */
    holder: Holder | null
  }
}

/** What probes ask by the address of a container, which nobody can list beforehand; it says yes or no and nothing else. */
const FOR_PROBES = ['/livez', '/readyz']

/** The page on which people sign in; `to` is where they wanted to go. */
export const SIGN_IN = '/sign-in'

/** To be called before any route is made. */
export function noteAccess(app: FastifyInstance): void {
  app.decorate('guarded', [])
  app.addHook('onRoute', (route) => {
    const access = accessOf(route)
    route.config = { ...route.config, access }
    app.guarded.push({ url: route.url, methods: [route.method].flat(), access })
  })
}

export function installGuard(app: FastifyInstance, { settings, keeping, ring, count }: GuardDependencies): void {
  app.decorateRequest('actor', null)
  app.decorateRequest('holder', null)
  app.addHook('onRequest', async (request, reply) => {
    // An address that there is not tells nothing to anybody.
    if (request.is404) return
    if (settings.hosts && !FOR_PROBES.includes(request.routeOptions.url ?? '')) demandHost(request, settings.hosts)
    const { access } = request.routeOptions.config
    if (!access) throw new Error(`It is not known who may call ${request.routeOptions.url}.`)
    const token = bearerOf(request)
    const changing = !isReading(request.method)
    if (token === undefined && changing && siteOf(request) === 'other') throw fromElsewhere()
    if (settings.auth === 'off') {
      request.actor = NOBODY
      return access.for === 'anybody' ? undefined : countAddress(request, reply)
    }
    if (access.for === 'anybody') return changing ? countAddress(request, reply) : undefined
    const holder =
      token !== undefined && access.for === 'keys'
        ? await ring.holder(token)
        : await holderOfSession(keeping, request, access)
    if (!holder) return refuse(request, reply, access, token !== undefined)
    request.holder = holder
    request.actor = holder.actor
    const quota = holder.rate ?? settings.rateLimit
    if (quota !== undefined) await count(request, reply, { whose: holder.key, policy: 'key', quota })
    if (access.for !== 'visitors') demandScope(holder, access.scope)
  })

  async function countAddress(request: FastifyRequest, reply: FastifyReply): Promise<void> {
    if (settings.rateLimit === undefined) return
    await count(request, reply, { whose: addressOf(request), policy: 'address', quota: settings.rateLimit })
  }

  async function refuse(request: FastifyRequest, reply: FastifyReply, access: Access, tried: boolean) {
    await countAddress(request, reply)
    if (access.for === 'visitors') return
    if (access.for === 'keys') throw unauthorized(tried)
    const to = isReading(request.method) ? `?to=${encodeURIComponent(request.url)}` : ''
    return reply.redirect(`${SIGN_IN}${to}`, 303)
  }
}

/** RFC 6750, 2.1; the scheme in any case (RFC 9110, 11.1). */
const BEARER = /^bearer +(\S+) *$/iu

const bearerOf = ({ headers }: FastifyRequest): string | undefined => BEARER.exec(headers.authorization ?? '')?.[1]

/** Whoever signed in to the page: for pages, and for evidence that a page leads to. */
async function holderOfSession(keeping: Keeping, request: FastifyRequest, access: Access): Promise<Holder | undefined> {
  const session = sessionOf(request)
  if (session === undefined || (access.for === 'keys' && !access.sessions)) return undefined
  const site = siteOf(request)
  if (site === 'other') return undefined
  if (site === 'unknown' && !isReading(request.method)) throw fromElsewhere()
  return sessionHolder(keeping, session)
}

function demandScope({ scopes }: Holder, scope: Holder['scopes'][number] | null): void {
  if (scope === null || scopes.includes(scope)) return
  const has = scopes.map((one) => `“${one}”`).join(', ')
  throw new ServiceProblem('forbidden', `This needs a key with the scope “${scope}”; the key that was sent has ${has}.`)
}

const fromElsewhere = (): ServiceProblem =>
  new ServiceProblem('forbidden', 'This was not sent by a page of this service, so that it is not done.')

/** RFC 6750, 3: an error code only where a key was sent. */
function unauthorized(tried: boolean): ServiceProblem {
  const detail = tried
    ? 'The API key is not one that works here: it is not known, was revoked or has ended.'
    : 'This needs an API key: Authorization: Bearer fingertrue_…'
  const challenge = `Bearer realm="Fingertrue"${tried ? ', error="invalid_token"' : ''}`
  return new ServiceProblem('unauthorized', detail, [], undefined, { 'www-authenticate': challenge })
}
