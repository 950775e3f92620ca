import { createHash } from 'node:crypto'
import { gunzipSync } from 'node:zlib'
import BetterSqlite from 'better-sqlite3'
import pg from 'pg'
import { expect } from 'vitest'

/**
 * Reads what is kept past the code of the service, by the drivers alone, and holds it against what may never be otherwise.
 * The chain is computed by this file's own writer of canonical JSON (RFC 8785) and SHA-256 (FIPS 180-4).
 */

export type Row = Record<string, unknown>
export type Ask = (text: string) => Promise<Row[]>

/** @param place a folder, or the address of a PostgreSQL database */
export async function asking<T>(
  place: { folder: string } | { url: string },
  use: (ask: Ask) => Promise<T>,
): Promise<T> {
  if ('folder' in place) {
    const file = new BetterSqlite(`${place.folder}/fingertrue.sqlite`, { readonly: true })
    try {
      expect(file.pragma('integrity_check', { simple: true })).toBe('ok')
      return await use((text) => Promise.resolve(file.prepare(text).all() as Row[]))
    } finally {
      file.close()
    }
  }
  const client = new pg.Client({ connectionString: place.url })
  await client.connect()
  try {
    return await use(async (text) => (await client.query<Row>(text)).rows)
  } finally {
    await client.end()
  }
}

/** RFC 8785 for what events hold. */
export function canonical(value: unknown): string {
  if (Array.isArray(value)) return '[' + value.map(canonical).join(',') + ']'
  if (typeof value !== 'object' || value === null) return JSON.stringify(value)
  const object = value as Row
  const keys = Object.keys(object).sort()
  return '{' + keys.map((key) => JSON.stringify(key) + ':' + canonical(object[key])).join(',') + '}'
}

/** Every rule that holds of a submittal whose signs have all been checked. @param marks those that were acknowledged, in any order */
export async function proveSubmittal(ask: Ask, id: string, marks: readonly string[]): Promise<void> {
  const [submittal] = await ask(`SELECT * FROM submittals WHERE id = '${id}'`)
  const signs = await ask(`SELECT * FROM signs WHERE submittal = '${id}' ORDER BY position`)
  expect(submittal, `submittal ${id} is gone`).toBeDefined()
  const kept = new Set(signs.map(({ mark }) => mark))
  expect(marks.filter((mark) => !kept.has(mark))).toEqual([])
  expect(kept.size).toBe(signs.length)
  expect(submittal).toMatchObject({ state: 'done', total: signs.length, open: 0 })
  expect(signs.map(({ position }) => position)).toEqual(signs.map((_, i) => i))
  await proveReports(ask, id, signs)
  await proveChain(ask, submittal ?? {}, signs)
  await proveFiles(ask, id)
}

/** One whole report for each sign and revision that was checked. */
async function proveReports(ask: Ask, id: string, signs: readonly Row[]): Promise<void> {
  const reports = await ask(`SELECT r.* FROM reports r JOIN signs s ON s.id = r.sign WHERE s.submittal = '${id}'`)
  const bySign = new Map(reports.map((report) => [`${String(report.sign)}/${String(report.revision)}`, report]))
  expect(bySign.size).toBe(reports.length)
  for (const sign of signs) {
    expect(sign, String(sign.mark)).toMatchObject({ state: 'done', report_revision: sign.revision, problem: null })
    const report = bySign.get(`${String(sign.id)}/${String(sign.revision)}`)
    expect(report, `no report of ${String(sign.mark)}`).toMatchObject({ id: sign.report, verdict: sign.verdict })
    const body = JSON.parse(gunzipSync(report?.body as Buffer).toString('utf8')) as Row
    expect(body).toMatchObject({ id: sign.report, verdict: sign.verdict })
    expect(gunzipSync(report?.picture as Buffer).toString('utf8')).toMatch(/<\/svg>\s*$/u)
  }
}

/** The chain is whole, and counts each sign and each check once. */
async function proveChain(ask: Ask, submittal: Row, signs: readonly Row[]): Promise<void> {
  const events = await ask(`SELECT * FROM events WHERE submittal = '${String(submittal.id)}' ORDER BY number`)
  let previous = '0'.repeat(64)
  const checked: string[] = []
  let added = 0
  for (const [i, { hash, ...event }] of events.entries()) {
    const data = JSON.parse(String(event.data)) as Row
    expect(event).toMatchObject({ number: i + 1, previous })
    expect(hash).toBe(
      createHash('sha256')
        .update(canonical({ ...event, data }))
        .digest('hex'),
    )
    previous = String(hash)
    if (event.kind === 'sign-checked') checked.push(`${String(data.sign)}/${String(data.revision)}`)
    if (event.kind === 'submittal-created' || event.kind === 'signs-added') added += Number(data.signs)
  }
  expect(submittal).toMatchObject({ event_count: events.length, event_head: previous })
  expect(new Set(checked).size).toBe(checked.length)
  const last = new Set(checked)
  expect(signs.filter((sign) => !last.has(`${String(sign.id)}/${String(sign.revision)}`))).toEqual([])
  expect(added).toBe(signs.length)
}

/** What was uploaded is there, byte for byte by its digest, where it lies in the database. */
async function proveFiles(ask: Ask, id: string): Promise<void> {
  const uploads = await ask(
    `SELECT u.digest, u.size, f.content FROM uploads u LEFT JOIN files f ON f.digest = u.digest WHERE u.submittal = '${id}'`,
  )
  expect(uploads.length).toBeGreaterThan(0)
  for (const { digest, size, content } of uploads) {
    if (content === null) continue
    expect((content as Buffer).length).toBe(size)
    expect(
      createHash('sha256')
        .update(content as Buffer)
        .digest('hex'),
    ).toBe(digest)
  }
  const drawings = await ask(
    `SELECT s.mark FROM signs s LEFT JOIN files f ON f.digest = s.drawing WHERE s.submittal = '${id}' AND s.drawing IS NOT NULL AND f.digest IS NULL`,
  )
  expect(drawings).toEqual([])
}
