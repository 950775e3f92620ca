import { setTimeout as wait } from 'node:timers/promises'
import { expect, it } from 'vitest'
import type { Keeping } from '../../src/submittals/keeping.js'
import { LEASE } from '../../src/submittals/queue/queue.js'
import { onEachStore } from './on-each-store.js'

onEachStore('the queue', (kept) => {
  const add = ({ store, queue }: Keeping, numbers: number[], after = 0) =>
    store.db.transaction().execute((t) =>
      queue.add(
        t,
        'checks',
        numbers.map((number) => ({ number })),
        after,
      ),
    )
  const takenBy = async ({ queue }: Keeping, most: number) =>
    (await queue.take('checks', most)).map(({ data }) => Number(data.number))

  it('gives each job once, the oldest first, to whoever takes', async () => {
    const keeping = kept()
    const numbers = Array.from({ length: 40 }, (_, i) => i)
    for (const number of numbers) await add(keeping, [number])
    expect(await takenBy(keeping, 1)).toEqual([0])
    const parts = await Promise.all(Array.from({ length: 8 }, () => takenBy(keeping, 6)))
    const rest = parts.flat()
    expect(new Set(rest).size).toBe(rest.length)
    const last = rest.length < 39 ? await takenBy(keeping, 40) : []
    expect([...rest, ...last].sort((a, b) => a - b)).toEqual(numbers.slice(1))
    expect(await takenBy(keeping, 5)).toEqual([])
  })

  it('has no job of a transaction that was taken back', async () => {
    const keeping = kept()
    const { store, queue } = keeping
    const fails = store.db.transaction().execute(async (t) => {
      await queue.add(t, 'checks', [{ number: 1 }])
      throw new Error('taken back')
    })
    await expect(fails).rejects.toThrow('taken back')
    expect(await takenBy(keeping, 5)).toEqual([])
  })

  it('keeps the queues apart, counts what is due, and forgets what is done', async () => {
    const keeping = kept()
    const { queue } = keeping
    await add(keeping, [1, 2])
    expect(await queue.take('notifications', 5)).toEqual([])
    expect(await queue.depth('checks')).toMatchObject({ waiting: 2 })
    const jobs = await queue.take('checks', 5)
    expect(await queue.depth('checks')).toMatchObject({ waiting: 0 })
    await queue.done(
      'checks',
      jobs.map(({ id }) => id),
    )
    expect(await takenBy(keeping, 5)).toEqual([])
  })

  it('gives a job again after its time, and says how often it was taken', async () => {
    const keeping = kept()
    const { queue } = keeping
    await add(keeping, [7])
    for (const attempt of [1, 2, 3]) {
      const [job] = await queue.take('checks', 1)
      expect(job).toMatchObject({ data: { number: 7 }, attempt })
      if (job) await queue.again('checks', job, 1)
      expect(await takenBy(keeping, 1)).toEqual([])
      await wait(1100)
    }
  })

  it('holds back what is not due', async () => {
    const keeping = kept()
    await add(keeping, [1], 1)
    expect(await takenBy(keeping, 1)).toEqual([])
    await wait(1100)
    expect(await takenBy(keeping, 1)).toEqual([1])
  })

  it(`gives a job to another when its taker is not heard of for ${LEASE} seconds`, async () => {
    const keeping = kept()
    await add(keeping, [1])
    expect(await takenBy(keeping, 1)).toEqual([1])
    await wait(2000)
    expect(await takenBy(keeping, 1)).toEqual([])
    let again: number[] = []
    for (let seconds = 0; again.length === 0 && seconds < LEASE * 2; seconds++) {
      await wait(1000)
      again = await takenBy(keeping, 1)
    }
    expect(again).toEqual([1])
  })
})
