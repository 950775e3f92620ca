import { loopOf } from '../../../src/geometry/loop.js'
import type { Polyline } from '../../../src/geometry/outline.js'
import type { LetterOutline } from '../../../src/recognise/letters/blobs.js'
import { readLetters, type LetteringReading, type ReadLettersOptions } from '../../../src/recognise/letters/read.js'
import { CAPITAL, glyphOf, type Face } from './faces.js'

/** Text set in a face, as a drawing program would leave it after turning text into outlines. */

/** An outline by its points. */
export type DrawnOutline = Omit<LetterOutline, 'corners'> & { outline: Polyline }

export const readDrawn = (outlines: readonly DrawnOutline[], options?: ReadLettersOptions): LetteringReading =>
  readLetters(
    outlines.map(({ outline, ...rest }) => ({ ...rest, corners: loopOf(outline) })),
    options,
  )

export interface SetText {
  outlines: DrawnOutline[]
  /** The characters that the face has, in order, without spaces. */
  characters: string[]
}

/** Lines are this far apart, in heights of the capitals. */
export const LEADING = 1.6

export function setText(face: Face, lines: readonly string[], tracking = 0.08): SetText {
  const set: SetText = { outlines: [], characters: [] }
  lines.forEach((line, n) => {
    let x = 0
    for (const character of line) {
      const glyph = glyphOf(face, character)
      if (!glyph) continue
      const place = { x, y: n * LEADING * CAPITAL }
      x += glyph.advance + tracking * CAPITAL
      if (glyph.contours.length === 0) continue
      for (const contour of glyph.contours) {
        const outline = contour.map((p) => ({ x: p.x + place.x, y: p.y + place.y }))
        set.outlines.push({ outline, path: set.characters.length, rule: 'nonzero', fill: 'black' })
      }
      set.characters.push(character)
    }
  })
  return set
}

export interface Compared {
  pairs: { truth: string; read: string | undefined }[]
  reading: LetteringReading
}

/** Reads a set text and says for each of its characters what was read. Dashes and quotes count as the plain ones. */
export function readBack(text: SetText): Compared {
  const reading = readDrawn(text.outlines)
  const read = new Map<number, string | undefined>()
  for (const { characters } of reading.lines)
    for (const { readings, outlines } of characters)
      for (const path of new Set(outlines.map((o) => text.outlines[o].path)))
        read.set(path, readings.length === 1 ? readings[0] : undefined)
  return { reading, pairs: text.characters.map((truth, i) => ({ truth: plain(truth), read: plainOr(read.get(i)) })) }
}

const plain = (c: string): string => c.replace(/[–—]/, '-').replace(/[’‘]/, "'").replace(/[“”]/, '"')
const plainOr = (c: string | undefined) => (c === undefined ? undefined : plain(c))

/** Wording as on signs, invented: capitals, mixed case, figures and marks in the company they keep. */
export const SIGN_LINES = [
  ['THE QUICK BROWN FOX', 'JUMPS OVER THE LAZY DOG'],
  ['SPHINX OF BLACK QUARTZ', 'JUDGE MY VOW 12'],
  ['ROOM 204'],
  ['STAIR 3B'],
  ['LEVEL 10', 'EXIT 7'],
  ['ZOO 689', 'KIOSK 415'],
  ['0123456789 ROOM'],
  ['RESTROOM'],
  ['WOMEN & MEN'],
  ["STAFF'S LOUNGE"],
  ['OFFICE 100-125'],
  ['LAB (A) / B#2 + C'],
  ['PUSH! PULL? NO.'],
  ['OPEN 10:30, 50% @ 8*'],
  ['The quick brown fox', 'jumps over a lazy dog'],
  ['Sphinx of black quartz,', 'judge my vow.'],
  ['Mechanical Room 17'],
  ['Private Dining Hall', 'Level 2'],
  ['Quiet; please knock!'],
]
