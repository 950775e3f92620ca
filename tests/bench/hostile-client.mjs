// A client in a process of its own that posts everything hostile that we have, several files at a time and without a pause. Its
// parent sends the address and the key, and later 'stop'; it tells how often each status was answered, and what got no answer.
import { createViteServer } from 'vitest/node'

const AT_ONCE = 4

// The attacks are written in TypeScript.
const vite = await createViteServer({
  configFile: false,
  logLevel: 'error',
  server: { middlewareMode: true, ws: false },
})
const { ATTACKS } = await vite.ssrLoadModule('/tests/hostile/attacks/all.ts')
const { bytesOf } = await vite.ssrLoadModule('/tests/hostile/attacks/make.ts')
await vite.close()
const files = Object.entries(ATTACKS).map(([name, attack]) => ({ name, body: new Uint8Array(bytesOf(attack)) }))

const statuses = {}
const lost = []
let isStopped = false
let next = 0

async function post({ base, key }) {
  while (!isStopped) {
    const { name, body } = files[next++ % files.length]
    try {
      const headers = { 'content-type': 'image/svg+xml', authorization: `Bearer ${key}` }
      const response = await fetch(`${base}/v1/checks`, { method: 'POST', headers, body })
      await response.text()
      statuses[response.status] = (statuses[response.status] ?? 0) + 1
    } catch (error) {
      lost.push(`${name}: ${error.cause?.code ?? error.message}`)
    }
  }
}

let posting
process.on('message', async (message) => {
  if (message !== 'stop') posting = Promise.all(Array.from({ length: AT_ONCE }, () => post(message)))
  else {
    isStopped = true
    await posting
    process.send({ statuses, lost, files: files.length })
    process.disconnect()
  }
})
process.send('ready')
