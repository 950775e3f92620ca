import { frameOf } from '../../measure/frame.js'
import type { Finding } from '../../report/finding-schema.js'
import { isKnown, type Lettering, type LetteringLine } from '../../sign/sign.js'
import { brailleContours } from './marks.js'
import { addMoves, contoursWithin, moved, type Moves } from './move.js'
import { NotCorrectable, type Rewrite } from './outcome.js'
import type { Sheet } from './sheet.js'
import { fromFrame } from './surroundings.js'

/** The lines of characters brought nearer to each other, or farther apart, until their distance passes. */

export const LINE_SPACING = ['raised.lineSpacing', 'visual.lineSpacing']

/** How far inside of a limit the distance of lines is put, as a share of the character height. */
const INSIDE = 0.01

const UNPLACED = 'Where the lines stand, or how high their characters are, was not read from the drawing.'
const LIVE = 'The characters are live text, or are not drawn as outlines; no line of them is moved.'

/** Which line stays where it is: the last one, so that the braille below it stays too, or the first. */
export type Anchor = 'last' | 'first'

export function linesSetApart(
  sheet: Sheet,
  failed: Finding,
  numbers: readonly number[],
  anchor: Anchor,
): Rewrite | NotCorrectable {
  const { sign, written } = sheet
  const { remedy } = failed
  if (!remedy || remedy.aim === null) return new NotCorrectable(remedy?.text ?? UNPLACED)
  const frame = frameOf(sign)
  const back = fromFrame(frame)
  const dots = brailleContours(sign, written.drawing)
  const moves: Moves = new Map()
  for (const n of numbers) {
    const ways = waysOf(
      sign.lettering[n],
      (line) => (isKnown(line.baseline) ? frame.of(line.baseline.value).y : undefined),
      {
        least: remedy.min === null ? -Infinity : remedy.min + INSIDE,
        most: remedy.max === null ? Infinity : remedy.max - INSIDE,
      },
    )
    if (!ways) return new NotCorrectable(UNPLACED)
    const stays = anchor === 'first' ? ways[0].down : ways[ways.length - 1].down
    for (const { line, down } of ways) {
      const { box } = line.place
      if (down === stays || !box) continue
      const own = contoursWithin(written, box, dots)
      if (own.size === 0) return new NotCorrectable(LIVE)
      addMoves(moves, own, back({ x: 0, y: down - stays }))
    }
  }
  return moves.size === 0 ? new NotCorrectable(UNPLACED) : moved(written, moves)
}

/** How far each line goes down when the first one stays, in the order of their baselines. */
function waysOf(
  { lines, characterHeight }: Lettering,
  baselineOf: (line: LetteringLine) => number | undefined,
  { least, most }: { least: number; most: number },
): { line: LetteringLine; down: number }[] | undefined {
  if (!isKnown(characterHeight)) return undefined
  const height = characterHeight.value
  const placed = lines.map((line) => ({ line, y: baselineOf(line) }))
  if (placed.some(({ y }) => y === undefined)) return undefined
  const sorted = placed.map(({ line, y }) => ({ line, y: y ?? 0 })).sort((a, b) => a.y - b.y)
  let down = 0
  return sorted.map(({ line, y }, i) => {
    const before = sorted[i - 1]?.y
    // Lines beside each other on one baseline move together.
    if (before !== undefined && y - before > BESIDE * height)
      down += Math.min(most, Math.max(least, (y - before) / height)) * height - (y - before)
    return { line, down }
  })
}

/** Baselines nearer than this share of the character height are one. */
const BESIDE = 0.3
