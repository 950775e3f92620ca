import fc from 'fast-check'
import svgpath from 'svgpath'
import { describe, expect, it } from 'vitest'
import { readPathData, type PathSink } from '../../src/drawing/path-data.js'

/** Path data against svgpath, an independent reader of them, and against the grammar of SVG 1.1, 8.3.9. */

type Segment = (string | number)[]

function read(data: string): { segments: Segment[]; complete: boolean } {
  const segments: Segment[] = []
  const sink: PathSink = {
    move: (...to) => void segments.push(['M', ...to]),
    line: (...to) => void segments.push(['L', ...to]),
    cubic: (...points) => void segments.push(['C', ...points]),
    quadratic: (...points) => void segments.push(['Q', ...points]),
    arc: (rx, ry, turn, large, positive, x, y) => void segments.push(['A', rx, ry, turn, +large, +positive, x, y]),
    close: () => void segments.push(['Z']),
  }
  return { complete: readPathData(data, sink), segments }
}

/** The same by svgpath. It has no lines along the axes of their own here, and its closing is always a capital. */
function oracle(data: string): { segments: Segment[]; complete: boolean } {
  const path = svgpath(data)
  const complete = !('err' in path && path.err !== '')
  const segments: Segment[] = []
  path
    .abs()
    .unshort()
    .iterate((segment, _, x, y) => {
      const [command, ...numbers] = [...segment] as Segment
      if (command === 'H') segments.push(['L', numbers[0], y])
      else if (command === 'V') segments.push(['L', x, numbers[0]])
      else if (command === 'z' || command === 'Z') segments.push(['Z'])
      else segments.push([...segment])
    })
  return { complete, segments }
}

const COUNTS = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, t: 2, a: 7, z: 0 } as const
type Letter = keyof typeof COUNTS

/** svgpath refuses leading zeros and takes a point for a number, both against the grammar. */
const ITS_OWN_WAY = /(^|[^\d.])0\d|(^|\D)\.(\D|$)/

const NUMBER = fc.oneof(
  fc.integer({ min: -999, max: 999 }).map(String),
  fc.integer({ min: -99999, max: 99999 }).map((n) => (n / 1000).toString()),
  fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e6, max: 1e6 }).map(String),
  fc.constantFrom(
    '.5',
    '-.25',
    '+3',
    '7.',
    '1e2',
    '-2.5E-3',
    '0',
    '-0',
    '12345678901234567.125',
    '0.1234567890123456789',
  ),
)
const BETWEEN = fc.constantFrom(' ', ',', ' , ', '\n\t', '\r\n')

const COMMAND = fc
  .tuple(fc.constantFrom(...(Object.keys(COUNTS) as Letter[])), fc.boolean(), fc.integer({ min: 1, max: 3 }))
  .chain(([letter, capital, sets]) => {
    const set = fc.tuple(
      ...Array.from({ length: COUNTS[letter] }, (_, i) =>
        letter === 'a' && (i === 3 || i === 4) ? fc.constantFrom('0', '1') : NUMBER,
      ),
    )
    const numbers = letter === 'z' ? fc.constant('') : listOf(fc.array(set, { minLength: sets, maxLength: sets }))
    return numbers.map((text) => (capital ? letter.toUpperCase() : letter) + text)
  })

const listOf = (sets: fc.Arbitrary<string[][]>): fc.Arbitrary<string> =>
  fc.tuple(sets, BETWEEN).map(([list, between]) => list.flat().join(between))

const PATH = fc.array(COMMAND, { maxLength: 8 }).map((commands) => `M1 2${commands.join('')}`)

describe('path data', () => {
  it('of any legal kind are those that svgpath reads, to the last bit', () => {
    fc.assert(
      fc.property(PATH, (data) => {
        expect(read(data).complete).toBe(true)
        expect(read(data)).toEqual(oracle(data))
      }),
      { numRuns: 1500, seed: 7 },
    )
  })

  it('that break off are read as far as svgpath reads them', () => {
    const torn = fc.tuple(PATH, fc.nat(), fc.constantFrom('', 'x', ',', '-', '2 ', 'L', 'A1 1 0 2', 'e', '#', 'Z9'))
    fc.assert(
      fc.property(torn, ([data, at, tail]) => {
        const text = data.slice(0, at % (data.length + 1)) + tail
        fc.pre(!ITS_OWN_WAY.test(text))
        expect(read(text)).toEqual(oracle(text))
      }),
      { numRuns: 1500, seed: 7 },
    )
  })

  it.each([
    ['numbers run together', 'M.5.5-1-1', [['M', 0.5, 0.5], ['L', -1, -1]]],
    ['flags run together', 'M0 0a1 1 0 01 2 3', [['M', 0, 0], ['A', 1, 1, 0, 0, 1, 2, 3]]],
    ['zeros lead', 'M007 00.5', [['M', 7, 0.5]]],
    ['a move goes on as lines', 'm1 2 3 4', [['M', 1, 2], ['L', 4, 6]]],
    ['a closed subpath goes on', 'M1 2h3zl1 1', [['M', 1, 2], ['L', 4, 2], ['Z'], ['L', 2, 3]]],
    ['a smooth curve follows none of its kind', 'M1 2S3 4 5 6', [['M', 1, 2], ['C', 1, 2, 3, 4, 5, 6]]],
  ])('are read where %s', (_, data, segments) => expect(read(data)).toEqual({ complete: true, segments })) // prettier-ignore

  it.each([
    'L1 2',
    'M',
    'M1',
    'M1 2,',
    'M1 2R3 4',
    'M1 2L.',
    'M1 2L1e',
    'M1\u00a02',
    'M1,,2',
    'M1 2a1 1 0 3 1 2 2',
    'M1 2 z 5',
  ])('break off where the grammar does: %s', (data) => expect(read(data).complete).toBe(false))

  it('of nothing are nothing', () => {
    for (const data of ['', ' \n']) expect(read(data)).toEqual({ complete: true, segments: [] })
  })
})
