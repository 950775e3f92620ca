import swaggerUi from '@fastify/swagger-ui'
import type { FastifyInstance } from 'fastify'

/** The interactive reference at /docs: the OpenAPI document as a page on which every call can be tried. */
export async function installReference(app: FastifyInstance) {
  await app.register(swaggerUi, {
    routePrefix: '/docs',
    theme: {
      title: 'Fingertrue: interactive reference',
      // The page shows one document, so that the bar for choosing another, with its logo, has no purpose.
      css: [{ filename: 'reference.css', content: '.swagger-ui .topbar { display: none }' }],
    },
    // The page asks the library for the document, which holds examples of answers.
    uiHooks: { onRequest: (_request, _reply, done) => void app.describe().then(() => done(), done) },
    uiConfig: { docExpansion: 'list' },
  })
}
