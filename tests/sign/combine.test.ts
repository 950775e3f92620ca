import { describe, expect, it } from 'vitest'
import { Refusal } from '../../src/refusal.js'
import { combine } from '../../src/sign/combine.js'
import { describe as describeSign } from '../../src/sign/describe.js'
import { isKnown, missing, type BrailleBlock, type Fact, type Lettering, type Sign } from '../../src/sign/sign.js'
import { described, plainTranslator } from './described.js'

const signOf = (json: object): Sign => describeSign(described(json), plainTranslator)

/** A described sign made to look drawn: no pointers, known facts from the drawing, no fact of the product. All invented. */
function drawn(json: object, change: (sign: Sign) => Sign = (sign) => sign): Sign {
  const sign = signOf(json)
  const asDrawn = JSON.parse(JSON.stringify(sign), (key, value: unknown) => (key === 'basis' ? 'drawn' : value)) as Sign
  const bare = <P extends { place: { pointer?: string } }>(item: P): P => ({
    ...item,
    place: { ...item.place, pointer: undefined },
  })
  return change({
    ...asDrawn,
    panel: bare(asDrawn.panel),
    lettering: asDrawn.lettering.map((item): Lettering => ({ ...bare(item), partAssumed: false })),
    braille: asDrawn.braille.map((block): BrailleBlock => ({ ...bare(block), code: undefined })),
    assumptions: [{ about: 'scale', text: 'drawn' }],
  })
}

const conflicts = (sign: Sign): string[] =>
  sign.assumptions.filter(({ about }) => about === 'conflict').map(({ text }) => text)
const valueOf = <T>(fact: Fact<T> | undefined): T | undefined => (isKnown(fact) ? fact.value : undefined)

