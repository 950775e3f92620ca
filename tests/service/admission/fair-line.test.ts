import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { FairLine, type Asker, type LineSettings } from '../../../src/service/admission/fair-line.js'
import { ServiceProblem } from '../../../src/service/problems.js'

/**
 * Fake work on a fake clock: nothing here takes time. The order of turns is that of round robin (Nagle, RFC 970, 1985), and whose
 * task makes room is that of longest queue drop (Suter and others, “Design considerations for supporting TCP with per-flow
 * queueing”, INFOCOM 1998). All figures are invented.
 */

const asker = (whose: string, more: Partial<Asker> = {}): Asker => ({ whose, isGone: () => false, ...more })

function made(settings: Partial<LineSettings> = {}) {
  let time = 0
  const order: string[] = []
  const refused: string[] = []
  const running: (() => void)[] = []
  const line = new FairLine({
    lanes: 1,
    mostWaiting: 100,
    longestWait: Infinity,
    slowFrom: Infinity,
    clock: () => time,
    ...settings,
  })
  /** A task that goes on until it is told to end. @param name who asks, and which of theirs it is: `a1` */
  const ask = (name: string, more: Partial<Asker> = {}) =>
    line
      .run(
        asker(name.charAt(0), more),
        () =>
          new Promise<void>((resolve) => {
            order.push(name)
            running.push(resolve)
          }),
      )
      .catch((error: unknown) => {
        if (!(error instanceof ServiceProblem)) throw error
        refused.push(name)
        return error
      })
  /** Ends what has been running for longest, after so many milliseconds. */
  const end = async (after = 10) => {
    time += after
    running.shift()?.()
    await settled()
  }
  const endAll = async (after = 10) => {
    while (running.length > 0) await end(after)
  }
  return { line, ask, end, endAll, order, refused, pass: (ms: number) => void (time += ms) }
}

const settled = () => new Promise<void>((resolve) => setImmediate(resolve))

describe('turns', () => {
  it('are taken one by one, however many tasks one asker has', async () => {
    const { ask, endAll, order } = made()
    for (const name of ['a1', 'a2', 'a3', 'a4', 'b1', 'b2', 'c1']) void ask(name)
    await settled()
    await endAll()
    expect(order).toEqual(['a1', 'a2', 'b1', 'c1', 'a3', 'b2', 'a4'])
  })

  it('are in the order of asking for one asker, and fill all lanes', async () => {
    const { ask, end, endAll, order, line } = made({ lanes: 2 })
    for (const name of ['a1', 'a2', 'a3', 'a4']) void ask(name)
    await settled()
    expect([line.running, line.waiting]).toEqual([2, 2])
    await end()
    expect([line.running, line.waiting]).toEqual([2, 1])
    await endAll()
    expect(order).toEqual(['a1', 'a2', 'a3', 'a4'])
    expect([line.running, line.waiting]).toEqual([0, 0])
  })

  it('pass over whoever is gone', async () => {
    const { ask, endAll, order, refused } = made()
    void ask('a1')
    void ask('b1', { isGone: () => true })
    void ask('c1')
    await settled()
    await endAll()
    expect([order, refused]).toEqual([['a1', 'c1'], ['b1']])
  })

  it('go on after a task that fails, whose fault goes to whoever asked', async () => {
    const { line, ask, endAll, order } = made()
    const failing = line.run(asker('f'), () => Promise.reject(new Error('broken')))
    void ask('a1')
    await expect(failing).rejects.toThrow('broken')
    await settled()
    await endAll()
    expect(order).toEqual(['a1'])
    expect(line.running).toBe(0)
  })

  it('wait until others were heard where a lane is freed later', async () => {
    const frees: (() => void)[] = []
    const { line, ask, endAll, order } = made({ after: (free) => void frees.push(free) })
    void ask('a1')
    void ask('a2')
    await settled()
    await endAll()
    expect([order, line.waiting]).toEqual([['a1'], 1])
    frees.shift()?.()
    await settled()
    expect(order).toEqual(['a1', 'a2'])
  })
})

