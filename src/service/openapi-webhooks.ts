import { z } from 'zod'
import { EVENT_KINDS, TEST_KIND, type MessageKind, type SubmittalNews } from '../submittals/webhooks/events.js'
import { CancelledMessage, CheckedMessage, TestMessage } from './submittals/webhook-resources.js'
import type { Tag } from './operation.js'

/** The section `webhooks` of the OpenAPI document (3.1, 4.8.1): what is sent to addresses that asked for it. */

const TAG: Tag = 'webhooks'

const HEADERS = {
  'webhook-id': 'Names the message; the same whenever it is sent again.',
  'webhook-timestamp': 'Seconds since 1970-01-01 UTC at which this sending was signed.',
  'webhook-signature': 'Signatures by Standard Webhooks 1.0.0, parted by blanks, each behind `v1,`.',
}

const NEWS: SubmittalNews = {
  submittal: 'sub_019abc',
  name: 'Fiber arts hall',
  state: 'done',
  signs: { total: 2, done: 2 },
  verdicts: { pass: 1, fail: 1, undetermined: 0, notApplicable: 0, none: 0 },
  address: '/v1/submittals/sub_019abc',
}
const CANCELLED: SubmittalNews = {
  ...NEWS,
  state: 'cancelled',
  signs: { total: 2, done: 1 },
  verdicts: { ...NEWS.verdicts, fail: 0, none: 1 },
}
const TIME = '2026-11-25T09:30:00.000Z'

const MESSAGES: Record<MessageKind, { id: string; summary: string; schema: z.ZodType; data: object }> = {
  [EVENT_KINDS[0]]: {
    id: 'onSubmittalChecked',
    summary: 'Every sign of a submittal has been checked',
    schema: CheckedMessage,
    data: NEWS,
  },
  [EVENT_KINDS[1]]: {
    id: 'onSubmittalCancelled',
    summary: 'A submittal was cancelled',
    schema: CancelledMessage,
    data: CANCELLED,
  },
  [TEST_KIND]: {
    id: 'onEndpointTest',
    summary: 'An address is tried',
    schema: TestMessage,
    data: { webhook: 'end_019abc' },
  },
}

export const openApiWebhooks = () =>
  Object.fromEntries(
    Object.entries(MESSAGES).map(([kind, { id, summary, schema, data }]) => {
      const { id: name, description } = z.globalRegistry.get(schema) ?? {}
      const example = { summary, value: { type: kind, timestamp: TIME, data } }
      const post = {
        operationId: id,
        tags: [TAG],
        summary,
        description,
        security: [],
        parameters: Object.entries(HEADERS).map(([header, meaning]) => ({
          name: header,
          in: 'header',
          required: true,
          schema: { type: 'string' },
          description: meaning,
        })),
        requestBody: {
          required: true,
          content: {
            'application/json': {
              schema: { $ref: `#/components/schemas/${name}` },
              examples: { example },
            },
          },
        },
        responses: {
          '2XX': { description: 'It was taken.' },
          '410': { description: 'Nothing more is to be sent to this address.' },
          default: { description: 'It was not taken; it is sent again, up to nine times within about three days.' },
        },
      }
      return [kind, { post }]
    }),
  )
