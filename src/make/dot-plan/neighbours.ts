import Flatbush from 'flatbush'
import { listsOf, type Lists } from './precedence.js'
import type { Ways } from './way.js'

/** The dots that are nearest from each dot, the nearest first: the only ones worth going to next, nearly always. */

const NEIGHBOURS = 10

/** An index that finds the nearest dots of a place, however unevenly they lie. */
export function nearestIndex({ dots, count }: Ways): Flatbush {
  const index = new Flatbush(count)
  for (let i = 0; i < count; i++) index.add(dots.x[i], dots.y[i])
  index.finish()
  return index
}

export function neighboursOf(ways: Ways, index: Flatbush): Lists {
  const { count, dots, entry } = ways
  const from: number[] = []
  const to: number[] = []
  for (let i = 0; i < count; i++) {
    const others = index
      .neighbors(dots.x[i] - entry.x, dots.y[i] - entry.y, NEIGHBOURS + 1)
      .filter((j) => j !== i)
      .map((j) => ({ j, way: ways.between(i, j) }))
    others.sort((a, b) => a.way - b.way || a.j - b.j)
    for (const { j } of others.slice(0, NEIGHBOURS)) {
      from.push(i)
      to.push(j)
    }
  }
  return listsOf(count, from, to)
}

/** The shortest way to dot j from any other. */
export function shortestWayTo(ways: Ways, index: Flatbush, j: number): number {
  const { dots, entry } = ways
  const near = index.neighbors(dots.x[j] + entry.x, dots.y[j] + entry.y, 2).filter((i) => i !== j)
  return Math.min(...near.map((i) => ways.between(i, j)))
}
