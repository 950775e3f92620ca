import { readFileSync, readdirSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'
import { describe, expect, it } from 'vitest'

/** The walls of the house (DEVELOPERS.md), read off the imports themselves. */

const root = fileURLToPath(new URL('../src', import.meta.url))

interface SourceFile {
  path: string
  folder: string
  text: string
  /** Paths below src/ of our own files that it imports. */
  ours: string[]
  /** Names of packages and node modules that it imports. */
  foreign: string[]
}

const files: SourceFile[] = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts'))
  .map((path) => {
    const text = readFileSync(join(root, path), 'utf8')
    const imports = ts.preProcessFile(text).importedFiles.map((f) => f.fileName)
    const ours = imports
      .filter((i) => i.startsWith('.'))
      .map((i) => relative(root, resolve(dirname(join(root, path)), i)))
    return { path, folder: folderOf(path), text, ours, foreign: imports.filter((i) => !i.startsWith('.')) }
  })

function folderOf(path: string): string {
  return path.includes('/') ? path.slice(0, path.indexOf('/')) : '.'
}

/** Which folders each folder may import from, besides itself. `.` stands for files directly in src/. */
const MAY_IMPORT: Record<string, string[]> = {
  geometry: [],
  statistics: ['.'],
  sign: ['geometry', 'braille', '.'],
  braille: ['geometry', 'sign', 'standards', '.'],
  standards: ['sign', '.'],
  drawing: ['geometry', '.'],
  recognise: ['geometry', 'sign', 'drawing', 'braille', '.'],
  measure: ['geometry', 'sign', 'braille', '.'],
  judge: ['geometry', 'statistics', 'sign', 'measure', 'standards', '.'],
  windows: ['geometry', 'sign', 'measure', 'standards', 'judge', '.'],
  make: [
    'geometry',
    'sign',
    'drawing',
    'recognise',
    'braille',
    'measure',
    'standards',
    'judge',
    'windows',
    'report',
    '.',
  ],
  report: ['geometry', 'statistics', 'sign', 'braille', 'measure', 'standards', 'judge', 'windows', '.'],
}
/** The files directly in src/ that a folder of the core may import. */
const SHARED_FILES = ['refusal.js', 'version.js', 'check.js', 'libraries.js']
const OUTER = ['service', 'submittals', 'page', 'command', 'client', '.']

const core = files.filter((f) => f.folder in MAY_IMPORT)

describe('the walls between the folders', () => {
  it('sees the files that it judges', () => {
    for (const folder of Object.keys(MAY_IMPORT))
      expect(core.filter((f) => f.folder === folder).length, folder).toBeGreaterThan(0)
    expect(core.flatMap((f) => f.ours).length).toBeGreaterThan(50)
  })

  it.each(core.map((f) => [f.path, f] as const))('%s imports only what its folder may', (_, file) => {
    for (const target of file.ours) {
      const folder = folderOf(target)
      if (folder === '.') expect(SHARED_FILES, `${file.path} imports ${target}`).toContain(target)
      if (folder !== file.folder) expect(MAY_IMPORT[file.folder], `${file.path} imports ${target}`).toContain(folder)
    }
  })

  it('check.ts is imported from the core for its types only', () => {
    for (const file of core) {
      for (const line of file.text.split('\n').filter((l) => /from '\.\.?\/(\.\.\/)?check\.js'/.test(l))) {
        expect(line, file.path).toMatch(/^import type/)
      }
    }
  })

  it('every folder is either core or outer', () => {
    for (const file of files) expect([...Object.keys(MAY_IMPORT), ...OUTER], file.path).toContain(file.folder)
  })
})

describe('what is kept', () => {
  it.each(files.filter((f) => f.folder === 'submittals').map((f) => [f.path, f] as const))(
    '%s knows nothing of HTTP or of the page',
    (_, { ours, foreign }) => {
      expect(ours.filter((target) => ['service', 'page'].includes(folderOf(target)))).toEqual([])
      expect(foreign.filter((name) => /^(fastify|@fastify|pino$|piscina)/.test(name))).toEqual([])
    },
  )
  it('is known to no folder of the core', () => {
    for (const file of core) expect(file.ours.map(folderOf), file.path).not.toContain('submittals')
  })
})

describe('the page', () => {
  it('is known to the service alone, in the one file that puts it together', () => {
    const known = files.filter(({ folder, ours }) => folder !== 'page' && ours.map(folderOf).includes('page'))
    expect(known.map(({ path }) => path)).toEqual(['service/service.ts'])
  })
  it.each(files.filter((f) => f.folder === 'page').map((f) => [f.path, f] as const))(
    '%s shows what was judged and kept, and judges nothing',
    (_, { ours }) => {
      const folders = ['page', 'service', 'submittals', 'report', 'sign', 'standards', '.']
      expect(ours.filter((target) => !folders.includes(folderOf(target)))).toEqual([])
    },
  )
})

describe('the command line', () => {
  it.each(files.filter((f) => f.folder === 'command').map((f) => [f.path, f] as const))(
    '%s keeps nothing, asks nobody and knows of the service only how it words problems',
    (_, { text, ours, foreign }) => {
      const outer = ours.filter((target) => ['service', 'page', 'client'].includes(folderOf(target)))
      expect(outer.filter((target) => target !== 'service/problem-table.js')).toEqual([])
      expect(ours.filter((target) => /^submittals\/(store|queue|keys|webhooks)\//.test(target))).toEqual([])
      expect(
        foreign.filter((name) =>
          /fastify|^pino$|^kysely$|^pg|^better-sqlite3$|^node:(http|https|net|tls|dgram|dns)/.test(name),
        ),
      ).toEqual([])
      expect(text).not.toMatch(/\bfetch\(|\bMath\.random\b|\bDate\.now\b|\bnew Date\b|\bprocess\.env\b/)
    },
  )
})

describe('the client', () => {
  it.each(files.filter((f) => f.folder === 'client').map((f) => [f.path, f] as const))(
    '%s stands alone: whoever calls the service needs nothing else of it',
    (_, { ours, foreign }) => {
      expect(ours.filter((target) => folderOf(target) !== 'client')).toEqual([])
      expect(foreign.filter((name) => name !== 'openapi-fetch')).toEqual([])
    },
  )
})

describe('what only one folder may know', () => {
  /** `libraries.ts` only hands libraries on: who may use one shows in who imports it. */
  const only = (folder: string, packages: RegExp, late?: RegExp) => {
    for (const file of files.filter(({ path }) => path !== 'libraries.ts')) {
      if (late?.test(file.text)) expect(file.folder, `${file.path} uses ${late.source}`).toBe(folder)
      for (const name of file.foreign.filter((n) => packages.test(n)))
        expect(file.folder, `${file.path} imports ${name}`).toBe(folder)
    }
  }
  it('SVG: drawing/', () => only('drawing', /^(saxes|svg-parser|css-tree|css-select)$/, /\bcssTree\b/))
  it('the braille engine: braille/', () => only('braille', /^liblouis/))
  it('HTTP and processes: service/ and the mains', () => {
    for (const file of core)
      expect(
        file.foreign.filter((n) =>
          /fastify|pino|piscina|^node:(http|net|worker_threads|child_process|process)$/.test(n),
        ),
        file.path,
      ).toEqual([])
  })
})

describe('the core is pure', () => {
  /** These read what ships inside packages: libraries, font outlines and braille tables. */
  const READS_SHIPPED_DATA = [
    'libraries.ts',
    'recognise/fonts.ts',
    'recognise/shipped.ts',
    'report/pdf-fonts.ts',
    'braille/engine.ts',
    'braille/louis.ts',
    'braille/loader.ts',
  ]
  it.each(core.map((f) => [f.path, f] as const))(
    '%s has no clock, no randomness, no environment, no files',
    (path, file) => {
      expect(file.text).not.toMatch(
        /\bMath\.random\b|\bDate\.now\b|\bnew Date\b(?!\(\d+\))|\bperformance\.now\b|\bprocess\.env\b/,
      )
      if (!READS_SHIPPED_DATA.includes(path))
        expect(file.foreign.filter((n) => /^node:(fs|os|path|module)/.test(n))).toEqual([])
    },
  )
})
