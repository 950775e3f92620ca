import { execFile } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { unzipSync, zipSync } from 'fflate'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { DEFAULT_SETTINGS } from '../../src/service/settings.js'
import { runningService } from '../service/running.js'

/** An inspector's day by the script that we publish, with curl and jq as the only other programs. */

const examples = fileURLToPath(new URL('../../docs/examples/', import.meta.url))
const EVIDENCE_WORKER = new URL('../../dist/service/submittals/evidence-worker.js', import.meta.url)

const isThere = (program: string) =>
  (process.env.PATH ?? '').split(delimiter).some((folder) => existsSync(join(folder, program)))
const missing = ['bash', 'curl', 'jq'].filter((program) => !isThere(program))
if (missing.length > 0 && !process.env.CI) console.warn(`${missing.join(', ')} not there: the script is not run`)

describe.skipIf(missing.length > 0 && !process.env.CI)('the script of an inspector', () => {
  let app: FastifyInstance
  let folder: string
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'inspector-'))
    app = await runningService({ evidence: { ...DEFAULT_SETTINGS.evidence, worker: EVIDENCE_WORKER } })
    await app.listen({ host: '127.0.0.1', port: 0 })
  })
  afterAll(async () => {
    await app.close()
    rmSync(folder, { recursive: true })
  })

  it('uploads, follows the progress, measures, waives and takes the evidence home', async () => {
    const names = ['kiln-room.svg', 'glaze-lab.svg', 'wheel-room.svg', 'stair.svg', 'exit.svg']
    const drawings = Object.fromEntries(names.map((name) => [name, readFileSync(join(examples, name))]))
    writeFileSync(join(folder, 'signs.zip'), zipSync(drawings))
    const { port } = app.server.address() as AddressInfo
    const { stdout } = await promisify(execFile)('bash', [
      join(examples, 'inspector.sh'),
      `http://127.0.0.1:${port}`,
      join(folder, 'signs.zip'),
      join(examples, 'schedule.csv'),
      join(folder, 'evidence'),
    ])
    expect(stdout).toContain('5 of 5 checked')
    expect(stdout).toMatch(/K-106: fail/)
    // 2010 ADA Standards, table 703.3.1: 0.025 to 0.037 in; the script's readings lie between 0.69 and 0.74 mm.
    expect(stdout).toMatch(/pass: .*height/i)
    expect(stdout).toMatch(/in-force: us-ada-2010\//)
    expect(stdout).toMatch(/intact: true/)
    const file = (name: string) => readFileSync(join(folder, 'evidence', name))
    expect(file('report.pdf').subarray(0, 5).toString()).toBe('%PDF-')
    expect(file('inspection.pdf').subarray(0, 5).toString()).toBe('%PDF-')
    expect(Object.keys(unzipSync(file('evidence.zip')))).toContain('SHA256SUMS')
  })
})
