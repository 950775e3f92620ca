import fc from 'fast-check'
import { expect, it } from 'vitest'
import { addMeasurements, addNote, removeSign } from '../../src/submittals/changes.js'
import { addSigns, ownSubmittal } from '../../src/submittals/create.js'
import { provedHistory } from '../../src/submittals/history.js'
import { NOBODY, NotNow, type Keeping } from '../../src/submittals/keeping.js'
import { keepOutcome } from '../../src/submittals/outcome.js'
import { cancelSubmittal } from '../../src/submittals/submittals.js'
import { madeReport, onEachStore, receivedSigns, signsIn, submittalOf, uploadedSign } from './on-each-store.js'

/** Whatever is done to a submittal in whatever order, what it says of itself is what counting its signs gives. */

const RUNS = 25
const MOST_STEPS = 20

const Step = fc.record({
  kind: fc.constantFrom('check', 'check', 'check', 'add', 'remove', 'measure', 'note', 'cancel'),
  /** Which sign, and how many are added. */
  pick: fc.nat(20),
  /** At the same moment as the step before. */
  together: fc.boolean(),
})
type Step = typeof Step extends fc.Arbitrary<infer T> ? T : never

onEachStore('the counts of a submittal', (kept) => {
  it('are what counting gives, after any sequence of steps', { timeout: 300_000 }, async () => {
    const keeping = kept()
    const property = fc.asyncProperty(fc.array(Step, { minLength: 1, maxLength: MOST_STEPS }), async (steps) => {
      const id = await submittalOf(keeping, ['A', 'B', 'C'])
      let before: Promise<void> = Promise.resolve()
      for (const step of steps) {
        const now = take(keeping, id, step)
        await (step.together ? undefined : Promise.all([before, now]))
        before = Promise.all([before, now]).then(() => undefined)
      }
      await before
      await holds(keeping, id)
    })
    await fc.assert(property, { numRuns: RUNS })
  })
})

async function take(keeping: Keeping, submittal: string, { kind, pick }: Step): Promise<void> {
  const signs = await signsIn(keeping, submittal)
  const sign = signs[pick % Math.max(1, signs.length)]
  const at = { submittal, sign: sign?.id ?? '' }
  try {
    if (kind === 'add')
      return await addSigns(keeping, NOBODY, submittal, receivedSigns([uploadedSign(`N${pick}`, '<svg/>')]))
    if (kind === 'cancel') return void (pick === 0 && (await cancelSubmittal(keeping, NOBODY, submittal)))
    if (!sign) return
    if (kind === 'remove') await removeSign(keeping, NOBODY, at)
    if (kind === 'note') await addNote(keeping, NOBODY, at, 'seen', 'R')
    const measured = [{ quantity: 'braille.dotHeight' as const, values: [0.7], unit: 'mm' as const }]
    if (kind === 'measure') await addMeasurements(keeping, NOBODY, at, measured, 'R')
    const asked = { sign: sign.id, revision: sign.revision }
    if (kind === 'check') await keepOutcome(keeping, asked, { made: madeReport('chk') }, () => Promise.resolve({}))
  } catch (error) {
    // Refused: the state does not allow it, or the sign was removed at the same moment.
    if (!(error instanceof NotNow) && !(error instanceof Error && error.constructor.name === 'NotKept')) throw error
  }
}

async function holds(keeping: Keeping, id: string): Promise<void> {
  const row = await ownSubmittal(keeping, NOBODY, id)
  const signs = await signsIn(keeping, id)
  const open = signs.filter(({ state }) => state === 'queued').length
  expect([row.total, row.open]).toEqual([signs.length, open])
  if (row.state === 'cancelled') expect(open).toBe(0)
  else expect(row.state === 'done').toBe(open === 0)
  const { intact, events } = await provedHistory(keeping.store.db, row)
  expect(intact).toBe(true)
  const added = events
    .filter(({ kind }) => kind === 'submittal-created' || kind === 'signs-added')
    .reduce((sum, { data }) => sum + Number((JSON.parse(data) as { signs: number }).signs), 0)
  expect(added - events.filter(({ kind }) => kind === 'sign-removed').length).toBe(signs.length)
  const reports = await keeping.store.db
    .selectFrom('reports')
    .innerJoin('signs', 'signs.id', 'reports.sign')
    .select(['reports.sign', 'reports.revision'])
    .where('signs.submittal', '=', id)
    .execute()
  const there = new Set(signs.map((sign) => sign.id))
  const checked = events
    .filter(({ kind }) => kind === 'sign-checked')
    .map(({ data }) => JSON.parse(data) as { sign: string; revision: number })
    .filter(({ sign }) => there.has(sign))
    .map(({ sign, revision }) => `${sign}/${revision}`)
  expect(checked.sort()).toEqual(reports.map(({ sign, revision }) => `${sign}/${revision}`).sort())
}
