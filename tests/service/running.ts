import { readFileSync } from 'node:fs'
import type { FastifyInstance } from 'fastify'
import { createTranslator } from '../../src/braille/engine.js'
import { buildService, type Dependencies } from '../../src/service/service.js'
import { DEFAULT_SETTINGS, type Settings } from '../../src/service/settings.js'

/** The compiled worker: `npm test` builds before it tests. */
export const WORKER = new URL('../../dist/service/worker.js', import.meta.url)

/** A service that does not listen, with as few threads as will do. The time is long, because tests share the machine. */
export const runningService = (
  settings: Partial<Settings> = {},
  open?: Dependencies['open'],
): Promise<FastifyInstance> =>
  buildService(
    {
      ...DEFAULT_SETTINGS,
      logLevel: 'silent',
      worker: WORKER,
      threads: 1,
      timeLimit: 20_000,
      // Tests share the machine: none of them is to be turned away because others are at work.
      longestWait: 600_000,
      longestShortWait: 600_000,
      loopDelayLimit: 600_000,
      ...settings,
    },
    { translator: createTranslator(), ...(open && { open }) },
  )

/** A sign of one room drawn at true scale: THEATER B as live text, theater B in contracted braille. Our own drawing. */
export const THEATER = readFileSync(new URL('../drawings/svg/hand-text-tspans.svg', import.meta.url))
export const THEATER_CELLS = '⠮⠁⠞⠻⠀⠰⠠⠃'

/** What supertest parsed, as plain data. */
export interface ProblemAnswer {
  type: string
  status: number
  detail: string
  errors?: { detail: string; pointer?: string; parameter?: string; line?: number; column?: number }[]
  limit?: number
  actual?: number
}
