import { describe, expect, test } from 'vitest'
import { drawn } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured } from './values.js'

/** The words of controls, on invented signs. */

type Json = Record<string, unknown>
const at = (values: Json = {}) => signOf(PUMP_ROOM, values)

// 2010 ADA Standards, table 407.4.7.1.3, and 407.4.7.1.2: the words that belong to the symbols of controls
describe('the braille of a control', () => {
  const control = (meaning: string, ...words: (string | undefined)[]) =>
    measured(
      at({
        pictograms: [{ meaning }],
        braille: words.map((text, i) => ({
          ...(PUMP_ROOM.braille as Json[])[0],
          lines: undefined,
          lineSpacing: undefined,
          ...(text !== undefined && { text }),
          origin: { x: 20, y: 90 + 20 * i },
        })),
      }),
      'braille.controlWords',
    )

  test.each([
    ['emergency stop', 'stop'],
    ['stop', 'stop'],
    ['Alarm bell', 'alarm'],
    ['door-open', 'open'],
    ['close door', 'close'],
    ['main entry floor', 'main'],
    ['telephone', 'phone'],
  ])('%s is “%s”', (meaning, word) => {
    expect(control(meaning, word).observations).toMatchObject([
      { value: true, basis: 'declared', places: [{ element: 'pictogram/0' }, { element: 'braille/0' }] },
    ])
    expect(control(meaning, 'pump').observations[0]).toMatchObject({
      value: false,
      remark: `The table gives the word “${word}”.`,
    })
  })

  test('may be in any of several blocks, or in one that was not read', () => {
    expect(control('alarm', 'pump', 'alarm').observations[0]?.value).toBe(true)
    expect(control('alarm', 'alarm', undefined).observations[0]?.value).toBe(true)
    expect(control('alarm', 'pump', undefined)).toMatchObject({
      observations: [],
      gaps: [{ reason: 'unreadable', places: [{}, {}, {}] }],
    })
    expect(control('pump', 'pump').nothing).toContain('No pictogram')
    expect(control('bus stop', 'stop').nothing).toContain('No pictogram')
  })

  test('that was drawn says so', () => {
    const sign = at({ pictograms: [{ meaning: 'alarm' }] })
    const cells = sign.braille.map((b) => ({ ...b, lines: b.lines.map((line) => ({ ...line, cells: drawn('⠁') })) }))
    expect(measured({ ...sign, braille: cells }, 'braille.controlWords').observations[0]?.basis).toBe('drawn')
  })
})
