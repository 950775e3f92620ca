import { setTimeout as wait } from 'node:timers/promises'
import { THEATER } from '../service/running.js'

/** Sets of invented signs, and how a client sends them and waits for them. */

/** Every so many signs is a drawing; the others are described. */
const DRAWN = 5

export interface Marked {
  mark: string
}

/** @returns signs of an invented pottery studio, each other in its mark, its number and, where it is drawn, its drawing */
export function signsNamed(prefix: string, count: number): Marked[] {
  return Array.from({ length: count }, (_, i) => {
    const mark = `${prefix}-${i + 1}`
    const described = {
      use: 'permanent-room',
      lettering: [{ text: `KILN ${i + 1}`, characterHeight: 19, relief: 0.9 }],
      braille: [{ text: `kiln ${i + 1}`, dotHeight: 0.75, cellSpacing: 6.9 }],
    }
    if (i % DRAWN !== 0) return { mark, sign: described }
    return { mark, sign: { use: 'permanent-room' }, drawing: `${THEATER.toString('utf8')}<!-- ${mark} -->` }
  })
}

/** What the client was told: kept, or why not. A client that was told nothing knows nothing. */
export interface Told {
  status: number
  id: string | undefined
  retryAfter: string | null
  type: string | undefined
}

/** How often a client comes again whom a busy service sent away, as its Retry-After says. */
const TRIES = 20

/** @param to an id: the signs are added to this submittal @returns undefined when the connection broke */
export async function send(base: string, signs: readonly Marked[], to?: string): Promise<Told | undefined> {
  for (let tries = 1; ; tries++) {
    const told = await sendOnce(base, signs, to)
    if (told?.type !== '/docs/problems/busy' || tries === TRIES) return told
    await wait(Number(told.retryAfter) * 1000)
  }
}

async function sendOnce(base: string, signs: readonly Marked[], to?: string): Promise<Told | undefined> {
  const path = to === undefined ? '/v1/submittals' : `/v1/submittals/${to}/signs`
  const body = JSON.stringify(to === undefined ? { name: 'Pottery studio', signs } : { signs })
  try {
    const answer = await fetch(base + path, { method: 'POST', headers: { 'content-type': 'application/json' }, body })
    const told = (await answer.json()) as { id?: string; type?: string }
    return { status: answer.status, id: told.id, retryAfter: answer.headers.get('retry-after'), type: told.type }
  } catch {
    return undefined
  }
}

export interface Progress {
  state: string
  signs: { total: number; done: number }
}

export async function progressOf(base: string, id: string): Promise<Progress> {
  const answer = await fetch(`${base}/v1/submittals/${id}`)
  if (answer.status !== 200) throw new Error(`${answer.status} for the progress of ${id}`)
  return (await answer.json()) as Progress
}

const LONGEST = 280_000

/** Waits until so many signs have been checked; faults of the service on the way count as nothing done. */
export async function untilDone(base: string, id: string, count: number): Promise<Progress> {
  const end = Date.now() + LONGEST
  for (;;) {
    const progress = await progressOf(base, id).catch(() => undefined)
    if (progress && progress.signs.done >= count) return progress
    if (Date.now() > end) throw new Error(`not done in time: ${JSON.stringify(progress)}`)
    await wait(200)
  }
}
