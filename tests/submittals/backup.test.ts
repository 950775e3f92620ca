import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import BetterSqlite from 'better-sqlite3'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { createSubmittal, ownSubmittal } from '../../src/submittals/create.js'
import { provedHistory } from '../../src/submittals/history.js'
import { NOBODY, type Keeping } from '../../src/submittals/keeping.js'
import { backUp, BackupRefused, restore } from '../../src/submittals/store/backup.js'
import { openStore } from '../../src/submittals/store/connect.js'
import { InUse } from '../../src/submittals/store/sqlite.js'
import { openKept, receivedSigns, signsIn, uploadedSign } from './on-each-store.js'

const LARGE = `<svg>${'kiln '.repeat(40_000)}</svg>`

describe('a backup of the embedded store', () => {
  let root: string
  let keeping: Keeping
  let id: string
  const at = (name: string) => join(root, name)
  beforeEach(async () => {
    root = mkdtempSync(join(tmpdir(), 'backup-'))
    keeping = await openKept({ folder: at('kept') })
    id = await createSubmittal(keeping, NOBODY, {
      name: 'Pottery studio',
      standards: ['us-ada-2010@1'],
      options: {},
      ...receivedSigns([uploadedSign('small', '<svg/>'), uploadedSign('large', LARGE)]),
    })
  })
  afterEach(async () => {
    await keeping.store.close()
    rmSync(root, { recursive: true, force: true })
  })

  it('is made while the service runs, and holds everything when it is put back elsewhere', async () => {
    expect(await backUp(at('kept'), at('set.backup'))).toEqual({ submittals: 1, files: 3 })
    expect(await restore(at('other'), at('set.backup'))).toEqual({ submittals: 1, files: 3 })
    const store = await openStore({ folder: at('other') }, () => undefined)
    const row = await ownSubmittal({ ...keeping, store }, NOBODY, id)
    expect(await provedHistory(store.db, row)).toMatchObject({ intact: true, events: [{ kind: 'submittal-created' }] })
    const signs = await signsIn({ ...keeping, store }, id)
    expect(signs.map(({ mark }) => mark)).toEqual(['small', 'large'])
    const drawing = await store.files.read(signs[1]?.drawing ?? '')
    expect(Buffer.from(drawing ?? []).toString()).toBe(LARGE)
    expect(await store.db.selectFrom('jobs').select('id').execute()).toHaveLength(2)
    await store.close()
  })

  it('is one moment of the store, however much is written meanwhile', async () => {
    const writing = Array.from({ length: 20 }, (_, i) =>
      createSubmittal(keeping, NOBODY, {
        name: `Set ${i}`,
        standards: ['us-ada-2010@1'],
        options: {},
        ...receivedSigns([uploadedSign(`S${i}`, `${LARGE}${i}`)]),
      }),
    )
    const made = await backUp(at('kept'), at('busy.backup'))
    await Promise.all(writing)
    expect(made.submittals).toBeGreaterThanOrEqual(1)
    expect(await restore(at('other'), at('busy.backup'))).toEqual(made)
  })

  it('overwrites nothing, and is not put where a service runs', async () => {
    writeFileSync(at('there'), 'something')
    await expect(backUp(at('kept'), at('there'))).rejects.toBeInstanceOf(BackupRefused)
    expect(readFileSync(at('there'), 'utf8')).toBe('something')
    await expect(backUp(at('nowhere'), at('set.backup'))).rejects.toBeInstanceOf(BackupRefused)
    await backUp(at('kept'), at('set.backup'))
    await expect(restore(at('kept'), at('set.backup'))).rejects.toBeInstanceOf(InUse)
    await keeping.store.close()
    await expect(restore(at('kept'), at('set.backup'))).rejects.toBeInstanceOf(BackupRefused)
    keeping = await openAgain(at('kept'))
    expect(await ownSubmittal(keeping, NOBODY, id)).toMatchObject({ total: 2 })
  })

  it('is not put back when it is damaged, and nothing is left of the attempt', async () => {
    await backUp(at('kept'), at('set.backup'))
    const damages = [
      (file: BetterSqlite.Database) => file.exec(`UPDATE files SET content = CAST('other' AS BLOB) WHERE size = 6`),
      (file: BetterSqlite.Database) => file.exec(`UPDATE events SET actor = 'someone else'`),
      (file: BetterSqlite.Database) => file.exec(`DELETE FROM events`),
      (file: BetterSqlite.Database) => file.exec(`PRAGMA foreign_keys = OFF; DELETE FROM files WHERE size = 6`),
    ]
    for (const [i, damage] of damages.entries()) {
      const name = at(`damaged-${i}`)
      writeFileSync(name, readFileSync(at('set.backup')))
      const file = new BetterSqlite(name)
      damage(file)
      file.close()
      await expect(restore(at(`from-${i}`), name), `damage ${i}`).rejects.toBeInstanceOf(BackupRefused)
      expect(readdirSync(at(`from-${i}`)).filter((left) => left.startsWith('fingertrue'))).toEqual([])
    }
    const bytes = readFileSync(at('set.backup'))
    writeFileSync(at('cut'), bytes.subarray(0, bytes.length / 2))
    writeFileSync(at('text'), 'no database at all')
    for (const name of ['cut', 'text'])
      await expect(restore(at('from-file'), at(name)), name).rejects.toBeInstanceOf(BackupRefused)
  })

  it('is not made of a store from whose folder a file is missing', async () => {
    rmSync(at('kept/files'), { recursive: true })
    await expect(backUp(at('kept'), at('set.backup'))).rejects.toBeInstanceOf(BackupRefused)
    expect([existsSync(at('set.backup')), existsSync(at('set.backup.part'))]).toEqual([false, false])
  })
})

async function openAgain(folder: string): Promise<Keeping> {
  const store = await openStore({ folder }, () => undefined)
  const { TableQueue } = await import('../../src/submittals/queue/table-queue.js')
  return { store, queue: new TableQueue(store.db), awaken: () => undefined }
}