describe('a full line', () => {
  it('refuses whoever has most in it, with a time to come back', async () => {
    const { ask, refused } = made({ mostWaiting: 3 })
    for (const name of ['a1', 'a2', 'a3', 'a4']) void ask(name)
    const refusal = await ask('a5')
    expect(refused).toEqual(['a5'])
    expect(refusal).toMatchObject({
      type: 'busy',
      headers: { 'retry-after': expect.stringMatching(/^[1-9]\d*$/u) as string },
    })
  })

  it('takes the newest task of whoever has most for one who has less', async () => {
    const { ask, endAll, order, refused } = made({ mostWaiting: 3 })
    for (const name of ['a1', 'a2', 'a3', 'a4', 'b1']) void ask(name)
    await settled()
    expect(refused).toEqual(['a4'])
    // Now one each would change nothing but whose it is.
    void ask('b2')
    await settled()
    expect(refused).toEqual(['a4', 'b2'])
    await endAll()
    expect(order).toEqual(['a1', 'a2', 'b1', 'a3'])
  })

  it('neither refuses nor drops what is patient', async () => {
    const { ask, endAll, order, refused } = made({ mostWaiting: 2, longestWait: 0 })
    const patient = { isPatient: true } as const
    for (const name of ['k1', 'k2', 'k3', 'k4', 'k5']) void ask(name, patient)
    await settled()
    void ask('a1')
    await settled()
    expect(refused).toEqual(['a1'])
    await endAll()
    expect(order).toEqual(['k1', 'k2', 'k3', 'k4', 'k5'])
  })
})

describe('the expected wait', () => {
  it('refuses what would wait too long, and says when to come back', async () => {
    const { ask, end, refused } = made({ longestWait: 5000 })
    // Now it is known that a task takes two seconds.
    const first = ask('a1')
    await settled()
    await end(2000)
    await first
    for (let i = 2; i <= 40; i++) void ask(`a${i}`)
    await settled()
    // One runs; three wait for one, three and five seconds.
    expect(refused.length).toBe(35)
    const refusal = await ask('a41')
    expect(refusal).toBeInstanceOf(ServiceProblem)
    const seconds = Number((refusal as ServiceProblem).headers['retry-after'])
    // Half of what runs and three tasks of two seconds each before it.
    expect(seconds).toBe(7)
  })

  it('is short for one who has nothing in the line, however much another has', async () => {
    const { ask, end, refused, endAll, order } = made({ longestWait: 5000, mostWaiting: 1000 })
    for (let i = 0; i < 20; i++) {
      void ask('w0')
      await settled()
      await end(1000)
    }
    for (let i = 1; i <= 50; i++) void ask(`a${i}`)
    await settled()
    expect(refused.length).toBeGreaterThan(40)
    expect(refused.every((name) => name.startsWith('a'))).toBe(true)
    void ask('b1')
    await settled()
    expect(refused).not.toContain('b1')
    await endAll(1000)
    expect(order.indexOf('b1')).toBeLessThan(order.indexOf('a3'))
  })
})

describe('a slow asker', () => {
  const slow = async () => {
    const run = made({ lanes: 2, slowFrom: 500 })
    for (let i = 0; i < 20; i++) {
      void run.ask('s0')
      await settled()
      await run.end(2000)
    }
    run.order.length = 0
    return run
  }

  it('leaves one lane to others where there are others', async () => {
    const { ask, order, line } = await slow()
    void ask('q1')
    for (const name of ['s1', 's2', 's3']) void ask(name)
    await settled()
    expect(order).toEqual(['q1', 's1'])
    void ask('q2')
    await settled()
    expect([line.running, line.waiting]).toEqual([2, 3])
  })

  it('has all of them when it is alone, or when the others are long gone', async () => {
    const { ask, endAll, order, line, pass } = await slow()
    for (const name of ['s1', 's2']) void ask(name)
    await settled()
    expect([order, line.running]).toEqual([['s1', 's2'], 2])
    await endAll()
    void ask('q1')
    await settled()
    await endAll()
    pass(3_600_000)
    for (const name of ['s3', 's4']) void ask(name)
    await settled()
    expect(line.running).toBe(2)
  })
})

it('answers everybody once, never does more at a time than it may, and comes to rest', async () => {
  const task = fc.record({ whose: fc.constantFrom('a', 'b', 'c', 'k'), takes: fc.integer({ min: 0, max: 3000 }) })
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.oneof(task, fc.constant('end' as const)), { maxLength: 60 }),
      fc.integer({ min: 1, max: 3 }),
      async (steps, lanes) => {
        const { line, ask, end, endAll, order, refused } = made({
          lanes,
          mostWaiting: 4,
          longestWait: 4000,
          slowFrom: 900,
        })
        const answers: Promise<unknown>[] = []
        for (const step of steps) {
          if (step === 'end') await end()
          else answers.push(ask(`${step.whose}${answers.length}`, step.whose === 'k' ? { isPatient: true } : {}))
          await settled()
          expect(line.running).toBeLessThanOrEqual(lanes)
        }
        await endAll(700)
        await Promise.all(answers)
        expect(new Set([...order, ...refused]).size).toBe(answers.length)
        expect(order.length + refused.length).toBe(answers.length)
        expect(refused.filter((name) => name.startsWith('k'))).toEqual([])
        expect([line.running, line.waiting]).toEqual([0, 0])
      },
    ),
    { numRuns: 60 },
  )
})
