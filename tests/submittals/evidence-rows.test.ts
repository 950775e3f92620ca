import { expect, it } from 'vitest'
import { addMeasurements, addNote, removeSign } from '../../src/submittals/changes.js'
import { ownSubmittal } from '../../src/submittals/create.js'
import { evidenceRows } from '../../src/submittals/evidence-rows.js'
import { NotKept, NOBODY, type Keeping } from '../../src/submittals/keeping.js'
import { keepOutcome } from '../../src/submittals/outcome.js'
import { setEvidenceOf } from '../../src/submittals/set-evidence.js'
import { cancelSubmittal, deleteSubmittal } from '../../src/submittals/submittals.js'
import { gzipSync } from 'node:zlib'
import { sampleReport, sampleSign } from '../report/sample.js'
import { madeReport, onEachStore, signsIn, submittalOf } from './on-each-store.js'

/** All values are invented. */

const ALL = { from: 0, count: 100 }
const TODAY = '2026-11-25'

onEachStore('what evidence is made of', (kept) => {
  const evidence = async (keeping: Keeping, id: string, choice = ALL) =>
    setEvidenceOf(await evidenceRows(keeping, await ownSubmittal(keeping, NOBODY, id), choice), TODAY)

  const check = async (keeping: Keeping, sign: string, revision: number) => {
    const body = gzipSync(JSON.stringify(sampleReport(sampleSign({ mark: 'A' }))))
    const made = { ...madeReport('chk_1'), body, picture: gzipSync('<svg/>') }
    expect(await keepOutcome(keeping, { sign, revision }, { made }, () => Promise.resolve({}))).toBe(true)
  }

  it('is all of one moment: the end of the history that it names has every change that it shows', async () => {
    const keeping = kept()
    const id = await submittalOf(keeping, ['A'])
    const [a] = await signsIn(keeping, id)
    const before = await ownSubmittal(keeping, NOBODY, id)
    await addNote(keeping, NOBODY, { submittal: id, sign: a?.id ?? '' }, 'Seen twice', 'R. Ortega')
    const rows = await evidenceRows(keeping, before, ALL)
    expect(rows.notes).toHaveLength(1)
    expect(rows.submittal.event_count).toBe(before.event_count + 1)
    const { event_head } = await ownSubmittal(keeping, NOBODY, id)
    expect(rows.submittal.event_head).toBe(event_head)
    await deleteSubmittal(keeping, NOBODY, id)
    await expect(evidenceRows(keeping, before, ALL)).rejects.toThrow(NotKept)
  })

  it('tells a report that is older than the last readings', async () => {
    const keeping = kept()
    const id = await submittalOf(keeping, ['A'])
    const [a] = await signsIn(keeping, id)
    const at = { submittal: id, sign: a?.id ?? '' }
    await check(keeping, at.sign, 1)
    expect((await evidence(keeping, id)).signs[0]).not.toHaveProperty('outdated')
    await addMeasurements(
      keeping,
      NOBODY,
      at,
      [{ quantity: 'braille.dotHeight', values: [0.1], unit: 'mm' }],
      'R. Ortega',
    )
    expect((await evidence(keeping, id)).signs[0]).toMatchObject({ outdated: 'queued', report: { verdict: 'fail' } })
    await cancelSubmittal(keeping, NOBODY, id)
    expect((await evidence(keeping, id)).signs[0]).toMatchObject({ outdated: 'cancelled' })
  })

  it('says when it is of some signs only', async () => {
    const keeping = kept()
    const id = await submittalOf(keeping, ['A', 'B', 'C'])
    const [a] = await signsIn(keeping, id)
    expect(await evidence(keeping, id)).not.toHaveProperty('part')
    expect(await evidence(keeping, id, { from: 1, count: 1 })).toMatchObject({ part: { from: 1, total: 3 } })
    expect(await evidence(keeping, id, { from: 9, count: 1 })).toMatchObject({ part: { from: 9, total: 3 }, signs: [] })
    await removeSign(keeping, NOBODY, { submittal: id, sign: a?.id ?? '' })
    expect(await evidence(keeping, id, { from: 0, count: 2 })).not.toHaveProperty('part')
  })
})
