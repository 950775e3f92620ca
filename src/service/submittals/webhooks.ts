import type { FastifyInstance, FastifyRequest } from 'fastify'
import { z } from 'zod'
import type { Keeping } from '../../submittals/keeping.js'
import type { EndpointRow, InTransaction } from '../../submittals/store/tables.js'
import {
  addEndpoint,
  lastDeliveries,
  listEndpoints,
  ownEndpoint,
  removeEndpoint,
  rotateSecret,
  testEndpoint,
} from '../../submittals/webhooks/endpoints.js'
import { ROTATION_HOURS } from '../../submittals/webhooks/signature.js'
import { refusalOf } from '../../submittals/webhooks/target.js'
import { actorOf } from '../actor.js'
import type { ProblemType } from '../problem-table.js'
import { ServiceProblem } from '../problems.js'
import type { Settings } from '../settings.js'
import { bodyOf } from './changes.js'
import { jsonContent, once, type Keep } from './once.js'
import { route, type Described } from './route.js'
import {
  DeliveryResource,
  deliveryResource,
  NewWebhookResource,
  webhookFields,
  WebhookList,
  WebhookRequest,
  WebhookWithDeliveries,
} from './webhook-resources.js'

/** /v1/webhooks: the addresses that are told when a submittal is done (Standard Webhooks 1.0.0). */

const WebhookParams = z.strictObject({ webhook: z.string().describe('Id of the address.') })
const idOf = (request: FastifyRequest): string => (request.params as z.infer<typeof WebhookParams>).webhook

const BODY_PROBLEMS: ProblemType[] = ['malformed-json', 'invalid-description', 'too-large', 'unsupported-media-type']
const EXAMPLE = { url: 'https://shop.example/hooks/signs', events: ['submittal.checked'] }

const withSecret = (keep: Keep, status: number) => (transaction: InTransaction, row: EndpointRow, secret: string) =>
  keep(transaction, { status, headers: { location: addressOf(row) }, body: { ...webhookFields(row), secret } })

const addressOf = ({ id }: EndpointRow): string => `/v1/webhooks/${id}`

export function webhookRoutes(app: FastifyInstance, keeping: Keeping, { webhooksPrivate }: Settings) {
  app.post('/v1/webhooks', route(CREATE), async (request, reply) => {
    const { url, events } = bodyOf(WebhookRequest, request)
    const refused = refusalOf(url, webhooksPrivate)
    if (refused !== undefined)
      throw new ServiceProblem('invalid-description', 'No notifications are sent to this address.', [
        { detail: refused, pointer: '/url' },
      ])
    return once(keeping, request, reply, jsonContent(request), (keep) =>
      addEndpoint(keeping, actorOf(request), url, events ?? null, withSecret(keep, 201)),
    )
  })

  app.get('/v1/webhooks', route(LIST), async (request) => ({
    webhooks: (await listEndpoints(keeping, actorOf(request))).map(webhookFields),
  }))

  app.get('/v1/webhooks/:webhook', route(GET, WebhookParams), async (request) => {
    const row = await ownEndpoint(keeping, actorOf(request), idOf(request))
    const deliveries = await lastDeliveries(keeping, row.id)
    return { ...webhookFields(row), deliveries: deliveries.map(deliveryResource) }
  })

  app.post('/v1/webhooks/:webhook/rotate', route(ROTATE, WebhookParams), async (request, reply) =>
    once(keeping, request, reply, [], (keep) =>
      rotateSecret(keeping, actorOf(request), idOf(request), withSecret(keep, 200)),
    ),
  )

  app.post('/v1/webhooks/:webhook/test', route(TEST, WebhookParams), async (request, reply) =>
    once(keeping, request, reply, [], (keep) =>
      testEndpoint(keeping, actorOf(request), idOf(request), (transaction, delivery) =>
        keep(transaction, { status: 202, body: deliveryResource(delivery) }),
      ),
    ),
  )

  app.delete('/v1/webhooks/:webhook', route(REMOVE, WebhookParams), async (request, reply) => {
    await removeEndpoint(keeping, actorOf(request), idOf(request))
    return reply.code(204).send()
  })
}

const CREATE: Described = {
  id: 'createWebhook',
  tag: 'webhooks',
  summary: 'Have an address told of what happens',
  description:
    'Messages are sent by POST and signed by Standard Webhooks 1.0.0 with the secret that this answer alone shows.',
  requests: {
    'application/json': {
      schema: WebhookRequest,
      examples: { shop: { summary: 'A shop that waits for its sets', value: () => EXAMPLE } },
    },
  },
  answer: NewWebhookResource,
  status: 201,
  problems: [...BODY_PROBLEMS, 'organisation-limit'],
  once: true,
}

const LIST: Described = {
  id: 'listWebhooks',
  tag: 'webhooks',
  summary: 'List the addresses',
  description: 'The oldest first, without their secrets.',
  answer: WebhookList,
}

const GET: Described = {
  id: 'getWebhook',
  tag: 'webhooks',
  summary: 'One address',
  description: 'With the messages that were last sent to it and what became of them.',
  answer: WebhookWithDeliveries,
}

const ROTATE: Described = {
  id: 'rotateWebhookSecret',
  tag: 'webhooks',
  summary: 'Give an address a new secret',
  description: `Messages are signed with the new secret and, for ${ROTATION_HOURS} hours, with the one before as well.`,
  answer: NewWebhookResource,
  once: true,
}

const TEST: Described = {
  id: 'testWebhook',
  tag: 'webhooks',
  summary: 'Try an address',
  description: 'Sends it a message of type `endpoint.test`; what becomes of it is shown with the address.',
  answer: DeliveryResource,
  status: 202,
  problems: ['not-now'],
  once: true,
}

const REMOVE: Described = {
  id: 'deleteWebhook',
  tag: 'webhooks',
  summary: 'Tell an address nothing more',
  description: 'It is deleted with its secret, and what still waited for it is not sent.',
  status: 204,
}
