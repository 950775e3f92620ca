import { expect, it } from 'vitest'
import type { SetFinding } from '../../src/report/set/evidence.js'
import { addMeasurements, removeSign } from '../../src/submittals/changes.js'
import { createSubmittal } from '../../src/submittals/create.js'
import { whenChecked } from '../../src/submittals/ended.js'
import { provedHistory } from '../../src/submittals/history.js'
import { NOBODY, type Keeping } from '../../src/submittals/keeping.js'
import { keepOutcome } from '../../src/submittals/outcome.js'
import { cancelSubmittal } from '../../src/submittals/submittals.js'
import type { UploadedSign } from '../../src/submittals/upload.js'
import { addEndpoint } from '../../src/submittals/webhooks/endpoints.js'
import { madeReport, onEachStore, receivedSigns, signsIn } from './on-each-store.js'

/** What is found out and told when the last sign of a set has been checked. The set is invented. */

const sign = (mark: string, location: string, text: string): UploadedSign => ({
  mark,
  location,
  door: null,
  files: ['set.json'],
  sign: { use: 'permanent-room', lettering: [{ part: 'both', text }] },
})

const SET = [sign('A', 'Studio 1', 'POTTERY'), sign('B', 'Studio 1', 'GLAZING'), sign('A', 'Studio 2', 'LOOMS')]

onEachStore('the end of a submittal', (kept) => {
  const upload = (keeping: Keeping): Promise<string> =>
    createSubmittal(keeping, NOBODY, {
      name: 'Potters',
      standards: ['us-ada-2010@1'],
      options: {},
      ...receivedSigns(SET),
      upload: { signs: SET, doors: [{ door: '9', location: 'Store 9', file: 'doors.csv', row: 4 }], problems: [] },
    })
  const check = async (keeping: Keeping, submittal: string, most = Number.POSITIVE_INFINITY) => {
    for (const { id, revision, mark } of (await signsIn(keeping, submittal)).slice(0, most))
      await keepOutcome(
        keeping,
        { sign: id, revision },
        // One without a report is compared by what was said of it.
        mark === 'B' ? { problem: { title: 'no' } } : { made: { ...madeReport(`r-${id}`) } },
        (transaction, row) => whenChecked(keeping, transaction, row),
      )
  }
  const row = (keeping: Keeping, id: string) =>
    keeping.store.db.selectFrom('submittals').selectAll().where('id', '=', id).executeTakeFirstOrThrow()
  const kinds = async (keeping: Keeping, id: string) =>
    (JSON.parse((await row(keeping, id)).set_findings) as SetFinding[]).map(({ kind }) => kind)
  const told = async (keeping: Keeping) =>
    (await keeping.store.db.selectFrom('deliveries').selectAll().orderBy('id').execute()).map(
      ({ body }) => JSON.parse(body) as { type: string; data: Record<string, unknown> },
    )
  const endpoint = (keeping: Keeping) =>
    addEndpoint(keeping, NOBODY, 'https://shop.example/', null, () => Promise.resolve())

  it('comes with the last report, not before', async () => {
    const keeping = kept()
    await endpoint(keeping)
    const id = await upload(keeping)
    await check(keeping, id, 2)
    expect(await kinds(keeping, id)).toEqual([])
    expect(await told(keeping)).toEqual([])
    await check(keeping, id)
    expect(await kinds(keeping, id)).toEqual(['same-mark', 'door-without-sign'])
    expect(await told(keeping)).toMatchObject([
      {
        type: 'submittal.checked',
        data: {
          submittal: id,
          state: 'done',
          signs: { total: 3, done: 3 },
          verdicts: { pass: 2, fail: 0, undetermined: 0, notApplicable: 0, none: 1 },
        },
      },
    ])
    expect((await keeping.queue.take('notifications', 10)).length).toBe(1)
    const { events } = await provedHistory(keeping.store.db, await row(keeping, id))
    const last = events.at(-1)
    expect(last?.kind).toBe('submittal-checked')
    expect(JSON.parse(last?.data ?? '')).toMatchObject({ signs: 3, setFindings: 2 })
  })

  it('comes again when a sign that changed has its new report', async () => {
    const keeping = kept()
    await endpoint(keeping)
    const id = await upload(keeping)
    await check(keeping, id)
    const [first] = await signsIn(keeping, id)
    const measured = [{ quantity: 'braille.dotHeight' as const, values: [0.7], unit: 'mm' as const }]
    await addMeasurements(keeping, NOBODY, { submittal: id, sign: first?.id ?? '' }, measured, 'R. Ferrante')
    await check(keeping, id)
    expect(await told(keeping)).toHaveLength(2)
  })

  it('comes when the only sign that waits is taken out, and the set is compared without it', async () => {
    const keeping = kept()
    await endpoint(keeping)
    const id = await upload(keeping)
    await check(keeping, id, 2)
    const last = (await signsIn(keeping, id))[2]
    await removeSign(keeping, NOBODY, { submittal: id, sign: last?.id ?? '' })
    expect(await kinds(keeping, id)).toEqual(['door-without-sign'])
    expect(await told(keeping)).toMatchObject([{ type: 'submittal.checked', data: { signs: { total: 2, done: 2 } } }])
    expect((await row(keeping, id)).state).toBe('done')
  })

  it('comes with the cancelling, once', async () => {
    const keeping = kept()
    await endpoint(keeping)
    const id = await upload(keeping)
    await check(keeping, id, 1)
    await cancelSubmittal(keeping, NOBODY, id)
    await cancelSubmittal(keeping, NOBODY, id)
    expect(await told(keeping)).toMatchObject([
      { type: 'submittal.cancelled', data: { state: 'cancelled', signs: { total: 3, done: 1 } } },
    ])
  })
})
