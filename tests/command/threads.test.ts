import { readFileSync } from 'node:fs'
import { afterEach, describe, expect, it } from 'vitest'
import type { Threads as OurThreads, ThreadLimits } from '../../src/command/threads.js'
import type { CheckInput } from '../../src/check.js'

/** Compiled, as threads run what is compiled. The limits are invented: far too small for any check. */
const { Threads } = (await import(new URL('../../dist/command/threads.js', import.meta.url).href)) as {
  Threads: new (count: number, limits?: ThreadLimits) => OurThreads
}

const drawing = readFileSync(new URL('../../docs/examples/exit.svg', import.meta.url))
const input = (some: Uint8Array): CheckInput => ({
  drawing: some,
  standards: ['us-ada-2010'],
  options: { use: 'exit-door', decisionRule: 'simple', unitSystem: 'printed', language: 'en' },
})

describe('the threads of the command', () => {
  let threads: OurThreads
  afterEach(() => threads.close())

  it('check a sign, redrawn where that is asked for, and go on after one that is refused', async () => {
    threads = new Threads(1)
    const refused = await threads.check({ input: input(new TextEncoder().encode('<svg')), redraw: false })
    expect(refused).toMatchObject({ problem: { title: 'The drawing cannot be read' } })
    const checked = await threads.check({ input: input(drawing), redraw: true })
    expect(checked).toMatchObject({ report: { use: 'exit-door' } })
    expect('drawing' in checked && checked.drawing).toContain('<svg')
  })

  it('give up what takes too long, and tell it of the sign', async () => {
    threads = new Threads(1, { heap: 256, time: 1 })
    const given = await threads.check({ input: input(drawing), redraw: false })
    expect(given).toEqual({
      problem: { title: expect.any(String) as string, detail: 'The check took longer than 1 milliseconds.' },
    })
  })

  it('give up what takes too much memory, and tell it of the sign', async () => {
    threads = new Threads(1, { heap: 8, time: 60_000 })
    const given = await threads.check({ input: input(drawing), redraw: false })
    expect(given).toMatchObject({ problem: { detail: 'The check needed more than 8 megabytes of memory.' } })
  })
})
