import type { FastifyReply, FastifyRequest } from 'fastify'
import { Html, isolated, markup, NOTHING } from '../report/html-tag.js'
import { NOBODY } from '../submittals/keeping.js'
import { assetAddress } from './assets.js'

/** The frame of every page: its title, the way to the other pages, a way past all that, and the policy for what it may load. */

export interface View {
  /** What the page is, the most particular first; the name of the service is put behind it. */
  title: string
  main: Html
  /** The pages above it. */
  above?: { address: string; name: string }[]
  here?: 'upload' | 'submittals'
  /** Where someone goes who skips the head. */
  skip?: { to: string; text: string }
  /** Loads the page again where no script runs: what it shows is on its way. */
  isUnderWay?: boolean
}

const POLICY =
  "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self' data:; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"

/** Seconds between two loads of a page that shows something under way. */
const AGAIN_AFTER = 10
/** The query parameter by which a reader stops that (WCAG 2.2, 2.2.2 Pause, Stop, Hide). */
const STILL = 'still'

export function sendView(request: FastifyRequest, reply: FastifyReply, view: View, status = 200) {
  return (
    reply
      .code(status)
      .type('text/html; charset=utf-8')
      .header('content-security-policy', POLICY)
      .header('cache-control', 'no-store')
      // With none at all, a form would not say which site it was sent from.
      .header('referrer-policy', 'same-origin')
      .send(frame(request, view))
  )
}

const PLACES = [
  { key: 'upload', address: '/', name: 'Upload' },
  { key: 'submittals', address: '/submittals', name: 'Submittals' },
] as const

function frame(request: FastifyRequest, { title, main, above, here, skip, isUnderWay }: View): string {
  const [path = '/', query = ''] = request.url.split('?', 2)
  const isStill = new URLSearchParams(query).has(STILL)
  return markup`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>${title} – Fingertrue</title>
        <link rel="icon" href="data:," />
        <link rel="stylesheet" href="${assetAddress('page.css')}" />
        <script type="module" src="${assetAddress('page.js')}"></script>
        ${isUnderWay && !isStill ? markup`<noscript><meta http-equiv="refresh" content="${AGAIN_AFTER}" /></noscript>` : NOTHING}
      </head>
      <body>
        <a class="skip" href="#${skip?.to ?? 'main'}">${skip?.text ?? 'Skip to the content'}</a>
        <header class="bar">
          <div>
            <a class="brand" href="/">${BRAND} Fingertrue</a>
            <nav aria-label="Pages">
              ${PLACES.map(
                ({ key, address, name }) =>
                  markup`<a href="${address}"${key === here ? new Html(' aria-current="page"') : ''}>${name}</a>`,
              )}
            </nav>
            ${whoIsIn(request)}
          </div>
        </header>
        <main id="main" tabindex="-1">
          ${above ? crumbs(above) : NOTHING} ${isUnderWay ? underWay(path, isStill) : NOTHING} ${main}
        </main>
        <footer class="foot">
          <div>
            <p>What this service says is no certification and no legal advice.</p>
            <nav aria-label="About this service">
              <a href="/docs">Reference of the HTTP interface</a> · <a href="/openapi.json">OpenAPI 3.1</a> ·
              <a href="/v1/standards">The standards as data</a> ·
              <a href="/docs/problems">What problem answers mean</a>
            </nav>
          </div>
        </footer>
      </body>
    </html>
`.text
}

/** The letters f and t as two cells of braille. */
const BRAND = new Html(
  '<svg viewBox="0 0 18 14" aria-hidden="true"><circle cx="2" cy="2" r="1.7"/><circle cx="6" cy="2" r="1.7"/><circle cx="2" cy="7" r="1.7"/><circle cx="16" cy="2" r="1.7"/><circle cx="12" cy="7" r="1.7"/><circle cx="16" cy="7" r="1.7"/><circle cx="12" cy="12" r="1.7"/></svg>',
)

const whoIsIn = ({ actor }: FastifyRequest): Html =>
  actor && actor !== NOBODY
    ? markup`<form method="post" action="/sign-out">
        <span>Signed in as ${isolated(actor.name)}</span> <button class="quiet" type="submit">Sign out</button>
      </form>`
    : NOTHING

const crumbs = (above: { address: string; name: string }[]): Html =>
  markup`<nav class="crumbs" aria-label="Where you are">
    <ol>
      ${above.map(({ address, name }) => markup`<li><a href="${address}">${isolated(name)}</a></li>`)}
    </ol>
  </nav>`

function underWay(path: string, isStill: boolean): Html {
  return markup`<noscript>
    <p class="notice">
      ${
        isStill
          ? markup`This page does not load itself again. <a href="${path}">Let it load itself</a>`
          : markup`This page loads itself again every ${AGAIN_AFTER} seconds. <a href="${path}?${STILL}=1">Stop that</a>`
      }
    </p>
  </noscript>`
}
