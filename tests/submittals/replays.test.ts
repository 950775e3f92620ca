import { beforeEach, expect, it } from 'vitest'
import { NOBODY, type Actor, type Keeping } from '../../src/submittals/keeping.js'
import { claimKey, forgetClaims, giveBack, keepAnswer, type Claim } from '../../src/submittals/replays.js'
import { createSubmittal } from '../../src/submittals/create.js'
import { onEachStore, OTHER, receivedSigns, uploadedSign } from './on-each-store.js'

/** Keys of requests (draft-ietf-httpapi-idempotency-key-header-07) as they are kept, whatever becomes of the process that claimed. */

const ANSWER = { status: 202, headers: { location: '/v1/submittals/sub_1' }, body: '{"id":"sub_1"}' }

onEachStore('the key of a request', (kept) => {
  let keeping: Keeping
  beforeEach(() => {
    keeping = kept()
  })
  const claim = async (key: string, digest = 'one', actor: Actor = NOBODY): Promise<Claim> => {
    const claimed = await claimKey(keeping, actor, key, digest)
    if (typeof claimed === 'string' || !('claim' in claimed)) throw new Error(`not free: ${JSON.stringify(claimed)}`)
    return claimed.claim
  }
  const keep = (ours: Claim) =>
    keeping.store.db.transaction().execute((transaction) => keepAnswer(transaction, ours, ANSWER))
  /** As if it had been claimed so many seconds before. */
  const age = (seconds: number) =>
    keeping.store.db
      .updateTable('replays')
      .set({ created_at: new Date(Date.now() - seconds * 1000).toISOString() })
      .execute()

  it('is claimed by one of those who ask at the same moment', async () => {
    const all = await Promise.all(Array.from({ length: 10 }, () => claimKey(keeping, NOBODY, 'k', 'one')))
    expect(all.filter((one) => typeof one !== 'string')).toHaveLength(1)
    expect(all.filter((one) => one === 'running')).toHaveLength(9)
  })

  it('gives the answer again, to the same request only', async () => {
    expect(await keep(await claim('k'))).toBe(true)
    expect(await claimKey(keeping, NOBODY, 'k', 'one')).toEqual({ answer: ANSWER })
    expect(await claimKey(keeping, NOBODY, 'k', 'two')).toBe('reused')
  })

  it('is told apart by organisation', async () => {
    await keep(await claim('k'))
    await claim('k', 'one', OTHER)
  })

  it('is free again when nothing was created', async () => {
    await giveBack(keeping, await claim('k'))
    await claim('k', 'two')
  })

  it('is taken over from a process that is gone, and what that still tries creates nothing', async () => {
    const gone = await claim('k')
    await age(119)
    expect(await claimKey(keeping, NOBODY, 'k', 'one')).toBe('running')
    await age(121)
    // Claims are told apart by their milliseconds, and two minutes are only pretended here.
    await new Promise((resolve) => setTimeout(resolve, 5))
    const ours = await claim('k')
    await giveBack(keeping, gone)
    expect(await keep(gone)).toBe(false)
    expect(await keep(ours)).toBe(true)
    expect(await keep(ours)).toBe(false)
    expect(await claimKey(keeping, NOBODY, 'k', 'one')).toEqual({ answer: ANSWER })
  })

  it('is free at once where the only process has started anew', async () => {
    await keep(await claim('answered'))
    await claim('open')
    await forgetClaims(keeping.store.db)
    await claim('open')
    expect(await claimKey(keeping, NOBODY, 'answered', 'one')).toEqual({ answer: ANSWER })
  })

  it('can be used for another request after a day', async () => {
    await keep(await claim('k'))
    await age(24 * 3600 - 60)
    expect(await claimKey(keeping, NOBODY, 'k', 'two')).toBe('reused')
    await age(24 * 3600 + 60)
    await claim('k', 'two')
  })

  it('has its answer exactly when what it created is there', async () => {
    const given = {
      name: 'Weaving hall',
      standards: ['us-ada-2010@1'],
      options: {},
      ...receivedSigns([uploadedSign('A')]),
    }
    const ours = await claim('k')
    const stopped = createSubmittal(keeping, NOBODY, given, async (transaction) => {
      await keepAnswer(transaction, ours, ANSWER)
      throw new Error('the process stops here')
    })
    await expect(stopped).rejects.toThrow('stops here')
    const there = () => keeping.store.db.selectFrom('submittals').select('id').execute()
    expect(await there()).toEqual([])
    expect(await claimKey(keeping, NOBODY, 'k', 'one')).toBe('running')
    await createSubmittal(
      keeping,
      NOBODY,
      given,
      async (transaction) => void (await keepAnswer(transaction, ours, ANSWER)),
    )
    expect(await there()).toHaveLength(1)
    expect(await claimKey(keeping, NOBODY, 'k', 'one')).toEqual({ answer: ANSWER })
  })
})
