import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

/** The threat model, docs/security.md, and the tests that it names: held together both ways round. */

const root = new URL('../../', import.meta.url)
const read = (file: string): string => readFileSync(new URL(file, root), 'utf8')

const page = read('docs/security.md')

interface Threat {
  id: string
  classes: string
  stands: string
  /** Files with the titles that are named of each. */
  shown: { file: string; titles: string[] }[]
}

const ROW = /^\| <a id="(t-[a-z-]+)"><\/a>(T-[A-Z-]+) \| ([STRIDE ]+) \| (.+) \| (.+) \| (.+) \|$/gmu
const SHOWN = /`(tests\/[^`]+)`((?:,? ?“[^”]+”)*)/gu
const TITLE = /“([^”]+)”/gu

const threats: Threat[] = [...page.matchAll(ROW)].map(
  ([, anchor = '', id = '', classes = '', , stands = '', shown = '']) => {
    expect(anchor).toBe(id.toLowerCase())
    return {
      id,
      classes,
      stands,
      shown: [...shown.matchAll(SHOWN)].map(([, file = '', titles = '']) => ({
        file,
        titles: [...titles.matchAll(TITLE)].map(([, title = '']) => title),
      })),
    }
  },
)

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&')

/** A call whose first argument is that title, after a table of cases or none; not one that is skipped or left to do. */
const hasTest = (source: string, title: string): boolean =>
  new RegExp(`(?<!skip|todo|fails)\\(\\s*(['"\`])${escaped(title)}\\1\\s*,`, 'u').test(source)

describe('the threat model', () => {
  it('has every row of its tables read here, each with an id of its own', () => {
    const rows = page.split('\n').filter((line) => line.startsWith('| <a id="t-'))
    expect(threats).toHaveLength(rows.length)
    expect(threats.length).toBeGreaterThan(40)
    expect(new Set(threats.map(({ id }) => id)).size).toBe(threats.length)
  })

  it('has a threat of each class of STRIDE', () => {
    const classes = new Set(threats.flatMap((threat) => threat.classes.split(' ')))
    expect([...classes].sort()).toEqual([...'DEIRST'])
  })

  it('names no threat that other pages do not find', () => {
    const known = threats.map(({ id }) => id)
    for (const [id] of page.matchAll(/\bT-[A-Z]+(?:-[A-Z]+)*\b/gu)) expect(known).toContain(id)
  })

  it('names every file of tests/security', () => {
    const named = threats.flatMap(({ shown }) => shown.map(({ file }) => file))
    const here = readdirSync(new URL('tests/security/', root)).filter((file) => file !== 'threats.test.ts')
    for (const file of here) expect(named).toContain(`tests/security/${file}`)
  })
})

describe.each(threats)('$id', ({ shown, stands }) => {
  it('says what stands against it, and names a test', () => {
    expect(stands.length).toBeGreaterThan(20)
    expect(shown.some(({ file, titles }) => file.endsWith('.test.ts') && titles.length > 0)).toBe(true)
  })

  it('names files that are there, and in them tests that are there', () => {
    for (const { file, titles } of shown) {
      expect(existsSync(new URL(file, root)), file).toBe(true)
      for (const title of titles) expect(hasTest(read(file), title), `${file}: ${title}`).toBe(true)
    }
  })
})
