import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import type { FastifyInstance } from 'fastify'
import { ServiceProblem } from '../service/problems.js'
import { PAGE_STYLE } from './style.js'

/** The style sheet and the scripts of the page, under addresses that change with their content, so that a browser may keep them. */

interface Asset {
  type: string
  content: string
}

const SCRIPTS = new URL('./browser/', import.meta.url)

const assets = new Map<string, Asset>([['page.css', { type: 'text/css; charset=utf-8', content: PAGE_STYLE }]])
for (const name of readdirSync(SCRIPTS).filter((file) => file.endsWith('.js')))
  assets.set(name, {
    type: 'text/javascript; charset=utf-8',
    content: readFileSync(new URL(name, SCRIPTS), 'utf8'),
  })

const DIGITS = 16
const digest = createHash('sha256')
for (const [name, { content }] of assets) digest.update(`${name}\0${content}\0`)
const VERSION = digest.digest('hex').slice(0, DIGITS)

/** @param name of a file that is served */
export const assetAddress = (name: 'page.css' | 'page.js'): string => `/assets/${VERSION}/${name}`

/** A year: what changes gets another address. */
const KEPT = 'public, max-age=31536000, immutable'

export function assetRoutes(app: FastifyInstance) {
  app.get('/assets/:version/:file', async (request, reply) => {
    const { version, file } = request.params as { version: string; file: string }
    const asset = version === VERSION ? assets.get(file) : undefined
    if (!asset) throw new ServiceProblem('not-found', 'There is no such file.')
    return reply.type(asset.type).header('cache-control', KEPT).send(asset.content)
  })
}
