import { randomUUID } from 'node:crypto'
import accepts from '@fastify/accepts'
import cookie from '@fastify/cookie'
import multipart from '@fastify/multipart'
import Fastify, { LogController, type FastifyInstance } from 'fastify'
import { validatorCompiler } from 'fastify-type-provider-zod'
import type { Translator } from '../braille/translator.js'
import { KeyRing } from '../submittals/keys/key-ring.js'
import { sendEitherWay } from '../page/error-page.js'
import { pageRoutes } from '../page/routes.js'
import { installLoopGuard, watchLoop } from './admission/loop-delay.js'
import { shortLine } from './admission/short-line.js'
import { checkRoutes } from './checks.js'
import { commonRoute } from './common.js'
import { dotPlanRoutes } from './dot-plans.js'
import { correctionRoutes } from './corrections.js'
import { drawingRoutes } from './drawings.js'
import { causeOf, installErrorHandler, sendProblem } from './errors.js'
import { answerHealthOnly, healthRoutes } from './health.js'
import { LongJson, readJson } from './json.js'
import { LateCore } from './late-core.js'
import { installGuard, noteAccess } from './keys/guard.js'
import { keyRoutes } from './keys/keys.js'
import { installRateLimit } from './keys/rate-limit.js'
import { answerBrokenHttp, loggerOptions, logRequests } from './logging.js'
import { installNotFound } from './not-found.js'
import { installOpenApi } from './openapi.js'
import { Pool } from './pool.js'
import { problemPageRoutes } from './problem-pages.js'
import { ServiceProblem } from './problems.js'
import { readingRoutes } from './readings.js'
import { installReference } from './reference.js'
import { installSecurityHeaders } from './security-headers.js'
import { LIMITS, type Settings } from './settings.js'
import { standardRoutes } from './standards.js'
import { changeRoutes } from './submittals/changes.js'
import { createRoutes } from './submittals/create.js'
import { evidenceRoutes } from './submittals/evidence.js'
import { eventRoutes } from './submittals/events.js'
import { openStore } from '../submittals/store/connect.js'
import { openKeeping } from './submittals/open.js'
import { signRoutes } from './submittals/signs.js'
import { submittalRoutes } from './submittals/submittals.js'
import { webhookRoutes } from './submittals/webhooks.js'
import { translationRoutes } from './translations.js'
import { answers } from '../submittals/store/answers.js'
import { metricsRoute } from './watching/metrics.js'
import { watchRequests } from './watching/requests.js'
import { openWatching } from './watching/watching.js'

export interface Dependencies {
  /** Absent: one is made when it is first needed. */
  translator?: Translator
  /** Opens the store of submittals. */
  open?: typeof openStore
}

declare module 'fastify' {
  interface FastifyInstance {
    /** From now on /readyz refuses, so that no new work is sent here; what runs is finished. */
    drain: () => void
  }
}

/** Milliseconds in which a request must be there as a whole: long enough for a large upload over a slow line. */
const REQUEST_TIMEOUT = 120_000

