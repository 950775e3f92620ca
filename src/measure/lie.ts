import type { BrailleBlock, Lettering, Lie } from '../sign/sign.js'

/**
 * How braille lies relative to the characters that it repeats. A finger meets the cells as the sign hangs, which its characters
 * tell: braille that is the mirror image of readable cells, or stands on its head, says something else to it.
 */
export type Lying = 'alike' | 'mirrored' | 'letters-mirrored' | 'upside-down' | 'askew' | 'unknown'

/** Degrees between two directions from which on one does not lie as the other, and stands on its head. */
const ASKEW = 45
const UPSIDE_DOWN = 135

/** @param lettering the characters that the block repeats, the ones that tell the way the sign hangs first */
export function lyingOf({ rotation, mirrored }: BrailleBlock, lettering: readonly Lettering[]): Lying {
  const lie = lettering.find((l) => l.lie)?.lie
  if (!lie) return mirrored ? 'unknown' : 'alike'
  if (lie.mirrored !== mirrored) return mirrored ? 'mirrored' : 'letters-mirrored'
  const apart = Math.abs(((rotation - lie.rotation + 540) % 360) - 180)
  return apart > UPSIDE_DOWN ? 'upside-down' : apart > ASKEW ? 'askew' : 'alike'
}

/** What to say of braille that lies otherwise than the characters. */
export const LYING: Record<Exclude<Lying, 'alike'>, string> = {
  mirrored:
    'The braille is drawn mirrored relative to the letters: as it lies beside them, a finger does not read these cells.',
  'letters-mirrored': 'The letters are drawn mirrored and the braille is not: from no side can both be read.',
  'upside-down':
    'The braille stands upside down relative to the letters: as it lies beside them, a finger does not read these cells.',
  askew: 'the braille runs in another direction than the letters that it repeats',
  unknown: 'the braille is drawn mirrored, and which way the letters lie is not known',
}

/** How the sign hangs: as its characters lie, else as its braille lies; undefined when neither is drawn. */
export function lieOfSign(lettering: readonly Lettering[], braille: readonly BrailleBlock[]): Lie | undefined {
  return lettering.find((l) => l.lie)?.lie ?? braille.find((block) => block.lines.length > 0)
}
