import swagger from '@fastify/swagger'
import type { FastifyInstance } from 'fastify'
import { createJsonSchemaTransform, createJsonSchemaTransformObject } from 'fastify-type-provider-zod'
import { z } from 'zod'
import type { Access } from './keys/access.js'
import type { LateCore } from './late-core.js'
import { VERSION } from '../version.js'
import { TAGS, type Media, type Operation } from './operation.js'
import { PROBLEM_MEDIA_TYPE, problemAddress, problemOf, Problem } from './problems.js'
import { PROBLEMS, type ProblemType } from './problem-table.js'
import { pruned } from './openapi-prune.js'
import { openApiWebhooks } from './openapi-webhooks.js'
import type { Settings } from './settings.js'

/** The OpenAPI 3.1 document, made from the zod schemas and the operations beside the routes. */

interface JsonObject {
  [key: string]: unknown
}

/** The id in examples of problems, where each real one has its own. */
const EXAMPLE_REQUEST_ID = '00000000-0000-4000-8000-000000000000'

declare module 'fastify' {
  interface FastifyInstance {
    /** The whole document, with what the examples are answered with. */
    describe: () => Promise<Exclude<ReturnType<FastifyInstance['swagger']>, string>>
  }
}

export async function installOpenApi(app: FastifyInstance, auth: Settings['auth'], core: LateCore) {
  const operations = new Map<string, { operation: Operation; access: Access | undefined }>()
  app.addHook('onRoute', (route) => {
    const operation = route.config?.operation
    if (operation) operations.set(operation.id, { operation, access: route.config?.access })
  })
  const components = createJsonSchemaTransformObject({})
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Fingertrue',
        version: VERSION,
        description: 'Checks tactile signs (raised letters, braille) against published accessibility standards.',
        license: { name: 'MIT', identifier: 'MIT' },
      },
      servers: [{ url: '/' }],
      ...(auth === 'keys' && { components: { securitySchemes: { [SCHEME]: SECURITY_SCHEME } } }),
      tags: Object.entries(TAGS).map(([name, description]) => ({ name, description })),
    },
    transform: createJsonSchemaTransform({}),
    transformObject: (document) => {
      const complete = components(document) as unknown as JsonObject
      for (const path of Object.values(complete.paths as Record<string, JsonObject>))
        for (const entry of Object.values(path) as JsonObject[]) {
          const known = operations.get(String(entry.operationId))
          if (!known) continue
          describeOperation(entry, known.operation)
          if (auth === 'keys') describeAccess(entry, known.operation, known.access)
        }
      complete.webhooks = openApiWebhooks()
      return pruned(complete)
    },
  })
  app.decorate('describe', async () => {
    await core.load()
    return app.swagger()
  })
  app.get('/openapi.json', { schema: { hide: true } }, async (_request, reply) => {
    // The document never changes while the process runs.
    void reply.type('application/json')
    return JSON.stringify(await app.describe())
  })
}

/** The parts of a route's schema that the OpenAPI document takes from its operation. */
export const documented = (operation: Operation) => ({
  config: { operation },
  schema: {
    operationId: operation.id,
    tags: [operation.tag],
    summary: operation.summary,
    description: operation.description,
  },
})

/** What any operation may answer with, whatever it takes. */
const ANY_OTHER: JsonObject = {
  description:
    'Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503).',
  content: { [PROBLEM_MEDIA_TYPE]: { schema: { $ref: `#/components/schemas/${idOf(Problem)}` } } },
}

function describeOperation(entry: JsonObject, operation: Operation) {
  const { requests, answer, problems } = operation
  entry.security = []
  if (requests) entry.requestBody = { required: true, content: content(requests, 'Input') }
  entry.responses = {
    [answer.status]: { description: answer.description, content: content(answer.content, '') },
    ...problemResponses(problems),
    default: ANY_OTHER,
  }
}

/** The name of the API key among the security schemes. */
const SCHEME = 'key'
const SECURITY_SCHEME = {
  type: 'http',
  scheme: 'bearer',
  description: 'An API key. The scopes that an operation needs are named beside it.',
} as const

/** Who may call, where keys are asked for. */
function describeAccess(entry: JsonObject, { problems }: Operation, access: Access | undefined) {
  if (access?.for !== 'keys') return
  const { scope } = access
  entry.security = [{ [SCHEME]: scope === null ? [] : [scope] }]
  const refusals: ProblemType[] = [
    'unauthorized',
    ...(scope === null ? [] : ['forbidden' as const]),
    'too-many-requests',
  ]
  const { default: other, ...responses } = entry.responses as JsonObject
  entry.responses = {
    ...responses,
    ...problemResponses(refusals.filter((type) => !problems.includes(type))),
    default: other,
  }
}

function content(media: Record<string, Media>, suffix: 'Input' | ''): JsonObject {
  return Object.fromEntries(
    Object.entries(media).map(([type, { schema, binary, examples }]) => [
      type,
      {
        schema: schema
          ? { $ref: `#/components/schemas/${idOf(schema)}${suffix}` }
          : binary
            ? { contentMediaType: type }
            : { type: 'string' },
        ...(examples && {
          examples: Object.fromEntries(
            Object.entries(examples).map(([name, { summary, value }]) => [name, { summary, value: value() }]),
          ),
        }),
      },
    ]),
  )
}

function idOf(schema: z.ZodType): string {
  const id = z.globalRegistry.get(schema)?.id
  if (id === undefined) throw new TypeError('A schema of an operation has no id.')
  return id
}

function problemResponses(types: ProblemType[]): JsonObject {
  const byStatus = new Map<number, ProblemType[]>()
  for (const type of types) {
    const { status } = PROBLEMS[type]
    byStatus.set(status, [...(byStatus.get(status) ?? []), type])
  }
  return Object.fromEntries(
    [...byStatus].map(([status, ofStatus]) => [
      status,
      {
        description: ofStatus.map((type) => `[${PROBLEMS[type].title}](${problemAddress(type)})`).join('; '),
        content: {
          [PROBLEM_MEDIA_TYPE]: {
            schema: { $ref: `#/components/schemas/${idOf(Problem)}` },
            examples: Object.fromEntries(ofStatus.map((type) => [type, exampleOf(type)])),
          },
        },
      },
    ]),
  )
}

const exampleOf = (type: ProblemType) => ({
  summary: PROBLEMS[type].title,
  value: problemOf({ type, detail: PROBLEMS[type].example, errors: [] }, EXAMPLE_REQUEST_ID),
})
