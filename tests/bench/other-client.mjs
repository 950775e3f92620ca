// A client that asks for an ordinary check again and again, in a process of its own. Its parent gives the address, then says
// 'start' and 'stop'; it tells how long it waited for each answer in between, in milliseconds.
import { readFileSync } from 'node:fs'

const body = readFileSync(new URL('./sign.json', import.meta.url))
const PAUSE = 2
let waits = []
let base

async function ask() {
  const started = performance.now()
  const response = await fetch(`${base}/v1/checks`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body,
  })
  await response.text()
  if (response.status !== 200) throw new Error(`an ordinary check was answered with ${response.status}`)
  waits.push(performance.now() - started)
  setTimeout(() => void ask(), PAUSE)
}

process.on('message', (word) => {
  if (word === 'start') {
    waits = []
    process.send({})
  } else if (word === 'stop') process.send({ waits })
  else {
    base = word
    void ask()
    process.send({})
  }
})
