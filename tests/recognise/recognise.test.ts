import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import type { Drawing } from '../../src/drawing/drawing.js'
import { recognise, type RecogniseOptions } from '../../src/recognise/recognise.js'
import { Refusal } from '../../src/refusal.js'
import { isKnown } from '../../src/sign/sign.js'
import { cellsAt, dot, drawing, paint, polygon, rectangle, round, shape, text } from './built.js'

const translator = createTranslator()
const read = (d: Drawing, more: Partial<RecogniseOptions> = {}) =>
  recognise(d, { use: 'permanent-room', ...more }, translator)

const panel = shape([rectangle(10, 5, 180, 90)], { fill: paint('#22223b') })
const WHITE = { fill: paint('#ffffff') }
/** “exit” has no contraction in UEB: the cells are its letters e, x, i, t. */
const EXIT = '⠑⠭⠊⠞'

describe('a sign with live text and dots', () => {
  const sign = read(
    drawing([panel, ...cellsAt(EXIT, 60, 70, WHITE)], [text('EXIT', 50, 45, { fill: paint('#ffffff') })]),
  )

  it('is read: text, braille, panel, colours', () => {
    expect(sign.lettering).toHaveLength(1)
    expect(sign.lettering[0]).toMatchObject({
      part: 'both',
      text: { value: 'EXIT' },
      colour: { value: { css: '#ffffff' } },
      background: { value: { css: '#22223b' } },
    })
    expect(sign.braille).toHaveLength(1)
    expect(sign.braille[0].lines[0]).toMatchObject({
      cells: { value: EXIT },
      text: 'exit',
      place: { element: 'braille/0/line/0' },
    })
    expect(sign.panel).toMatchObject({ width: { value: 180 } })
    expect(sign.unread).toEqual([])
  })
  it('says what geometry decided and what nothing drawn means', () => {
    const about = sign.assumptions.map((a) => a.about)
    for (const word of ['panel', 'part', 'border', 'pictogram']) expect(about).toContain(word)
  })
  it('knows nothing of what a drawing cannot hold', () => {
    for (const fact of [
      sign.installation.panelBottomHeight,
      sign.installation.side,
      sign.braille[0].dotHeight,
      sign.lettering[0].relief,
      sign.panel.finish,
    ])
      expect(fact).toMatchObject({ unknown: 'missing-fact' })
    expect(sign.measured).toEqual([])
  })
  it('can be written as JSON without losing a number', () => {
    expect(JSON.stringify(sign)).not.toMatch(/null|NaN|Infinity/)
  })
})

describe('parts', () => {
  const letters = [60, 75].map((x) => shape([rectangle(x, 20, 8, 20)], { ...WHITE, labels: { names: ['row'] } }))
  it('come from the mapping, data-part and names', () => {
    const mapped = read(drawing([panel, ...letters, ...cellsAt(EXIT, 60, 70)]), { part: { row: 'visual' } })
    expect(mapped.lettering.map((l) => l.part)).toEqual(['visual'])
    const marked = letters.map((l, i) => ({ ...l, labels: { names: [], dataPart: i ? 'raised' : 'visual' } }))
    expect(read(drawing([panel, ...marked, ...cellsAt(EXIT, 60, 70)])).lettering.map((l) => l.part)).toEqual([
      'raised',
      'visual',
    ])
    const named = letters.map((l, i) => ({ ...l, labels: { names: [i ? 'raised' : 'visual'] } }))
    expect(read(drawing([panel, ...named, ...cellsAt(EXIT, 60, 70)])).lettering.map((l) => l.part)).toEqual([
      'raised',
      'visual',
    ])
  })
  it('serve touch and sight when they are only named raised, but not when data-part says so', () => {
    const named = letters.map((l) => ({ ...l, labels: { names: ['raised'] } }))
    const sign = read(drawing([panel, ...named]))
    expect(sign.lettering.map((l) => l.part)).toEqual(['both'])
    expect(sign.assumptions.some((a) => a.text.includes('touch and sight'))).toBe(true)
    const said = letters.map((l) => ({ ...l, labels: { names: [], dataPart: 'raised' } }))
    expect(read(drawing([panel, ...said])).lettering.map((l) => l.part)).toEqual(['raised'])
  })
  it('are not told by a name that stands on the whole drawing', () => {
    const all = [panel, ...letters, ...cellsAt(EXIT, 60, 70)].map((s) => ({
      ...s,
      labels: { names: ['braille sign'] },
    }))
    const sign = read(drawing(all))
    expect(sign.lettering).toEqual([])
    expect(sign.braille).toHaveLength(1)
    expect(isKnown(sign.panel.width)).toBe(true)
  })
  it('are left out and said when they are to be ignored', () => {
    const sign = read(drawing([panel, ...letters, ...cellsAt(EXIT, 60, 70)]), { part: { row: 'ignore' } })
    expect(sign.lettering).toEqual([])
    expect(sign.ignored).toHaveLength(2)
  })
})