/** Builds the whole HTTP service, ready to listen or to be injected into. `close()` stops it and its threads. */
export async function buildService(
  settings: Settings,
  { translator, open = openStore }: Dependencies = {},
): Promise<FastifyInstance> {
  const app: FastifyInstance = Fastify({
    logger: loggerOptions(settings.logLevel),
    logController: new LogController({ disableRequestLogging: true }),
    genReqId: () => randomUUID(),
    bodyLimit: LIMITS.json,
    requestTimeout: REQUEST_TIMEOUT,
    return503OnClosing: false,
    clientErrorHandler: (error, socket) => {
      if (answerBrokenHttp(error, socket)) watching.meters?.rejected('request', 'malformed-request')
    },
    frameworkErrors: (error, request, reply) => {
      const cause = causeOf(error, request)
      watching.meters?.rejected('request', cause.type)
      void sendProblem(request, reply, cause)
    },
  })
  const watching = await openWatching(settings, app.log)
  watchRequests(app, watching)
  noteAccess(app)
  let draining = false
  app.decorate('drain', () => void (draining = true))
  // A connection that a client keeps open would hold up the end of the process.
  app.addHook('onSend', (_request, reply, payload, done) => {
    if (draining) void reply.header('connection', 'close')
    done(null, payload)
  })
  const onThreadError = (err: Error) => app.log.error({ err }, 'a worker thread failed')
  const pool = new Pool(settings, onThreadError, watching.meters?.pool)
  const kept = await openKeeping(settings, pool, app.log, watching, open)
  app.addHook('onListen', async () => {
    if (settings.restAfter === undefined) pool.start()
    kept.start()
  })
  app.addHook('onClose', async () => {
    await kept.close()
    await pool.close()
    await watching.traces?.close()
  })

  app.setValidatorCompiler(validatorCompiler)
  app.setSerializerCompiler(() => (data) => JSON.stringify(data))
  installErrorHandler(app)
  await installSecurityHeaders(app)
  logRequests(app)
  if (settings.role === 'worker') answerHealthOnly(app)
  const loop = watchLoop()
  installLoopGuard(app, loop, settings.loopDelayLimit)
  installNotFound(app, sendEitherWay)
  await app.register(cookie)
  const ring = new KeyRing(kept.keeping.store.db, (err) => app.log.error({ err }, 'the use of a key was not noted'))
  installGuard(app, { settings, keeping: kept.keeping, ring, count: await installRateLimit(app) })
  await app.register(accepts)
  await app.register(multipart, {
    limits: {
      fileSize: LIMITS.drawing,
      fieldSize: LIMITS.drawing,
      files: LIMITS.formParts,
      fields: LIMITS.formParts,
      parts: LIMITS.formParts,
    },
  })
  readBodies(app)
  const core = new LateCore(translator, () => loop.forget())
  if (settings.restAfter === undefined && settings.role !== 'worker') await core.load()
  await installOpenApi(app, settings.auth, core)
  await installReference(app)

  healthRoutes(
    app,
    () => draining,
    () => answers(kept.keeping.store),
  )
  if (watching.meters) metricsRoute(app, watching.meters, pool, kept.keeping)
  problemPageRoutes(app)
  const parts = { core, pool, short: shortLine(settings) }
  checkRoutes(app, parts)
  readingRoutes(app, parts)
  translationRoutes(app, parts)
  drawingRoutes(app, parts)
  correctionRoutes(app, parts)
  dotPlanRoutes(app, parts)
  standardRoutes(app)
  commonRoute(app)
  createRoutes(app, kept.keeping, pool)
  submittalRoutes(app, kept.keeping)
  eventRoutes(app, kept.keeping)
  webhookRoutes(app, kept.keeping, settings)
  signRoutes(app, kept.keeping)
  changeRoutes(app, kept.keeping)
  evidenceRoutes(app, kept.keeping, settings)
  keyRoutes(app, settings, kept.keeping, ring)
  await pageRoutes(app, { keeping: kept.keeping, pool, settings })
  await app.ready()
  return app
}

const COMPRESSED = 'Compressed bodies are not read here; send it without Content-Encoding.'

/** A character that is in no name and no id, and that PostgreSQL keeps in no text. */
const ZERO = /%00/u

/** Short JSON as a value, long JSON, a drawing and a program as bytes; a form is read by its route. Anything else, and any compression, is not read. */
function readBodies(app: FastifyInstance) {
  app.removeContentTypeParser(['application/json', 'text/plain'])
  app.addContentTypeParser('application/json', { parseAs: 'buffer' }, async (_request: unknown, body: Buffer) =>
    body.length > LIMITS.inlineJson ? new LongJson(body) : readJson(body.toString('utf8')),
  )
  app.addContentTypeParser(
    ['image/svg+xml', 'text/x-gcode'],
    { parseAs: 'buffer', bodyLimit: LIMITS.drawing },
    async (_request: unknown, body: unknown) => body,
  )
  app.addHook('onRequest', (request, _reply, done) => {
    const [path = '', query = ''] = request.url.split('?', 2)
    if (ZERO.test(path))
      return done(new ServiceProblem('not-found', 'Nothing has the character U+0000 in its address.'))
    if (ZERO.test(query)) return done(new ServiceProblem('malformed-request', 'The query holds the character U+0000.'))
    const encoding = request.headers['content-encoding']
    const compressed = encoding !== undefined && encoding !== 'identity'
    done(compressed ? new ServiceProblem('unsupported-media-type', COMPRESSED) : undefined)
  })
}
