import type { Settings } from '../settings.js'
import { FairLine } from './fair-line.js'

/** Tasks that may wait: a bound of memory, since they are refused for their wait long before. */
const MOST_WAITING = 2000

/**
 * The line of what takes less time than a thread would, and so is done at once: one task in each turn of the event loop, so that
 * whoever comes meanwhile is heard, and refused where the line is long, before the line is done with.
 */
export const shortLine = ({ longestShortWait }: Pick<Settings, 'longestShortWait'>): FairLine =>
  new FairLine({
    lanes: 1,
    mostWaiting: MOST_WAITING,
    longestWait: longestShortWait,
    slowFrom: Infinity,
    after: (free) => void setImmediate(free),
    clock: () => performance.now(),
  })
