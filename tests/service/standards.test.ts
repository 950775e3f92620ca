import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { StandardChanges, StandardList, StandardTable } from '../../src/service/standard-table.js'
import { listStandards } from '../../src/standards/catalogue.js'
import { runningService } from './running.js'

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
})
afterAll(() => app.close())

const get = (path: string) => request(app.server).get(path)

describe('the standards', () => {
  it('are listed with their digests', async () => {
    const { standards } = StandardList.parse((await get('/v1/standards').expect(200)).body)
    const told = listStandards().map(({ id, kind, jurisdiction, supersededBy, digest }) => ({
      ...{ id, kind, jurisdiction, supersededBy: supersededBy ?? null, digest },
    }))
    expect(standards).toMatchObject(told)
  })

  it('are had one by one, every row of the table, also pinned to a revision', async () => {
    for (const standard of listStandards()) {
      const table = StandardTable.parse((await get(`/v1/standards/${standard.id}`).expect(200)).body)
      expect(table.requirements.map((row) => row.requirement)).toEqual(
        standard.requirements.map((row) => row.requirement),
      )
      await get(`/v1/standards/${standard.id}@${standard.revision}`).expect(200)
      await get(`/v1/standards/${standard.id}@${standard.revision + 1}`).expect(404)
    }
  })

  it('show a limit in millimetres, from the inches that the standard prints first', async () => {
    // 2010 ADA Standards, table 703.3.1: cell to cell 0.241 in (6.1 mm) to 0.300 in (7.6 mm).
    const table = StandardTable.parse((await get('/v1/standards/us-ada-2010')).body)
    const row = table.requirements.find(({ requirement }) => requirement === 'us-ada-2010/703.3.1/cell-spacing')
    expect(row?.limit).toMatchObject({ min: 0.241 * 25.4, max: 0.3 * 25.4, unit: 'mm' })
    expect(row?.citation.document).not.toBe('')
  })

  it('say what they leave out, what must hold for a row and which clause puts it in force', async () => {
    for (const standard of listStandards()) {
      const table = StandardTable.parse((await get(`/v1/standards/${standard.id}`)).body)
      expect(table.gaps).toEqual(standard.gaps)
      expect(table.requirements.map(({ when, scopedBy }) => [when, scopedBy])).toEqual(
        standard.requirements.map(({ scope }) => [scope.when, scope.clause]),
      )
    }
  })

  it('say how they changed, up to the revision that is in force', async () => {
    for (const { id, revision } of listStandards()) {
      const { changes } = StandardChanges.parse((await get(`/v1/standards/${id}/changes`).expect(200)).body)
      expect(changes.map((change) => change.revision)).toEqual(Array.from({ length: revision }, (_, i) => i + 1))
    }
    await get('/v1/standards/none/changes').expect(404)
  })

  it('are not sent again to who has them', async () => {
    const { etag } = (await get('/v1/standards/us-ada-2010')).headers as { etag: string }
    expect((await get('/v1/standards/us-ada-2010').set('if-none-match', etag).expect(304)).text).toBe('')
    await get('/v1/standards/us-ada-2010').set('if-none-match', `"other", W/${etag}`).expect(304)
    await get('/v1/standards/us-ada-2010').set('if-none-match', '"other"').expect(200)
  })

  it('that are not there are 404', async () => {
    for (const id of ['none', '..%2f..%2fetc%2fpasswd', '__proto__', '%00'])
      await get(`/v1/standards/${id}`)
        .expect(404)
        .expect('content-type', /problem\+json/)
  })
})
