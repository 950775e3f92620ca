import { execFile, spawn, type ChildProcess } from 'node:child_process'
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'
import type { FastifyInstance } from 'fastify'
import type { Log } from 'sarif'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { runningService } from '../service/running.js'

/** The examples of docs/clients.md, each run as a user would. The signs are the invented ones of docs/examples. */

const path = (name: string) => fileURLToPath(new URL(`../../docs/examples/${name}`, import.meta.url))
const COMMAND = fileURLToPath(new URL('../../dist/fingertrue.js', import.meta.url))

const isThere = (program: string) =>
  (process.env.PATH ?? '').split(delimiter).some((folder) => existsSync(join(folder, program)))
const skipped = (program: string): boolean => {
  const skip = !isThere(program) && !process.env.CI
  if (skip) console.warn(`${program} is not there: its example is not run`)
  return skip
}

let app: FastifyInstance
let folder: string
let base: string
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'examples-'))
  app = await runningService()
  await app.listen({ host: '127.0.0.1', port: 0 })
  base = `http://127.0.0.1:${(app.server.address() as AddressInfo).port}`
})
afterAll(async () => {
  await app.close()
  rmSync(folder, { recursive: true })
})

interface Ended {
  status: number
  out: string
  error: string
}

const run = (program: string, args: string[], env: NodeJS.ProcessEnv = {}): Promise<Ended> =>
  new Promise((resolve) => {
    execFile(program, args, { cwd: folder, env: { ...process.env, ...env } }, (error, out, err) =>
      resolve({ status: error ? Number(error.code) : 0, out, error: err }),
    )
  })

describe('the storefront', () => {
  let shop: ChildProcess
  let orders: string
  beforeAll(async () => {
    shop = spawn(process.execPath, [path('storefront.mjs'), base], { stdio: ['ignore', 'pipe', 'inherit'] })
    if (!shop.stdout) throw new Error('the shop says nothing')
    for await (const line of createInterface(shop.stdout)) {
      orders = line.replace('Orders: ', '')
      break
    }
  })
  afterAll(() => shop.kill())

  const order = async (drawing: string | Uint8Array, use = 'permanent-room') => {
    const answer = await fetch(`${orders}?use=${use}`, { method: 'POST', body: drawing })
    return { status: answer.status, body: (await answer.json()) as Record<string, unknown> }
  }

  it('sends a design back that fails, with the change for each clause', async () => {
    const { status, body } = await order(readFileSync(path('glaze-lab.svg')))
    expect(status).toBe(422)
    expect(body.order).toBe('refused')
    // 2010 ADA Standards, 703.3.1; its cells stand 5.6 mm apart.
    expect(body.changes).toContainEqual(
      expect.objectContaining({
        clause: '703.3.1',
        change: expect.stringMatching(/cell spacing to 6\.9 mm/) as string,
      }),
    )
  })

  it('takes a design whose drawing passes, and lets one that cannot be decided wait with what is open', async () => {
    const drawing = readFileSync(path('kiln-room.svg'), 'utf8')
    expect(await order(drawing)).toMatchObject({ status: 201, body: { order: 'taken' } })
    // What is in a picture is not looked at, and what it hides is never taken for a pass: docs/drawings.md.
    const picture = '<image x="10" y="10" width="60" height="30" href="data:image/png;base64,iVBORw0KGgo="/>'
    const { status, body } = await order(drawing.replace('</svg>', `${picture}</svg>`))
    expect(status).toBe(202)
    expect(body.open).not.toEqual([])
  })

  it('tells the customer what is wrong with a file, and does not take what could not be checked', async () => {
    const broken = await order('<svg xmlns="http://www.w3.org/2000/svg"><g></svg>')
    expect(broken).toMatchObject({ status: 422, body: { order: 'refused' } })
    expect(broken.body.errors).toEqual([expect.objectContaining({ line: 1 })])
    expect((await order(readFileSync(path('exit.svg')), 'kitchen')).status).toBe(422)
  })
})

