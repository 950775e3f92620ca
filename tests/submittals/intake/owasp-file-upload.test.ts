import { describe, expect, it } from 'vitest'
import { code } from '../../../src/report/html-tag.js'
import { csvTable } from '../../../src/report/csv-table.js'
import { UPLOAD_LIMITS } from '../../../src/submittals/intake/limits.js'
import { described, file, json, rawZip, read, schedule, SVG, zip } from './uploads.js'

/**
 * The OWASP File Upload Cheat Sheet, item by item, as far as it is about what a file is and is called; the quoted names are its
 * headings and examples, from memory of the sheet. Who may upload, and how much at once, is tested with the service. Nothing is ever written or served
 * under a client's name: files are kept by the digest of their content.
 */

const png = Buffer.from('\x89PNG\r\n\x1a\n\0\0\0\rIHDR', 'latin1')
const marks = async (...files: Parameters<typeof read>) => (await read(...files)).signs.map(({ mark }) => mark)
const details = async (...files: Parameters<typeof read>) => (await read(...files)).problems.map(({ detail }) => detail)

describe('Extension validation: a name neither lets a file in nor keeps it out', () => {
  it.each(['H-204.jpg', 'H-204', 'H-204.php', 'H-204.SvG', 'H-204.'])(
    'a drawing called %s is a drawing',
    async (name) => {
      expect(await marks(file(name, SVG))).toHaveLength(1)
    },
  )

  it.each(['H-204.svg', 'H-204.csv', 'H-204.json', 'H-204.zip', 'H-204.xlsx'])(
    'a picture called %s is none',
    async (name) => {
      expect(await marks(file(name, png))).toEqual([])
      expect(await details(file(name, png))).toEqual([expect.stringMatching(/is a PNG picture/)])
    },
  )
})

describe('Double extensions, e.g. .jpg.php', () => {
  it.each(['H-204.svg.exe', 'H-204.exe.svg', 'H-204.svg%00.php', 'H-204.svg;.asp', 'H-204.svg. ..'])(
    '%s is what its content is',
    async (name) => {
      expect(await marks(file(name, SVG))).toHaveLength(1)
      expect(await marks(file(name, 'MZ\x90\0'))).toEqual([])
    },
  )
})

describe('Null bytes, e.g. .php%00.jpg', () => {
  it('does not end a name, and is not in one that is kept', async () => {
    const loose = await read(file('H-204.svg\0.php', SVG))
    const packed = await read(file('set.zip', rawZip([{ name: 'H-204.svg\0.php' }])))
    expect(loose.signs.map(({ files }) => files)).toEqual([['H-204.svg.php']])
    expect(packed.signs.map(({ files }) => files)).toEqual([['set.zip/H-204.svg.php']])
  })
})

describe('Content-Type validation: it can be spoofed', () => {
  it('is not even known here: what is sent as a drawing is read as the schedule that it is', async () => {
    expect(await marks(file('drawing.svg', schedule('H-204,,KILN').bytes))).toEqual(['H-204'])
  })
})

describe('File signature validation, which is not enough alone', () => {
  it('a file that only begins like a zip is refused', async () => {
    expect(await details(file('set.zip', 'PK\x03\x04 and nothing more'))).toEqual([expect.stringMatching(/damaged/)])
  })
  it('a drawing that only begins like one stays a drawing, and the check says what is wrong with it', async () => {
    expect(await marks(file('H-204.svg', '<svg'))).toEqual(['H-204'])
  })
})

