import { boxOfOutlines, unionOfBoxes, type Box } from '../geometry/box.js'
import type { Point } from '../geometry/point.js'
import { distanceBetween } from '../geometry/gap.js'
import { betweenOf } from './between.js'
import { isKnown, missing, type Fact, type Lettering, type LetteringLine, type LetteringPart } from '../sign/sign.js'
import { alongLine, angleOf, downLine, sameDirection, type Frame } from './frame.js'
import type { LaidCharacter, LaidRun } from './layout.js'
import { notTheOutlines, sizesOf, styleOf, unreadable } from './textsizes.js'
import { UNDRAWN_OF_LETTERING } from './undrawn.js'

/**
 * Live text as lettering. Sizes come from the outlines of the typeface, distances from the outlines as they are set; what
 * the typeface does not tell is unknown, never estimated.
 */

/** Runs that are one set of characters: one part, one face, one size, one direction. */
export interface TextGroup {
  part: LetteringPart
  runs: LaidRun[]
}

/** Degrees within which two lines run the same way. */
const SAME_DIRECTION = 0.5
/** Share of the size within which two runs have one size. */
const SAME_SIZE = 0.01
/** Share of the em within which two runs stand on one baseline. */
const SAME_BASELINE = 0.05
/** A gap between two characters that leaves room for a space: beyond what is usual on the line, as a share of the em. */
const ROOM_FOR_SPACE = 0.2

/** Puts runs of one part, face, size and direction together, in the order of the drawing. */
export function groupRuns(runs: readonly { run: LaidRun; part: LetteringPart }[]): TextGroup[] {
  const groups: TextGroup[] = []
  for (const { run, part } of runs) {
    const group = groups.find((g) => g.part === part && alike(g.runs[0], run))
    if (group) group.runs.push(run)
    else groups.push({ part, runs: [run] })
  }
  return groups
}

function alike(a: LaidRun, b: LaidRun): boolean {
  if (faceName(a) !== faceName(b) || a.frame?.mirrored !== b.frame?.mirrored) return false
  if (!a.frame || !b.frame) return a.frame === b.frame
  const near = (m: number, n: number) => Math.abs(m - n) <= SAME_SIZE * Math.max(m, n)
  return (
    near(a.frame.emAcross, b.frame.emAcross) &&
    near(a.frame.emAlong, b.frame.emAlong) &&
    sameDirection(angleOf(a.frame), angleOf(b.frame), SAME_DIRECTION)
  )
}

const faceName = ({ face, drawn }: LaidRun): string =>
  face.kind === 'unknown' ? `? ${drawn.fontFamilies[0] ?? ''} ${drawn.fontWeight} ${drawn.fontStyle}` : face.name

interface Line {
  runs: LaidRun[]
  down: number
}

/** The lettering of a group; places are numbered from `element`, e.g. `lettering/0`. Colours are filled in by the caller. */
export function letteringOfText({ part, runs }: TextGroup, element: string): Lettering {
  const frame = runs[0].frame
  const lines = linesOf(runs, frame)
  const trouble = runs.find((r) => r.trouble)?.trouble
  const letteringLines = lines.map((line, i) => lineOf(line, frame, `${element}/line/${i}`))
  const box = unionOfBoxes(letteringLines.map((l) => l.place.box))
  return {
    place: { element, box, source: runs[0].drawn.source },
    part,
    text: textOfLines(letteringLines),
    lines: letteringLines,
    family: runs[0].face.family,
    style: styleOf(runs[0]),
    ...sizesOf(runs[0]),
    ...UNDRAWN_OF_LETTERING,
    section: missing('a drawing does not say the section of raised characters'),
    characterSpacing: trouble ?? spacingBetween(runs[0], lines, letteringLines),
    baselineSpacing: lines.length > 1 ? baselineSpacingOf(lines) : undefined,
    colour: unreadable('not looked at'),
    background: unreadable('not looked at'),
  }
}

function linesOf(runs: readonly LaidRun[], frame: Frame | undefined): Line[] {
  if (!frame) return runs.map((run, i) => ({ runs: [run], down: i }))
  const lines: Line[] = []
  for (const run of runs) {
    const at = run.characters[0]?.origin ?? run.place
    const down = at ? downLine(at, frame.along) : NaN
    const line = lines.find((l) => Math.abs(l.down - down) <= SAME_BASELINE * frame.emAcross)
    if (line) line.runs.push(run)
    else if (at || lines.length === 0) lines.push({ runs: [run], down })
    else lines[lines.length - 1].runs.push(run)
  }
  return lines.sort((a, b) => a.down - b.down)
}

const inOrder = (characters: LaidCharacter[], { along }: Frame): LaidCharacter[] =>
  [...characters].sort((a, b) => alongLine(a.origin, along) - alongLine(b.origin, along))

