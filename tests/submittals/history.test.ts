import { createHash } from 'node:crypto'
import { sql } from 'kysely'
import { expect, it } from 'vitest'
import { addNote, addWaiver } from '../../src/submittals/changes.js'
import { ownSubmittal } from '../../src/submittals/create.js'
import { append, provedHistory, takeSubmittal } from '../../src/submittals/history.js'
import { NOBODY, type Keeping } from '../../src/submittals/keeping.js'
import { canonical } from '../faults/proof.js'
import { onEachStore, signsIn, submittalOf } from './on-each-store.js'

/** Outside sources: FIPS 180-4 (SHA-256) and RFC 8785, each computed here by other code than the service's own. */

onEachStore('the history', (kept) => {
  async function withEvents(keeping: Keeping): Promise<string> {
    const id = await submittalOf(keeping, ['A', 'B'])
    const [sign] = await signsIn(keeping, id)
    const at = { submittal: id, sign: sign?.id ?? '' }
    await addNote(keeping, NOBODY, at, 'Größe geprüft, “sehr gut” \u2028 \u{1F58C}', 'R. Ferrante')
    const reason = 'No wall at the latch.'
    const waiver = { fingerprint: 'f', reason, author: 'R', authority: 'Variance 1', expires: null }
    await addWaiver(keeping, NOBODY, at, waiver)
    return id
  }

  const prove = async (keeping: Keeping, id: string) =>
    provedHistory(keeping.store.db, await ownSubmittal(keeping, NOBODY, id))

  it('is proved to its end however long it is, and lacks no event unseen', async () => {
    const keeping = kept()
    const id = await submittalOf(keeping, ['A'])
    await keeping.store.db.transaction().execute(async (transaction) => {
      const head = await takeSubmittal(transaction, id)
      const notes = Array.from({ length: 1202 }, (_, i) => ({ kind: 'note-added' as const, data: { note: i } }))
      if (head)
        for (let i = 0; i < notes.length; i += 200) await append(transaction, head, 'R', notes.slice(i, i + 200))
    })
    const whole = await prove(keeping, id)
    expect([whole.intact, whole.events.length, whole.events.at(-1)?.number]).toEqual([true, 1203, 1203])
    const { db } = keeping.store
    await db.deleteFrom('events').where('submittal', '=', id).where('number', '=', 700).execute()
    expect(await prove(keeping, id)).toMatchObject({ intact: false, brokenAt: 700 })
    await db.deleteFrom('events').where('submittal', '=', id).where('number', '>=', 700).execute()
    expect(await prove(keeping, id)).toMatchObject({ intact: false, brokenAt: 700 })
  })

  it('can be computed anew from what it shows', async () => {
    const keeping = kept()
    const id = await withEvents(keeping)
    const { events, intact, brokenAt, head } = await prove(keeping, id)
    expect([intact, brokenAt, events.length]).toEqual([true, null, 3])
    let previous = '0'.repeat(64)
    for (const { hash, ...event } of events) {
      const text = canonical({ ...event, data: JSON.parse(event.data) as unknown, previous })
      previous = createHash('sha256').update(text).digest('hex')
      expect(hash).toBe(previous)
    }
    expect(head).toBe(previous)
  })

  it('shows the change of any character of any column of any event', async () => {
    const keeping = kept()
    const id = await withEvents(keeping)
    const { events } = await prove(keeping, id)
    for (const event of events)
      for (const column of ['at', 'actor', 'kind', 'data', 'previous', 'hash'] as const)
        for (let i = 0; i < event[column].length; i += column === 'data' ? 1 : 7) {
          const was = event[column]
          const changed = was.slice(0, i) + (was[i] === 'x' ? 'y' : 'x') + was.slice(i + 1)
          await put(keeping, event, column, changed)
          const proof = await prove(keeping, id)
          expect([column, i, proof.intact, proof.brokenAt]).toEqual([column, i, false, event.number])
          await put(keeping, event, column, was)
        }
    expect((await prove(keeping, id)).intact).toBe(true)
  })

  it('shows data that say the same in other bytes', async () => {
    const keeping = kept()
    const id = await withEvents(keeping)
    const [event] = (await prove(keeping, id)).events
    if (!event) throw new Error('no event')
    await put(keeping, event, 'data', event.data.replace('{', '{ '))
    expect(await prove(keeping, id)).toMatchObject({ intact: false, brokenAt: 1 })
  })

  it('shows an event that is gone, one that moved, and a cut end', async () => {
    const keeping = kept()
    const { db } = keeping.store
    const id = await withEvents(keeping)
    await db.updateTable('events').set({ number: 9 }).where('submittal', '=', id).where('number', '=', 2).execute()
    expect(await prove(keeping, id)).toMatchObject({ intact: false, brokenAt: 2 })
    await db.updateTable('events').set({ number: 2 }).where('submittal', '=', id).where('number', '=', 9).execute()
    expect(await prove(keeping, id)).toMatchObject({ intact: true })
    await db.deleteFrom('events').where('submittal', '=', id).where('number', '=', 3).execute()
    expect(await prove(keeping, id)).toMatchObject({ intact: false, brokenAt: 3 })
  })
})

async function put(
  { store }: Keeping,
  { submittal, number }: { submittal: string; number: number },
  column: string,
  value: string,
) {
  await sql`UPDATE events SET ${sql.ref(column)} = ${value} WHERE submittal = ${submittal} AND number = ${number}`.execute(
    store.db,
  )
}
