import { distance } from '../geometry/point.js'
import type { ReadDot } from './cells.js'
import type { Dot } from './dots.js'

/**
 * Dots of a group that fit no place of its lattice. Among the cells of a line they make the line unreadable: a dot belongs to
 * some cell there, and nobody can say to which place of it. Away from the cells they are no braille.
 */

/** Nearer than this many diameters to a dot of a line, a dot stands among its cells: less than to the next cell's dots. */
const AMONG = 2.2

export function outsidersOf(
  outliers: readonly Dot[],
  lines: ReadDot[][],
): { inside: { dot: Dot; line: number }[]; outside: Dot[] } {
  const inside: { dot: Dot; line: number }[] = []
  const outside: Dot[] = []
  for (const dot of outliers) {
    const line = lines.findIndex((dots) => dots.some((d) => distance(d.dot, dot) < AMONG * d.dot.diameter))
    if (line < 0) outside.push(dot)
    else inside.push({ dot, line })
  }
  return { inside, outside }
}
