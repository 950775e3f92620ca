import { spawn, type ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, afterEach, describe, expect, it } from 'vitest'
import { THEATER } from './running.js'

/** The process itself, as `npm start` runs it; `npm test` has built it. */
const MAIN = fileURLToPath(new URL('../../dist/main.js', import.meta.url))

let child: ChildProcess | undefined
const folder = mkdtempSync(join(tmpdir(), 'main-'))
afterEach(() => child?.kill('SIGKILL'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function start(environment: Record<string, string>) {
  const started = spawn(process.execPath, [MAIN], { env: { PATH: process.env.PATH, DATA_DIR: folder, ...environment } })
  child = started
  const output: string[] = []
  started.stdout.on('data', (chunk: Buffer) => output.push(chunk.toString()))
  started.stderr.on('data', (chunk: Buffer) => output.push(chunk.toString()))
  return { started, text: () => output.join('') }
}

async function addressOf(text: () => string): Promise<string> {
  for (let tries = 0; tries < 400; tries++) {
    const found = /http:\/\/127\.0\.0\.1:\d+/u.exec(text())
    if (found) return found[0]
    await new Promise((resolve) => setTimeout(resolve, 50))
  }
  throw new Error(`did not start: ${text()}`)
}

describe('the process', () => {
  it('asks for a key where it could be reached by anyone', async () => {
    const { text } = start({ HOST: '0.0.0.0', PORT: '0' })
    const base = await addressOf(text)
    expect((await fetch(`${base}/livez`)).status).toBe(200)
    expect((await fetch(`${base}/v1/standards`)).status).toBe(401)
  })

  it('serves, and finishes what runs when it is told to stop', async () => {
    const { started, text } = start({ PORT: '0' })
    const base = await addressOf(text)
    expect((await fetch(`${base}/livez`)).status).toBe(200)
    const exit = once(started, 'exit')
    const check = fetch(`${base}/v1/checks?use=gift&properNames=Secretname`, {
      method: 'POST',
      headers: { 'content-type': 'image/svg+xml', authorization: 'Bearer secretkey' },
      body: new Uint8Array(THEATER),
    })
    // Long enough to have arrived, not to be answered: a thread has to start first.
    await new Promise((resolve) => setTimeout(resolve, 50))
    started.kill('SIGTERM')
    expect((await check).status).toBe(200)
    expect(await exit).toEqual([0, null])
    const line = text()
      .split('\n')
      .find((entry) => entry.includes('"path":"/v1/checks"'))
    expect(line).toBeDefined()
    expect(JSON.parse(line ?? '')).toMatchObject({ method: 'POST', status: 200, reqId: expect.any(String) as string })
    expect(text()).not.toMatch(/secretkey|Secretname|use=gift|<svg/)
  })
})
