import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { guarded, KEYED, type Guarded } from '../service/keys/guarded.js'
import { KILN } from '../service/submittals/kept.js'

/** What lies in caches, and the tags of it (RFC 9110, 8.8.3 and 13.1.2; RFC 9111, 3.5): nothing of one organisation leads to another's. */

let service: Guarded
let ours: string
let theirs: string
let submittal: string
beforeAll(async () => {
  service = await guarded({ role: 'api' })
  ours = await service.key(KEYED)
  theirs = await service.key(KEYED, { organisation: 'Seed Library' })
  const made = await request(service.app.server)
    .post('/v1/submittals')
    .set('authorization', `Bearer ${ours}`)
    .attach('files', KILN, 'K-1.svg')
    .expect(202)
  submittal = (made.body as { id: string }).id
})
afterAll(() => service.close())

const get = (path: string, token: string, headers: Record<string, string> = {}) =>
  request(service.app.server)
    .get(path)
    .set({ authorization: `Bearer ${token}`, ...headers })

describe('the tag of what one organisation keeps', () => {
  it('spares its owner the bytes, and tells another not even that they are there', async () => {
    const path = `/v1/submittals/${submittal}/report.csv`
    const first = await get(path, ours)
    expect(first.status).toBe(200)
    const tag = first.headers.etag ?? ''
    expect(tag).not.toBe('')
    await get(path, ours, { 'if-none-match': tag }).expect(304)
    for (const known of [tag, '*', `W/${tag}`]) await get(path, theirs, { 'if-none-match': known }).expect(404)
    await request(service.app.server).get(path).set('if-none-match', tag).expect(401)
  })
})

describe('what is kept', () => {
  it.each(['', '/signs', '/history', '/report.csv', '/report.html'])(
    'is for no cache that others share: …%s',
    async (rest) => {
      const { headers, status } = await get(`/v1/submittals/${submittal}${rest}`, ours)
      expect(status).toBe(200)
      // RFC 9111, 3.5: a shared cache keeps no answer to Authorization unless one of these says so.
      expect(headers['cache-control'] ?? '').not.toMatch(/public|s-maxage|must-revalidate/u)
      if (headers['cache-control'] !== undefined) expect(headers['cache-control']).toMatch(/private|no-store|no-cache/u)
    },
  )
})
