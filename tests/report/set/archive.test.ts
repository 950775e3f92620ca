import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { evidenceArchive, type ArchiveParts } from '../../../src/report/set/archive.js'
import type { SetEvidence } from '../../../src/report/set/evidence.js'
import { cleanFileName, cleanName, Names } from '../../../src/report/set/file-names.js'
import { ZipWriter } from '../../../src/report/set/zip-writer.js'
import { sampleSet, setSign, wordedSet } from './evidence-sample.js'
import { naughty } from './naughty.js'
import { unzipped } from './unzipped.js'

const DRAWING = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>')

const parts = (changes: Partial<ArchiveParts> = {}): ArchiveParts => ({
  documents: [
    { name: 'report.pdf', bytes: Buffer.from('%PDF-1.7 invented') },
    { name: 'history.json', bytes: Buffer.from('[]') },
  ],
  received: ({ files }) => Promise.resolve(files.map((name) => ({ name, bytes: DRAWING }))),
  ...changes,
})

async function archive(set: SetEvidence, given = parts()): Promise<Buffer> {
  const chunks: Uint8Array[] = []
  for await (const chunk of evidenceArchive(set, given)) chunks.push(chunk)
  return Buffer.concat(chunks)
}

const made: string[] = []
afterEach(() => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true })
})

/** Writes the files of a zip into a new folder and has `sha256sum` of GNU coreutils check them. */
async function checked(zip: Buffer): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'fingertrue-evidence-'))
  made.push(folder)
  for (const [name, bytes] of await unzipped(zip)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true })
    writeFileSync(join(folder, name), bytes, { flag: 'wx' })
  }
  return execFileSync('sha256sum', ['--check', '--strict', 'SHA256SUMS'], { cwd: folder, encoding: 'utf8' })
}

describe('the evidence as one zip', () => {
  it('holds every form, a folder for each sign, and the files as they came', async () => {
    const names = [...(await unzipped(await archive(sampleSet()))).keys()]
    expect(names).toEqual([
      ...['README.txt', 'submittal.json', 'schedule.csv', 'findings.csv', 'findings.sarif', 'findings.bcf'],
      ...['findings.junit.xml', 'report.pdf', 'history.json'],
      ...['report.json', 'report.html', 'drawing.svg', 'received/schedule.csv', 'received/L-17.svg'].map(
        (name) => `signs/L-17/${name}`,
      ),
      ...['report.json', 'report.html', 'drawing.svg', 'received/schedule.csv', 'received/L-18.svg'].map(
        (name) => `signs/L-18/${name}`,
      ),
      ...['problem.json', 'received/schedule.csv', 'received/L-19.svg'].map((name) => `signs/L-19/${name}`),
      ...['received/schedule.csv', 'received/L-20.svg'].map((name) => `signs/L-20/${name}`),
      ...['manifest.json', 'SHA256SUMS'],
    ])
  })

  // Whoever opens the zip reads it first: it must leave out nothing that lies beside it.
  it('names in README.txt every file and folder at its top', async () => {
    const files = await unzipped(await archive(sampleSet()))
    const readme = Buffer.from(files.get('README.txt') ?? '').toString('utf8')
    const top = new Set([...files.keys()].map((name) => name.replace(/\/.*/su, '/')))
    const named = readme.split('\n').map((line) => line.split(/ {2,}/u)[0])
    for (const name of top) if (name !== 'README.txt') expect(named).toContain(name)
  })

  it('has digests that sha256sum finds right, and that it refuses when a byte was changed', async () => {
    const zip = await archive(sampleSet())
    const files = await unzipped(zip)
    const lines = (await checked(zip)).trim().split('\n')
    expect(lines).toHaveLength(files.size - 1)
    for (const line of lines) expect(line).toMatch(/: OK$/)
    const folder = made.at(-1) ?? ''
    writeFileSync(join(folder, 'signs/L-17/report.json'), '{}')
    expect(() => execFileSync('sha256sum', ['--check', 'SHA256SUMS'], { cwd: folder, stdio: 'pipe' })).toThrow()
  })

  it('says in its manifest what is there, with sizes and digests, and whose folder is whose', async () => {
    const files = await unzipped(await archive(sampleSet()))
    const manifest = JSON.parse(files.get('manifest.json')?.toString() ?? '') as {
      submittal: { asOf: string }
      history: object
      signs: { id: string; folder: string; verdict: string | null }[]
      files: { name: string; bytes: number; sha256: string }[]
    }
    expect(manifest.files.map(({ name }) => name)).toEqual([...files.keys()].slice(0, -2))
    for (const { name, bytes, sha256 } of manifest.files) {
      expect(files.get(name)?.length).toBe(bytes)
      expect(
        createHash('sha256')
          .update(files.get(name) ?? '')
          .digest('hex'),
      ).toBe(sha256)
    }
    expect(manifest.signs.map(({ id, folder, verdict }) => [id, folder, verdict])).toEqual([
      ['sgn_L-17', 'signs/L-17', 'fail'],
      ['sgn_L-18', 'signs/L-18', 'fail'],
      ['sgn_L-19', 'signs/L-19', null],
      ['sgn_L-20', 'signs/L-20', null],
    ])
    expect(manifest.history).toEqual({ events: 9, head: 'sha256-44' })
    expect(manifest.submittal.asOf).toBe('2026-03-03T16:45:10.250Z')
  })

  it('has the reports and the waivers as data', async () => {
    const set = sampleSet()
    const files = await unzipped(await archive(set))
    expect(JSON.parse(files.get('signs/L-17/report.json')?.toString() ?? '')).toEqual(set.signs[0]?.report)
    const submittal = JSON.parse(files.get('submittal.json')?.toString() ?? '') as SetEvidence
    expect(submittal.signs[0]?.waivers).toEqual(set.signs[0]?.waivers)
    expect(submittal.intakeProblems).toEqual(set.intakeProblems)
  })

  it('is the same bytes for the same evidence, in every zone', async () => {
    const zone = process.env.TZ
    const first = await archive(sampleSet())
    try {
      process.env.TZ = 'Pacific/Kiritimati'
      expect(Buffer.compare(await archive(sampleSet()), first)).toBe(0)
    } finally {
      if (zone === undefined) delete process.env.TZ
      else process.env.TZ = zone
    }
  })

  it('asks for the files of a sign when it comes to it, and gives what it has before', async () => {
    const asked: string[] = []
    const received: ArchiveParts['received'] = ({ mark }) => {
      asked.push(mark)
      return Promise.resolve([{ name: 'a.svg', bytes: DRAWING }])
    }
    let before = 0
    for await (const chunk of evidenceArchive(sampleSet(), parts({ received })))
      if (asked.length < 2) before += chunk.length
    expect(asked).toEqual(['L-17', 'L-18', 'L-19', 'L-20'])
    expect(before).toBeGreaterThan(0)
  })

  it('keeps apart what a client calls alike, also in capitals, and lets nothing take the place of a file of ours', async () => {
    const signs = ['L/1', 'L-1', 'l-1', 'L 1'].map((mark, i) =>
      setSign(mark, { id: `sgn_${i}`, files: ['a.svg', 'b/A.SVG'] }),
    )
    const documents = ['manifest.json', 'MANIFEST.JSON', '../SHA256SUMS', 'signs'].map((name) => ({
      name,
      bytes: DRAWING,
    }))
    const zip = await archive({ ...sampleSet(), signs }, parts({ documents }))
    const names = [...(await unzipped(zip)).keys()]
    expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(names.length)
    expect(names.filter((name) => name.endsWith('/report.json'))).toEqual([
      ...['signs/L-1/report.json', 'signs/L-1-2/report.json', 'signs/l-1-3/report.json', 'signs/L-1-4/report.json'],
    ])
    expect(await checked(zip)).not.toContain('FAILED')
  })

  it('leads nowhere else, whatever a client calls things', async () => {
    for (const words of naughty().filter((_, i) => i % 40 === 0 || i < 18)) {
      const files = await unzipped(await archive(wordedSet(words)))
      for (const name of files.keys())
        for (const segment of name.split('/')) {
          expect(segment, JSON.stringify(words)).toMatch(/^[\p{L}\p{M}\p{N}_][\p{L}\p{M}\p{N}._-]*$/u)
          expect(Buffer.byteLength(segment)).toBeLessThanOrEqual(255)
        }
    }
  })
})

