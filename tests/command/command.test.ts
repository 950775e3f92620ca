import { execFile } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parse } from 'csv-parse/sync'
import { zipSync } from 'fflate'
import { SaxesParser } from 'saxes'
import type { Log } from 'sarif'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'

/** The command as a process, on the invented signs of docs/examples; its forms are read by readers that we did not write. */

const COMMAND = fileURLToPath(new URL('../../dist/fingertrue.js', import.meta.url))
const example = (name: string) => readFileSync(new URL(`../../docs/examples/${name}`, import.meta.url))

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'command-'))
  mkdirSync(join(folder, 'signs'))
  for (const name of ['kiln-room.svg', 'kiln-room.json', 'glaze-lab.svg', 'exit.svg'])
    writeFileSync(join(folder, 'signs', name), example(name))
  writeFileSync(join(folder, 'schedule.csv'), example('schedule.csv'))
  writeFileSync(
    join(folder, 'set.zip'),
    zipSync({ 'stair.svg': example('stair.svg'), 'wheel-room.svg': example('wheel-room.svg') }),
  )
  writeFileSync(join(folder, 'broken.svg'), '<svg xmlns="http://www.w3.org/2000/svg"><g></svg>')
})
afterAll(() => rmSync(folder, { recursive: true }))

interface Ended {
  status: number
  out: string
  error: string
}

const run = (...args: string[]): Promise<Ended> =>
  new Promise((resolve) => {
    execFile(process.execPath, [COMMAND, ...args], { cwd: folder, maxBuffer: 1e8 }, (error, out, err) =>
      resolve({ status: error ? Number(error.code) : 0, out, error: err }),
    )
  })

interface SetJson {
  verdict: string
  signs: { mark: string; verdict: string | null; files: string[]; problem: { title: string; detail: string } | null }[]
  problems: { file: string }[]
}

