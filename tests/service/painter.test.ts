import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, afterEach, describe, expect, it } from 'vitest'
import { reportSvg } from '../../src/report/svg.js'
import { Painter } from '../../src/service/painter.js'
import { sampleReport, sampleSign } from '../report/sample.js'

/** The process runs the built module; the tests of a broken one run modules of their own. */
const BUILT = new URL('../../dist/service/painter-process.js', import.meta.url)
const DRAWING = reportSvg(sampleReport(), sampleSign())
const DEFAULT_TIME = 30_000

const errors: string[] = []
let painter: Painter | undefined
const painterOf = (module = BUILT, timeLimit = DEFAULT_TIME): Painter =>
  (painter = new Painter((error) => errors.push(error.message), module, timeLimit))

const folder = mkdtempSync(join(tmpdir(), 'fingertrue-painter-'))
afterAll(() => rmSync(folder, { recursive: true }))
afterEach(() => {
  painter?.close()
  errors.length = 0
})

/** A process that does something else. @param script gets what to paint as `svg` */
function module(name: string, script: string): URL {
  const file = join(folder, `${name}.mjs`)
  writeFileSync(file, `process.on('message', (svg) => { ${script} })`)
  return pathToFileURL(file)
}

/** Width and height out of the first chunk: PNG (W3C, third edition), 5.2 and 11.2.1. */
function sizeOf(png: Uint8Array | null): { width: number; height: number } {
  const bytes = Buffer.from(png ?? [])
  expect(bytes.subarray(0, 8).toString('hex')).toBe('89504e470d0a1a0a')
  expect(bytes.subarray(12, 16).toString()).toBe('IHDR')
  return { width: bytes.readUInt32BE(16), height: bytes.readUInt32BE(20) }
}

describe('pictures of drawings', () => {
  it('are PNG, in the shape of the drawing, no longer than BCF-XML 3.0 allows (1500), the same for the same', async () => {
    const painter = painterOf()
    const first = await painter.paint(DRAWING)
    const { width, height } = sizeOf(first)
    const [, w, h] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(DRAWING) ?? []
    expect(Math.max(width, height)).toBeLessThanOrEqual(1500)
    expect(width / height).toBeCloseTo(Number(w) / Number(h), 2)
    expect(await painter.paint(DRAWING)).toEqual(first)
    expect(errors).toEqual([])
  })

  it('show words in the face that ships with the program', async () => {
    const sheet = (content: string) => `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20">${content}</svg>`
    const text = (words: string) => sheet(`<text x="2" y="12" font-size="8" font-family="sans-serif">${words}</text>`)
    const painter = painterOf()
    const empty = await painter.paint(sheet(''))
    expect(await painter.paint(text('12'))).not.toEqual(empty)
    expect(await painter.paint(text('⠓⠊'))).not.toEqual(await painter.paint(text('⠓⠑')))
  })

  it('are of a known size whatever the drawing says of its own', async () => {
    const wide = '<svg xmlns="http://www.w3.org/2000/svg" width="100000mm" height="9000mm" viewBox="0 0 100000 9000"/>'
    expect(sizeOf(await painterOf().paint(wide)).width).toBeLessThanOrEqual(1500)
  })

  it('are none for what is no drawing of ours, and the next is painted all the same', async () => {
    const painter = painterOf()
    for (const text of ['', '<html/>', '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1"><g>'])
      expect(await painter.paint(text)).toBeNull()
    expect(errors).toHaveLength(3)
    sizeOf(await painter.paint(DRAWING))
  })

  it('are painted one after the other, by the id of the sign', async () => {
    const signs = ['a', 'b', 'c'].map((id) => ({ id, drawing: id === 'b' ? null : DRAWING }))
    expect([...(await painterOf().paintAll(signs)).keys()]).toEqual(['a', 'c'])
  })
})

describe('a painting process that does not do its work', () => {
  it('is killed when it hangs, and the next picture has a new one', async () => {
    const painter = painterOf(
      module('hangs', 'if (svg === "hang") for (;;); process.send({ png: Buffer.from(svg) })'),
      1500,
    )
    expect(Buffer.from((await painter.paint('before')) ?? []).toString()).toBe('before')
    expect(await painter.paint('hang')).toBeNull()
    expect(errors).toEqual(['A picture took longer than 1500 milliseconds.'])
    expect(Buffer.from((await painter.paint('after')) ?? []).toString()).toBe('after')
  })

  it('may abort as a native library does', async () => {
    const painter = painterOf(
      module('aborts', 'if (svg === "abort") process.abort(); process.send({ png: Buffer.from(svg) })'),
    )
    const [dead, alive] = await Promise.all([painter.paint('abort'), painter.paint('after')])
    expect(dead).toBeNull()
    expect(errors).toEqual(['The painting process ended (SIGABRT).'])
    expect(Buffer.from(alive ?? []).toString()).toBe('after')
  })

  it('is replaced when it died between two pictures', async () => {
    const painter = painterOf(
      module('leaves', 'process.send({ png: Buffer.from(String(process.pid)) }); setImmediate(() => process.exit())'),
    )
    const first = Buffer.from((await painter.paint('1')) ?? []).toString()
    await new Promise((resolve) => setTimeout(resolve, 500))
    const second = Buffer.from((await painter.paint('2')) ?? []).toString()
    expect(Number(second)).toBeGreaterThan(0)
    expect(second).not.toBe(first)
  })

  it('need not be there', async () => {
    expect(await painterOf(pathToFileURL(join(folder, 'missing.mjs'))).paint(DRAWING)).toBeNull()
    expect(errors).toHaveLength(1)
  })
})
