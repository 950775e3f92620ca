import { readFileSync } from 'node:fs'
import { zipSync } from 'fflate'
import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import type { z } from 'zod'
import type { SignResource, SubmittalResource } from '../../../src/service/submittals/resources.js'
import { runningService } from '../running.js'
import type { Settings } from '../../../src/service/settings.js'

/** A service that listens, so that its workers run, and the steps of those who use it. */

export type Submittal = z.infer<typeof SubmittalResource>
export type KeptSign = z.infer<typeof SignResource>

export async function listening(settings: Partial<Settings> = {}): Promise<FastifyInstance> {
  const app = await runningService(settings)
  await app.listen({ host: '127.0.0.1', port: 0 })
  return app
}

const example = (name: string): Buffer => readFileSync(new URL(`../../../docs/examples/${name}`, import.meta.url))

/** Our own drawings; the second fails on its braille spacing. */
export const KILN = example('kiln-room.svg')
export const GLAZE = example('glaze-lab.svg')
export const SCHEDULE = example('schedule.csv')

export const zipOf = (files: Record<string, Buffer>): Buffer => Buffer.from(zipSync({ ...files }))

export async function uploaded(app: FastifyInstance, files: Record<string, Buffer>, name = 'Pottery studio') {
  const post = request(app.server).post('/v1/submittals').field('name', name)
  for (const [file, bytes] of Object.entries(files)) void post.attach('files', bytes, file)
  const response = await post.expect(202)
  return response.body as Submittal
}

/** Milliseconds between two looks; how many looks there are is no claim about speed, only an end for a test that would hang. */
const PAUSE = 50
const MOST_LOOKS = 1200

export async function checked(app: FastifyInstance, id: string): Promise<Submittal> {
  for (let look = 0; look < MOST_LOOKS; look++) {
    const response = await request(app.server).get(`/v1/submittals/${id}`).expect(200)
    const submittal = response.body as Submittal
    if (submittal.state === 'done') return submittal
    await new Promise((resolve) => setTimeout(resolve, PAUSE))
  }
  throw new Error('the submittal was never checked')
}

export async function signsOf(app: FastifyInstance, id: string, query = ''): Promise<KeptSign[]> {
  const response = await request(app.server).get(`/v1/submittals/${id}/signs${query}`).expect(200)
  return (response.body as { signs: KeptSign[] }).signs
}

export async function signOf(app: FastifyInstance, submittal: string, sign: string): Promise<KeptSign> {
  const response = await request(app.server).get(`/v1/submittals/${submittal}/signs/${sign}`).expect(200)
  return response.body as KeptSign
}
