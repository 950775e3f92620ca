import { execFileSync } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { startProcess, type RunningProcess } from './process.js'
import { asking, proveSubmittal } from './proof.js'
import { send, signsNamed, untilDone } from './set.js'

/** The disk runs full under the service: a small file system in memory, mounted for the test, which only root may do. */

const folder = mkdtempSync(join(tmpdir(), 'full-'))
const mounted = mount()
if (!mounted) console.warn('a file system cannot be mounted here: the full disk is not tested')

function mount(): boolean {
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=16m', 'tmpfs', folder], { stdio: 'ignore' })
    return true
  } catch {
    return false
  }
}

let service: RunningProcess | undefined
afterAll(async () => {
  await service?.end('SIGKILL')
  if (mounted) execFileSync('umount', [folder])
  rmSync(folder, { recursive: true, force: true })
})

const BALLAST = join(folder, 'ballast')

describe.skipIf(!mounted)('a full disk', () => {
  it(
    'is told as such, leaves what was kept whole, and lets the work go on with room',
    { timeout: 300_000 },
    async () => {
      service = await startProcess({ DATA_DIR: folder })
      const { base } = service
      const first = signsNamed('A', 40)
      const id = (await send(base, first))?.id ?? ''
      fill()
      // What is being checked cannot be written; what is uploaded is refused, small or large.
      const refused = {
        status: 503,
        type: '/docs/problems/storage-full',
        retryAfter: expect.stringMatching(/^\d+$/u) as string,
      }
      const small = await send(base, signsNamed('B', 200))
      expect(small).toMatchObject(refused)
      expect(await send(base, [{ mark: 'C', drawing: largeDrawing(200_000) } as { mark: string }])).toMatchObject(
        refused,
      )
      // Reading needs no room.
      expect((await fetch(`${base}/v1/submittals/${id}`)).status).toBe(200)
      expect((await fetch(`${base}/readyz`)).status).toBe(200)
      rmSync(BALLAST)
      await untilDone(base, id, first.length)
      const second = signsNamed('D', 40)
      const other = (await send(base, second))?.id ?? ''
      await untilDone(base, other, second.length)
      const large = await send(base, [{ mark: 'E', drawing: largeDrawing(200_000) } as { mark: string }])
      expect(large?.status).toBe(202)
      await untilDone(base, large?.id ?? '', 1)
      expect(await service.end('SIGTERM')).toBe(0)
      await asking({ folder }, async (ask) => {
        await proveSubmittal(ask, id, marksOf(first))
        await proveSubmittal(ask, other, marksOf(second))
        expect(await ask(`SELECT mark FROM signs WHERE mark LIKE 'B%' OR mark = 'C'`)).toEqual([])
      })
      expect(unfinished()).toEqual([])
    },
  )
})

const marksOf = (signs: readonly { mark: string }[]): string[] => signs.map(({ mark }) => mark)

/** Takes all the room that is left, to the last block. */
function fill(): void {
  for (let size = 16 * 1024 * 1024; size >= 4096; size = size / 2)
    try {
      writeFileSync(BALLAST, Buffer.alloc(size), { flag: 'a' })
    } catch {
      // As much as there was room for has been written.
    }
}

/** Larger than is kept inside the database. */
const largeDrawing = (length: number): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="100mm" viewBox="0 0 200 100"><desc>${'x'.repeat(length)}</desc><text x="10" y="40" font-size="20" font-family="Arial">KILN</text></svg>`

function unfinished(): string[] {
  const files = join(folder, 'files')
  return existsSync(files)
    ? readdirSync(files, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.part'))
    : []
}