describe.skipIf(skipped('python3'))('the specification', () => {
  const specification = (...ids: string[]) => run('python3', [path('specification.py'), base, ...ids])

  it('holds the window of each quantity with its clauses, rounded inwards', async () => {
    const { status, out, error } = await specification('us-ada-2010')
    expect({ status, error }).toEqual({ status: 0, error: '' })
    // 2010 ADA Standards, table 703.3.1: 0.059 to 0.063 inch; 0.090 to 0.100 inch.
    expect(out).toMatch(
      /from 1\.50 mm \(0\.0590 in\) to 1\.60 mm \(0\.0630 in\) \| us-ada-2010\/703\.3\.1\/dot-base-diameter/,
    )
    expect(out).toMatch(
      /from 2\.29 mm \(0\.0900 in\) to 2\.54 mm \(0\.1000 in\) \| us-ada-2010\/703\.3\.1\/dot-spacing/,
    )
    expect(out).not.toMatch(/\bNone\b|\bnan\b|undefined/)
  })

  it('ends with 1 and names the requirements where standards exclude each other, as the service says', async () => {
    const ids = ['us-ada-2010', 'cz-398-2009']
    const answer = await app.inject(`/v1/standards/common?ids=${ids.join(',')}`)
    const { conflicts } = answer.json<{ conflicts: { text: string }[] }>()
    const { status, out } = await specification(...ids)
    expect(conflicts.length).toBeGreaterThan(0)
    expect(status).toBe(1)
    for (const { text } of conflicts) expect(out).toContain(text)
  })

  it('says which standard is not known', async () => {
    const { status, error } = await specification('us-ada-3000')
    expect(status).toBe(1)
    expect(error).toContain('us-ada-3000')
  })
})

describe('the pipeline', () => {
  interface Pipeline {
    jobs: {
      signs: { env: Record<string, string>; steps: { name?: string; run?: string; with?: Record<string, string> }[] }
    }
  }
  const { env, steps } = (parse(readFileSync(path('check-signs.yml'), 'utf8')) as Pipeline).jobs.signs

  /** In place of npx, which would install the tarball: the same command of this checkout. */
  const NPX = `#!/usr/bin/env bash\nwhile [ "$1" != fingertrue ]; do shift; done\nshift\nexec "${process.execPath}" "${COMMAND}" "$@"\n`

  const perform = async (drawings: string[]) => {
    rmSync(join(folder, 'signs'), { recursive: true, force: true })
    mkdirSync(join(folder, 'signs'))
    mkdirSync(join(folder, 'bin'), { recursive: true })
    writeFileSync(join(folder, 'bin', 'npx'), NPX)
    chmodSync(join(folder, 'bin', 'npx'), 0o755)
    for (const name of drawings) writeFileSync(join(folder, 'signs', name), readFileSync(path(name)))
    const PATH = `${join(folder, 'bin')}${delimiter}${process.env.PATH ?? ''}`
    const ended: Ended[] = []
    for (const { run: script } of steps)
      if (script !== undefined) ended.push(await run('bash', ['-e', '-o', 'pipefail', '-c', script], { ...env, PATH }))
    return ended
  }

  it('fails where a drawing fails, and has the failing clauses at their lines in what it hands over', async () => {
    const [check, report] = await perform(['glaze-lab.svg', 'exit.svg'])
    expect(check?.status).toBe(1)
    expect(report?.status).toBe(0)
    const file = steps.flatMap((step) => step.with?.sarif_file ?? [])
    expect(file).toEqual(['signs.sarif'])
    const [log] = (JSON.parse(readFileSync(join(folder, 'signs.sarif'), 'utf8')) as Log).runs
    for (const { locations } of log?.results ?? [])
      expect(locations?.[0]?.physicalLocation?.artifactLocation?.uri).toBe('signs/glaze-lab.svg')
    const cells = log?.results?.find(({ ruleId }) => ruleId === 'us-ada-2010/703.3.1/cell-spacing')
    expect(cells?.locations?.[0]?.physicalLocation?.region?.startLine).toBeGreaterThan(1)
  })

  it('passes where every drawing passes', async () => {
    const [check, report] = await perform(['exit.svg'])
    expect([check?.status, report?.status]).toEqual([0, 0])
  })
})