function lineOf(line: Line, frame: Frame | undefined, element: string): LetteringLine {
  const laid = line.runs.every((r) => !r.trouble)
  const characters =
    frame && laid
      ? inOrder(
          line.runs.flatMap((r) => r.characters),
          frame,
        )
      : []
  const drawn = line.runs.flatMap((r) => r.characters.flatMap((c) => c.outlines))
  const outlines = line.runs.every((r) => r.face.kind === 'outlines') ? drawn : []
  const first = characters.find((c) => c.outlines.length > 0)
  const box: Box | undefined = boxOfOutlines(drawn)
  return {
    place: { element, box, source: line.runs[0].drawn.source },
    text: frame && laid ? { value: spelled(characters, frame), basis: 'drawn' } : asWritten(line),
    baseline: first ? { value: first.origin, basis: 'drawn' } : baselineAsWritten(line),
    outlines,
  }
}

/** Text of a line whose outlines are unknown: only where the file leaves no doubt about its spaces. */
function asWritten({ runs }: Line): Fact<string> {
  const [run] = runs
  const text = run.drawn.text.replace(/\s+/g, ' ').trim()
  const doubtful = runs.length > 1 || (run.scattered && !text.includes(' '))
  if (doubtful)
    return unreadable(
      'the characters are put in place one by one in an unknown typeface, so that spaces between words cannot be told',
    )
  return { value: text, basis: 'drawn' }
}

function baselineAsWritten({ runs }: Line): Fact<Point> {
  const [run] = runs
  if (runs.length === 1 && run.place && run.drawn.textAnchor === 'start') return { value: run.place, basis: 'drawn' }
  return run.trouble ?? unreadable('where the line begins is not known')
}

const gapsOf = (characters: readonly LaidCharacter[], { along }: Frame): number[] =>
  characters
    .slice(1)
    .map((c, i) => alongLine(c.origin, along) - alongLine(characters[i].origin, along) - characters[i].advance)

/** The characters of a line as they read: a gap that leaves room for a space is one. */
function spelled(characters: readonly LaidCharacter[], frame: Frame): string {
  const gaps = gapsOf(characters, frame)
  const room = usualGap(gaps) + ROOM_FOR_SPACE * frame.emAlong
  const text = characters.map((c, i) => (i > 0 && gaps[i - 1] > room ? ` ${c.character}` : c.character)).join('')
  return text.replace(/\s+/g, ' ').trim()
}

/** Tracking: the gap that most pairs of a line have. One pair alone tells nothing. */
function usualGap(gaps: readonly number[]): number {
  const sorted = [...gaps].sort((a, b) => a - b)
  return sorted.length < 2 ? 0 : sorted[Math.floor((sorted.length - 1) / 2)]
}

/** What successive lines say together; unknown when one of them is. */
export function textOfLines(lines: readonly LetteringLine[]): Fact<string> {
  const unknown = lines.map((l) => l.text).find((t) => !isKnown(t))
  if (unknown) return unknown
  return {
    value: lines
      .map((l) => (isKnown(l.text) ? l.text.value : ''))
      .join(' ')
      .trim(),
    basis: 'drawn',
  }
}

const spacingBetween = ({ face }: LaidRun, lines: readonly Line[], letteringLines: readonly LetteringLine[]) =>
  face.kind === 'substitute' ? notTheOutlines(face) : spacingOf(lines, letteringLines)

function spacingOf(lines: readonly Line[], letteringLines: readonly LetteringLine[]): Fact<number> {
  const gaps: { distance: number; line: number; pair: [string, string] }[] = []
  lines.forEach(({ runs }, line) => {
    const frame = runs[0].frame
    if (!frame) return
    const characters = inOrder(
      runs.flatMap((r) => r.characters),
      frame,
    )
    const between = gapsOf(characters, frame)
    const room = usualGap(between) + ROOM_FOR_SPACE * frame.emAlong
    characters.slice(1).forEach((c, i) => {
      const left = characters[i]
      if (c.outlines.length === 0 || left.outlines.length === 0 || between[i] > room) return
      const pair: [string, string] = [left.character, c.character]
      gaps.push({ distance: distanceBetween(left.outlines, c.outlines).distance, line, pair })
    })
  })
  if (gaps.length === 0) return { unknown: 'missing-fact', why: 'no two characters stand next to each other' }
  const distances = gaps.map((g) => g.distance)
  const [min, max] = [Math.min(...distances), Math.max(...distances)]
  const extremes = gaps.filter((g) => g.distance === min || g.distance === max).map((g) => letteringLines[g.line].place)
  return {
    value: distances.reduce((a, b) => a + b, 0) / distances.length,
    basis: 'drawn',
    min,
    max,
    count: distances.length,
    method: 'least distance between the outlines of neighbouring characters, not across spaces',
    places: [...new Set(extremes)],
    between: betweenOf(gaps),
  }
}

function baselineSpacingOf(lines: readonly Line[]): Fact<number> {
  const steps = lines.slice(1).map((line, i) => line.down - lines[i].down)
  if (!steps.every(Number.isFinite)) return unreadable('where the lines stand is not known')
  return {
    value: steps.reduce((a, b) => a + b, 0) / steps.length,
    basis: 'drawn',
    min: Math.min(...steps),
    max: Math.max(...steps),
    count: steps.length,
    method: 'distance of successive baselines, square to them',
  }
}
