import type { Box } from '../geometry/box.js'
import type { Assumption, Lettering, LetteringPart, Unread } from '../sign/sign.js'
import { paintedPieces, paintedRuns, withColours, withDoubtfulColours } from './colouring.js'
import type { Cloud, Surface } from './colours.js'
import type { LaidRun } from './layout.js'
import { couldBeCharacters, letteringOfOutlines, withoutPaintedCounters } from './lettering.js'
import type { Piece } from './pieces.js'
import { groupRuns, letteringOfText, type TextGroup } from './text.js'

/** The sets of characters on a sign: live text by part, face and size; outlines by part. */

export interface LiveSet {
  group: TextGroup
  lettering: Lettering
}

/** Live text as sets, in reading order as far as their boxes tell; colours are still unknown. */
export function setsOfRuns(runs: readonly { run: LaidRun; part: LetteringPart }[]): LiveSet[] {
  return groupRuns(runs).map((group, i) => ({ group, lettering: letteringOfText(group, `lettering/${i}`) }))
}

/** The sets that stand on the panel (all of them when it is not known), with their colours, numbered anew. */
export function colouredSets(
  sets: readonly LiveSet[],
  panel: Box | undefined,
  surfaces: readonly Surface[],
  clouds: readonly Cloud[],
): { lettering: Lettering[]; outside: LaidRun[] } {
  const on = sets.filter(({ group }) => !panel || !group.runs.every((run) => isOutside(run, panel)))
  const outside = sets.filter((s) => !on.includes(s)).flatMap((s) => s.group.runs)
  const lettering = on.map(({ group, lettering: one }, i) =>
    withColours(numbered(one, i), paintedRuns(group.runs), surfaces, clouds),
  )
  return { lettering, outside }
}

function isOutside({ place }: LaidRun, panel: Box): boolean {
  if (!place) return false
  return place.x < panel.x || place.y < panel.y || place.x > panel.x + panel.width || place.y > panel.y + panel.height
}

function numbered(lettering: Lettering, i: number): Lettering {
  const element = `lettering/${i}`
  const lines = lettering.lines.map((line, n) => ({
    ...line,
    place: { ...line.place, element: `${element}/line/${n}` },
  }))
  return { ...lettering, place: { ...lettering.place, element }, lines }
}

interface DrawnSets {
  lettering: Lettering[]
  unread: Unread[]
  assumptions: Assumption[]
}

const ORDER: (LetteringPart | undefined)[] = ['raised', 'both', undefined, 'visual']

/**
 * Outlines as lettering, one set for each part that was named and one for those that nobody named.
 * @param first number of the first set, after those of live text
 */
export function setsOfPieces(
  pieces: readonly Piece[],
  grounds: readonly Piece[],
  rotation: number,
  first: number,
  surfaces: readonly Surface[],
  clouds: readonly Cloud[],
): DrawnSets {
  const sets: DrawnSets = { lettering: [], unread: [], assumptions: [] }
  for (const part of ORDER) {
    const all = pieces.filter((p) => letteringPart(p) === part)
    if (all.length === 0) continue
    const own = withoutPaintedCounters(all.slice(0, MOST_OUTLINES))
    if (all.length > MOST_OUTLINES) sets.unread.push(passedOver(all))
    if (part === undefined && !couldBeCharacters(own)) {
      const place = { element: 'drawing', box: own[0].box, source: own[0].shape.source }
      sets.unread.push({
        place,
        why: 'A shape with straight sides and few corners is no character; what it is was not told.',
        couldBe: ['border'],
      })
      continue
    }
    const lettering = letteringOfOutlines(own, part ?? 'both', rotation, `lettering/${first + sets.lettering.length}`)
    const painted = paintedPieces(own, grounds)
    const colour = part === undefined ? withDoubtfulColours : withColours
    sets.lettering.push(colour(lettering, painted, surfaces, clouds))
    if (part === undefined) sets.assumptions.push({ about: 'part', text: UNNAMED })
  }
  return sets
}

/** Outlines of one part that are looked at; a sign has some hundreds. */
const MOST_OUTLINES = 4000

function passedOver(pieces: readonly Piece[]): Unread {
  const why = `Of ${pieces.length} outlines only the first ${MOST_OUTLINES} are looked at (limit-reached).`
  return { place: { element: 'drawing', source: pieces[MOST_OUTLINES].shape.source }, why, couldBe: ['lettering'] }
}

const UNNAMED =
  'Outlines that nobody named are taken for characters, and for one set that serves touch and sight; they are not read yet.'

function letteringPart({ named }: Piece): LetteringPart | undefined {
  const part = named?.part
  return part === 'raised' || part === 'visual' || part === 'both' ? part : undefined
}
