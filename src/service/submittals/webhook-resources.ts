import { z } from 'zod'
import { EVENT_KINDS, TEST_KIND } from '../../submittals/webhooks/events.js'
import { LONGEST_URL } from '../../submittals/webhooks/target.js'
import type { DeliveryRow, EndpointRow } from '../../submittals/store/tables.js'
import { parsed } from './rows.js'

/** Addresses that are told of what happens, as resources, and what they are told. Times are ISO 8601 in UTC. */

const Time = z.string().describe('ISO 8601, UTC.')
const count = z.int().nonnegative()
const Events = z.array(z.enum(EVENT_KINDS)).min(1)

export const WebhookRequest = z
  .strictObject({
    url: z.string().max(LONGEST_URL).describe('Public, https.'),
    events: Events.optional().describe('What it is told of; absent: of everything, later kinds too.'),
  })
  .meta({ id: 'WebhookRequest', description: 'An address that is to be told of what happens.' })

const endpoint = {
  id: z.string(),
  url: z.string(),
  events: Events.nullable().describe('null: of everything.'),
  createdAt: Time,
  failingSince: Time.nullable().describe('Since when it has taken nothing.'),
  disabledAt: Time.nullable().describe('Since when nothing is sent to it any more.'),
  disabledWhy: z.string().nullable(),
}

export const WebhookResource = z
  .strictObject(endpoint)
  .meta({ id: 'Webhook', description: 'An address that is told of what happens.' })

export const WebhookList = z
  .strictObject({ webhooks: z.array(WebhookResource) })
  .meta({ id: 'WebhookList', description: 'The addresses of the organisation, the oldest first.' })

export const NewWebhookResource = z
  .strictObject({
    ...endpoint,
    secret: z.string().describe('What its messages are signed with, from `whsec_` on. It is not shown again.'),
  })
  .meta({ id: 'NewWebhook', description: 'An address with its new secret.' })

export const DeliveryResource = z
  .strictObject({
    id: z.string().describe('The webhook-id of the message.'),
    kind: z.enum([...EVENT_KINDS, TEST_KIND]),
    state: z.enum(['waiting', 'delivered', 'given-up']),
    attempts: count,
    lastStatus: z.int().nullable().describe('What it was last answered with; null: nothing.'),
    lastError: z.string().nullable(),
    createdAt: Time,
    updatedAt: Time,
  })
  .meta({ id: 'WebhookDelivery', description: 'A message to an address.' })

export const WebhookWithDeliveries = z
  .strictObject({ ...endpoint, deliveries: z.array(DeliveryResource).describe('The last ones, the latest first.') })
  .meta({ id: 'WebhookWithDeliveries', description: 'An address with what was last sent to it.' })

const News = z.strictObject({
  submittal: z.string(),
  name: z.string(),
  state: z.enum(['done', 'cancelled']),
  signs: z.strictObject({ total: count, done: count }),
  verdicts: z.strictObject({ pass: count, fail: count, undetermined: count, notApplicable: count, none: count }),
  address: z.string().describe('Path of the submittal.'),
})

const message = (kind: string, data: z.ZodType) => z.strictObject({ type: z.literal(kind), timestamp: Time, data })

export const CheckedMessage = message(EVENT_KINDS[0], News).meta({
  id: 'SubmittalCheckedMessage',
  description: 'Every sign of a submittal has been checked; again whenever that is so after a change.',
})
export const CancelledMessage = message(EVENT_KINDS[1], News).meta({
  id: 'SubmittalCancelledMessage',
  description: 'A submittal was cancelled before every sign had been checked.',
})
export const TestMessage = message(TEST_KIND, z.strictObject({ webhook: z.string() })).meta({
  id: 'EndpointTestMessage',
  description: 'Sent when it was asked for, to try an address.',
})

export function webhookFields(row: EndpointRow): z.infer<typeof WebhookResource> {
  return {
    id: row.id,
    url: row.url,
    events: row.events === null ? null : parsed(row.events),
    createdAt: row.created_at,
    failingSince: row.failing_since,
    disabledAt: row.disabled_at,
    disabledWhy: row.disabled_why,
  }
}

export const deliveryResource = (row: DeliveryRow): z.infer<typeof DeliveryResource> => ({
  id: row.id,
  kind: row.kind as z.infer<typeof DeliveryResource>['kind'],
  state: row.state,
  attempts: row.attempts,
  lastStatus: row.last_status,
  lastError: row.last_error,
  createdAt: row.created_at,
  updatedAt: row.updated_at,
})
