import { spawn, type ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, expect, it, vi } from 'vitest'

/** What a client can write into the log of the process: OWASP, Log Injection. The lines are JSON, one an event. */

const MAIN = fileURLToPath(new URL('../../dist/main.js', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'log-lines-'))
let log = ''
let child: ChildProcess
let port: number

beforeAll(async () => {
  const { PATH } = process.env
  const started = spawn(process.execPath, [MAIN], { env: { PATH, PORT: '0', DATA_DIR: folder } })
  child = started
  started.stdout.on('data', (chunk: Buffer) => (log += chunk.toString('utf8')))
  await vi.waitFor(() => expect(log).toContain('listening'), { timeout: 60_000 })
  port = Number(/http:\/\/127\.0\.0\.1:(\d+)/u.exec(log)?.[1])
})
afterAll(async () => {
  const ended = once(child, 'exit')
  child.kill('SIGTERM')
  await ended
  rmSync(folder, { recursive: true, force: true })
})

/** As it stands, past any client library that would mend it. @returns the answer */
const raw = (text: string) =>
  new Promise<string>((resolve, reject) => {
    const socket = connect(port, '127.0.0.1', () => socket.end(text))
    let answer = ''
    socket.on('data', (chunk) => (answer += chunk.toString('utf8')))
    socket.on('end', () => resolve(answer)).on('error', reject)
  })

const HOST = `host: localhost\r\nconnection: close\r\n`
const FORGED = '{"level":30,"msg":"forged"}'

it('is no line of its own, in whatever part of a request it stands', async () => {
  const encoded = encodeURIComponent(`\r\n${FORGED}`)
  const bare = FORGED.replaceAll('"', '%22')
  await raw(`GET /nowhere${encoded}?q=${encoded} HTTP/1.1\r\n${HOST}\r\n`)
  await raw(`GET /nowhere\n${bare} HTTP/1.1\r\n${HOST}\r\n`)
  await raw(`GET /livez HTTP/1.1\r\n${HOST}user-agent: a\u001b[2Kb\r\n\r\n`)
  await raw(`GET /livez HTTP/1.1\r\n${HOST}user-agent: ${FORGED}\r\nx-request-id: ${FORGED}\r\n\r\n`)
  await raw(`${FORGED}\r\n\r\n`)
  await expect.poll(() => log).toContain('"path":"/livez"')
  const lines = log.trimEnd().split('\n')
  const events = lines.map((line) => JSON.parse(line) as { msg?: string; path?: string })
  expect(events.filter(({ msg }) => msg === 'forged')).toEqual([])
  expect(events.filter(({ path }) => path?.startsWith('/nowhere'))).toHaveLength(1)
  // Nothing that a terminal would take for a command (ECMA-48: control characters).
  expect([...log].filter((character) => character < ' ' && character !== '\n')).toEqual([])
})

it('never gives a request its id: a client cannot take the place of another in the log', async () => {
  const answer = await raw(`GET /livez HTTP/1.1\r\n${HOST}x-request-id: 7\r\nrequest-id: 7\r\n\r\n`)
  expect(answer).toMatch(/^x-request-id: [0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}\r$/mu)
  expect(log).not.toContain('"reqId":"7"')
})
