import { expect, it } from 'vitest'
import { addMeasurements } from '../../src/submittals/changes.js'
import { ownSubmittal } from '../../src/submittals/create.js'
import { provedHistory } from '../../src/submittals/history.js'
import { NOBODY, type Keeping } from '../../src/submittals/keeping.js'
import { keepOutcome, type Outcome } from '../../src/submittals/outcome.js'
import { cancelSubmittal, deleteSubmittal } from '../../src/submittals/submittals.js'
import { madeReport, onEachStore, signsIn, submittalOf } from './on-each-store.js'

onEachStore('the outcome of a check', (kept) => {
  const keep = (keeping: Keeping, sign: string, revision: number, outcome: Outcome) =>
    keepOutcome(keeping, { sign, revision }, outcome, () => Promise.resolve({}))
  const made = (id: string): Outcome => ({ made: madeReport(id) })
  const kindsOf = async (keeping: Keeping, id: string) => {
    const { events, intact } = await provedHistory(keeping.store.db, await ownSubmittal(keeping, NOBODY, id))
    expect(intact).toBe(true)
    return events.map(({ kind }) => kind)
  }
  const reportsOf = ({ store }: Keeping, sign: string) =>
    store.db.selectFrom('reports').select(['revision', 'id']).where('sign', '=', sign).orderBy('revision').execute()

  it('is kept once, however many processes come with it at the same moment', async () => {
    const keeping = kept()
    const id = await submittalOf(keeping, ['A', 'B'])
    const [a, b] = await signsIn(keeping, id)
    const all = await Promise.all([1, 2, 3, 4].map((n) => keep(keeping, a?.id ?? '', 1, made(`chk_${n}`))))
    expect(all.filter((was) => was)).toHaveLength(1)
    expect(await reportsOf(keeping, a?.id ?? '')).toHaveLength(1)
    expect(await ownSubmittal(keeping, NOBODY, id)).toMatchObject({ total: 2, open: 1, state: 'running' })
    expect(await keep(keeping, b?.id ?? '', 1, { problem: { type: '/docs/problems/too-complex' } })).toBe(true)
    expect(await keep(keeping, b?.id ?? '', 1, made('chk_late'))).toBe(false)
    expect(await ownSubmittal(keeping, NOBODY, id)).toMatchObject({ open: 0, state: 'done' })
    expect(await kindsOf(keeping, id)).toEqual([
      'submittal-created',
      'sign-checked',
      'sign-not-checked',
      'submittal-checked',
    ])
  })

  it('is nothing when the sign has changed since, and the earlier report stays beside the new one', async () => {
    const keeping = kept()
    const id = await submittalOf(keeping, ['A'])
    const sign = (await signsIn(keeping, id))[0]?.id ?? ''
    expect(await keep(keeping, sign, 1, made('chk_1'))).toBe(true)
    const measured = [{ quantity: 'braille.dotHeight' as const, values: [0.7], unit: 'mm' as const }]
    await addMeasurements(keeping, NOBODY, { submittal: id, sign }, measured, 'R')
    await addMeasurements(keeping, NOBODY, { submittal: id, sign }, measured, 'R')
    expect(await ownSubmittal(keeping, NOBODY, id)).toMatchObject({ open: 1, state: 'running' })
    expect(await keep(keeping, sign, 2, made('chk_2'))).toBe(false)
    expect(await keep(keeping, sign, 3, made('chk_3'))).toBe(true)
    expect(await reportsOf(keeping, sign)).toEqual([
      { revision: 1, id: 'chk_1' },
      { revision: 3, id: 'chk_3' },
    ])
    expect((await signsIn(keeping, id))[0]).toMatchObject({ report: 'chk_3', report_revision: 3, revision: 3 })
  })

  it('is nothing when the submittal was cancelled or deleted', async () => {
    const keeping = kept()
    const id = await submittalOf(keeping, ['A', 'B'])
    const sign = (await signsIn(keeping, id))[0]?.id ?? ''
    await cancelSubmittal(keeping, NOBODY, id)
    expect(await keep(keeping, sign, 1, made('chk_1'))).toBe(false)
    expect(await reportsOf(keeping, sign)).toEqual([])
    await deleteSubmittal(keeping, NOBODY, id)
    expect(await keep(keeping, sign, 1, made('chk_1'))).toBe(false)
  })

  it('is taken back as a whole when what goes with it fails', async () => {
    const keeping = kept()
    const id = await submittalOf(keeping, ['A'])
    const sign = (await signsIn(keeping, id))[0]?.id ?? ''
    const fails = keepOutcome(keeping, { sign, revision: 1 }, made('chk_1'), () => Promise.reject(new Error('no')))
    await expect(fails).rejects.toThrow('no')
    expect(await reportsOf(keeping, sign)).toEqual([])
    expect(await ownSubmittal(keeping, NOBODY, id)).toMatchObject({ open: 1, state: 'queued', event_count: 1 })
  })
})
