import type { FastifyInstance } from 'fastify'
import { z } from 'zod'
import type { Keeping } from '../../submittals/keeping.js'
import type { KeyRing } from '../../submittals/keys/key-ring.js'
import { createKey, listKeys, revokeKey } from '../../submittals/keys/keys.js'
import { Expires, Label, Scopes } from '../../submittals/keys/new-key.js'
import type { Scope } from '../../submittals/keys/scopes.js'
import type { KeyRow } from '../../submittals/store/tables.js'
import { actorOf } from '../actor.js'
import { ServiceProblem } from '../problems.js'
import type { Settings } from '../settings.js'
import { bodyOf } from '../submittals/changes.js'
import { route, type Described } from '../submittals/route.js'

/** The API keys of the organisation whose key is sent. Organisations come from the command (docs/keys.md). */

const KeyRequest = z
  .strictObject({
    label: Label.describe('What the history and the log call whoever uses it.'),
    scopes: Scopes,
    expires: Expires.nullable().optional(),
  })
  .meta({ id: 'KeyRequest', description: 'A key to be made.' })

const Time = z.string().describe('ISO 8601, UTC.')
const fields = {
  id: z.string(),
  label: z.string(),
  scopes: Scopes,
  rate: z.int().nullable().describe('Requests a minute; null: as the service is set.'),
  createdAt: Time,
  expiresAt: Time.nullable(),
  revokedAt: Time.nullable(),
  lastUsedAt: Time.nullable().describe('To the minute.'),
}
const KeyResource = z.strictObject(fields).meta({ id: 'Key', description: 'An API key, without its secret.' })
const NewKeyResource = z
  .strictObject({ ...fields, key: z.string().describe('The key itself. It is not kept and never shown again.') })
  .meta({ id: 'NewKey', description: 'An API key that was just made.' })
const KeyList = z
  .strictObject({ keys: z.array(KeyResource) })
  .meta({ id: 'KeyList', description: 'The keys of the organisation, the oldest first, revoked and ended ones too.' })

const KeyParams = z.strictObject({ key: z.string().describe('Id of the key.') })

const EXAMPLE = { label: 'Storefront', scopes: ['check', 'read', 'write'], expires: '2027-06-30' }

export function keyRoutes(
  app: FastifyInstance,
  { auth }: Pick<Settings, 'auth'>,
  { store: { db } }: Keeping,
  ring: KeyRing,
) {
  /** Where nobody is asked for a key, nobody is known to be an administrator. */
  const demandKeys = () => {
    if (auth === 'off')
      throw new ServiceProblem('forbidden', 'No keys are asked for here, so that the command alone makes them.')
  }

  const make: Described = {
    id: 'createKey',
    tag: 'keys',
    summary: 'Make an API key',
    description:
      'For the organisation whose key is sent, with the same limit of requests. The answer alone holds the key itself.',
    requests: {
      'application/json': { schema: KeyRequest, examples: { key: { summary: 'A key', value: () => EXAMPLE } } },
    },
    answer: NewKeyResource,
    status: 201,
    problems: [
      'malformed-json',
      'invalid-description',
      'too-large',
      'unsupported-media-type',
      'forbidden',
      'organisation-limit',
    ],
  }
  app.post('/v1/keys', route(make), async (request, reply) => {
    demandKeys()
    const { organisation, name } = actorOf(request)
    const { expires, ...given } = bodyOf(KeyRequest, request)
    const rate = request.holder?.rate ?? null
    const { row, token } = await createKey(db, organisation, { ...given, expires: expires ?? null, rate })
    request.log.info({ organisation, actor: name, key: row.id, label: row.label }, 'a key was made')
    return reply
      .code(201)
      .header('cache-control', 'no-store')
      .send({ ...keyResource(row), key: token })
  })

  const list: Described = {
    id: 'listKeys',
    tag: 'keys',
    summary: 'List API keys',
    description: 'Of the organisation whose key is sent: when each was last used, and whether it still works.',
    answer: KeyList,
    problems: ['forbidden'],
  }
  app.get('/v1/keys', route(list), async (request) => {
    demandKeys()
    const rows = await listKeys(db, actorOf(request).organisation)
    return { keys: rows.map(keyResource) }
  })

  const revoke: Described = {
    id: 'revokeKey',
    tag: 'keys',
    summary: 'Revoke an API key',
    description: 'It no longer works, nor do sessions that were opened with it. Doing it twice changes nothing.',
    status: 204,
    problems: ['forbidden'],
  }
  app.delete('/v1/keys/:key', route(revoke, KeyParams), async (request, reply) => {
    demandKeys()
    const { organisation, name } = actorOf(request)
    const { key } = request.params as z.infer<typeof KeyParams>
    await revokeKey(db, key, organisation)
    ring.forget(key)
    request.log.info({ organisation, actor: name, key }, 'a key was revoked')
    return reply.code(204).send()
  })
}

const keyResource = (row: KeyRow): z.infer<typeof KeyResource> => ({
  id: row.id,
  label: row.label,
  scopes: JSON.parse(row.scopes) as Scope[],
  rate: row.rate,
  createdAt: row.created_at,
  expiresAt: row.expires_at,
  revokedAt: row.revoked_at,
  lastUsedAt: row.last_used_at,
})
