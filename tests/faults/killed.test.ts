import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { Postgres, WITHOUT_POSTGRES } from '../submittals/postgres.js'
import { startProcess, type RunningProcess } from './process.js'
import { asking, proveSubmittal } from './proof.js'
import { progressOf, send, signsNamed, untilDone } from './set.js'

/**
 * The service is killed (SIGKILL) at a random moment while 500 signs are uploaded in parts and checked. Whatever it had
 * acknowledged must then be there, be checked once, and be told of once. FAULT_ROUNDS: how often, on each store.
 */

const ROUNDS = Number(process.env.FAULT_ROUNDS ?? 2)
const SIGNS = Number(process.env.FAULT_SIGNS ?? 500)
const PARTS = 5
/** Milliseconds by which the moment of the kill is shifted at most, so that it falls anywhere in a step. */
const SHIFT = 1500
/** The share of the rounds in which the process is killed while it takes the upload, not while it checks. */
const WHILE_UPLOADING = 0.4
const LONGEST_ROUND = 300_000

let postgres: Postgres | undefined
let service: RunningProcess | undefined
const folder = mkdtempSync(join(tmpdir(), 'killed-'))
beforeAll(async () => {
  if (!WITHOUT_POSTGRES) postgres = await Postgres.make()
})
afterAll(async () => {
  await service?.end('SIGKILL')
  await postgres?.remove()
  rmSync(folder, { recursive: true, force: true })
})

interface Acknowledged {
  id: string
  marks: string[]
}

/** Sends a set in parts, until all are sent or the process is gone. */
async function upload(base: string, round: number, acknowledged: Acknowledged[]): Promise<void> {
  let known: Acknowledged | undefined
  for (let part = 0; part < PARTS; part++) {
    const signs = signsNamed(`R${round}-P${part}`, SIGNS / PARTS)
    const told = await send(base, signs, known?.id)
    if (!told) return
    expect(told.status).toBe(202)
    if (!known) acknowledged.push((known = { id: told.id ?? '', marks: [] }))
    known.marks.push(...signs.map(({ mark }) => mark))
  }
}

/** Waits for a moment anywhere on the way, however fast this machine is. */
async function untilSomewhere(base: string, acknowledged: readonly Acknowledged[]): Promise<void> {
  const uploading = Math.random() < WHILE_UPLOADING
  const aim = Math.floor(Math.random() * SIGNS)
  const isThere = async () => {
    const [first] = acknowledged
    if (!first) return false
    if (uploading) return first.marks.length >= aim
    return (await progressOf(base, first.id)).signs.done >= aim
  }
  while (aim > 0 && !(await isThere())) await wait(20)
  await wait(Math.random() * SHIFT)
}

async function round(number: number, place: { folder: string } | { url: string }): Promise<void> {
  const environment: Record<string, string> =
    'folder' in place ? { DATA_DIR: place.folder } : { DATABASE_URL: place.url }
  const acknowledged: Acknowledged[] = []
  service = await startProcess(environment)
  const uploading = upload(service.base, number, acknowledged)
  await untilSomewhere(service.base, acknowledged)
  await service.end('SIGKILL')
  await uploading
  const first = acknowledged[0]
  service = await startProcess(environment)
  if (first) {
    const { signs } = await progressOf(service.base, first.id)
    console.info(`round ${number}: killed when ${signs.total} signs were kept and ${signs.done} of them checked`)
    await untilDone(service.base, first.id, signs.total)
  }
  // Nothing that is still about may come in later and count twice.
  expect(await service.end('SIGTERM')).toBe(0)
  await asking(place, async (ask) => {
    for (const { id, marks } of acknowledged) await proveSubmittal(ask, id, marks)
    // What was kept but not acknowledged is whole too.
    for (const { id } of await ask('SELECT id FROM submittals'))
      if (!acknowledged.some((one) => one.id === id)) await proveUnacknowledged(ask, String(id))
  })
}

async function proveUnacknowledged(ask: Parameters<typeof proveSubmittal>[0], id: string): Promise<void> {
  const [submittal] = await ask(`SELECT state FROM submittals WHERE id = '${id}'`)
  if (submittal?.state === 'done') await proveSubmittal(ask, id, [])
}

describe('the service, killed while it works', () => {
  const rounds = Array.from({ length: ROUNDS }, (_, i) => i + 1)

  it.each(rounds)('loses nothing from its SQLite file, round %i', { timeout: LONGEST_ROUND }, (number) =>
    round(number, { folder }),
  )

  describe.skipIf(WITHOUT_POSTGRES)('on PostgreSQL', () => {
    let url = ''
    beforeAll(async () => {
      url = (await postgres?.database()) ?? ''
    })
    it.each(rounds)('loses nothing, round %i', { timeout: LONGEST_ROUND }, (number) => round(number, { url }))
  })
})