describe('a drawing and a description together', () => {
  it('needs one of the two', () => {
    expect(() => combine()).toThrow(Refusal)
    const sign = signOf({})
    expect(combine(sign)).toBe(sign)
    expect(combine(undefined, sign)).toBe(sign)
  })

  it('adds what a drawing cannot hold and keeps what it shows', () => {
    const sign = combine(
      drawn({ braille: [{ text: 'room', cellSpacing: 6.9 }], lettering: [{ text: 'ROOM', characterHeight: 19 }] }),
      signOf({
        mark: 'M',
        use: 'gift',
        braille: [{ dotHeight: 0.7 }],
        lettering: [{ relief: 0.9 }],
        installation: { side: 'latch' },
      }),
    )
    expect(valueOf(sign.braille[0]?.dotHeight)).toBe(0.7)
    expect(valueOf(sign.braille[0]?.cellSpacing)).toBe(6.9)
    expect(sign.braille[0]?.cellSpacing).toMatchObject({ basis: 'drawn' })
    expect(valueOf(sign.lettering[0]?.relief)).toBe(0.9)
    expect(valueOf(sign.installation.side)).toBe('latch')
    expect([sign.mark, sign.use]).toEqual(['M', 'gift'])
    expect(sign.braille[0]?.place).toMatchObject({ pointer: '/sign/braille/0' })
    expect(conflicts(sign)).toEqual([])
  })

  it('lets the description win and names the conflict', () => {
    const sign = combine(
      drawn({ braille: [{ text: 'room', cellSpacing: 5.8 }] }),
      signOf({ braille: [{ cellSpacing: 6.9 }] }),
    )
    expect(sign.braille[0]?.cellSpacing).toEqual({ value: 6.9, basis: 'declared' })
    expect(conflicts(sign)).toEqual([
      'braille/0, cellSpacing: the drawing shows 5.8 mm, the description says 6.9 mm; the description is judged.',
    ])
  })

  // Contract of the service, 2: the description wins and each conflict is listed; 4: 0.001 mm is noise of arithmetic
  it('sees no conflict within the noise of arithmetic, and one in every difference beyond it', () => {
    const drawnAt = (cellSpacing: number) =>
      combine(
        drawn({ braille: [{ text: 'room', cellSpacing }] }, (sign) => ({
          ...sign,
          braille: sign.braille.map((block) => ({
            ...block,
            cellSpacing: { value: cellSpacing, basis: 'drawn', min: 6.8, max: 7, count: 3 },
          })),
        })),
        signOf({ braille: [{ cellSpacing: 6.9 }] }),
      )
    expect(conflicts(drawnAt(6.9009))).toEqual([])
    expect(drawnAt(6.9009).braille[0]?.cellSpacing).toMatchObject({ value: 6.9009, basis: 'drawn', min: 6.8, max: 7 })
    expect(conflicts(drawnAt(6.86))).toHaveLength(1)
    expect(drawnAt(6.86).braille[0]?.cellSpacing).toEqual({ value: 6.9, basis: 'declared' })
  })

  it('names other words and other cells', () => {
    const sign = combine(
      drawn({ lettering: [{ text: 'ROOM', part: 'both' }], braille: [{ text: 'room' }] }),
      signOf({ lettering: [{ text: 'DOOR', part: 'visual' }], braille: [{ text: 'door' }] }),
    )
    expect(conflicts(sign)).toHaveLength(3)
    expect(valueOf(sign.lettering[0]?.text)).toBe('DOOR')
    expect(valueOf(sign.braille[0]?.lines[0]?.cells)).toBe('⠙⠕⠕⠗')
    expect(sign.lettering[0]?.part).toBe('visual')
  })

  // 2010 ADA Standards 216.3: directional and informational signs comply with 703.5 alone
  it('takes a part that nobody said as the use has it', () => {
    const unsaid = drawn({ lettering: [{ text: 'EXIT TO YARD' }] }, (sign) => ({
      ...sign,
      lettering: sign.lettering.map((item) => ({ ...item, partAssumed: true })),
      assumptions: [{ about: 'part', text: 'one set that serves touch and sight' }],
    }))
    const parts = (sign: Sign) => sign.lettering.map(({ part }) => part)
    expect(parts(combine(unsaid))).toEqual(['both'])
    const directional = combine({ ...unsaid, use: 'directional' })
    expect(parts(directional)).toEqual(['visual'])
    expect(directional.assumptions.map(({ text }) => text).join()).not.toContain('touch and sight')
    expect(parts(combine(unsaid, signOf({ use: 'directional' })))).toEqual(['visual'])
    expect(parts(combine(unsaid, signOf({ use: 'directional', lettering: [{ text: 'EXIT TO YARD' }] })))).toEqual([
      'visual',
    ])
    expect(parts(combine(drawn({ use: 'directional', lettering: [{ part: 'both' }] })))).toEqual(['both'])
  })

  it('keeps the drawn part when the description does not say one', () => {
    const sign = combine(
      drawn({ lettering: [{ text: 'ROOM', part: 'raised' }] }),
      signOf({ lettering: [{ relief: 0.9 }] }),
    )
    expect(sign.lettering[0]?.part).toBe('raised')
    expect(conflicts(sign)).toEqual([])
  })

  it('gives unread lettering the words of the description', () => {
    const unread = drawn({ lettering: [{ text: 'ROOM' }] }, (sign) => ({
      ...sign,
      lettering: sign.lettering.map((item) => ({ ...item, text: { unknown: 'unreadable', why: 'outlines' } as const })),
    }))
    expect(valueOf(combine(unread, signOf({ lettering: [{ text: 'ROOM' }] })).lettering[0]?.text)).toBe('ROOM')
  })

  it('keeps the drawing’s reason where neither knows', () => {
    const unread = drawn({ lettering: [{ text: 'ROOM' }] }, (sign) => ({
      ...sign,
      lettering: sign.lettering.map((item) => ({ ...item, relief: { unknown: 'unreadable', why: 'flat' } as const })),
    }))
    expect(combine(unread, signOf({ lettering: [{}] })).lettering[0]?.relief).toEqual({
      unknown: 'unreadable',
      why: 'flat',
    })
  })

  it('lets one described item stand for all drawn ones, without moving their words', () => {
    const sign = combine(
      drawn({ lettering: [{ text: 'READING' }, { text: 'ROOM' }], braille: [{ text: 'a' }, { text: 'b' }] }),
      signOf({ lettering: [{ text: 'READING ROOM', relief: 0.9 }], braille: [{ dotHeight: 0.7, dotShape: 'domed' }] }),
    )
    expect(sign.lettering.map((item) => [valueOf(item.text), valueOf(item.relief)])).toEqual([
      ['READING', 0.9],
      ['ROOM', 0.9],
    ])
    expect(sign.braille.map((block) => [valueOf(block.lines[0]?.cells), valueOf(block.dotHeight)])).toEqual([
      ['⠁', 0.7],
      ['⠃', 0.7],
    ])
    expect(conflicts(sign)).toEqual([])
  })

  it('pairs by words when the numbers of items differ, and says what has no partner', () => {
    const sign = combine(
      drawn({ lettering: [{ text: 'READING' }, { text: 'ROOM' }, { text: '204' }], braille: [{ text: 'a' }] }),
      signOf({
        lettering: [{ text: 'Room', relief: 0.9 }, { text: 'ANNEX' }],
        braille: [{ text: 'a' }, { text: 'z' }],
      }),
    )
    expect(sign.lettering.map((item) => [valueOf(item.text), valueOf(item.relief)])).toEqual([
      ['READING', undefined],
      ['Room', 0.9],
      ['204', undefined],
      ['ANNEX', undefined],
    ])
    expect(sign.braille.map((block) => valueOf(block.lines[0]?.cells))).toEqual(['⠁', '⠵'])
    expect(conflicts(sign).filter((text) => text.includes('nothing in the drawing'))).toHaveLength(2)
  })

  it('keeps drawn lines whose cells say in sum what one described line says', () => {
    const sign = combine(
      drawn({ braille: [{ lines: ['reading', 'room'] }] }),
      signOf({ braille: [{ text: 'reading room' }] }),
    )
    expect(sign.braille[0]?.lines).toHaveLength(2)
    expect(conflicts(sign)).toEqual([])
  })

  it('moves described places to where the drawing has its panel', () => {
    const offset = drawn({ panel: { width: 200, height: 100 }, braille: [{ text: 'a' }] }, (sign) => ({
      ...sign,
      panel: { ...sign.panel, place: { element: 'panel', box: { x: 10, y: 5, width: 200, height: 100 } } },
    }))
    const sign = combine(
      offset,
      signOf({
        lettering: [{ text: 'A', baseline: { x: 20, y: 45 } }],
        braille: [{ text: 'a', origin: { x: 20, y: 70 }, dotSpacing: 2.4, cellSpacing: 6.9 }],
        borders: [{ box: { x: 1, y: 1, width: 198, height: 98 } }],
        pictograms: [{ field: { x: 0, y: 0, width: 10, height: 10 } }],
      }),
    )
    expect(valueOf(sign.lettering[0]?.lines[0]?.baseline)).toEqual({ x: 30, y: 50 })
    expect(sign.braille[0]?.lines[0]?.dots).toEqual([{ x: 30, y: 75 }])
    expect(sign.borders[0]?.box).toEqual({ x: 11, y: 6, width: 198, height: 98 })
    expect(valueOf(sign.pictograms[0]?.field)).toEqual({ x: 10, y: 5, width: 10, height: 10 })
    expect(conflicts(sign)).toEqual([])
  })

  it('drops assumptions that the drawing settles and keeps the others', () => {
    const sign = combine(drawn({ lettering: [{ text: 'A' }] }), signOf({ lettering: [{ relief: 1 }] }))
    expect(sign.assumptions.map(({ about }) => about)).toEqual(['scale', 'units'])
  })

  it('takes finish and colours of the panel from the description when the drawing has none', () => {
    const sign = combine(
      drawn({ lettering: [{ text: 'A' }] }, (s) => ({
        ...s,
        panel: { ...s.panel, colour: missing(), finish: missing() },
      })),
      signOf({ panel: { colour: 'white', finish: 'matte' } }),
    )
    expect(valueOf(sign.panel.colour)?.css).toBe('white')
    expect(valueOf(sign.lettering[0]?.finish)).toBe('matte')
  })
})
