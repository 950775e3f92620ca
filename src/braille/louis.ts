import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { compileFunction } from 'node:vm'

/**
 * The liblouis engine in the form that npm package liblouis-build ships it (one script made by emscripten), loaded so
 * that it keeps to itself: it sees a stand-in for `process` (so it hangs no handler on the real one and cannot end it),
 * has a heap of a size that we choose, and writes its messages to a list instead of the console.
 * Method: liblouis manual, "Programming with liblouis", lou_translateString and lou_backTranslateString.
 */
export interface Louis {
  readonly version: string
  /** Text to cells as the table and its display table write them; undefined when the engine refuses. */
  translate(table: string, text: string): string | undefined
  /** Cells to text, the engine's own guess; undefined when the engine refuses. */
  backTranslate(table: string, cells: string): string | undefined
  /** SHA-256 (hex) over the named tables and every file that they include, in the order in which they are read. */
  digestOf(tables: readonly string[]): string
}

/** The parts of the emscripten module that are used here. */
interface EngineModule {
  HEAP32: Int32Array
  HEAPU32: Uint32Array
  FS: {
    mkdir(path: string): void
    mount(type: object, options: { root: string }, path: string): void
    filesystems: { NODEFS: object }
  }
  ccall(name: string, returns: string, types: string[], values: (string | number)[]): number | string
  _malloc(bytes: number): number
  _free(pointer: number): void
}

const ENGINE_FILE = 'liblouis-build/build-no-tables-utf32.js'
const HEAP_BYTES = 32 * 1024 * 1024
const MOUNT = '/tables'
const DISPLAY_TABLE = 'unicode.dis'
const BYTES_PER_CHARACTER = 4
const SHIFT_OF_32_BIT = 2
/** The engine writes past a buffer that is too short, so the buffer holds the longest expansion with room to spare. */
const CELLS_PER_CHARACTER = 16
const SPARE_CELLS = 256
const LAST_LINE = /liblouisBuild = liblouisBuild\(\);\s*$/
const INCLUDE = /^\s*include\s+(\S+)/gm

/**
 * Loads the engine; about a tenth of a second.
 * @throws {Error} when the engine's file is not the one that this loader was written for.
 */
export function loadLouis(): Louis {
  const require = createRequire(import.meta.url)
  const file = require.resolve(ENGINE_FILE)
  const tableFolder = join(dirname(file), 'tables')
  const source = readFileSync(file, 'utf8')
  const start = (): EngineModule => {
    const engine = startEngine(source, file, require)
    engine.FS.mkdir(MOUNT)
    engine.FS.mount(engine.FS.filesystems.NODEFS, { root: tableFolder }, MOUNT)
    return engine
  }
  let engine = start()
  const call = (entry: string, table: string, text: string): string | undefined => {
    try {
      return run(engine, entry, table, text)
    } catch {
      // Whatever it was (an abort, an exhausted stack), the engine's memory can no longer be trusted.
      engine = start()
      return undefined
    }
  }
  return {
    version: String(engine.ccall('lou_version', 'string', [], [])),
    translate: (table, text) => call('lou_translateString', table, text),
    backTranslate: (table, cells) => call('lou_backTranslateString', table, cells),
    digestOf: (tables) => digestOfTables(tableFolder, [DISPLAY_TABLE, ...tables]),
  }
}

function startEngine(source: string, file: string, require: NodeJS.Require): EngineModule {
  if (!LAST_LINE.test(source)) throw new Error('The braille engine is not the expected build: its last line differs.')
  const withOptions = source.replace(LAST_LINE, 'return liblouisBuild(options);')
  const messages: string[] = []
  const note = (message: string): void => void messages.push(message)
  const options = { TOTAL_MEMORY: HEAP_BYTES, print: note, printErr: note }
  const start = compileFunction(withOptions, ['options', 'process', 'module', 'require', '__dirname', '__filename'], {
    filename: file,
  }) as (...parameters: unknown[]) => EngineModule
  return start.call({}, options, standInProcess(), { exports: {} }, require, dirname(file), file)
}

/** What the script asks of `process`, and nothing that reaches the real one. */
function standInProcess(): object {
  return {
    argv: ['node', 'braille-engine'],
    platform: process.platform,
    on: () => undefined,
    exit: (status: number) => {
      throw new Error(`The braille engine ended with status ${status}.`)
    },
  }
}

function run(engine: EngineModule, entry: string, table: string, text: string): string | undefined {
  const codes = Array.from(text, (character) => character.codePointAt(0) ?? 0)
  const capacity = codes.length * CELLS_PER_CHARACTER + SPARE_CELLS
  const input = engine._malloc((codes.length + 1) * BYTES_PER_CHARACTER)
  const output = engine._malloc(capacity * BYTES_PER_CHARACTER)
  const lengths = engine._malloc(2 * BYTES_PER_CHARACTER)
  try {
    engine.HEAPU32.set(codes, input >> SHIFT_OF_32_BIT)
    engine.HEAPU32[(input >> SHIFT_OF_32_BIT) + codes.length] = 0
    engine.HEAP32[lengths >> SHIFT_OF_32_BIT] = codes.length
    engine.HEAP32[(lengths >> SHIFT_OF_32_BIT) + 1] = capacity
    const tables = `${MOUNT}/${DISPLAY_TABLE},${MOUNT}/${table}`
    const types = ['string', ...Array<string>(7).fill('number')]
    const done = engine.ccall(entry, 'number', types, [
      tables,
      input,
      lengths,
      output,
      lengths + BYTES_PER_CHARACTER,
      0,
      0,
      0,
    ])
    const used = engine.HEAP32[lengths >> SHIFT_OF_32_BIT]
    if (!done || used !== codes.length) return undefined
    const start = output >> SHIFT_OF_32_BIT
    const written = engine.HEAPU32.subarray(start, start + (engine.HEAP32[(lengths >> SHIFT_OF_32_BIT) + 1] ?? 0))
    return Array.from(written, (code) => String.fromCodePoint(code)).join('')
  } finally {
    for (const pointer of [input, output, lengths]) engine._free(pointer)
  }
}

function digestOfTables(folder: string, tables: readonly string[]): string {
  const hash = createHash('sha256')
  const seen = new Set<string>()
  const read = (name: string): void => {
    if (seen.has(name)) return
    seen.add(name)
    const text = readFileSync(join(folder, name), 'utf8')
    hash.update(`${name}\n${text}\n`)
    for (const [, included] of text.matchAll(INCLUDE)) if (included) read(included)
  }
  for (const name of tables) read(name)
  return hash.digest('hex')
}
