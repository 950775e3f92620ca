import type { Translator } from '../../braille/translator.js'
import { boxOfPoints } from '../../geometry/box.js'
import type { Point } from '../../geometry/point.js'
import { MARGIN, recogniseDots } from '../../recognise/dots-alone.js'
import { dotsOfSign, LEVELS, type Groups } from './groups.js'

/** More points than this are not read: it would take more memory than the plan. */
export const MOST_READ = 10_000

/** What bare points belong to, where they read as braille. Undefined: no point does, or there are too many to read. */
export function groupsOfPoints(points: readonly Point[], translator: Translator): Groups | undefined {
  const box = boxOfPoints(points)
  if (!box || points.length > MOST_READ) return undefined
  const placed = points.map(({ x, y }) => ({ x: x - box.x + MARGIN, y: y - box.y + MARGIN, line: 1 }))
  const { dots, groups } = dotsOfSign(recogniseDots(placed, { use: 'informational' }, translator))
  if (dots.length === 0) return undefined
  const places = new Map(dots.map(({ x, y }, i) => [`${x} ${y}`, i]))
  const read = placed.map(({ x, y }) => places.get(`${x} ${y}`))
  const level = (name: (typeof LEVELS)[number]) =>
    Int32Array.from(read, (i) => (i === undefined ? -1 : groups[name][i]))
  return { block: level('block'), line: level('line'), word: level('word'), cell: level('cell') }
}
