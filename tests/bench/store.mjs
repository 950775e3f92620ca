// Acknowledging a set of signs, against SQLite writing the same rows with nothing around it.
import BetterSqlite from 'better-sqlite3'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildService } from '../../dist/service/service.js'
import { DEFAULT_SETTINGS } from '../../dist/service/settings.js'
import { FILE_NAME } from '../../dist/submittals/store/sqlite.js'
import { ratioOf, row, timeInTurns } from './measure.mjs'

const TEXT = `A set of signs is handed in and acknowledged, which means that it is on the disk: read, validated, written with its history and its queue, in
one transaction. Held against it is SQLite alone, which writes the same rows into the same tables by prepared statements, once with a transaction
for each sign and once in a single one. The time is that of the processor, which leaves out the waiting for the disk: a set waits for it once.`

const SIGNS = 200
const sign = (i) => ({
  mark: `S-${i + 1}`,
  sign: { use: 'permanent-room', lettering: [{ text: `ROOM ${i}` }], braille: [{ text: `room ${i}` }] },
})

/** The rows of one set, by table, signs and what belongs to one of them first. */
function rowsOf(file, submittal) {
  const tables = file.prepare("select name, sql from sqlite_master where type = 'table' and sql is not null").all()
  const kept = tables.filter(({ name }) => ['submittals', 'signs', 'events', 'jobs'].includes(name))
  return kept.map(({ name }) => {
    const columns = file
      .prepare(`pragma table_info("${name}")`)
      .all()
      .map((c) => c.name)
    const own = { submittals: 'id', signs: 'submittal', events: 'submittal' }[name]
    const rows = own
      ? file.prepare(`select * from "${name}" where "${own}" = ?`).raw().all(submittal)
      : file.prepare(`select * from "${name}" order by 1 desc limit ?`).raw().all(SIGNS)
    return { name, columns, rows }
  })
}

/** An empty database with the same tables and the same promises; foreign keys rest, since rows are written again and again. */
function emptyLike(file, folder) {
  const empty = new BetterSqlite(join(folder, 'alone.sqlite'))
  empty.pragma('journal_mode = WAL')
  empty.pragma('synchronous = FULL')
  empty.pragma('foreign_keys = OFF')
  for (const { sql } of file.prepare('select sql from sqlite_master where sql is not null order by type desc').all())
    if (!sql.includes('sqlite_')) empty.exec(sql)
  return empty
}

function writerInto(alone, tables) {
  const inserts = tables.map(({ name, columns }) =>
    alone.prepare(`insert into "${name}" values (${columns.map(() => '?').join()})`),
  )
  const clear = () => tables.forEach(({ name }) => alone.exec(`delete from "${name}"`))
  const all = tables.flatMap(({ rows }, table) => rows.map((values) => ({ insert: inserts[table], values })))
  const inTransactions = (count) => {
    const size = Math.ceil(all.length / count)
    for (let from = 0; from < all.length; from += size)
      alone.transaction(() => {
        for (const { insert, values } of all.slice(from, from + size)) insert.run(...values)
      })()
  }
  return { clear, inTransactions }
}

export async function storeSection({ quick }) {
  const folder = mkdtempSync(join(tmpdir(), 'store-'))
  const app = await buildService({ ...DEFAULT_SETTINGS, logLevel: 'silent', role: 'api', place: { folder } })
  const payload = { name: 'rooms', signs: Array.from({ length: SIGNS }, (_, i) => sign(i)) }
  const handIn = async () => {
    const { statusCode, body } = await app.inject({ method: 'POST', url: '/v1/submittals', payload })
    // On a machine that others use too, the thread that reads uploads may take long to start.
    if (statusCode === 503) return handIn()
    if (statusCode !== 202) throw new Error(body)
    return JSON.parse(body).id
  }
  const first = await handIn()
  const file = new BetterSqlite(join(folder, FILE_NAME), { readonly: true })
  const tables = rowsOf(file, first)
  const alone = emptyLike(file, folder)
  const { clear, inTransactions } = writerInto(alone, tables)
  const written = async (count) => inTransactions(count)
  const times = await timeInTurns(
    {
      ours: handIn,
      'clear one': async () => clear(),
      each: () => written(SIGNS),
      'clear two': async () => clear(),
      once: () => written(1),
    },
    quick ? { rounds: 7, warmup: 3 } : { rounds: 21, warmup: 5 },
  )
  file.close()
  alone.close()
  await app.close()
  rmSync(folder, { recursive: true, force: true })
  const rate = (t) => `${((SIGNS / t.median) * 1000).toFixed(0)}/s`
  const line = (what, peer) =>
    row(what, ratioOf(times[peer], times.ours), '', `${rate(times.ours)} / ${rate(times[peer])}`)
  const rows = [
    line('signs acknowledged in a second / written by SQLite, a transaction each', 'each'),
    line('signs acknowledged in a second / written by SQLite, one transaction', 'once'),
  ]
  return { title: 'The store', text: TEXT, rows }
}
