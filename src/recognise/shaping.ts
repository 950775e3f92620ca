import type { Font } from 'fontkit'
import type { DrawnText } from '../drawing/drawing.js'

/**
 * Characters to glyphs with their advances, by the shaper of the face itself: kerning always, ligatures where the file leaves
 * the characters together (CSS Text 3, 8.2: none with letter-spacing; SVG 2, 11.4: none where a character is moved or turned).
 */
export interface ShapedGlyph {
  /** More than one for a ligature. */
  characters: string
  /** Index of the first of them in the text, in UTF-16 units. */
  at: number
  glyph: number
  /** The glyph's own advance and how far the pen moves for it, kerning included, in user units. */
  advance: number
  move: number
}

const NO_LIGATURES = { liga: false, clig: false, dlig: false }

export function shape(drawn: DrawnText, font: Font): ShapedGlyph[] {
  const unit = drawn.fontSize / font.unitsPerEm
  return spansOf(drawn).flatMap(({ characters, at, together }) => {
    const { glyphs, positions } = font.layout(characters.join(''), together ? {} : NO_LIGATURES)
    const whole = glyphs.reduce((n, g) => n + g.codePoints.length, 0) === characters.length
    if (!whole || glyphs.some((g) => g.codePoints.length === 0)) return oneByOne(characters, at, font, unit)
    let [next, from] = [0, at]
    return glyphs.map((glyph, n): ShapedGlyph => {
      const own = characters.slice(next, next + glyph.codePoints.length).join('')
      const shaped = { characters: own, at: from, glyph: glyph.id, advance: glyph.advanceWidth * unit }
      next += glyph.codePoints.length
      from += own.length
      return { ...shaped, move: positions[n].xAdvance * unit }
    })
  })
}

/** Where the shaper does more than ligatures: each character by itself. */
function oneByOne(characters: readonly string[], at: number, font: Font, unit: number): ShapedGlyph[] {
  let from = at
  return characters.map((character): ShapedGlyph => {
    const glyph = font.glyphForCodePoint(character.codePointAt(0) ?? 0)
    const advance = glyph.advanceWidth * unit
    const shaped = { characters: character, at: from, glyph: glyph.id, advance, move: advance }
    from += character.length
    return shaped
  })
}

/** Characters that are shaped together: up to the next one that the file puts in place. */
interface Span {
  characters: string[]
  at: number
  /** Nothing comes between the characters: ligatures may be formed. */
  together: boolean
}

function spansOf({ text, positions, letterSpacing }: DrawnText): Span[] {
  const spans: Span[] = []
  let at = 0
  for (const character of text) {
    const own = positions[at]
    const span = spans.at(-1)
    if (!span || own?.x !== undefined || own?.y !== undefined)
      spans.push({ characters: [character], at, together: letterSpacing === 0 && !own?.rotate })
    else {
      span.characters.push(character)
      if (own?.dx || own?.dy || own?.rotate) span.together = false
    }
    at += character.length
  }
  return spans
}
