import type { FastifyInstance } from 'fastify'
import { Translation, TranslationRequest } from '../braille/translation-schema.js'
import { askerOf } from './admission/asker.js'
import type { CheckParts } from './checks.js'
import { unsupported } from './errors.js'
import { LongJson } from './json.js'
import { negotiate } from './negotiate.js'
import { documented } from './openapi.js'
import type { Operation } from './operation.js'
import { invalid } from './read-request.js'
import { LIMITS } from './settings.js'

/** POST /v1/translations: print into braille and back, with the size of the block. */

const EXAMPLE: TranslationRequest = { text: 'pottery 117', code: 'ueb-contracted' }

export function translationRoutes(app: FastifyInstance, { core, short }: Omit<CheckParts, 'pool'>) {
  const operation: Operation = {
    id: 'createTranslation',
    tag: 'braille',
    summary: 'Translate print into braille, or back',
    description: 'The cells of a text, broken into lines and laid out in millimetres; or the text that cells say.',
    requests: {
      'application/json': {
        schema: TranslationRequest,
        examples: { room: { summary: 'The name of a room', value: () => EXAMPLE } },
      },
    },
    answer: {
      status: 200,
      description: 'The translation.',
      content: {
        'application/json': {
          schema: Translation,
          examples: { room: { summary: 'The name of a room', value: () => core.now.translate(EXAMPLE) } },
        },
      },
    },
    problems: [
      'malformed-json',
      'not-acceptable',
      'too-large',
      'unsupported-media-type',
      'invalid-description',
      'unknown-standard',
      'untranslatable-text',
      'busy',
    ],
  }
  app.post('/v1/translations', { ...documented(operation), bodyLimit: LIMITS.translation }, async (request, reply) => {
    const type = negotiate(request, reply, ['application/json'])
    const { body } = request
    if (body === undefined || Buffer.isBuffer(body) || request.isMultipart()) throw unsupported(request)
    const parsed = TranslationRequest.safeParse(body instanceof LongJson ? body.read() : body)
    if (!parsed.success) throw invalid(parsed.error, TranslationRequest, '')
    const { translate } = await core.load()
    const translation = await short.run(askerOf(request), () => translate(parsed.data))
    return reply.type(type).send(JSON.stringify(translation))
  })
}
