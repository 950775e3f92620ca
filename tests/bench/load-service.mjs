// The service as `npm start` runs it, in a process of its own, with a key for each client and without a limit of requests.
import { execFileSync, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const built = (name) => fileURLToPath(new URL(`../../dist/${name}`, import.meta.url))
const NODE = ['--disable-warning=ExperimentalWarning']
const KILOBYTE = 1024

/** @param clients names; @returns the address, a key for each client, what it uses of memory, and a way to end it */
export async function startService(clients) {
  const folder = mkdtempSync(join(tmpdir(), 'load-'))
  const env = {
    PATH: process.env.PATH,
    DATA_DIR: folder,
    AUTH: 'keys',
    RATE_LIMIT: '0',
    PORT: '0',
    LOG_LEVEL: 'info',
  }
  const keys = Object.fromEntries(
    clients.map((label) => {
      const order = [...NODE, built('keys-command.js'), 'create', '--organisation', label, '--label', label]
      const said = execFileSync(process.execPath, order, { env, stdio: ['ignore', 'pipe', 'ignore'] })
      return [label, said.toString().trim()]
    }),
  )
  const child = spawn(process.execPath, [...NODE, built('main.js')], { env, stdio: ['ignore', 'pipe', 'inherit'] })
  const faults = []
  const base = await new Promise((resolve, reject) => {
    let text = ''
    child.once('exit', () => reject(new Error(`the service did not start: ${text}`)))
    child.stdout.on('data', (chunk) => {
      for (const line of chunk.toString().split('\n')) if (/"level":(50|60)/u.test(line)) faults.push(line)
      if (text.length > 10_000) return
      text += chunk
      const found = /http:\/\/127\.0\.0\.1:\d+/u.exec(text)
      if (found) resolve(found[0])
    })
  })
  return {
    base,
    keys,
    /** Lines that its log holds of level error. */
    faults,
    /** Megabytes that are resident, as `ps` tells. */
    memory: () => Number(execFileSync('ps', ['-o', 'rss=', '-p', String(child.pid)]).toString()) / KILOBYTE,
    end: async () => {
      const gone = once(child, 'exit')
      child.kill('SIGTERM')
      await gone
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
