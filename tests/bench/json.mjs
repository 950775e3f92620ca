// Descriptions checked over HTTP, against a route that takes the same bodies and does nothing with them. Each server is a process of
// its own; the client is this one.
import autocannon from 'autocannon'
import { fork } from 'node:child_process'
import { once } from 'node:events'
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { ratioOf, row, spreadOf } from './measure.mjs'

const TEXT = `A description is checked over HTTP. *The empty route* reads and validates the same body by the same schema and answers nothing; the route
*with an answer of the same length* sends as many bytes as the report has, which are there already. Every description differs from all others by its
mark, so that no answer could be one that was kept; texts and sizes are alike, as in one shop, so that their translations are. New texts cost more. Turns of all three follow one another; what is compared is how many requests a second of the
processor is enough for, the server's own, and the server's and the client's together, which is what a round trip takes.`

const example = JSON.parse(readFileSync(new URL('./sign.json', import.meta.url), 'utf8'))
const CONNECTIONS = 8
let mark = 0
const next = () => JSON.stringify({ ...example, sign: { ...example.sign, mark: `K-${mark++}` } })

async function start(kind, length = 0) {
  const child = fork(fileURLToPath(new URL('./json-served.mjs', import.meta.url)), [kind, String(length)], {
    execArgv: [],
  })
  const [{ base }] = await once(child, 'message')
  const used = async () => {
    const told = once(child, 'message')
    child.send('used')
    return (await told)[0].used
  }
  return { base, used, end: () => child.disconnect() }
}

/** @returns microseconds of the processor for one request: of the server, and of server and client */
async function turn({ base, used }, amount) {
  const before = [await used(), process.cpuUsage()]
  const request = {
    method: 'POST',
    path: '/v1/checks',
    headers: { 'content-type': 'application/json' },
    setupRequest: (r) => ({ ...r, body: next() }),
  }
  const { non2xx, errors } = await autocannon({ url: base, connections: CONNECTIONS, amount, requests: [request] })
  if (non2xx + errors > 0) throw new Error(`${non2xx + errors} requests were not answered well`)
  const client = process.cpuUsage(before[1])
  const server = (await used()) - before[0]
  return { server: server / amount, trip: (server + client.user + client.system) / amount }
}

async function lengthOf({ base }) {
  const headers = { 'content-type': 'application/json' }
  return (await (await fetch(`${base}/v1/checks`, { method: 'POST', headers, body: next() })).text()).length
}

export async function jsonSection({ quick }) {
  const service = await start('service')
  const servers = { service, empty: await start('empty'), long: await start('long', await lengthOf(service)) }
  const amount = quick ? 600 : 1000
  const taken = { service: [], empty: [], long: [] }
  for (let round = quick ? -2 : -3; round < (quick ? 5 : 11); round++)
    for (const [name, server] of Object.entries(servers)) {
      const found = await turn(server, amount)
      if (round >= 0) taken[name].push(found)
    }
  for (const server of Object.values(servers)) server.end()
  const all = (name, of) => ({ all: taken[name].map((t) => t[of]) })
  const against = (peer, of) => ratioOf(all(peer, of), all('service', of))
  const rate = (name, of) => `${(1e6 / spreadOf(taken[name].map((t) => t[of])).median).toFixed(0)}/s`
  const line = (what, peer, of, goal) =>
    row(what, against(peer, of), goal, `${rate('service', of)} / ${rate(peer, of)}`)
  const rows = [
    line('JSON checks / the empty route, server and client', 'empty', 'trip', '>= 0.6'),
    line('JSON checks / the empty route, server alone', 'empty', 'server', ''),
    line('JSON checks / a route with an answer of the same length, server and client', 'long', 'trip', ''),
    line('JSON checks / a route with an answer of the same length, server alone', 'long', 'server', ''),
  ]
  return { title: 'Descriptions over HTTP', text: TEXT, rows }
}
