import type { FastifyInstance } from 'fastify'
import { sendPage } from './page.js'

/** GET /: a signpost for people who open the service in a browser. */
export function homeRoute(app: FastifyInstance) {
  app.get('/', { schema: { hide: true } }, async (_request, reply) =>
    sendPage(
      reply,
      'Fingertrue',
      `<p>This service checks tactile signs, with raised letters and braille, against published accessibility standards.</p>
<ul>
<li><a href="/docs">Reference of the HTTP interface</a></li>
<li><a href="/openapi.json">The same for machines (OpenAPI 3.1)</a></li>
<li><a href="/v1/standards">The standards</a></li>
<li><a href="/docs/problems">What problem answers mean</a></li>
</ul>`,
    ),
  )
}