describe('pictograms', () => {
  const figure = shape([round(60, 40, 10)], { labels: { names: [], dataPart: 'pictogram' } })
  const field = shape([rectangle(30, 10, 60, 75)], { fill: paint('#ffffff') })
  it('have the area they are painted on as their field', () => {
    const sign = read(drawing([panel, field, figure, ...cellsAt(EXIT, 120, 70)]))
    expect(sign.pictograms).toMatchObject([
      {
        place: { element: 'pictogram/0' },
        field: { value: { x: 30, y: 10, width: 60, height: 75 } },
        colour: { value: { css: '#000000' } },
        fieldColour: { value: { css: '#ffffff' } },
      },
    ])
    expect(sign.lettering).toEqual([])
  })
  it('have a field of their own group too', () => {
    const own = { ...field, labels: { names: ['pictogram'] } }
    expect(read(drawing([panel, own, figure])).pictograms).toMatchObject([
      { field: { value: { width: 60 } }, fieldColour: { value: { css: '#ffffff' } } },
    ])
  })
  it('have none on the bare panel', () => {
    const sign = read(drawing([panel, figure]))
    expect(sign.pictograms).toMatchObject([
      { field: { unknown: 'missing-fact' }, fieldColour: { value: { css: '#22223b' } } },
    ])
  })
})

describe('braille characters in live text', () => {
  it('are read as cells, their dots unknown', () => {
    const sign = read(drawing([panel], [text('⠑⠭⠊⠞ ⠼⠃', 50, 60), text('EXIT 2', 50, 45)]))
    expect(sign.lettering.map((l) => isKnown(l.text) && l.text.value)).toEqual(['EXIT 2'])
    expect(sign.braille).toHaveLength(1)
    expect(sign.braille[0].lines[0]).toMatchObject({ cells: { value: '⠑⠭⠊⠞⠀⠼⠃' }, text: 'exit 2', dots: [] })
    expect(sign.braille[0].dotSpacing).toMatchObject({ unknown: 'unreadable' })
  })
  it('are not guessed from letters in a braille typeface', () => {
    const sign = read(drawing([panel], [text('exit', 50, 60, { fontFamilies: ['Workshop Braille'] })]))
    expect(sign.lettering).toEqual([])
    expect(sign.unread).toMatchObject([{ couldBe: ['braille'] }])
  })
})

describe('what was not understood', () => {
  const ignored = {
    source: { line: 3, column: 1 },
    why: 'It is a picture.',
    couldBe: ['lettering' as const, 'colour' as const],
  }
  it('is unread, once for each reason, and clouds the colours it may cover', () => {
    const one = { ...ignored, box: { x: 50, y: 30, width: 10, height: 10 } }
    const sign = read(drawing([panel], [text('EXIT', 50, 45)], { ignored: [one, one] }))
    expect(sign.unread).toMatchObject([{ couldBe: ['lettering', 'colour'], place: { box: { x: 50 } } }])
    expect(sign.lettering[0].background).toMatchObject({ unknown: 'unreadable' })
  })
  it('is ignored when it could be nothing', () => {
    const sign = read(drawing([panel], [text('EXIT', 50, 45)], { ignored: [{ ...ignored, couldBe: [] }] }))
    expect(sign.ignored).toHaveLength(1)
    expect(sign.unread).toEqual([])
  })
})

/** The contract: nothing named, no text, dot, image, pattern, marker or clip, and no outline that could be a character. */
describe('no-tactile-elements', () => {
  const refused = (d: Drawing) => {
    try {
      read(d)
      return undefined
    } catch (error) {
      if (error instanceof Refusal) return error.type
      throw error
    }
  }
  const triangle = polygon([
    [10, 10],
    [60, 10],
    [60, 60],
  ])
  it('is a drawing with one straight-sided shape of few corners, or nothing', () => {
    expect(refused(drawing([]))).toBe('no-tactile-elements')
    expect(refused(drawing([shape([triangle])]))).toBe('no-tactile-elements')
    expect(refused(drawing([panel, shape([triangle])]))).toBe('no-tactile-elements')
  })
  it('is no drawing with anything else', () => {
    const hexagon = polygon([
      [10, 10],
      [60, 10],
      [60, 60],
      [40, 50],
      [30, 50],
      [20, 60],
    ])
    expect(refused(drawing([shape([hexagon])]))).toBeUndefined()
    expect(refused(drawing([shape([triangle]), shape([rectangle(70, 10, 5, 20)])]))).toBeUndefined()
    expect(refused(drawing([shape([triangle], { labels: { names: ['border'] } })]))).toBeUndefined()
    expect(refused(drawing([dot(20, 20)]))).toBeUndefined()
    expect(refused(drawing([], [text('A', 20, 40)]))).toBeUndefined()
    const hidden = { source: { line: 1, column: 1 }, why: 'It is a picture.', couldBe: ['braille' as const] }
    expect(refused(drawing([], [], { ignored: [hidden] }))).toBeUndefined()
  })
})
