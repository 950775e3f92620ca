import { existsSync, mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { addNote } from '../../src/submittals/changes.js'
import { createSubmittal } from '../../src/submittals/create.js'
import { NOBODY, type Keeping } from '../../src/submittals/keeping.js'
import { cancelSubmittal, deleteSubmittal } from '../../src/submittals/submittals.js'
import { sweep } from '../../src/submittals/retention.js'
import { onEachStore, openKept, receivedSigns, signsIn, submittalOf, uploadedSign } from './on-each-store.js'

const inDays = (days: number): Date => new Date(Date.now() + days * 24 * 3_600_000)

const drawn = (keeping: Keeping, mark: string, drawing: string) =>
  createSubmittal(keeping, NOBODY, {
    name: mark,
    standards: ['us-ada-2010@1'],
    options: {},
    ...receivedSigns([uploadedSign(mark, drawing)]),
  })

onEachStore('retention', (kept) => {
  const ids = async ({ store }: Keeping) =>
    (await store.db.selectFrom('submittals').select('id').execute()).map(({ id }) => id)
  const files = async ({ store }: Keeping) => (await store.db.selectFrom('files').select('digest').execute()).length

  it('keeps everything where nothing is said, but content that nothing refers to', async () => {
    const keeping = kept()
    const id = await drawn(keeping, 'A', '<svg>a</svg>')
    await keeping.store.files.keep([new TextEncoder().encode('never referred to')])
    expect(await sweep(keeping.store, {}, new Date())).toEqual({ submittals: 0, uploads: 0, files: 0 })
    expect(await sweep(keeping.store, {}, inDays(1000))).toEqual({ submittals: 0, uploads: 0, files: 1 })
    expect(await ids(keeping)).toEqual([id])
    expect(await files(keeping)).toBe(2)
  })

  it('deletes what was last changed long ago, not what waits and not what others share', async () => {
    const keeping = kept()
    const [old, waits] = [
      await drawn(keeping, 'A', '<svg>shared</svg>'),
      await drawn(keeping, 'B', '<svg>shared</svg>'),
    ]
    await cancelSubmittal(keeping, NOBODY, old)
    expect(await sweep(keeping.store, { submittals: 30 }, inDays(29))).toMatchObject({ submittals: 0 })
    expect(await sweep(keeping.store, { submittals: 30 }, inDays(31))).toMatchObject({ submittals: 1, files: 1 })
    expect(await ids(keeping)).toEqual([waits])
    const drawing = (await signsIn(keeping, waits))[0]?.drawing ?? ''
    expect(Buffer.from((await keeping.store.files.read(drawing)) ?? []).toString()).toBe('<svg>shared</svg>')
  })

  it('counts from the last change', async () => {
    const keeping = kept()
    const id = await submittalOf(keeping, ['A'])
    await cancelSubmittal(keeping, NOBODY, id)
    const long = '2020-01-01T00:00:00.000Z'
    await keeping.store.db.updateTable('submittals').set({ updated_at: long }).execute()
    const sign = (await signsIn(keeping, id))[0]?.id ?? ''
    await addNote(keeping, NOBODY, { submittal: id, sign }, 'seen again', 'R')
    expect(await sweep(keeping.store, { submittals: 30 }, new Date())).toMatchObject({ submittals: 0 })
    await keeping.store.db.updateTable('submittals').set({ updated_at: long }).execute()
    expect(await sweep(keeping.store, { submittals: 30 }, new Date())).toMatchObject({ submittals: 1 })
  })

  it('may drop the files as they came, and keeps the drawings that reports were made of', async () => {
    const keeping = kept()
    const id = await drawn(keeping, 'A', '<svg>a</svg>')
    expect(await sweep(keeping.store, { uploads: 7 }, inDays(8))).toEqual({ submittals: 0, uploads: 1, files: 1 })
    const drawing = (await signsIn(keeping, id))[0]?.drawing ?? ''
    expect(await keeping.store.files.read(drawing)).toBeDefined()
  })

  it('is done by one process at a time, and sweeps many files', async () => {
    const keeping = kept()
    const contents = Array.from({ length: 450 }, (_, i) => new TextEncoder().encode(`unreferenced ${i}`))
    await keeping.store.files.keep(contents)
    const swept = await Promise.all([sweep(keeping.store, {}, inDays(2)), sweep(keeping.store, {}, inDays(2))])
    expect(swept.reduce((sum, one) => sum + (one?.files ?? 0), 0)).toBe(contents.length)
    expect(await files(keeping)).toBe(0)
  })
})

describe('the folder of files', () => {
  it('loses what the database does not know and what was left half written, once it is old', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'swept-'))
    const keeping = await openKept({ folder })
    const large = 'x'.repeat(100_000)
    const id = await drawn(keeping, 'A', large)
    const drawing = (await signsIn(keeping, id))[0]?.drawing ?? ''
    const lost = [join(folder, 'files', 'ab', 'c'.repeat(62)), join(folder, 'files', 'ab', `${'d'.repeat(62)}.1.part`)]
    mkdirSync(join(folder, 'files', 'ab'), { recursive: true })
    for (const path of lost) writeFileSync(path, 'left')
    expect(await sweep(keeping.store, {}, new Date())).toMatchObject({ files: 0 })
    const old = new Date(Date.now() - 48 * 3_600_000)
    for (const path of [...lost, join(folder, 'files', drawing.slice(0, 2), drawing.slice(2))])
      utimesSync(path, old, old)
    expect(await sweep(keeping.store, {}, new Date())).toMatchObject({ files: 2 })
    expect(lost.map((path) => existsSync(path))).toEqual([false, false])
    expect((await keeping.store.files.read(drawing))?.length).toBe(large.length)
    // With its submittal the drawing goes too: first its row, then what lies on the disk.
    await deleteSubmittal(keeping, NOBODY, id)
    await sweep(keeping.store, {}, inDays(2))
    expect(existsSync(join(folder, 'files', drawing.slice(0, 2), drawing.slice(2)))).toBe(false)
    await keeping.store.close()
    rmSync(folder, { recursive: true, force: true })
  })
})
