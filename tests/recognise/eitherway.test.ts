import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import type { Matrix } from '../../src/geometry/matrix.js'
import { recognise } from '../../src/recognise/recognise.js'
import { isKnown } from '../../src/sign/sign.js'
import { cellsAt, drawing, paint, rectangle, shape, text } from './built.js'
import { letters } from './lettered.js'
import { rotation } from './turned.js'

// Figures and words of signs without braille, invented, in faces that no reading was made from. Which of them are the same shapes
// another way round is seen with the eye.

const translator = createTranslator()
const panel = shape([rectangle(0, 0, 320, 140)], { fill: paint('#22223b') })
const WHITE = { fill: paint('#ffffff') }

const UPRIGHT: Matrix = { a: 1, b: 0, c: 0, d: 1, e: 60, f: 60 }
const UPSIDE_DOWN = rotation(180, 1, 160, 60)
const FROM_BEHIND: Matrix = { a: -1, b: 0, c: 0, d: 1, e: 260, f: 60 }

const signOf = (written: string, matrix: Matrix, more: { cells?: string; live?: string } = {}) =>
  recognise(
    drawing(
      [
        panel,
        ...letters({ text: written, x: 0, y: 0, height: 20, matrix }, WHITE),
        ...cellsAt(more.cells ?? '', 60, 90, WHITE),
      ],
      more.live === undefined ? [] : [text(more.live, 60, 120, WHITE)],
      { viewport: { width: 320, height: 140 } },
    ),
    { use: 'permanent-room' },
    translator,
  )
const textsOf = ({ lettering }: ReturnType<typeof signOf>) =>
  lettering.map((l) => (isKnown(l.text) ? l.text.value : undefined))

describe('outlines that are other figures or words another way round, with nothing that shows which is meant', () => {
  it.each([
    ['66', 'upside down 99', UPRIGHT],
    ['99', 'upside down 66', UPSIDE_DOWN],
    ['NO', 'upside down ON', UPRIGHT],
    ['ON', 'upside down NO', UPSIDE_DOWN],
    ['TO', 'from behind OT, which is no word', FROM_BEHIND],
  ])('%s (%s) is not read', (written, _, matrix) => {
    const { lettering } = signOf(written, matrix)
    expect(lettering.map((l) => isKnown(l.text) || l.text.why)).toEqual([
      expect.stringMatching(/upside down or from behind too/),
    ])
  })
  it('and is measured all the same', () => {
    const [{ characterHeight }] = signOf('NO', UPRIGHT).lettering
    expect(isKnown(characterHeight) && characterHeight.value).toBeCloseTo(20, 1)
  })
})

describe('what else is on the sign shows which way is meant:', () => {
  it('live text', () => {
    expect(textsOf(signOf('66', UPRIGHT, { live: 'Hall' }))).toContain('66')
  })
  // Numbers in braille: Rules of Unified English Braille, 2nd edition 2013, 6.1.
  it('braille', () => {
    expect(textsOf(signOf('66', UPRIGHT, { cells: '⠼⠋⠋' }))).toEqual(['66'])
  })
  it('a character that is none the other way round', () => {
    expect(textsOf(signOf('664', UPRIGHT))).toEqual(['664'])
    expect(textsOf(signOf('664', UPSIDE_DOWN))).toEqual(['664'])
    expect(textsOf(signOf('808', UPRIGHT))).toEqual(['808'])
    expect(textsOf(signOf('EXIT', FROM_BEHIND))).toEqual(['EXIT'])
  })
})

it('a letter and a bar that read from behind alone are no text of a sign', () => {
  // Like A and a reverse solidus, which is no character of signs; from behind a solidus and A.
  const bar = shape([
    { start: { x: 96, y: 40 }, segments: [{ x: 100, y: 40 }, { x: 110, y: 60 }, { x: 106, y: 60 }].map((to) => ({ kind: 'line', to })), closed: true },
  ]) // prettier-ignore
  const sign = recognise(
    drawing([...letters({ text: 'A', x: 70, y: 60, height: 20 }), bar]),
    { use: 'permanent-room' },
    translator,
  )
  expect(textsOf(sign).filter((t) => t !== undefined)).toEqual([])
})
