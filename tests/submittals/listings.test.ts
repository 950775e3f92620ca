import { expect, it } from 'vitest'
import { createSubmittal } from '../../src/submittals/create.js'
import { NOBODY, NotKept } from '../../src/submittals/keeping.js'
import { keptSign } from '../../src/submittals/kept-sign.js'
import { keepOutcome } from '../../src/submittals/outcome.js'
import { deleteSubmittal, listSigns, listSubmittals } from '../../src/submittals/submittals.js'
import { madeReport, onEachStore, OTHER, receivedSigns, signsIn, submittalOf, uploadedSign } from './on-each-store.js'

onEachStore('the lists', (kept) => {
  it('give every submittal of the organisation once, the newest first, and none of another', async () => {
    const keeping = kept()
    const made: string[] = []
    for (let i = 0; i < 7; i++) made.unshift(await submittalOf(keeping, [`S${i}`]))
    const foreign = await submittalOf(keeping, ['X'], OTHER)
    const seen: string[] = []
    let cursor: string | undefined
    do {
      const { rows, next } = await listSubmittals(keeping, NOBODY, 3, cursor)
      seen.push(...rows.map(({ id }) => id))
      cursor = next ?? undefined
    } while (cursor)
    expect([...seen].sort()).toEqual([...made].sort())
    expect([...seen].sort().reverse()).toEqual(seen)
    expect(await listSubmittals(keeping, OTHER, 10)).toMatchObject({ rows: [{ id: foreign }], next: null })
  })

  it('give signs in the order of the upload, by page and by filter', async () => {
    const keeping = kept()
    const marks = ['a-1', 'A_2', 'b%3', 'Ä-4', 'c\\5', 'b-6']
    const signs = marks.map((mark) => uploadedSign(mark))
    const given = { name: 'x', standards: ['us-ada-2010@1'], options: {}, ...receivedSigns(signs) }
    const id = await createSubmittal(keeping, NOBODY, given)
    const rows = await signsIn(keeping, id)
    const keep = (i: number) =>
      keepOutcome(keeping, { sign: rows[i]?.id ?? '', revision: 1 }, { made: madeReport(`chk_${i}`) }, () =>
        Promise.resolve({}),
      )
    await keep(1)
    await keep(4)
    const first = await listSigns(keeping, id, 4, undefined, {})
    const second = await listSigns(keeping, id, 4, first.next ?? undefined, {})
    expect([...first.rows, ...second.rows].map(({ mark }) => mark)).toEqual(marks)
    expect(second.next).toBeNull()
    const found = async (filter: Parameters<typeof listSigns>[4]) =>
      (await listSigns(keeping, id, 10, undefined, filter)).rows.map(({ mark }) => mark)
    expect(await found({ state: 'done' })).toEqual(['A_2', 'c\\5'])
    expect(await found({ verdict: 'pass' })).toEqual(['A_2', 'c\\5'])
    expect(await found({ verdict: 'none' })).toEqual(['a-1', 'b%3', 'Ä-4', 'b-6'])
    // The signs of a pattern are letters like any other.
    expect(await found({ text: '_' })).toEqual(['A_2'])
    expect(await found({ text: '%' })).toEqual(['b%3'])
    expect(await found({ text: '\\' })).toEqual(['c\\5'])
    expect(await found({ text: 'B', state: 'queued' })).toEqual(['b%3', 'b-6'])
    // The databases know small and capital letters of English only; what is written alike is found in any case.
    expect(await found({ text: 'Ä' })).toEqual(['Ä-4'])
  })

  it('show nothing of a submittal of others, and nothing is left of one that was deleted', async () => {
    const keeping = kept()
    const id = await submittalOf(keeping, ['A'])
    const sign = (await signsIn(keeping, id))[0]?.id ?? ''
    await expect(keptSign(keeping, OTHER, id, sign)).rejects.toBeInstanceOf(NotKept)
    await expect(deleteSubmittal(keeping, OTHER, id)).rejects.toBeInstanceOf(NotKept)
    await keepOutcome(keeping, { sign, revision: 1 }, { made: madeReport('chk') }, () => Promise.resolve({}))
    await deleteSubmittal(keeping, NOBODY, id)
    for (const table of ['submittals', 'signs', 'reports', 'events', 'uploads'] as const)
      expect(await keeping.store.db.selectFrom(table).selectAll().execute()).toEqual([])
  })
})
