import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { runningService, THEATER, type ProblemAnswer } from '../running.js'

/**
 * Idempotency-Key: draft-ietf-httpapi-idempotency-key-header-07, sections 2.1 (a string of structured fields), 2.6 and 2.7
 * (the same answer again; 422 for another request; 409 for one that still runs). Keys and names are invented.
 */

let app: FastifyInstance
beforeAll(async () => (app = await runningService()))
afterAll(() => app.close())

interface Made {
  id: string
  name: string
}

const upload = (key: string, name: string, drawing: Uint8Array = THEATER, file = 'H-204.svg') =>
  request(app.server)
    .post('/v1/submittals')
    .set('Idempotency-Key', key)
    .field('name', name)
    .attach('files', Buffer.from(drawing), { filename: file, contentType: 'image/svg+xml' })

const named = async (name: string): Promise<Made[]> => {
  const list = await request(app.server).get('/v1/submittals?limit=100').expect(200)
  return (list.body as { submittals: Made[] }).submittals.filter((one) => one.name === name)
}

describe('a submittal that is sent twice with the same key', () => {
  it('is made once, and both answers are the same', async () => {
    const first = await upload('"k-one"', 'Weaving hall').expect(202)
    const again = await upload('"k-one"', 'Weaving hall').expect(202)
    expect(again.text).toBe(first.text)
    expect(again.headers.location).toBe(first.headers.location)
    expect(again.headers['content-type']).toBe(first.headers['content-type'])
    expect(await named('Weaving hall')).toHaveLength(1)
  })

  it('is the same with the key in quotes and bare', async () => {
    const first = await upload('"8e03978e-40d5-43dd-bc93-6894a57f9324"', 'Dye kitchen').expect(202)
    const again = await upload('8e03978e-40d5-43dd-bc93-6894a57f9324', 'Dye kitchen').expect(202)
    expect(again.text).toBe(first.text)
  })

  it.each([
    ['another name', () => upload('"k-two"', 'Other name')],
    ['another file name', () => upload('"k-two"', 'Spinning room', THEATER, 'H-205.svg')],
    ['another byte', () => upload('"k-two"', 'Spinning room', Buffer.concat([THEATER, Buffer.from('\n')]))],
  ])('is refused with %s', async (_, send) => {
    await upload('"k-two"', 'Spinning room').expect(202)
    const response = await send().expect(422)
    expect((response.body as ProblemAnswer).type).toBe('/docs/problems/idempotency-key-reused')
    expect(await named('Spinning room')).toHaveLength(1)
  })

  it('is made once when both arrive together', async () => {
    const all = await Promise.all(Array.from({ length: 4 }, () => upload('"k-three"', 'Loom store')))
    const statuses = all.map(({ status }) => status)
    expect(statuses.filter((status) => status === 202).length).toBeGreaterThanOrEqual(1)
    for (const { status, body, headers } of all.filter((response) => response.status !== 202)) {
      expect(status).toBe(409)
      expect((body as ProblemAnswer).type).toBe('/docs/problems/request-in-progress')
      expect(headers['retry-after']).toMatch(/^\d+$/)
    }
    expect(new Set(all.filter(({ status }) => status === 202).map(({ text }) => text)).size).toBe(1)
    expect(await named('Loom store')).toHaveLength(1)
  })

  it('can be sent again after a refusal, which created nothing', async () => {
    await upload('"k-four"', 'Kiln yard', Buffer.from('no drawing'), 'a.svg').expect(422)
    await upload('"k-four"', 'Kiln yard').expect(202)
    expect(await named('Kiln yard')).toHaveLength(1)
  })
})

describe('a key', () => {
  it.each(['"', '""', '"a', 'a b', 'a, b', '"a", "b"', '"\\a"', `"${'a'.repeat(256)}"`, 'a'.repeat(256), '"é"'])(
    'is refused as %s',
    async (key) => {
      const response = await upload(Buffer.from(key, 'utf8').toString('latin1'), 'Never made').expect(400)
      expect((response.body as ProblemAnswer).type).toBe('/docs/problems/malformed-request')
      expect(await named('Never made')).toHaveLength(0)
    },
  )

  it.each([`"${'a'.repeat(255)}"`, 'a'.repeat(255), '"a \\" \\\\ b"', 'sf-token/with:all*'])(
    'is taken as %s',
    async (key) => {
      await upload(key, 'Long key').expect(202)
    },
  )
})

describe('what is added to a sign', () => {
  const at = async () => {
    const made = await upload(`key-${Math.random()}`, 'Ribbon room').expect(202)
    const { id } = made.body as Made
    const list = await request(app.server).get(`/v1/submittals/${id}/signs?report=brief`).expect(200)
    return `/v1/submittals/${id}/signs/${(list.body as { signs: { id: string }[] }).signs[0]?.id}`
  }

  it.each([
    ['measurements', [{ quantity: 'braille.dotHeight', values: [0.71], unit: 'mm' }], 202],
    ['notes', { text: 'Seen again.' }, 201],
    ['waivers', { fingerprint: 'f', reason: 'No wall.', authority: 'Letter 7' }, 201],
  ])('%s are added once', async (resource, body, status) => {
    const sign = await at()
    const send = (sent: unknown) =>
      request(app.server)
        .post(`${sign}/${resource}`)
        .set('Idempotency-Key', `"of ${sign} ${resource}"`)
        .send(sent as object)
    const first = await send(body).expect(status)
    expect((await send(body).expect(status)).text).toBe(first.text)
    const kept = (await request(app.server).get(sign).expect(200)).body as Record<string, unknown[]>
    expect(kept[resource]).toHaveLength(1)
    const other = Array.isArray(body) ? [{ ...body[0], values: [0.5] }] : { ...body, author: 'Another' }
    expect((await send(other).expect(422)).body).toMatchObject({ type: '/docs/problems/idempotency-key-reused' })
  })
})
