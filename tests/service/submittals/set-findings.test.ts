import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { POTTERY_ROOM } from '../../../src/sign/examples.js'
import { runningService } from '../running.js'

/** A set is compared by what its reports read, through the threads and the queue. The set is invented; no standard asks for any of it. */

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
  await app.listen({ port: 0 })
})
afterAll(() => app.close())

interface Set {
  id: string
  state: string
  setFindings: { kind: string; marks: string[]; message: string }[]
}

const weaving = {
  ...POTTERY_ROOM,
  mark: 'W-117',
  lettering: POTTERY_ROOM.lettering.map((one) => ({
    ...one,
    text: 'WEAVING 117',
    typeface: { family: 'Lato', style: 'sans-serif' },
  })),
  braille: POTTERY_ROOM.braille.map((block) => ({ ...block, text: 'weaving 117', cellSpacing: 7.6 })),
}

it('finds what is wrong with a set when its last sign has been checked', async () => {
  const signs = [
    { location: '117', sign: POTTERY_ROOM },
    { location: '117', sign: weaving },
    { location: '118', mark: 'W-117', sign: weaving },
  ]
  const made = await request(app.server).post('/v1/submittals').send({ name: 'Mixed', signs }).expect(202)
  const { id, setFindings } = made.body as Set
  expect(setFindings).toEqual([])
  let set: Set | undefined
  for (let tries = 0; tries < 600 && set?.state !== 'done'; tries++) {
    set = (await request(app.server).get(`/v1/submittals/${id}`).expect(200)).body as Set
    await new Promise((resolve) => setTimeout(resolve, 25))
  }
  const marks = Object.fromEntries((set?.setFindings ?? []).map((found) => [found.kind, [...found.marks].sort()]))
  expect(marks).toEqual({
    'same-mark': ['W-117'],
    'wording-differs': ['P-117', 'W-117'],
    'typefaces-differ': ['P-117', 'W-117'],
    'braille-spacing-differs': ['P-117', 'W-117'],
  })
})
