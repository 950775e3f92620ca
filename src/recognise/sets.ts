import type { Box } from '../geometry/box.js'
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
