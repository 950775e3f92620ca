import { execFile, spawn, type ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { createServer, type AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { promisify } from 'node:util'
import pg from 'pg'

/** A PostgreSQL of the tests' own: a new cluster in a temporary folder, on a free port of the loopback address. */

const run = promisify(execFile)

const DEBIAN = '/usr/lib/postgresql'

const PROGRAMS = ['initdb', 'postgres', 'pg_dump', 'pg_restore']

/** The folder of its programs, or undefined where there is none. */
export const POSTGRES: string | undefined = [
  ...(existsSync(DEBIAN) ? readdirSync(DEBIAN).map((version) => join(DEBIAN, version, 'bin')) : []),
  ...(process.env.PATH ?? '').split(delimiter),
].find((folder) => PROGRAMS.every((program) => existsSync(join(folder, program))))

/** In CI there is no leaving it out: the tests fail where PostgreSQL is missing. */
export const WITHOUT_POSTGRES = POSTGRES === undefined && !process.env.CI
if (WITHOUT_POSTGRES) console.warn('PostgreSQL is not installed: what is kept in it is not tested')

const USER = 'keeper'
const TRIES = 300

export class Postgres {
  private server: ChildProcess | undefined
  private databases = 0

  private constructor(
    private readonly folder: string,
    private readonly port: number,
  ) {}

  /** @throws when PostgreSQL is not installed or does not start */
  static async make(): Promise<Postgres> {
    if (POSTGRES === undefined) throw new Error('PostgreSQL is not installed; these tests need its server')
    const folder = mkdtempSync(join(tmpdir(), 'postgres-of-tests-'))
    // It refuses to run as root.
    const { uid, gid } = await owner()
    if (uid !== undefined && gid !== undefined) chownSync(folder, uid, gid)
    const options = ['--auth=trust', `--username=${USER}`, '--encoding=UTF8', '--no-locale', '--no-sync']
    await run(join(POSTGRES, 'initdb'), ['-D', join(folder, 'data'), ...options], { uid, gid, cwd: folder })
    const made = new Postgres(folder, await freePort())
    await made.start()
    return made
  }

  async start(): Promise<void> {
    const { uid, gid } = await owner()
    const options = {
      port: this.port,
      listen_addresses: '127.0.0.1',
      unix_socket_directories: '',
      max_connections: 100,
    }
    const settings = Object.entries(options).flatMap(([name, value]) => ['-c', `${name}=${value}`])
    const parameters = ['-D', join(this.folder, 'data'), ...settings]
    this.server = spawn(join(POSTGRES ?? '', 'postgres'), parameters, { uid, gid, cwd: this.folder, stdio: 'ignore' })
    for (let tries = 0; tries < TRIES; tries++) {
      if (await this.answers()) return
      await wait(100)
    }
    throw new Error('PostgreSQL did not start')
  }

  /** `SIGINT`: as an operator stops it, connections are broken off. `SIGQUIT`: as if it had crashed. */
  async stop(signal: 'SIGINT' | 'SIGQUIT' = 'SIGINT'): Promise<void> {
    const { server } = this
    if (server?.exitCode !== null) return
    const ended = once(server, 'exit')
    server.kill(signal)
    await ended
  }

  async remove(): Promise<void> {
    await this.stop()
    rmSync(this.folder, { recursive: true, force: true })
  }

  /** A new, empty database. @returns its address */
  async database(): Promise<string> {
    const name = `tests_${++this.databases}`
    await this.ask(this.addressOf('postgres'), `CREATE DATABASE ${name}`)
    return this.addressOf(name)
  }

  private addressOf(database: string): string {
    return `postgres://${USER}@127.0.0.1:${this.port}/${database}`
  }

  private async ask(address: string, text: string): Promise<void> {
    const client = new pg.Client({ connectionString: address })
    await client.connect()
    await client.query(text)
    await client.end()
  }

  private answers(): Promise<boolean> {
    return this.ask(this.addressOf('postgres'), 'SELECT 1').then(
      () => true,
      () => false,
    )
  }
}

/** Root runs it as the user that the package made for it. */
async function owner(): Promise<{ uid?: number; gid?: number }> {
  if (process.getuid?.() !== 0) return {}
  const [uid, gid] = await Promise.all(
    ['-u', '-g'].map(async (of) => Number((await run('id', [of, 'postgres'])).stdout)),
  )
  return { uid, gid }
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1')
  await once(server, 'listening')
  const { port } = server.address() as AddressInfo
  server.close()
  return port
}
