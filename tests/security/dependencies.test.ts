import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

/** What is installed is what was looked at: the lock file of npm (its documentation, package-lock.json). */

interface Locked {
  version?: string
  integrity?: string
  resolved?: string
  hasInstallScript?: boolean
  link?: boolean
  engines?: { node?: string }
}
const json = (file: string): unknown => JSON.parse(readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8'))
const lock = json('package-lock.json') as { lockfileVersion: number; packages: Record<string, Locked> }
const { dependencies, engines } = json('package.json') as {
  dependencies: Record<string, string>
  engines: { node: string }
}
const locked = Object.entries(lock.packages).filter(([path]) => path !== '')

describe('every package', () => {
  it('has the SHA-512 of its content, so that another content is not installed', () => {
    expect(locked.length).toBeGreaterThan(100)
    for (const [path, { integrity }] of locked) expect(integrity, path).toMatch(/^sha512-[A-Za-z0-9+/]{86}==$/u)
  })

  it('comes from a registry, by its version: none from an address, a folder or a repository', () => {
    for (const [path, { version, resolved, link }] of locked) {
      expect(version, path).toMatch(/^\d+\.\d+\.\d+/u)
      expect([resolved, link], path).toEqual([undefined, undefined])
    }
  })

  it('that runs is asked for in one version, the one that is locked', () => {
    for (const [name, version] of Object.entries(dependencies)) {
      expect(version, name).toMatch(/^\d+\.\d+\.\d+(-[\w.]+)?$/u)
      expect(lock.packages[`node_modules/${name}`]?.version, name).toBe(version)
    }
  })

  it('runs nothing when it is installed, but for the embedded database', () => {
    const scripts = locked.filter(([, { hasInstallScript }]) => hasInstallScript).map(([path]) => path)
    expect(scripts).toEqual(['node_modules/better-sqlite3'])
  })

  // What each package says of itself; a package that names no release of 20 is not held here but by the tests, which run on 20.
  it('runs on the oldest Node 20 that is promised', () => {
    const promised = Number(/^>=20\.(\d+)$/u.exec(engines.node)?.[1])
    const asked = locked.flatMap(([path, { engines: own }]) => {
      const minor = /(?:\^|>=)\s*20\.(\d+)/u.exec(own?.node ?? '')?.[1]
      return minor === undefined ? [] : [{ path, minor: Number(minor) }]
    })
    expect(asked.length).toBeGreaterThan(0)
    expect(asked.filter(({ minor }) => !(minor <= promised))).toEqual([])
    const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8')
    expect(readme).toContain(`Node 20.${promised} or newer`)
  })
})
