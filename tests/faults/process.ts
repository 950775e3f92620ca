import { spawn, type ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { fileURLToPath } from 'node:url'
import { setTimeout as wait } from 'node:timers/promises'

/** The service as a process of its own, as `npm start` runs it, so that it can be killed, frozen and told to stop. */

const MAIN = fileURLToPath(new URL('../../dist/main.js', import.meta.url))
const TRIES = 1200

export interface RunningProcess {
  base: string
  child: ChildProcess
  /** What it wrote. */
  text: () => string
  /** Sends the signal and waits until the process is gone. @returns its exit status; null after SIGKILL */
  end: (signal: 'SIGKILL' | 'SIGTERM') => Promise<number | null>
}

/** @param environment beside PATH and a free port */
export async function startProcess(environment: Record<string, string>): Promise<RunningProcess> {
  const child = spawn(process.execPath, ['--disable-warning=ExperimentalWarning', MAIN], {
    env: { PATH: process.env.PATH, PORT: '0', LOG_LEVEL: 'info', ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let text = ''
  const keep = (chunk: Buffer) => void (text += chunk.toString())
  child.stdout.on('data', keep)
  child.stderr.on('data', keep)
  const end = async (signal: 'SIGKILL' | 'SIGTERM') => {
    if (child.exitCode === null && child.signalCode === null) {
      const exit = once(child, 'exit')
      child.kill(signal)
      await exit
    }
    return child.exitCode
  }
  for (let tries = 0; tries < TRIES && child.exitCode === null; tries++) {
    const found = /http:\/\/127\.0\.0\.1:\d+/u.exec(text)
    if (found) return { base: found[0], child, text: () => text, end }
    await wait(50)
  }
  await end('SIGKILL')
  throw new Error(`the service did not start: ${text}`)
}
