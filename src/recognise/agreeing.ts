import { isAcross } from './doubtful.js'
import type { BrailleBlock, Lettering, Lie } from '../sign/sign.js'
import type { FoundBraille } from './findbraille.js'

/**
 * Braille is read before outlined characters are, by which way round it gives words. A short word may give some both ways; once the
 * characters are read, what they say and how they lie settles it.
 */

/** Lines whose directions differ by more run against each other. Degrees. */
const AGAINST = 90

/**
 * @param again the braille read anew, with the characters' words expected
 * @returns the new reading where the first lies otherwise than the characters, or left some unread, and the new one does not; and
 *   where the first runs across the characters, for the new one knows how these lie
 */
export function agreeing(
  first: FoundBraille,
  characters: readonly Lettering[],
  again: () => FoundBraille,
): FoundBraille {
  const lies = characters.flatMap(({ lie }) => lie ?? [])
  if (lies.length === 0) return first
  const liesAlike = (block: BrailleBlock) => lies.some((lie) => areAlike(lie, block))
  if (first.blocks.every(liesAlike) && first.unread.length === 0) return first
  const second = again()
  if (first.blocks.some((block) => lies.every((lie) => isAcross(lie.rotation, block.rotation)))) return second
  const better = second.blocks.length > 0 && second.blocks.every(liesAlike)
  const complete = second.dots.length >= first.dots.length && second.unread.length <= first.unread.length
  return better && complete ? second : first
}

const areAlike = (a: Lie, b: Lie): boolean =>
  a.mirrored === b.mirrored && Math.abs(((a.rotation - b.rotation + 540) % 360) - 180) < AGAINST
