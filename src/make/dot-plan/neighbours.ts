import type KDBush from 'kdbush'
import { listsOf, type Lists } from './precedence.js'
import type { Ways } from './way.js'

/** The dots that are nearest from each dot, the nearest first: the only ones worth going to next, nearly always. */

const NEIGHBOURS = 10
const GROWTH = 1.6

/** @param index of the same dots */
export function neighboursOf(ways: Ways, index: KDBush): Lists {
  const { count, dots, entry } = ways
  const wanted = Math.min(NEIGHBOURS, count - 1)
  const from: number[] = []
  const to: number[] = []
  let radius = 1
  for (let i = 0; i < count; i++) {
    const [x, y] = [dots.x[i] - entry.x, dots.y[i] - entry.y]
    let near = index.within(x, y, radius)
    while (near.length <= wanted && near.length < count) near = index.within(x, y, (radius *= GROWTH))
    // The next dot mostly lies as densely: a radius that finds many times too many is made smaller.
    if (near.length > 3 * (wanted + 1)) radius /= GROWTH
    const others = near.filter((j) => j !== i).map((j) => ({ j, way: ways.between(i, j) }))
    others.sort((a, b) => a.way - b.way || a.j - b.j)
    for (const { j } of others.slice(0, wanted)) {
      from.push(i)
      to.push(j)
    }
  }
  return listsOf(count, from, to)
}
