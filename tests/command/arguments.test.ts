import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readArguments, UsageError } from '../../src/command/arguments.js'
import { STATUS } from '../../src/command/status.js'
import { USAGE } from '../../src/command/usage.js'

/** What the command line takes is our own: docs/clients.md and the usage tell it. */

const read = (line: string) => readArguments(line.split(' '))
const checkOf = (line: string) => {
  const asked = read(line)
  if (asked.kind !== 'check') throw new Error(asked.kind)
  return asked.command
}

describe('the arguments', () => {
  it('name files and standards, which are pinned to the revision of today', () => {
    const { files, standards, format, undetermined } = checkOf(
      'check a.svg b.svg --standard us-ada-2010 --standard au-aba',
    )
    expect(files).toEqual(['a.svg', 'b.svg'])
    expect(standards).toEqual([expect.stringMatching(/^us-ada-2010@\d+$/), expect.stringMatching(/^au-aba@\d+$/)])
    expect({ format, undetermined }).toEqual({ format: 'text', undetermined: 'fail' })
    expect(checkOf('check a.svg').standards).toEqual([expect.stringMatching(/^us-ada-2010@/)])
    expect(checkOf('check a.svg --standard us-ada-2010,au-aba').standards).toHaveLength(2)
  })

  it('say how to read and to decide, by the same rules as a request', () => {
    const line = 'check a.svg --use exit-door --part dots=braille --panel 2 --scale 0.5 --proper-names Lee,Ortega'
    expect(checkOf(`${line} --decision-rule guarded --unit-system both`).options).toEqual({
      use: 'exit-door',
      part: { dots: 'braille' },
      panel: 2,
      scale: 0.5,
      properNames: ['Lee', 'Ortega'],
      decisionRule: 'guarded',
      unitSystem: 'both',
    })
    expect(checkOf('check a.svg --proper-names=').options.properNames).toEqual([])
  })

  it.each([
    ['', 'is no command'],
    ['prove a.svg', '“prove” is no command'],
    ['check', 'No file'],
    ['check a.svg --standard us-ada-3000', 'us-ada-3000'],
    ['check a.svg --standrad us-ada-2010', 'standrad'],
    ['check a.svg --format pfd', 'text, json, sarif'],
    ['check a.svg --undetermined maybe', 'fail, pass'],
    ['check a.svg --stage moon', 'drawing, product, site'],
    ['check a.svg --use kitchen', 'use'],
    ['check a.svg --scale wide', 'scale'],
    ['check a.svg --part braille', 'NAME=PART'],
    ['check a.svg --results failing', 'sarif'],
  ])('that cannot be used are told: %s', (line, words) => {
    expect(() => read(line)).toThrow(UsageError)
    expect(() => read(line)).toThrow(words)
  })

  it('may ask for help or the version, beside anything', () => {
    expect(read('--help').kind).toBe('help')
    expect(read('check -h').kind).toBe('help')
    expect(read('--version').kind).toBe('version')
  })

  it('are all told by the usage, which fits on a terminal', () => {
    const told = new Set(USAGE.match(/--[a-z-]+/g))
    for (const flag of told) expect(() => read(`check a.svg ${flag}=`), flag).not.toThrow(/Unknown option/)
    expect(told.size).toBeGreaterThan(15)
    for (const line of USAGE.split('\n')) expect(line.length).toBeLessThanOrEqual(100)
  })
})

describe('the page of the documentation', () => {
  const page = readFileSync(new URL('../../docs/clients.md', import.meta.url), 'utf8')
  const inTables = (pattern: RegExp) =>
    page
      .split('\n')
      .filter((line) => line.startsWith('| '))
      .flatMap((line) => line.split('|')[1]?.match(pattern) ?? [])

  it('tells of every option, and of no other', () => {
    expect(new Set(inTables(/--[a-z][a-z-]*/g))).toEqual(new Set(USAGE.match(/--[a-z-]+/g)))
  })

  it('tells of every exit status, and of no other', () => {
    expect(inTables(/^ \d+ $/g).map(Number)).toEqual(Object.values(STATUS))
  })
})