describe('names of files', () => {
  /** Reserved names: Microsoft, Naming Files, Paths, and Namespaces; typed from memory. */
  it.each(['CON', 'nul', 'COM1.svg', 'lpt9', 'Aux.txt'])('are not those of devices: %s', (name) => {
    expect(cleanFileName(name, 'file')).toBe(`_${name}`)
  })

  it.each([
    ['../../etc/passwd', 'passwd'],
    ['..\\..\\boot.ini', 'boot.ini'],
    ['-rf', 'rf'],
    ['.htaccess', 'htaccess'],
    ['a\nb', 'a-b'],
    ['\u202egvs.exe', 'gvs.exe'],
    ['방 1.SVG', '방-1.svg'],
    ['…', 'other'],
  ])('are clean: %j', (path, name) => expect(cleanFileName(path, 'other')).toBe(name))

  it('are cut where they are long, with their ending kept', () => {
    const name = cleanFileName(`${'𝌆x'.repeat(400)}.svg`, 'file')
    expect(name).toMatch(/\.svg$/)
    expect(Buffer.byteLength(name)).toBeLessThanOrEqual(255)
    expect(cleanName('', 'sign')).toBe('sign')
  })

  it('are one where they only look different', () => {
    const names = new Names()
    expect([names.unique('Zo\u00eb.svg'), names.unique('ZOE\u0308.svg')]).toEqual(['Zo\u00eb.svg', 'ZOE\u0308-2.svg'])
  })
})

describe('a zip that cannot hold more', () => {
  it('is an error and not a broken file (APPNOTE.TXT, 4.4.22: two bytes count the files)', () => {
    const zip = new ZipWriter('2026-03-03T12:00:00')
    expect(() => {
      for (let i = 0; i < 0xffff; i++) {
        zip.add(`${i}`, '')
        zip.take()
      }
    }).toThrow(RangeError)
  })
})
