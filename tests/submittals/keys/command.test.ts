import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { runKeysCommand, USAGE } from '../../../src/submittals/keys/command.js'
import { KeyRing } from '../../../src/submittals/keys/key-ring.js'
import { openStore, type Store } from '../../../src/submittals/store/connect.js'

const fail = (error: unknown): never => {
  throw error
}

describe('the command', () => {
  let store: Store
  beforeAll(async () => {
    store = await openStore(undefined, fail)
  })
  afterAll(() => store.close())
  const run = (...given: string[]) => runKeysCommand(given, store.db)
  const holder = (token: string) => new KeyRing(store.db, fail).holder(token.trim())

  it('makes a key and writes it alone to the output', async () => {
    const said = await run('create', '--organisation', 'Kiln & Wheel', '--label', 'Storefront')
    expect(said.status).toBe(0)
    expect(said.out).toMatch(/^fingertrue_\w+\n$/u)
    expect(said.error).not.toContain(said.out.trim())
    expect(await holder(said.out)).toMatchObject({ actor: { name: 'Storefront' }, scopes: ['check', 'read', 'write'] })
  })

  it('takes scopes, an end and a limit', async () => {
    const said = await run(
      ...['create', '--organisation', 'Kiln & Wheel', '--label', 'Admin', '--scopes', 'admin, check'],
      ...['--expires', '2999-12-31', '--rate', '120'],
    )
    expect(await holder(said.out)).toMatchObject({ scopes: ['check', 'admin'], rate: 120 })
  })

  it('lists keys without their secrets, and revokes one', async () => {
    const { out } = await run('create', '--organisation', 'Seed Library', '--label', 'Reader', '--scopes', 'read')
    const [, id = '', secret = ''] = /^fingertrue_(\w{12})_(\w+)/u.exec(out) ?? []
    const listed = await run('list', '--organisation', 'Seed Library')
    expect(listed.out.split('\n')[1]?.split('\t').slice(0, 4)).toEqual([id, 'Seed Library', 'Reader', 'read'])
    const all = await run('list')
    expect(all.out).toContain('Kiln & Wheel')
    expect(all.out).not.toContain(secret)
    expect((await run('revoke', id)).status).toBe(0)
    expect(await holder(out)).toBeUndefined()
    expect((await run('list', '--organisation', 'Seed Library')).out.split('\n')[1]?.split('\t')[6]).toMatch(/^2/u)
  })

  it.each([
    [['create', '--label', 'x'], '--organisation is missing'],
    [['create', '--organisation', 'x'], '--label is missing'],
    [['create', '--organisation', ' ', '--label', 'x'], '--organisation is empty'],
    [['create', '--organisation', 'x', '--label', 'Fingertrue'], '--label is the name of the service'],
    [['create', '--organisation', 'x', '--label', 'x', '--scopes', 'all'], '--scopes'],
    [['create', '--organisation', 'x', '--label', 'x', '--expires', '31.12.2027'], '--expires'],
    [['create', '--organisation', 'x', '--label', 'x', '--rate', 'many'], '--rate'],
    [['create', '--organisation', 'x', '--label', 'x', '--secret', 'x'], USAGE],
    [['list', '--organisation', 'Nobody'], 'There is no organisation “Nobody”'],
    [['revoke', 'A'.repeat(12)], 'There is no key'],
    [['revoke'], USAGE],
    [[], USAGE],
  ])('refuses %j and says why', async (given, why) => {
    const said = await run(...given)
    expect(said).toMatchObject({ status: 1, out: '' })
    expect(said.error).toContain(why)
  })
})

describe('the command as a process', () => {
  const dist = (file: string) => fileURLToPath(new URL(`../../../dist/${file}`, import.meta.url))
  const folder = mkdtempSync(join(tmpdir(), 'keys-'))
  afterAll(() => rmSync(folder, { recursive: true, force: true }))
  const start = (file: string, given: string[], environment: Record<string, string> = {}) =>
    spawn(process.execPath, [dist(file), ...given], {
      env: { PATH: process.env.PATH, DATA_DIR: folder, ...environment },
    })

  it('works while the service runs, whose next call with the key is answered', async () => {
    const service = start('main.js', [], { PORT: '0', AUTH: 'keys' })
    try {
      const base = await addressIn(service.stdout)
      const command = start('keys-command.js', ['create', '--organisation', 'Kiln & Wheel', '--label', 'x'])
      const output: Buffer[] = []
      command.stdout.on('data', (chunk: Buffer) => output.push(chunk))
      expect(await once(command, 'close')).toEqual([0, null])
      const token = Buffer.concat(output).toString().trim()
      const get = (key: string) =>
        fetch(`${base}/v1/standards`, { headers: { authorization: `Bearer ${key}` } }).then(({ status }) => status)
      expect(await get(token)).toBe(200)
      expect(await get(`${token.slice(0, -1)}${token.endsWith('0') ? '1' : '0'}`)).toBe(401)
    } finally {
      service.kill('SIGKILL')
    }
  })
})

async function addressIn(output: NodeJS.ReadableStream): Promise<string> {
  let text = ''
  for await (const chunk of output) {
    text += String(chunk)
    const found = /http:\/\/127\.0\.0\.1:\d+/u.exec(text)
    if (found) return found[0]
  }
  throw new Error(`did not start: ${text}`)
}
