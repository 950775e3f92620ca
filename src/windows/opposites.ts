/** Quantities of which a sign cannot have both, but for texts that come out the same either way. */
export const OPPOSITES: readonly (readonly [string, string])[] = [
  ['braille.contracted', 'braille.uncontracted'],
  ['braille.capitals', 'braille.capitalsKept'],
]
