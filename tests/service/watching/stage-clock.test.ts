import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { StageClock } from '../../../src/service/watching/stage-clock.js'

/** The clock is one of ours, so that all sums can be done by hand; all figures are invented. */
let now = 0
const takes = (milliseconds: number) => void (now += milliseconds)

beforeEach(() => {
  now = 1000
  vi.spyOn(performance, 'now').mockImplementation(() => now)
  vi.spyOn(Date, 'now').mockReturnValue(501_000)
})
afterEach(() => vi.restoreAllMocks())

const BEGAN = 501_000

it('hands on what the work gives, and says when each stage began and ended', () => {
  const { watch, times } = new StageClock()
  const read = watch('read', () => {
    takes(30)
    return 'shapes'
  })
  takes(5)
  watch('recognise', () => takes(100))
  expect(read).toBe('shapes')
  expect(times()).toEqual([
    { stage: 'read', began: BEGAN, ended: BEGAN + 30, spent: 30 },
    { stage: 'recognise', began: BEGAN + 35, ended: BEGAN + 135, spent: 100 },
  ])
})

it('counts what is measured while it is judged to the measuring alone, however deep and often', () => {
  const { watch, times } = new StageClock()
  watch('judge', () => {
    takes(1)
    watch('measure', () => {
      takes(10)
      watch('read', () => takes(4))
    })
    takes(2)
    watch('measure', () => takes(20))
    takes(3)
  })
  const spent = Object.fromEntries(times().map((time) => [time.stage, time.spent]))
  expect(spent).toEqual({ judge: 6, measure: 30, read: 4 })
  const measure = times().find(({ stage }) => stage === 'measure')
  expect(measure).toMatchObject({ began: BEGAN + 1, ended: BEGAN + 37 })
})

it('counts work that throws, and is not out of step afterwards', () => {
  const { watch, times } = new StageClock()
  const failing = () =>
    watch('judge', () =>
      watch('measure', () => {
        takes(7)
        throw new RangeError('not defined')
      }),
    )
  expect(failing).toThrow('not defined')
  watch('report', () => takes(2))
  expect(times().map(({ stage, spent }) => [stage, spent])).toEqual([
    ['measure', 7],
    ['judge', 0],
    ['report', 2],
  ])
})
