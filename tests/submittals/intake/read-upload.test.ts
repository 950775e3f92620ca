import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { strToU8, zipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { readUpload } from '../../../src/submittals/intake/read-upload.js'
import { readSchedule } from '../../../src/submittals/schedule/read.js'
import { described, file, json, rawZip, read, schedule, SVG, type RawEntry, zip } from './uploads.js'

/** Whole uploads. Zips are written by fflate, an independent writer; what an upload must give is in docs/uploads.md. */

const examples = new URL('../../../docs/examples/', import.meta.url)
const ours = readdirSync(examples)
  .filter((name) => /\.(svg|json)$/u.test(name))
  .map((name) => file(name, readFileSync(new URL(name, examples))))

describe('an upload', () => {
  it('of the examples of the documentation gives one sign for each name, loose or in a zip', async () => {
    const names = new Set(ours.map(({ name }) => name.replace(/\.\w+$/u, '')))
    const loose = await read(...ours)
    const packed = await read(
      zip('set.zip', Object.fromEntries(ours.map(({ name, bytes }) => [`studio/${name}`, bytes]))),
    )
    for (const { signs, problems } of [loose, packed]) {
      expect(problems).toEqual([])
      expect(signs).toHaveLength(names.size)
      for (const { sign } of signs) expect(sign).toBeDefined()
    }
    expect(packed.signs.map(({ mark }) => mark)).toEqual(loose.signs.map(({ mark }) => mark))
    expect(packed.signs.filter(({ drawing }) => drawing)).toHaveLength(
      ours.filter(({ name }) => name.endsWith('.svg')).length,
    )
  })

  it('is read with the product’s own reader of schedules', async () => {
    const rooms = file(
      'rooms.csv',
      'Sign mark;Room number;Door number;Use;Text;Drawing file\nH-204;204;D-204;permanent room;KILN ROOM;plate 7\nH-205;205;D-205;permanent room;GLAZE LAB;\n',
    )
    const { signs, doors, problems } = await readUpload(
      [rooms, file('plate 7.svg', SVG), file('h205.svg', SVG)],
      readSchedule,
    )
    expect(problems).toEqual([])
    expect(
      signs.map(({ mark, location, door, files, drawing }) => [mark, location, door, files, drawing !== undefined]),
    ).toEqual([
      ['H-204', '204', 'D-204', ['rooms.csv', 'plate 7.svg'], true],
      ['H-205', '205', 'D-205', ['rooms.csv', 'h205.svg'], true],
    ])
    expect(doors.map(({ door, row }) => [door, row])).toEqual([
      ['D-204', 2],
      ['D-205', 3],
    ])
  })

  it('gives the doors of its schedules, whether or not a row becomes a sign', async () => {
    const { signs, doors } = await read(schedule(',,,D-1', 'A,,KILN,D-2'))
    expect(signs).toHaveLength(1)
    expect(doors.map(({ door }) => door)).toEqual(['D-1', 'D-2'])
  })

  it.each([
    ['no files', []],
    ['an empty file', [file('a.svg', '')]],
    ['a picture', [file('a.svg', Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'))]],
    ['a zip of pictures', [zip('a.zip', { 'a.svg': Buffer.from('\x89PNG\r\n\x1a\n', 'latin1') })]],
    ['a zip of what systems leave', [zip('a.zip', { '__MACOSX/a': 'x' })]],
    ['a schedule of empty rows', [schedule(',,')]],
  ])('of %s has no signs, and a problem that says why', async (_, files) => {
    const { signs, problems } = await read(...files)
    expect(signs).toEqual([])
    expect(problems.length).toBeGreaterThan(0)
    for (const { detail } of problems) expect(detail).toMatch(/^.{15,}\.$/su)
  })

  it('keeps so many signs, and says from which on they are left out', async () => {
    const rooms = (count: number) => Array.from({ length: count }, (_, i) => described(`ROOM ${i}`, { mark: `M${i}` }))
    const { signs, problems } = await read(json('a.json', rooms(20_000)), json('b.json', rooms(1)))
    expect(signs).toHaveLength(20_000)
    expect(problems.map(({ detail }) => detail)).toEqual([
      expect.stringMatching(/has 20001 signs; 20000 are kept, those before “M0”/u),
    ])
  })

  it('gives the same for the same files', async () => {
    expect(await read(...ours, schedule('A,,KILN'))).toEqual(await read(...ours, schedule('A,,KILN')))
  })
})

/** What may lie in a zip, with what must become of it. */
const content = fc.oneof(
  fc.constant({ bytes: strToU8(SVG), becomes: 'sign' }),
  fc.constant({ bytes: strToU8(JSON.stringify(described('KILN'))), becomes: 'sign' }),
  fc.constant({ bytes: strToU8('{"use":7}'), becomes: 'problem' }),
  fc.constant({ bytes: new Uint8Array(), becomes: 'problem' }),
  fc.constant({ bytes: zipSync({ 'a.svg': strToU8(SVG) }), becomes: 'problem' }),
  fc
    .uint8Array({ minLength: 1, maxLength: 60 })
    .map((bytes) => ({ bytes: Uint8Array.of(0, 0, ...bytes), becomes: 'problem' })),
)
const name = fc
  .array(
    fc.string({ unit: fc.constantFrom('a', 'B', '1', '-', ' ', 'é', '#', '=', '<'), minLength: 1, maxLength: 6 }),
    { minLength: 1, maxLength: 3 },
  )
  .map((parts) => parts.join('/'))
  .filter((path) => path.split('/').every((part) => part.trim() !== ''))

describe('no file of a zip is lost', () => {
  it('each is a sign or a problem, whatever it is called', async () => {
    await fc.assert(
      fc.asyncProperty(fc.dictionary(name, content, { maxKeys: 12 }), async (entries) => {
        const packed = Object.entries(entries).map(([key, { bytes }], index) => [`${index} ${key}`, bytes] as const)
        const { signs, problems } = await read(file('set.zip', zipSync(Object.fromEntries(packed))))
        const told = new Set([...signs.flatMap(({ files }) => files), ...problems.map((one) => one.file)])
        expect(told.size).toBe(packed.length || 1)
        const expected = Object.values(entries).map(({ becomes }) => becomes)
        expect(signs.flatMap(({ files }) => files)).toHaveLength(expected.filter((one) => one === 'sign').length)
      }),
      { numRuns: 60 },
    )
  })

  it('each is a sign or a problem when what the zip says of it is changed at random', async () => {
    const lie = fc.record<RawEntry>(
      {
        name: fc.constant('x.svg'),
        says: fc.nat(300),
        crc: fc.nat(),
        method: fc.constantFrom(0, 8, 9, 12),
        flags: fc.constantFrom(0, 1, 8, 0x800),
        madeBy: fc.constantFrom(0, 3),
        attributes: fc.nat(),
      },
      { requiredKeys: ['name'] },
    )
    await fc.assert(
      fc.asyncProperty(fc.array(lie, { maxLength: 6 }), async (lies) => {
        const entries = lies.map((one, index) => ({ ...one, name: `${index}.svg` }))
        const { signs, problems } = await read(file('set.zip', rawZip([{ name: 'sound.svg' }, ...entries])))
        expect(signs.flatMap(({ files }) => files)).toContain('set.zip/sound.svg')
        const told = new Set([...signs.flatMap(({ files }) => files), ...problems.map((one) => one.file)])
        expect(told.size).toBe(entries.length + 1)
      }),
      { numRuns: 100 },
    )
  })

  it('a zip with any byte changed is read or refused, and never throws', async () => {
    const sound = zipSync({ 'a.svg': strToU8(SVG), 'b.json': strToU8(JSON.stringify(described('KILN'))) })
    await fc.assert(
      fc.asyncProperty(fc.nat(sound.length - 1), fc.nat(255), async (at, value) => {
        const changed = sound.slice()
        changed[at] = value
        const { signs, problems } = await read(file('set.zip', changed))
        expect(signs.length + problems.length).toBeGreaterThan(0)
      }),
      { numRuns: 300 },
    )
  })
})
