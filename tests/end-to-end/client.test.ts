import { readFileSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { zipSync } from 'fflate'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { createClient, signsOf, submit, waitUntilDone, type Client, type SignOfSet } from '../../src/client/index.js'
import { DEFAULT_SETTINGS } from '../../src/service/settings.js'
import { runningService } from '../service/running.js'

/** A running service called by the client that we publish. The signs are the invented ones of docs/examples. */

const EVIDENCE_WORKER = new URL('../../dist/service/submittals/evidence-worker.js', import.meta.url)
const example = (name: string) => readFileSync(new URL(`../../docs/examples/${name}`, import.meta.url))

let app: FastifyInstance
let client: Client
beforeAll(async () => {
  app = await runningService({ evidence: { ...DEFAULT_SETTINGS.evidence, worker: EVIDENCE_WORKER } })
  await app.listen({ host: '127.0.0.1', port: 0 })
  client = createClient({ baseUrl: `http://127.0.0.1:${(app.server.address() as AddressInfo).port}` })
})
afterAll(() => app.close())

describe('the client', () => {
  it('checks a drawing with a description, and gives the report with the remedy', async () => {
    const { data } = await client.POST('/v1/checks', {
      body: { drawing: example('glaze-lab.svg').toString(), options: { use: 'permanent-room' } },
    })
    const spacing = data?.findings.find(({ requirement }) => requirement === 'us-ada-2010/703.3.1/cell-spacing')
    // 2010 ADA Standards, table 703.3.1: 0.241 inch at least; the example is drawn with 5.6 mm.
    expect(spacing).toMatchObject({ verdict: 'fail', measured: { unit: 'mm' } })
    expect(spacing?.remedy?.aim).toBeGreaterThan(6.1214)
  })

  it('asks for a form of the report by its media type', async () => {
    const { data } = await client.POST('/v1/checks', {
      body: { drawing: example('exit.svg').toString() },
      headers: { accept: 'application/sarif+json' },
      parseAs: 'text',
    })
    expect(data).toContain('"version":"2.1.0"')
  })

  it('throws the problem of a standard that is not there, and of a drawing that cannot be read', async () => {
    await expect(client.GET('/v1/standards/{id}', { params: { path: { id: 'us-ada-3000' } } })).rejects.toMatchObject({
      status: 404,
    })
    await expect(client.POST('/v1/checks', { body: { drawing: '<svg' } })).rejects.toMatchObject({
      status: 400,
      kind: 'malformed-drawing',
    })
  })

  it('hands in a set, waits for it, reads its signs page by page and takes its evidence; sent twice it is kept once', async () => {
    const names = ['kiln-room.svg', 'glaze-lab.svg', 'exit.svg']
    const files = [
      { name: 'set.zip', content: zipSync(Object.fromEntries(names.map((name) => [name, example(name)]))) },
      { name: 'schedule.csv', content: example('schedule.csv') },
    ]
    const options = { name: 'Pottery studio', standards: ['us-ada-2010'], idempotencyKey: 'visit-1' }
    const { id, name } = await submit(client, files, options)
    expect(name).toBe('Pottery studio')
    expect((await submit(client, files, options)).id).toBe(id)

    const seen: number[] = []
    const done = await waitUntilDone(client, id, { onProgress: ({ signs }) => seen.push(signs.done) })
    expect(done).toMatchObject({ state: 'done', signs: { total: 5, done: 5 } })
    expect(seen.at(-1)).toBe(5)
    expect(seen).toEqual([...seen].sort((a, b) => a - b))

    const signs: SignOfSet[] = []
    for await (const sign of signsOf(client, id)) signs.push(sign)
    expect(signs).toHaveLength(5)
    expect(signs.find(({ mark }) => mark === 'K-106')?.verdict).toBe('fail')

    const { data: archive } = await client.GET('/v1/submittals/{submittal}/evidence.zip', {
      params: { path: { submittal: id } },
      parseAs: 'arrayBuffer',
    })
    // PKWARE APPNOTE, 4.3.7: the signature of a local file header.
    expect([...new Uint8Array(archive ?? new ArrayBuffer(0)).subarray(0, 4)]).toEqual([0x50, 0x4b, 3, 4])
  })
})
