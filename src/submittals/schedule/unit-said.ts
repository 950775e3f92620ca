import type { HeadingUnit } from './heading.js'

/** What the lines above a table say about all its lengths: “All dimensions in millimetres”. Nothing else is a default. */

const SPEAKS_OF_LENGTHS = /\b(?:dimensions?|lengths?|sizes?|measurements?|units)\b/i
/** The word “in” alone may be the preposition, so that inches need their whole word or a full stop. */
const UNITS: [RegExp, Exclude<HeadingUnit, null>][] = [
  [/\b(?:mm|millimet(?:re|er)s?)\b/i, 'mm'],
  [/\b(?:cm|centimet(?:re|er)s?)\b/i, 'cm'],
  [/\binch(?:es)?\b|\bin\.(?:\s|$)/i, 'in'],
]

export function unitSaid(texts: readonly string[]): HeadingUnit {
  const said = new Set(
    texts
      .filter((text) => SPEAKS_OF_LENGTHS.test(text))
      .flatMap((text) => UNITS.flatMap(([words, unit]) => (words.test(text) ? [unit] : []))),
  )
  const [unit] = said
  return said.size === 1 && unit ? unit : null
}
