import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { sql } from 'kysely'
import { describe, expect, it } from 'vitest'
import { troubleOf } from '../../src/submittals/store/outage.js'
import { NOBODY, type Keeping } from '../../src/submittals/keeping.js'
import { ownSubmittal } from '../../src/submittals/create.js'
import { openKept, submittalOf } from './on-each-store.js'
import { Postgres, WITHOUT_POSTGRES } from './postgres.js'

/** Codes: PostgreSQL 15 documentation, appendix A; sqlite.org/rescode.html; errno(3). */
describe('what an error means', () => {
  const withCode = (code: string) => Object.assign(new Error('x'), { code })

  it.each(['57P01', '57P02', '57P03', '08006', '08001', '53300', '25P03', '55P03', 'ECONNREFUSED', 'SQLITE_BUSY'])(
    '%s: it cannot be reached',
    (code) => expect(troubleOf(withCode(code))).toBe('unreachable'),
  )
  it.each(['53100', 'ENOSPC', 'EDQUOT', 'SQLITE_FULL'])('%s: there is no room', (code) =>
    expect(troubleOf(withCode(code))).toBe('full'),
  )
  it.each(['23505', '42P01', 'SQLITE_CONSTRAINT', 'SQLITE_CORRUPT', 'EACCES', ''])(
    '%s: a fault, not an outage',
    (code) => expect(troubleOf(withCode(code))).toBeUndefined(),
  )
  it('looks into an error that holds others', () => {
    expect(troubleOf(new AggregateError([new Error('x'), withCode('ECONNREFUSED')]))).toBe('unreachable')
    expect(troubleOf(new Error('x', { cause: withCode('ENOSPC') }))).toBe('full')
    expect(troubleOf('no error')).toBeUndefined()
  })
})

const thrownBy = async (doing: Promise<unknown>): Promise<unknown> =>
  doing.then(
    () => undefined,
    (error: unknown) => error,
  )
const manyMarks = Array.from({ length: 2000 }, (_, i) => `M-${i}`)

describe('an SQLite file that may not grow', () => {
  it('says that it is full in the middle of a transaction, keeps nothing of it, and works with room', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'quota-'))
    const keeping = await openKept({ folder })
    const { db } = keeping.store
    const first = await submittalOf(keeping, ['A'])
    const { rows } = await sql<{ page_count: number }>`PRAGMA page_count`.execute(db)
    await sql`PRAGMA max_page_count = ${sql.lit((rows[0]?.page_count ?? 0) + 20)}`.execute(db)
    expect(troubleOf(await thrownBy(submittalOf(keeping, manyMarks)))).toBe('full')
    expect(await db.selectFrom('submittals').select('id').execute()).toEqual([{ id: first }])
    expect(await db.selectFrom('jobs').select('id').execute()).toHaveLength(1)
    expect((await sql`PRAGMA integrity_check`.execute(db)).rows).toEqual([{ integrity_check: 'ok' }])
    await sql`PRAGMA max_page_count = 1000000`.execute(db)
    const id = await submittalOf(keeping, manyMarks)
    expect(await ownSubmittal(keeping, NOBODY, id)).toMatchObject({ total: manyMarks.length })
    await keeping.store.close()
    rmSync(folder, { recursive: true, force: true })
  })
})

describe.skipIf(WITHOUT_POSTGRES)('a PostgreSQL that goes away', () => {
  it('is unreachable for what runs and for what comes, and serves again when it is back', async () => {
    const postgres = await Postgres.make()
    let keeping: Keeping | undefined
    try {
      keeping = await openKept({ url: await postgres.database() })
      const { db } = keeping.store
      const broken = db.transaction().execute(async (transaction) => {
        await sql`SELECT 1`.execute(transaction)
        await postgres.stop()
        await sql`SELECT 1`.execute(transaction)
      })
      expect(troubleOf(await thrownBy(broken))).toBe('unreachable')
      expect(troubleOf(await thrownBy(submittalOf(keeping, ['A'])))).toBe('unreachable')
      await postgres.start()
      await submittalOf(keeping, ['A'])
      // A transaction whose process says nothing more is taken back, so that it holds nobody up.
      const silent = db.transaction().execute(async (transaction) => {
        await sql`SET LOCAL idle_in_transaction_session_timeout = 200`.execute(transaction)
        await transaction.updateTable('submittals').set({ name: 'held' }).execute()
        await new Promise((resolve) => setTimeout(resolve, 1000))
        await sql`SELECT 1`.execute(transaction)
      })
      expect(troubleOf(await thrownBy(silent))).toBe('unreachable')
      const [row] = await db.selectFrom('submittals').select('name').execute()
      expect(row?.name).toBe('Pottery studio')
    } finally {
      await keeping?.queue.close()
      await keeping?.store.close()
      await postgres.remove()
    }
  })
})
