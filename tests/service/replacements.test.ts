import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { Replacements } from '../../src/service/replacements.js'

/** The order of events is the whole of it; the milliseconds are invented. */
const LONGEST = 1000
let freed: string[]
let replacements: Replacements
const free = (lane: string) => replacements.free(() => freed.push(lane))
beforeEach(() => {
  vi.useFakeTimers()
  freed = []
  replacements = new Replacements(LONGEST)
})
afterEach(() => vi.useRealTimers())

it('frees a lane at once while all threads are there', () => {
  replacements.arrived()
  free('a')
  expect(freed).toEqual(['a'])
})

it('keeps the lane of a stopped thread until another is ready, and no lane but that', () => {
  replacements.lost()
  free('stopped')
  free('other')
  expect(freed).toEqual(['other'])
  replacements.arrived()
  expect(freed).toEqual(['other', 'stopped'])
  free('later')
  expect(freed).toEqual(['other', 'stopped', 'later'])
})

it('frees a lane where the thread is there before the lane is', () => {
  replacements.lost()
  replacements.arrived()
  free('a')
  expect(freed).toEqual(['a'])
})

it('frees the lanes of two stopped threads one by one', () => {
  replacements.lost()
  free('first')
  replacements.lost()
  free('second')
  replacements.arrived()
  expect(freed).toEqual(['first'])
  replacements.arrived()
  expect(freed).toEqual(['first', 'second'])
})

it('does not keep a lane for ever', () => {
  replacements.lost()
  free('a')
  vi.advanceTimersByTime(LONGEST)
  expect(freed).toEqual(['a'])
  // The thread that comes after all is in nobody's place.
  replacements.arrived()
  free('b')
  expect(freed).toEqual(['a', 'b'])
})
