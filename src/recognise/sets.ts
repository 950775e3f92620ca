import { boxesOverlap, boxOfOutlines, type Box } from '../geometry/box.js'
import type { Lettering, LetteringPart } from '../sign/sign.js'
import { paintedRuns, withColours } from './colouring.js'
import type { Cloud, Surface } from './colours.js'
import { lieOf } from './frame.js'
import type { LaidRun } from './layout.js'
import { groupRuns, letteringOfText, type TextGroup } from './text.js'

/** The sets of characters that live text makes up, by part, face and size. */

export interface LiveSet {
  group: TextGroup
  lettering: Lettering
}

/** Live text as sets, in reading order as far as their boxes tell; colours are still unknown. */
export function setsOfRuns(runs: readonly { run: LaidRun; part: LetteringPart }[]): LiveSet[] {
  return groupRuns(runs).map((group, i) => {
    const { frame } = group.runs[0]
    return { group, lettering: { ...letteringOfText(group, `lettering/${i}`), ...(frame && { lie: lieOf(frame) }) } }
  })
}

/** The sets that stand on the panel, or on the page where no panel is known, with their colours, numbered anew. */
export function colouredSets(
  sets: readonly LiveSet[],
  edge: Box,
  surfaces: readonly Surface[],
  clouds: readonly Cloud[],
): { lettering: Lettering[]; outside: LaidRun[] } {
  const outside = sets.flatMap(({ group }) => group.runs.filter((run) => isOutside(run, edge)))
  const left = new Set(outside)
  const on = sets.flatMap((set): LiveSet[] => {
    const runs = set.group.runs.filter((run) => !left.has(run))
    if (runs.length === set.group.runs.length) return [set]
    return runs.length === 0 ? [] : setsOfRuns(runs.map((run) => ({ run, part: set.group.part })))
  })
  const lettering = on.map(({ group, lettering: one }, i) =>
    withColours(numbered(one, i), paintedRuns(group.runs), surfaces, clouds),
  )
  return { lettering, outside }
}

/** Whether a run lies wholly outside: by its outlines, else by its beginning when it cannot reach in from there. */
function isOutside({ place, characters, frame, drawn }: LaidRun, edge: Box): boolean {
  const box = boxOfOutlines(characters.flatMap((c) => c.outlines))
  if (box) return !boxesOverlap(edge, box)
  if (!place) return false
  const reach = (frame?.emAlong ?? 0) * drawn.text.length
  const x = Math.max(edge.x - place.x, place.x - edge.x - edge.width)
  const y = Math.max(edge.y - place.y, place.y - edge.y - edge.height)
  return Math.max(x, y) > reach
}

function numbered(lettering: Lettering, i: number): Lettering {
  const element = `lettering/${i}`
  const lines = lettering.lines.map((line, n) => ({
    ...line,
    place: { ...line.place, element: `${element}/line/${n}` },
  }))
  return { ...lettering, place: { ...lettering.place, element }, lines }
}
