import { readFileSync, existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import vm from 'node:vm'
import ts from 'typescript'

/**
 * The modules of the tests and of what they test, compiled once and started anew as often as one likes. Started anew is what depends on a
 * module that is mutated: what such a module has kept of one mutant must not be there for the next.
 */

/** @typedef {{ start: Function, imports: string[], isMutated: boolean, started?: { exports: object } }} Module */

/** Stryker calls a function of this name wherever it has put a mutant. */
const MUTANT = 'stryMutAct_'

const COMPILER = {
  module: ts.ModuleKind.CommonJS,
  target: ts.ScriptTarget.ES2022,
  esModuleInterop: true,
  resolveJsonModule: true,
}

/** A package as CommonJS sees it when TypeScript compiled the import. */
const asRequired = (namespace) => ({ ...namespace, __esModule: true })

export class Modules {
  /** @type {Map<string, Module>} */
  #modules = new Map()
  #packages = new Map()
  /** @type {Module[] | undefined} */
  #mutable

  /** @param {Record<string, object>} given packages that are not to be imported, with what to give instead */
  constructor(given) {
    for (const [name, exports] of Object.entries(given)) this.#packages.set(name, asRequired(exports))
  }

  /** Compiles a file and all that it imports. @param {string} file absolute */
  async add(file) {
    if (this.#modules.has(file)) return
    const code = file.endsWith('.json') ? `module.exports = ${readFileSync(file, 'utf8')}` : compiled(file)
    const body = WAITS.test(code) ? `return (async () => {${code}\n})()` : code
    const start = vm.compileFunction(body, ['exports', '__require', 'module', '__url'], { filename: file })
    const wanted = [...code.matchAll(/\b__require\("([^"]+)"\)/gu)].map(([, name]) => name)
    const imports = wanted.filter(isOurs).map((name) => resolved(file, name))
    this.#modules.set(file, { start, imports, isMutated: code.includes(MUTANT) })
    for (const name of wanted)
      if (isOurs(name)) await this.add(resolved(file, name))
      else if (!this.#packages.has(name)) this.#packages.set(name, asRequired(await import(name)))
    if (WAITS.test(code)) await this.#started(file)
  }

  /** What a module exports; it is started if it is not. @param {string} file */
  load(file) {
    this.#started(file)
    return this.#modules.get(file).started.exports
  }

  /** Nothing, or for a module that waits when it starts, what it waits for. */
  #started(file) {
    const known = this.#modules.get(file)
    if (known.started) return undefined
    const module = { exports: {} }
    known.started = module
    const require = (name) => (isOurs(name) ? this.load(resolved(file, name)) : this.#packages.get(name))
    return known.start(module.exports, require, module, pathToFileURL(file).href)
  }

  /** Forgets all that was started of the mutated files and of what depends on them. */
  forgetMutated() {
    this.#mutable ??= this.#dependents()
    for (const module of this.#mutable) module.started = undefined
  }

  #dependents() {
    const importers = new Map()
    for (const [file, { imports }] of this.#modules)
      for (const imported of imports) importers.set(imported, [...(importers.get(imported) ?? []), file])
    const reached = new Set([...this.#modules].filter(([, { isMutated }]) => isMutated).map(([file]) => file))
    for (const file of reached) for (const importer of importers.get(file) ?? []) reached.add(importer)
    return [...reached].map((file) => this.#modules.get(file))
  }
}

/** A module that waits is started once, when it is added; none of them depends on what is mutated. */
const WAITS = /^await /mu

const isOurs = (name) => name.startsWith('.')

/** In TypeScript a module is imported by the name that it will have when it is compiled. */
function resolved(from, name) {
  const path = join(dirname(from), name)
  const source = path.replace(/\.js$/u, '.ts')
  return existsSync(source) ? source : path
}

/** What the compiler puts in gets names that no module of ours has. */
const compiled = (file) =>
  ts
    .transpileModule(readFileSync(file, 'utf8'), { compilerOptions: COMPILER, fileName: file })
    .outputText.replaceAll('import.meta.url', '__url')
    .replaceAll('require("', '__require("')
