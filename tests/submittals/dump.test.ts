import { execFile } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { describe, expect, it } from 'vitest'
import { ownSubmittal } from '../../src/submittals/create.js'
import { provedHistory } from '../../src/submittals/history.js'
import { NOBODY } from '../../src/submittals/keeping.js'
import { BossQueue } from '../../src/submittals/queue/boss-queue.js'
import { openStore } from '../../src/submittals/store/connect.js'
import { openKept, signsIn, submittalOf } from './on-each-store.js'
import { Postgres, POSTGRES, WITHOUT_POSTGRES } from './postgres.js'

const run = promisify(execFile)

/** The commands of docs/operations.md, by PostgreSQL's own programs. */
describe.skipIf(WITHOUT_POSTGRES)('a dump of PostgreSQL', () => {
  it('put into another database holds the submittals, their files, their histories and what waits', async () => {
    const postgres = await Postgres.make()
    const folder = mkdtempSync(join(tmpdir(), 'dump-'))
    const file = join(folder, 'fingertrue.dump')
    const program = (name: string) => join(POSTGRES ?? '', name)
    try {
      const [from, to] = [await postgres.database(), await postgres.database()]
      const keeping = await openKept({ url: from })
      const id = await submittalOf(keeping, ['A', 'B', 'C'])
      await run(program('pg_dump'), ['--format=custom', `--file=${file}`, from])
      await keeping.queue.close()
      await keeping.store.close()
      await run(program('pg_restore'), ['--exit-on-error', '--no-owner', `--dbname=${to}`, file])
      const store = await openStore({ url: to }, () => undefined)
      if (!store.pool) throw new Error('no PostgreSQL')
      const queue = new BossQueue(store.pool, () => undefined)
      await queue.start()
      const restored = { store, queue, awaken: () => undefined }
      const row = await ownSubmittal(restored, NOBODY, id)
      expect(row).toMatchObject({ total: 3, open: 3 })
      expect((await provedHistory(store.db, row)).intact).toBe(true)
      const signs = await signsIn(restored, id)
      const jobs = await queue.take('checks', 10)
      expect(jobs.map(({ data }) => data.sign).sort()).toEqual(signs.map((sign) => sign.id).sort())
      await queue.close()
      await store.close()
    } finally {
      await postgres.remove()
      rmSync(folder, { recursive: true, force: true })
    }
  })
})
