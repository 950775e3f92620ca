import { describe, expect, it } from 'vitest'
import { POTTERY_ROOM } from '../../../src/sign/examples.js'
import { SubmittalRequest } from '../../../src/submittals/intake/submittal-json.js'
import { described, file, json, read, SVG } from './uploads.js'

/** Descriptions as JSON. The forms are those of docs/uploads.md; pointers follow RFC 6901. */

const details = async (value: unknown) => (await read(json('signs.json', value))).problems.map(({ detail }) => detail)
const marks = async (value: unknown) => (await read(json('signs.json', value))).signs.map(({ mark }) => mark)

describe('a JSON file', () => {
  it('is one description', async () => {
    const { signs } = await read(json('room.json', POTTERY_ROOM))
    expect(signs).toMatchObject([{ mark: 'P-117', files: ['room.json'], sign: POTTERY_ROOM }])
  })

  it('is an array of them, named by their marks or their place', async () => {
    expect(await marks([POTTERY_ROOM, described('KILN')])).toEqual(['P-117', 'signs sign 2'])
  })

  it('is a list of signs with what a schedule would say, drawings inline or by name, and options', async () => {
    const { signs, problems } = await read(
      json('signs.json', {
        signs: [
          { mark: 'A', location: '117', door: 'D-1', sign: POTTERY_ROOM },
          { mark: 'B', drawing: `\ufeff${SVG}`, options: { use: 'exit-door', scale: 0.5 } },
          { drawing: 'plate.svg' },
        ],
      }),
      file('plate.svg', SVG),
    )
    expect(problems).toEqual([])
    expect(signs.map(({ mark, location, door }) => [mark, location, door])).toEqual([
      ['A', '117', 'D-1'],
      ['B', null, null],
      ['plate', null, null],
    ])
    expect(signs[1]?.options).toEqual({ use: 'exit-door', scale: 0.5 })
    expect(new TextDecoder().decode(signs[1]?.drawing)).toBe(SVG)
    expect(signs[2]?.files).toEqual(['signs.json', 'plate.svg'])
  })

  it('holds an inline drawing in the encoding of text, whatever it declares', async () => {
    const latin = '<?xml version="1.0" encoding="ISO-8859-1"?><svg><text>Tür</text></svg>'
    const { signs } = await read(json('a.json', { mark: 'A', drawing: latin }))
    expect([...(signs[0]?.drawing ?? []).slice(0, 3)]).toEqual([0xef, 0xbb, 0xbf])
  })

  it('loses no sign for another that is wrong, and says where it is', async () => {
    const value = { signs: [{ sign: { ...POTTERY_ROOM, use: 'potery' } }, { sign: POTTERY_ROOM }, { mark: 'C' }, 7] }
    expect(await marks(value)).toEqual(['P-117'])
    expect(await details(value)).toEqual([
      expect.stringMatching(/^“signs.json” holds a sign that cannot be read. At \/signs\/0\/sign\/use: /),
      expect.stringMatching(/At \/signs\/2\/sign: “sign” is missing/),
      expect.stringMatching(/At \/signs\/3: /),
    ])
  })

  it('names a misspelt key, and what was meant', async () => {
    expect(await details({ ...POTTERY_ROOM, letering: [] })).toEqual([
      expect.stringMatching(/At \/letering: .*“lettering”/),
    ])
  })

  it('writes out a few faults of a sign and counts the others', async () => {
    const bad = Object.fromEntries(Array.from({ length: 30 }, (_, i) => [`k${i}`, 1]))
    expect(await details({ ...POTTERY_ROOM, ...bad })).toEqual([expect.stringMatching(/There are 25 more faults\.$/)])
  })

  it('lists a thousand signs that are wrong and counts the others, and reads so many of one file', async () => {
    const all = await details(Array.from({ length: 20_001 }, () => 7))
    expect(all).toHaveLength(1_002)
    expect(all.slice(1_000)).toEqual([
      '“signs.json” holds 19000 more signs that cannot be read.',
      '“signs.json” lists 20001 signs; the first 20000 are read.',
    ])
  })

  it.each([
    ['{"use":', /is not JSON/],
    ['[]', /lists no signs/],
    ['{"signs":[]}', /lists no signs/],
    ['{"signs":7}', /no list/],
    ['{"name":"pottery","version":"1.0.0"}', /holds no sign/],
    ['{"use":"permanent-room","__proto__":{"a":1}}', /not accepted/],
    ['{"constructor":{"prototype":{}}}', /not accepted/],
  ])('of no use is one problem: %s', async (content, says) => {
    const { signs, problems } = await read(file('signs.json', content))
    expect(signs).toEqual([])
    expect(problems).toEqual([
      { file: 'signs.json', row: null, column: null, detail: expect.stringMatching(says) as string },
    ])
  })

  it('in another encoding than UTF-8 is a problem (RFC 8259, 8.1)', async () => {
    const { problems } = await read(file('signs.json', Buffer.from(`{"use":"T\xfcr"}`, 'latin1')))
    expect(problems.map(({ detail }) => detail)).toEqual(['“signs.json” is not JSON in UTF-8.'])
  })

  it('gives its signs although it says more than is read of it, and says so', async () => {
    const value = { standards: ['us-ada-2010'], signs: [{ sign: POTTERY_ROOM }] }
    expect(await marks(value)).toEqual(['P-117'])
    expect(await details(value)).toEqual([expect.stringMatching(/the rest of it was not read/)])
  })

  it('without anything to check is left out', async () => {
    expect(await details({ use: 'permanent-room' })).toEqual([expect.stringMatching(/left out/)])
  })
})

describe('the body of a request', () => {
  it('has its example by its own schema', () => {
    const examples = SubmittalRequest.meta()?.examples as unknown[]
    expect(examples).toHaveLength(1)
    expect(SubmittalRequest.safeParse(examples[0]).success).toBe(true)
  })

  it('is strict', () => {
    expect(SubmittalRequest.safeParse({ signs: [{ sign: POTTERY_ROOM, marke: 'A' }] }).success).toBe(false)
    expect(SubmittalRequest.safeParse({ signs: [] }).success).toBe(false)
  })
})