describe('fingertrue check', () => {
  it('tells of each sign what fails, ends with 1, and says nothing beside it', async () => {
    const { status, out, error } = await run(
      'check',
      'signs/glaze-lab.svg',
      'signs/exit.svg',
      '--use',
      'permanent-room',
    )
    expect({ status, error }).toEqual({ status: 1, error: '' })
    expect(out).toContain('glaze-lab (signs/glaze-lab.svg): FAILS')
    // 2010 ADA Standards, table 703.3.1: 0.241 to 0.300 inch; the drawing's cells stand 5.6 mm apart.
    expect(out).toContain('0.241 in (6.1 mm) to 0.300 in (7.6 mm)')
    expect(out).not.toContain('No use was given')
    for (const line of out.split('\n')) expect([...line].length).toBeLessThanOrEqual(80)
  })

  it('reads a zip, a schedule and descriptions as one set, and accepts what is undecided only where told', async () => {
    const { status, out } = await run(
      'check',
      'set.zip',
      'signs/kiln-room.svg',
      'signs/kiln-room.json',
      '--format',
      'json',
    )
    const set = JSON.parse(out) as SetJson
    expect(set.signs.map(({ files }) => files).flat()).toContain('set.zip/stair.svg')
    expect(set.signs).toHaveLength(3)
    expect(status).toBe(set.verdict === 'fail' ? 1 : 2)
    const alone = ['check', 'signs/kiln-room.svg', '--use', 'permanent-room']
    expect((await run(...alone)).status).toBe(2)
    expect((await run(...alone, '--undetermined', 'pass')).status).toBe(0)
    const listed = JSON.parse(
      (await run('check', 'schedule.csv', 'signs/kiln-room.svg', '--format', 'json')).out,
    ) as SetJson
    expect(listed.signs.find(({ mark }) => mark === 'K-104')?.files).toEqual(['schedule.csv', 'signs/kiln-room.svg'])
  })

  it('checks the others when one cannot be checked, says where it is wrong, and ends with 3', async () => {
    const { status, out } = await run(
      'check',
      'broken.svg',
      'signs/kiln-room.svg',
      'gone.svg',
      '--undetermined',
      'pass',
      '--format',
      'json',
    )
    expect(status).toBe(3)
    const { signs, problems } = JSON.parse(out) as SetJson
    expect(signs.find(({ mark }) => mark === 'broken')?.problem?.detail).toMatch(/Line 1, column \d+/)
    expect(signs.find(({ mark }) => mark === 'kiln-room')?.verdict).toBe('undetermined')
    expect(problems.map(({ file }) => file)).toEqual(['gone.svg'])
  })

  it('describes the one drawing by --sign, and refuses it where more than one could be meant', async () => {
    const { out } = await run('check', 'signs/kiln-room.svg', '--sign', 'signs/kiln-room.json', '--format', 'json')
    expect((JSON.parse(out) as SetJson).signs[0]?.files).toEqual(['signs/kiln-room.svg', 'signs/kiln-room.json'])
    const two = await run('check', 'signs/kiln-room.svg', 'signs/exit.svg', '--sign', 'signs/kiln-room.json')
    expect(two).toMatchObject({ status: 64, out: '' })
    expect((await run('check', 'signs/exit.svg', '--sign', 'schedule.csv')).status).toBe(3)
  })

  it('writes SARIF for pipelines: files by their paths, and the same sign known again in the next run', async () => {
    const args = [
      'check',
      'signs/glaze-lab.svg',
      '--format',
      'sarif',
      '--results',
      'failing',
      '--output',
      'signs.sarif',
    ]
    const { status, out, error } = await run(...args)
    expect({ status, out }).toEqual({ status: 1, out: '' })
    expect(error).toBe('1 sign fails. Written to signs.sarif.\n')
    const [first] = (JSON.parse(readFileSync(join(folder, 'signs.sarif'), 'utf8')) as Log).runs
    expect(first?.artifacts?.map(({ location }) => location?.uri)).toEqual(['signs/glaze-lab.svg'])
    expect(first?.results?.length).toBeGreaterThan(0)
    for (const { kind } of first?.results ?? []) expect(kind).toBe('fail')
    const more = await run('check', 'signs/exit.svg', 'signs/glaze-lab.svg', '--format', 'sarif')
    const [second] = (JSON.parse(more.out) as Log).runs
    const known = new Set(second?.results?.map(({ partialFingerprints }) => JSON.stringify(partialFingerprints)))
    for (const { partialFingerprints } of first?.results ?? [])
      expect(known.has(JSON.stringify(partialFingerprints))).toBe(true)
  })

  it('writes JUnit XML, CSV and a page that says that nothing is kept', async () => {
    const failures: string[] = []
    const parser = new SaxesParser()
    parser.on(
      'opentag',
      ({ name, attributes }) => void (name === 'failure' && failures.push(String(attributes.message))),
    )
    parser.write((await run('check', 'signs/glaze-lab.svg', '--format', 'junit', '--undetermined', 'pass')).out).close()
    expect(failures).toHaveLength(2)
    const rows: Record<string, string>[] = parse((await run('check', 'signs/glaze-lab.svg', '--format', 'csv')).out, {
      bom: true,
      columns: true,
    })
    expect(rows.filter(({ verdict, force }) => verdict === 'fail' && force === 'shall')).toHaveLength(2)
    const page = (await run('check', 'signs/glaze-lab.svg', '--format', 'html')).out
    expect(page).toContain('<svg')
    expect(page).toContain('Nothing of it was kept')
    expect(page).not.toContain('Digest of the history')
  })

  it('tells in plain words what cannot be used, and how it is used', async () => {
    expect(await run('check', 'signs')).toMatchObject({ status: 3, error: '' })
    expect((await run('check', '--fromat', 'csv', 'a.svg')).status).toBe(64)
    expect((await run('check', 'signs/exit.svg', '--output', 'no/such/folder')).status).toBe(73)
    const { status, out } = await run('--help')
    expect(status).toBe(0)
    expect(out).toMatch(/^Usage: fingertrue check/)
    const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
      version: string
    }
    expect((await run('--version')).out).toBe(`${version}\n`)
  })
})
