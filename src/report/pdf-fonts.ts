import { createRequire } from 'node:module'
import type { Font } from 'fontkit'
import { fontkit } from '../libraries.js'

/** The faces of printed reports, which ship with this program: they hold braille patterns and most alphabets. */

const require = createRequire(import.meta.url)

/** Files, not bytes: the library that sets the pages asks for the face at every cell of a table, and knows a file again. */
export const REGULAR = require.resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf')
export const BOLD = require.resolve('dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf')

/** Both faces, read when they are first needed. */
let faces: Font[] | undefined

/** The text with every character that the faces cannot show written as its number, so that none is lost silently. */
export function printable(text: string): string {
  faces ??= [REGULAR, BOLD].map((file) => fontkit().openSync(file) as Font)
  const isShown = (point: number) => faces?.every((face) => face.hasGlyphForCodePoint(point))
  return Array.from(text, (character) => {
    const point = character.codePointAt(0) ?? 0
    return isShown(point) ? character : `[U+${point.toString(16).toUpperCase().padStart(4, '0')}]`
  }).join('')
}
