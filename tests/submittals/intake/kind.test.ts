import { readdirSync, readFileSync } from 'node:fs'
import * as zlib from 'node:zlib'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { crc32 } from '../../../src/submittals/intake/crc-32.js'
import { kindOf } from '../../../src/submittals/intake/kind.js'

const text = (content: string) => new TextEncoder().encode(content)
const kind = (content: string | Uint8Array) => kindOf(typeof content === 'string' ? text(content) : content).kind

const examples = new URL('../../../docs/examples/', import.meta.url)
const pictures = new URL('../../drawings/svg/', import.meta.url)
const drawings = [examples, pictures].flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.svg'))
    .map((name) => new URL(name, folder)),
)

describe('the kind of a file', () => {
  it('is drawing for every drawing that we have', () => {
    expect(drawings.length).toBeGreaterThan(10)
    for (const drawing of drawings) expect(kind(readFileSync(drawing)), drawing.pathname).toBe('drawing')
  })

  // XML 1.0, 2.8: what may stand before the root.
  it.each([
    '<svg/>',
    '\ufeff  <svg xmlns="http://www.w3.org/2000/svg">',
    '<?xml version="1.0"?><!-- a > b --><svg>',
    '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd"><svg >',
    '<!DOCTYPE svg [<!ENTITY ns "http://www.w3.org/2000/svg">]><svg:svg xmlns:svg="&ns;">',
  ])('is drawing: %s', (content) => {
    expect(kind(content)).toBe('drawing')
  })

  it('is drawing where the root cannot be found, so that its reader says what is wrong with it', () => {
    for (const content of ['<!-- open', '<?xml', '<!DOCTYPE svg [', '<', '<svg', '< svg>', '<!DOCTYPE svg [ ] x'])
      expect(kind(content), content).toBe('drawing')
  })

  it('is drawing in UTF-16, with a byte order mark and without', () => {
    expect(kind(Buffer.from('<svg/>', 'utf16le'))).toBe('drawing')
    expect(kind(Buffer.from('\ufeff<svg/>', 'utf16le'))).toBe('drawing')
    expect(kind(Buffer.from('<svg/>', 'utf16le').swap16())).toBe('drawing')
  })

  it('is none for a web page or other XML', () => {
    expect(kind('<!DOCTYPE html><html><svg/></html>')).toBeNull()
    expect(kind('<?xml version="1.0"?><Project><svg/></Project>')).toBeNull()
    expect(kind('<notsvg:svgs/>')).toBeNull()
  })

  it('is JSON by its first character, text otherwise', () => {
    expect(kind(' {"use":"permanent-room"}')).toBe('json')
    expect(kind('\ufeff[')).toBe('json')
    expect(kind('Mark;Text\nH-204;Kiln')).toBe('text')
    expect(kind(Buffer.from('Mark\tTür\n', 'latin1'))).toBe('text')
  })

  it('is none for nothing, blanks, and bytes that are no text', () => {
    expect(kind('')).toBeNull()
    expect(kind(' \r\n\t')).toBeNull()
    expect(kind(new Uint8Array([1, 2, 3, 0, 5]))).toBeNull()
  })

  // The magic numbers of file(1), from memory of its documentation.
  it.each([
    ['a PDF', '%PDF-1.7'],
    ['a PNG picture', '\x89PNG\r\n'],
    ['a JPEG picture', '\xff\xd8\xff\xe0'],
    ['compressed with gzip', '\x1f\x8b\x08'],
    ['a RAR archive', 'Rar!\x1a'],
    ['an old Office document', '\xd0\xcf\x11\xe0'],
    ['a program', 'MZ\x90'],
  ])('is none, and says so, for %s', (name, magic) => {
    expect(kindOf(Buffer.from(magic, 'latin1'))).toMatchObject({
      kind: null,
      why: expect.stringContaining(name) as string,
    })
  })

  it('is told of any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(['drawing', 'zip', 'json', 'text', null]).toContain(kind(bytes))
      }),
      { numRuns: 300 },
    )
  })
})

describe('the check sum of zips', () => {
  it('has the check value of CRC-32/ISO-HDLC: CBF43926 for 123456789 (catalogue of parametrised CRC algorithms)', () => {
    expect(crc32(text('123456789'))).toBe(0xcbf43926)
  })

  it.skipIf(typeof zlib.crc32 !== 'function')('is that of zlib for any bytes', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => crc32(bytes) === zlib.crc32(bytes)))
  })
})
