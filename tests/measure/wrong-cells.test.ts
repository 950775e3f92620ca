import { describe, expect, test } from 'vitest'
import { readAs, wrongCells } from '../../src/measure/wrong-cells.js'
import { missing, type BrailleBlock } from '../../src/sign/sign.js'
import { drawn } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'

/** Which cells are wrong, as a finding tells it. Words are invented, boxes worked by hand from the sizes of the pump room’s braille. */

const [block] = signOf(PUMP_ROOM).braille

describe('cells that are wrong', () => {
  const lineOf = (cells: string, n = 0) => ({ ...block.lines[n], cells: drawn(cells) })
  const one: BrailleBlock = { ...block, lines: [lineOf('⠏⠥⠍⠏')] }
  const two: BrailleBlock = { ...block, lines: [lineOf('⠏⠥⠍⠏'), lineOf('⠗⠕⠕⠍', 1)] }

  test('are none where they are as expected, in either grade', () => {
    expect(wrongCells([one], '⠏⠥⠍⠏', ['⠏⠥⠍⠏'])).toBeUndefined()
    expect(wrongCells([one], '⠏⠥⠍⠏', ['⠗⠕⠕⠍', '⠏⠥⠍⠏'])).toBeUndefined()
    expect(wrongCells([one], '⠏⠥⠍⠏', [])).toBeUndefined()
  })

  // The second cell has its dot 1 at the baseline's left end and one cell spacing (6.9 mm) on; two dot spacings (2.4 mm) up, half a dot round it
  test('are named by their number, and shown by their box', () => {
    const found = wrongCells([one], '⠏⠥⠍⠏', ['⠏⠕⠍⠏'])
    expect(found?.text).toContain('cell 2')
    const [place] = found?.places ?? []
    expect(place).toMatchObject({ element: 'braille/0/line/0/cell/1' })
    expect(place?.box?.x).toBeCloseTo(20 + 6.9 - 1.55 / 2, 9)
    expect(place?.box?.y).toBeCloseTo(95 - 1.55 / 2, 9)
    expect(place?.box?.width).toBeCloseTo(2.4 + 1.55, 9)
    expect(place?.box?.height).toBeCloseTo(4.8 + 1.55, 9)
  })

  test('in several lines are named by line and cell, in several blocks by their block', () => {
    expect(wrongCells([two], '⠏⠥⠍⠏⠀⠗⠕⠕⠍', ['⠏⠥⠍⠏⠀⠗⠕⠥⠍'])?.text).toContain('line 2, cell 3')
    const pair = [one, { ...one, lines: [lineOf('⠗⠕⠕⠍')] }]
    expect(wrongCells(pair, '⠏⠥⠍⠏⠀⠗⠕⠕⠍', ['⠏⠥⠍⠏⠀⠗⠕⠥⠍'])?.text).toContain('cell 3 of its block')
  })

  test('are held against the grade that they are nearest to, and no more than three are named', () => {
    expect(wrongCells([one], '⠏⠥⠍⠏', ['⠗⠗⠗⠗', '⠏⠕⠍⠏'])?.places).toHaveLength(1)
    const all = wrongCells([one], '⠏⠥⠍⠏', ['⠗⠗⠗⠗'])
    expect(all?.places).toHaveLength(3)
    expect(all?.text).toContain('and 1 more')
    expect(wrongCells([one], '⠏⠥⠍⠏', ['⠗⠗⠗⠏'])?.text).not.toContain('more')
  })

  test('that are missing at the end have no place', () => {
    const found = wrongCells([one], '⠏⠥⠍⠏', ['⠏⠥⠍⠏⠎'])
    expect(found?.text).toContain('the end')
    expect(found?.places).toEqual([])
  })

  test('are shown without a box where their line is turned, mirrored or not placed', () => {
    const placeOf = (change: Partial<BrailleBlock>, wanted = '⠏⠕⠍⠏') =>
      wrongCells([{ ...one, ...change }], '⠏⠥⠍⠏', [wanted])?.places[0]
    for (const change of [{ rotation: 90 }, { mirrored: true }, { dotSpacing: missing() }, { cellSpacing: missing() }])
      expect(placeOf(change)).not.toHaveProperty('box')
    expect(placeOf({ lines: [{ ...lineOf('⠏⠥⠍⠏'), baseline: missing() }] })).not.toHaveProperty('box')
    expect(placeOf({ cellSpacing: missing() }, '⠗⠥⠍⠏')?.box?.x).toBeCloseTo(20 - 1.55 / 2, 9)
    expect(placeOf({ dotBaseDiameter: missing() })?.box?.width).toBeCloseTo(2.4, 9)
  })

  test('read as something only where every line does', () => {
    const read = (...texts: (string | undefined)[]) =>
      readAs([{ ...two, lines: texts.map((text, i) => ({ ...two.lines[i], text })) }])
    expect(read('pump', 'room')).toBe(' and read “pump room”')
    expect(read('pump', undefined)).toBe('')
    expect(readAs([])).toBe('')
  })
})
