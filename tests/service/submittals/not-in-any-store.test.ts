import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { checked, KILN, listening, signsOf, uploaded, type KeptSign } from './kept.js'

/**
 * What no store can hold or look for is refused before it comes to one: PostgreSQL keeps no U+0000 in a text and no integer beyond four
 * bytes (PostgreSQL 17, 8.1.1 and 8.3). All values are invented.
 */

let app: FastifyInstance
let at: string
let sign: string

beforeAll(async () => {
  app = await listening()
  const { id } = await uploaded(app, { 'kiln.svg': KILN })
  await checked(app, id)
  at = `/submittals/${id}`
  sign = `${at}/signs/${(await signsOf(app, id))[0]?.id ?? ''}`
})
afterAll(() => app.close())

describe('what no store can hold', () => {
  it.each([
    ['the character U+0000 in an id', '/v1/submittals/a%00b', 404],
    ['the same in a filter', '/v1/submittals/a/signs?text=%00', 400],
    ['the same in the address of a page', '/submittals?before=%00', 400],
    ['a place beyond four bytes', '/v1AT/signs?cursor=9999999999', 422],
    ['a revision beyond four bytes', '/v1SIGN/reports/9007199254740991', 404],
    ['the same on a page', 'SIGN?report=9007199254740991', 404],
  ])('is not looked for: %s', async (_, address, status) => {
    await request(app.server).get(address.replace('AT', at).replace('SIGN', sign)).expect(status)
  })

  it('is not taken as the fingerprint of a waiver, nor as an address for notifications', async () => {
    const waiver = { fingerprint: 'a\u0000b', reason: 'None', authority: 'Letter 44' }
    await request(app.server).post(`/v1${sign}/waivers`).send(waiver).expect(422)
    await request(app.server).post('/v1/webhooks').send({ url: 'https://shop.example/\u0000' }).expect(422)
  })
})

describe('a body that is no form', () => {
  it('is not taken for an empty form, which would take facts away', async () => {
    const facts = { units: 'mm', panelBottomHeight: 1300 }
    await request(app.server).put(`/v1${sign}/installation`).send(facts).expect(202)
    await request(app.server).post(`${sign}/installation`).send({}).expect(415)
    const kept = await request(app.server).get(`/v1${sign}`).expect(200)
    expect(kept.body as KeptSign).toMatchObject({ installation: { panelBottomHeight: { value: 1300, unit: 'mm' } } })
  })
})
