import { deflateRawSync } from 'node:zlib'
import { strToU8, zipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { UPLOAD_LIMITS } from '../../../src/submittals/intake/limits.js'
import { file, rawZip, read, schedule, SVG, zip, type RawEntry } from './uploads.js'

/** Zips as they come and as they lie. What each field means: PKWARE APPNOTE 6.3.10, section 4. */

const svg = strToU8(SVG)

/** The upload of one such entry between two sound ones: whatever is wrong with it, those two are signs. */
async function between(entry: RawEntry) {
  const bytes = rawZip([{ name: 'first.svg' }, entry, { name: 'last.svg' }])
  const { signs, problems } = await read(file('set.zip', bytes))
  expect(signs.map(({ mark }) => mark)).toEqual(expect.arrayContaining(['first', 'last']))
  return {
    others: signs.filter(({ mark }) => mark !== 'first' && mark !== 'last'),
    problems: problems.map((one) => `${one.file}: ${one.detail}`),
  }
}

describe('one entry of a zip', () => {
  it('is a sign when nothing is wrong with it, deflated or stored', async () => {
    expect((await between({ name: 'H-204.svg' })).others.map(({ drawing }) => drawing)).toEqual([svg])
    expect((await between({ name: 'H-204.svg', method: 0 })).others.map(({ drawing }) => drawing)).toEqual([svg])
  })

  const broken: [what: string, entry: RawEntry, says: RegExp][] = [
    ['holds more than it says', { name: 'x.svg', says: svg.length - 1 }, /not what the zip says/],
    ['holds less than it says', { name: 'x.svg', says: svg.length + 1 }, /not what the zip says/],
    [
      'is stored and holds more than it says',
      { name: 'x.svg', method: 0, says: svg.length - 1 },
      /not what the zip says/,
    ],
    ['says that it is empty and is not', { name: 'x.svg', says: 0 }, /not what the zip says/],
    ['has another check sum', { name: 'x.svg', crc: 7 }, /not what the zip says/],
    ['is no deflated data', { name: 'x.svg', packed: strToU8('\xff\xff\xff') }, /not what the zip says/],
    ['breaks off', { name: 'x.svg', packed: deflateRawSync(svg).subarray(0, 20) }, /not what the zip says/],
    ['is encrypted (flag bit 0)', { name: 'x.svg', flags: 1 }, /encrypted/],
    ['is packed by another method (14, LZMA)', { name: 'x.svg', method: 14 }, /method that is not read/],
    ['is a symbolic link (Unix mode 0120777)', { name: 'x.svg', madeBy: 3, attributes: 0o120777 << 16 }, /is a link/],
    ['is a device (Unix mode 020666)', { name: 'x.svg', madeBy: 3, attributes: 0o020666 << 16 }, /a device/],
    ['has the name of a folder, and content', { name: 'x.svg/' }, /folder with content/],
    ['leads out of its folder', { name: 'a/../../x.svg' }, /leads out of its folder/],
    ['leads out of it by backslashes', { name: '..\\x.svg' }, /leads out of its folder/],
    ['has an absolute name', { name: '/x.svg' }, /leads out of its folder/],
    ['names a drive', { name: 'c:\\x.svg' }, /leads out of its folder/],
    ['is empty', { name: 'x.svg', content: new Uint8Array() }, /is empty/],
    ['is a zip', { name: 'x.svg', content: rawZip([{ name: 'y.svg' }]) }, /zip inside a zip/],
    ['says that it is too large', { name: 'x.svg', says: 50_000_000 }, /at most \d+ are read/],
  ]
  it.each(broken)('is a problem that names it when it %s', async (_, entry, says) => {
    const { others, problems } = await between(entry)
    expect(others).toEqual([])
    expect(problems).toEqual([expect.stringMatching(says)])
    expect(problems[0]).toMatch(/^set\.zip\/.*x\.svg: “set\.zip\//u)
  })

  it.each(['__MACOSX/._x.svg', '.DS_Store', 'level 1/.x.svg', 'Thumbs.db', 'desktop.ini', 'folder/'])(
    'is passed over as left by a system: %s',
    async (name) => {
      const content = name === 'folder/' ? new Uint8Array() : svg
      expect(await between({ name, content, method: 0 })).toEqual({ others: [], problems: [] })
    },
  )

  it('that stands twice under one name is not read, neither the first nor the second', async () => {
    const { signs, problems } = await read(
      file('set.zip', rawZip([{ name: 'a.svg' }, { name: 'b.svg' }, { name: 'a.svg' }])),
    )
    expect(signs.map(({ mark }) => mark)).toEqual(['b'])
    expect(problems.map(({ file: name }) => name)).toEqual(['set.zip/a.svg'])
  })

  // 0x81 is u umlaut in code page 437 (IBM); the flag 0x800 says UTF-8; many writers leave it out.
  it.each([
    ['code page 437', { name: new Uint8Array([0x54, 0x81, 0x72, 0x2e, 0x73, 0x76, 0x67]) }],
    ['UTF-8 that says so', { name: 'Tür.svg', flags: 0x800 }],
    ['UTF-8 that does not say so', { name: 'Tür.svg' }],
  ])('has its name read from %s', async (_, entry) => {
    expect((await between(entry)).others.map(({ mark }) => mark)).toEqual(['Tür'])
  })

  it('has folders parted by backslashes where an old program packed it', async () => {
    expect((await between({ name: 'level 1\\H-204.svg' })).others.map(({ files }) => files)).toEqual([
      ['set.zip/level 1/H-204.svg'],
    ])
  })
})

describe('a whole zip', () => {
  const wholes: [what: string, bytes: Uint8Array, says: RegExp][] = [
    ['has no directory', rawZip([{ name: 'a.svg' }]).subarray(0, 100), /directory cannot be read/],
    [
      'has more entries than its end says',
      rawZip([{ name: 'a.svg' }, { name: 'b.svg' }], 1),
      /directory cannot be read/,
    ],
    ['has fewer entries than its end says', rawZip([{ name: 'a.svg' }], 2), /directory cannot be read/],
    ['is strongly encrypted (flag bit 6)', rawZip([{ name: 'a.svg', flags: 0x41 }]), /encrypted/],
    ['holds no files', rawZip([]), /holds no files/],
    [
      'is a document of another program',
      zipSync({ '[Content_Types].xml': svg, 'word/document.xml': svg }),
      /no workbook/,
    ],
    ['is an OpenDocument', zipSync({ 'META-INF/manifest.xml': svg, 'content.xml': svg }), /OpenDocument/],
    [
      'lists too many files',
      rawZip(
        Array.from({ length: 3 }, (_, i) => ({ name: `${i}` })),
        60_001,
      ),
      /may have 60000 entries/,
    ],
  ]
  it.each(wholes)('is one problem when it %s, and the file beside it is read', async (_, bytes, says) => {
    const { signs, problems } = await read(file('set.zip', bytes), file('H-204.svg', SVG))
    expect(signs.map(({ mark }) => mark)).toEqual(['H-204'])
    expect(problems).toEqual([
      { file: 'set.zip', row: null, column: null, detail: expect.stringMatching(says) as string },
    ])
  })

  it('may unpack to so much, and not a byte more', async () => {
    const entry = { name: '', content: new Uint8Array(1), says: UPLOAD_LIMITS.drawing }
    const many = (count: number) => Array.from({ length: count }, (_, i) => ({ ...entry, name: `${i}.svg` }))
    const padding = { name: 'pad.svg', content: new Uint8Array(3_000_000).map((_, i) => i * 7919), method: 0 }
    const fits = Math.floor((UPLOAD_LIMITS.unpacked - padding.content.length) / entry.says)
    const below = await read(file('set.zip', rawZip([padding, ...many(fits)])))
    expect(below.problems.length).toBe(fits + 1)
    const above = await read(file('set.zip', rawZip([padding, ...many(fits + 1)])))
    expect(above.problems.map(({ detail }) => detail)).toEqual([expect.stringMatching(/may unpack to 256000000 bytes/)])
  })

  it('is a schedule when it is a workbook, whatever its name', async () => {
    const names: string[] = []
    const { readUpload } = await import('../../../src/submittals/intake/read-upload.js')
    const workbook = zipSync({ '[Content_Types].xml': svg, 'xl/workbook.xml': svg })
    await readUpload([file('drawing.svg', workbook), zip('set.zip', { 'rooms.zip': workbook })], async ({ name }) => {
      names.push(name)
      return { rows: [], doors: [], problems: [] }
    })
    expect(names).toEqual(['drawing.svg', 'set.zip/rooms.zip'])
  })

  it('gives each file memory of its own, which can move to another thread', async () => {
    const { signs } = await read(file('set.zip', rawZip([{ name: 'a.svg' }, { name: 'b.svg', method: 0 }])), schedule())
    for (const { drawing } of signs) expect(drawing?.buffer.byteLength).toBe(svg.length)
  })
})