describe('Filename safety', () => {
  it.each(['../../etc/passwd', '..\\..\\H-204.svg', '/etc/H-204.svg', 'C:\\H-204.svg', '....//H-204.svg'])(
    'a path is no name: %s',
    async (name) => {
      const [{ files: [kept = ''] = [] } = {}] = (await read(file(name, SVG))).signs
      expect(kept).toMatch(/^(?:H-204\.svg|passwd)$/u)
    },
  )

  it.each(['CON.svg', 'nul', 'LPT1.svg', 'aux.json.svg'])(
    'the name of a device is a name like others, since none is written: %s',
    async (name) => {
      expect((await read(file(name, SVG))).signs.map(({ files }) => files)).toEqual([[name]])
    },
  )

  it('a hidden file, or one that steers a server, is passed over in a zip', async () => {
    expect(await marks(zip('set.zip', { '.htaccess': SVG, 'a/.svg': SVG, 'H-204.svg': SVG }))).toEqual(['H-204'])
  })

  it('a long name is cut', async () => {
    const [sign] = (await read(file(`${'a'.repeat(5_000)}.svg`, SVG))).signs
    expect(sign?.files[0]?.length).toBeLessThanOrEqual(200)
    expect(sign?.mark.length).toBeLessThanOrEqual(200)
  })

  it('characters that turn the direction of text round them are not in a name that is kept', async () => {
    const { signs } = await read(file('H-204\u202egvs.exe', SVG), file('H\u2066-205\u200b.svg', SVG))
    expect(signs.flatMap(({ files, mark }) => [...files, mark]).join('')).not.toMatch(/\p{Cf}/u)
  })

  it('markup in a name is text, and a form of the evidence escapes it', async () => {
    const { signs, problems } = await read(file('<img src=x onerror=alert(1)>.svg', SVG), file('<script>.svg', png))
    const shown = [...signs.flatMap(({ files }) => files), ...problems.map(({ detail }) => detail)]
    expect(shown.join()).toContain('<script>')
    for (const text of shown) expect(code(text).text).not.toMatch(/<(?:img|script)/u)
  })

  it('a formula in a name is text, and the CSV of the evidence makes it inert', async () => {
    const { signs } = await read(file('=HYPERLINK("http:evil.example","x").svg', SVG), file('@SUM(1+1).svg', SVG))
    expect(signs).toHaveLength(2)
    const table = csvTable(
      ['mark'],
      signs.map(({ mark }) => [mark]),
    )
    expect(table).not.toMatch(/"[=@+-]/u)
    expect(table).toContain("'=HYPERLINK")
  })
})

describe('File content validation: files that are two things at once', () => {
  it('a drawing with a zip behind it is a drawing, and nothing is unpacked', async () => {
    const both = Buffer.concat([Buffer.from(SVG), rawZip([{ name: 'hidden.svg' }])])
    expect(await marks(file('both.svg', both))).toEqual(['both'])
  })
  it('a zip with something behind it is refused', async () => {
    const both = Buffer.concat([rawZip([{ name: 'a.svg' }]), Buffer.from('<?php ?>')])
    expect(await details(file('both.zip', both))).toEqual([expect.stringMatching(/damaged/)])
  })
  it('a picture with a drawing behind it is a picture', async () => {
    expect(await marks(file('both.svg', Buffer.concat([png, Buffer.from(SVG)])))).toEqual([])
  })
  it('an empty file is a problem', async () => {
    expect(await details(file('H-204.svg', ''))).toEqual(['“H-204.svg” is empty.'])
  })
})

describe('Malicious files: XML external entities, scripts in SVG', () => {
  const hostile = [
    '<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]><svg xmlns="http://www.w3.org/2000/svg"><text>&x;</text></svg>',
    '<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"><script>alert(1)</script></svg>',
  ]
  it.each(hostile)('are kept as they came and nothing of them is expanded, run or told: %s', async (content) => {
    const { signs, problems } = await read(file('H-204.svg', content))
    expect(problems).toEqual([])
    expect(new TextDecoder().decode(signs[0]?.drawing)).toBe(content)
    expect(JSON.stringify({ ...signs[0], drawing: null })).not.toMatch(/alert|passwd/u)
  })
  it('a web page is no drawing', async () => {
    expect(await details(file('H-204.svg', '<!doctype html><script>alert(1)</script>'))).toEqual([
      '“H-204.svg” is a web page. Send the drawing alone, as SVG.',
    ])
  })
})

describe('File size: upload limits', () => {
  it('a drawing of a byte too many is a problem that says so, and one of a byte less is a sign', async () => {
    const drawing = (size: number) => file('H-204.svg', SVG.padEnd(size))
    expect(await marks(drawing(UPLOAD_LIMITS.drawing))).toEqual(['H-204'])
    expect(await marks(drawing(UPLOAD_LIMITS.drawing + 1))).toEqual([])
    expect(await details(drawing(UPLOAD_LIMITS.drawing + 1))).toEqual([
      expect.stringMatching(/has 5000001 bytes; at most 5000000/),
    ])
  })
  it('so is JSON, one file by itself and all together', async () => {
    const signs = (name: string, size: number) => file(name, JSON.stringify(described('KILN')).padEnd(size))
    expect(await details(signs('a.json', UPLOAD_LIMITS.json + 1))).toEqual([expect.stringMatching(/at most 6000000/)])
    const most = Array.from({ length: 9 }, (_, i) => signs(`${i}.json`, UPLOAD_LIMITS.json))
    expect(await details(...most)).toEqual([expect.stringMatching(/^“8.json” is left out: at most 48000000/)])
  })
  it('and a schedule', async () => {
    const long = file('rooms.csv', 'mark,drawing,text\n'.padEnd(UPLOAD_LIMITS.schedule + 1, 'x'))
    expect(await details(long)).toEqual([expect.stringMatching(/at most 10000000/)])
  })
})

describe('ZIP bombs', () => {
  it('one that says what it unpacks to is not opened', async () => {
    const zeros = Buffer.from(SVG.padEnd(UPLOAD_LIMITS.drawing))
    const bomb = rawZip([1, 2, 3].map((i) => ({ name: `${i}.svg`, content: zeros })))
    expect(bomb.length).toBeLessThan(30_000)
    expect(await details(file('bomb.zip', bomb))).toEqual([expect.stringMatching(/more than 200 times its size/)])
  })
  it('one that says less is stopped where it says more', async () => {
    const bomb = rawZip([
      { name: 'a.svg', content: Buffer.from(SVG.padEnd(50_000_000)), says: 1_000 },
      { name: 'b.svg' },
    ])
    expect(await marks(file('bomb.zip', bomb))).toEqual(['b'])
    expect(await details(file('bomb.zip', bomb))).toEqual([expect.stringMatching(/not what the zip says/)])
  })
  it('one file of it that is too large is left out, and the others are read', async () => {
    const large = rawZip([{ name: 'a.svg', content: Buffer.from(SVG.padEnd(50_000_000)) }, { name: 'b.svg' }])
    expect(await marks(file('set.zip', large))).toEqual(['b'])
    expect(await details(file('set.zip', large))).toEqual([expect.stringMatching(/has 50000000 bytes/)])
  })
  it('zips inside zips are not opened', async () => {
    const nested = zip('a.zip', { 'b.zip': zip('b.zip', { 'c.zip': zip('c.zip', { 'd.svg': SVG }).bytes }).bytes })
    expect(await details(nested)).toEqual([expect.stringMatching(/zip inside a zip/)])
  })
  it('many entries that share one piece of data unpack to no more than is allowed', async () => {
    // D. Fifield, A better zip bomb, WOOT 2019: entries may overlap. Here each says the whole of what it unpacks to.
    const packed = rawZip(Array.from({ length: 2_000 }, (_, i) => ({ name: `${i}.svg`, says: 5_000_000 })))
    expect(await details(file('bomb.zip', packed))).toEqual([
      expect.stringMatching(/may unpack to 256000000 bytes|200 times/),
    ])
  })
})

describe('Zip slip', () => {
  it.each(['../../H-204.svg', '/tmp/H-204.svg', '..\\H-204.svg', 'a/../../H-204.svg'])(
    '%s is refused by name, and the file beside it is read',
    async (name) => {
      const packed = file('set.zip', rawZip([{ name }, { name: 'H-205.svg' }]))
      expect(await marks(packed)).toEqual(['H-205'])
      expect(await details(packed)).toEqual([expect.stringMatching(/leads out of its folder/)])
    },
  )
  it('a link is refused', async () => {
    const link = rawZip([
      { name: 'H-204.svg', content: Buffer.from('/etc/passwd'), madeBy: 3, attributes: 0o120777 << 16 },
    ])
    expect(await details(file('set.zip', link))).toEqual([expect.stringMatching(/is a link/)])
  })
})

describe('Many files', () => {
  it('more than are read of one upload are problems by name', async () => {
    const empty = Array.from({ length: UPLOAD_LIMITS.files + 2 }, (_, i) => file(`${i}.svg`, SVG))
    expect(await details(...empty)).toEqual([
      expect.stringMatching(/^“40000.svg” is left out/),
      expect.stringMatching(/^“40001.svg”/),
      expect.stringMatching(/has 40000 signs; 20000 are kept/),
    ])
  })
  it('a zip that lists more is refused before its files are read', async () => {
    const packed = rawZip(
      Array.from({ length: UPLOAD_LIMITS.files + 1 }, (_, i) => ({ name: `${i}.svg`, content: Buffer.from('<svg/>') })),
    )
    expect(await details(file('set.zip', packed))).toEqual([expect.stringMatching(/at most 40000 files/)])
  })
})

describe('JSON that reaches for a prototype', () => {
  it('is refused', async () => {
    expect(await marks(file('a.json', '{"use":"permanent-room","__proto__":{"polluted":1}}'))).toEqual([])
    expect(({} as { polluted?: number }).polluted).toBeUndefined()
  })
  it('and a name that is one of an object’s own is a name', async () => {
    expect(await marks(file('__proto__.svg', SVG), json('constructor.json', described('KILN')))).toEqual([
      'constructor',
      '__proto__',
    ])
  })
})
