import type { Lie } from '../sign/sign.js'
import type { ChosenReading } from './orientation.js'

/**
 * Dots that stand like braille by chance: the pips of a die, the lamps of a machine, columns of true braille taken for its lines.
 * What says a text of the sign, or was named braille, is not looked at here.
 */

/** Lines of no more cells than this are believed only when they say something beside characters that are known. */
const FEW_CELLS = 2
/** Degrees from the characters' own line, either way, from which on braille runs across them. */
const ACROSS = 45

/** What is known of the characters of the drawing. */
export interface Characters {
  /** Whether any characters of the sign are known for such. */
  areKnown: boolean
  lies: readonly Lie[]
}

/** @returns why a reading that nothing confirms is not believed; undefined when it is */
export function doubtOf(
  { lines }: ChosenReading,
  rotation: number,
  { areKnown, lies }: Characters,
): string | undefined {
  const most = Math.max(...lines.map(({ reading }) => reading.cells.length))
  const spoken = areKnown && lines.every(({ wording }) => wording.text !== undefined)
  if (most === 1 || (most <= FEW_CELLS && !spoken)) return BY_CHANCE
  return lies.length > 0 && lies.every((lie) => isAcross(lie.rotation, rotation)) ? RUNS_ACROSS : undefined
}

const BY_CHANCE = 'so few cells of dots, which no text says, may be braille or an ornament'
const RUNS_ACROSS =
  'the dots read across the characters, and not as what these say: they may be the columns of braille that runs otherwise'

/** Whether one direction stands more square than parallel to another, degrees. */
export function isAcross(a: number, b: number): boolean {
  const apart = Math.abs(((((a - b) % 180) + 180) % 180) - 90)
  return apart < ACROSS
}
