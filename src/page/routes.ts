import type { FastifyInstance } from 'fastify'
import { installErrorHandler } from '../service/errors.js'
import type { Pool } from '../service/pool.js'
import type { Settings } from '../service/settings.js'
import type { Keeping } from '../submittals/keeping.js'
import { assetRoutes } from './assets.js'
import { sendErrorPage } from './error-page.js'
import { signInPages } from './sign-in.js'
import { signPages } from './sign/routes.js'
import { submittalPages } from './submittal/routes.js'
import { uploadRoutes } from './upload/routes.js'

/** All pages for people, in a scope of their own: they read forms of browsers, and their errors are pages. */

export interface PageParts {
  keeping: Keeping
  pool: Pool
  settings: Pick<Settings, 'auth'>
}

/** Largest form without files, in bytes. */
const FORM_LIMIT = 256 * 1024

export async function pageRoutes(app: FastifyInstance, { keeping, pool, settings }: PageParts): Promise<void> {
  await app.register(async (pages) => {
    installErrorHandler(pages, sendErrorPage)
    pages.addContentTypeParser(
      'application/x-www-form-urlencoded',
      { parseAs: 'string', bodyLimit: FORM_LIMIT },
      async (_request: unknown, body: string | Buffer) => new URLSearchParams(body.toString()),
    )
    // The interface is documented for clients; these are for people.
    pages.addHook('onRoute', (route) => {
      route.schema = { ...route.schema, hide: true }
    })
    assetRoutes(pages)
    signInPages(pages, keeping, settings.auth === 'keys')
    uploadRoutes(pages, keeping, pool)
    submittalPages(pages, keeping)
    signPages(pages, keeping)
  })
}
