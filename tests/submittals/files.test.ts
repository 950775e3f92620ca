import { createHash } from 'node:crypto'
import { mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { openStore, type Store } from '../../src/submittals/store/connect.js'
import { InUse } from '../../src/submittals/store/sqlite.js'
import { onEachStore } from './on-each-store.js'

/** Outside source of the digests: FIPS 180-4, by Node's own SHA-256; “abc” is its worked example. */
const ABC = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'

const bytes = (text: string) => new TextEncoder().encode(text)
const digestOf = (content: Uint8Array) => createHash('sha256').update(content).digest('hex')

onEachStore('files', (kept) => {
  it('are kept once by their digest, and read back to the byte', async () => {
    const { files, db } = kept().store
    const large = new Uint8Array(300_000).map((_, i) => (i * 31) % 251)
    const contents = [bytes('abc'), large, bytes('abc'), new Uint8Array(0)]
    const digests = await files.keep(contents)
    expect(digests).toEqual(contents.map(digestOf))
    expect(digests[0]).toBe(ABC)
    expect(await files.keep([bytes('abc')])).toEqual([ABC])
    for (const [i, digest] of digests.entries())
      expect(Buffer.from((await files.read(digest)) ?? []).equals(contents[i] ?? bytes('none'))).toBe(true)
    expect(await db.selectFrom('files').select('digest').execute()).toHaveLength(3)
    expect(await files.read('0'.repeat(64))).toBeUndefined()
  })

  it('may be kept by several at the same moment', async () => {
    const { files } = kept().store
    const contents = Array.from({ length: 500 }, (_, i) => bytes(`drawing ${i % 250}`))
    const all = await Promise.all([files.keep(contents), files.keep([...contents].reverse()), files.keep(contents)])
    expect(all[1]).toEqual([...(all[0] ?? [])].reverse())
  })
})

describe('the folder of the embedded store', () => {
  let folder: string
  let store: Store
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'files-'))
    store = await openStore({ folder }, () => undefined)
    return () => rmSync(folder, { recursive: true, force: true })
  })
  afterEach(() => store.close())

  it('holds large files whole under their digest, and nothing half written', async () => {
    const large = new Uint8Array(200_000).fill(7)
    const [digest = ''] = await store.files.keep([large])
    const names = readdirSync(join(folder, 'files'), { recursive: true, encoding: 'utf8' })
    const lying = names.filter((name) => statSync(join(folder, 'files', name)).isFile())
    expect(lying).toEqual([join(digest.slice(0, 2), digest.slice(2))])
    expect(Buffer.from((await store.files.read(digest)) ?? []).equals(large)).toBe(true)
  })

  it('belongs to one process', async () => {
    await expect(openStore({ folder }, () => undefined)).rejects.toBeInstanceOf(InUse)
    await store.close()
    store = await openStore({ folder }, () => undefined)
  })
})
