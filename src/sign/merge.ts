import type { Box } from '../geometry/box.js'
import type { Point } from '../geometry/point.js'
import { isKnown, type Assumption, type Colour, type Fact, type Place } from './sign.js'

/**
 * Two figures of one length that differ by no more are the same figure: the arithmetic of drawn coordinates is off by as much. What
 * differs by more is a conflict, however small, since a limit may lie between the two.
 */
const SAME_LENGTH = 0.001
/** The same for a ratio or a luminance. */
const SAME_RATIO = 1e-6

/** Joins what a drawing shows with what a description says, fact by fact, and keeps a list of where they differ. */
export class Merge {
  readonly conflicts: Assumption[] = []

  length = (at: string, name: string, drawn: Fact<number>, described: Fact<number>): Fact<number> =>
    this.pick(at, name, drawn, described, (a, b) => Math.abs(a - b) <= SAME_LENGTH, millimetres)

  ratio = (at: string, name: string, drawn: Fact<number>, described: Fact<number>): Fact<number> =>
    this.pick(at, name, drawn, described, (a, b) => Math.abs(a - b) <= SAME_RATIO, figure)

  kind = <T extends string | boolean>(at: string, name: string, drawn: Fact<T>, described: Fact<T>): Fact<T> =>
    this.pick(at, name, drawn, described, (a, b) => a === b, String)

  text = (at: string, name: string, drawn: Fact<string>, described: Fact<string>): Fact<string> =>
    this.pick(at, name, drawn, described, (a, b) => normalised(a) === normalised(b), quoted)

  colour = (at: string, name: string, drawn: Fact<Colour>, described: Fact<Colour>): Fact<Colour> =>
    this.pick(at, name, drawn, described, (a, b) => Math.abs(a.luminance - b.luminance) <= SAME_RATIO, colourName)

  point = (at: string, name: string, drawn: Fact<Point>, described: Fact<Point>, corner: Point): Fact<Point> =>
    this.pick(
      at,
      name,
      drawn,
      move(described, (p) => ({ x: p.x + corner.x, y: p.y + corner.y })),
      (a, b) => Math.abs(a.x - b.x) <= SAME_LENGTH && Math.abs(a.y - b.y) <= SAME_LENGTH,
      ({ x, y }) => `(${figure(x)}, ${figure(y)}) mm`,
    )

  box = (at: string, name: string, drawn: Fact<Box> | undefined, described: Fact<Box>, corner: Point): Fact<Box> => {
    const moved = move(described, (box) => moveBox(box, corner))
    return drawn ? this.pick(at, name, drawn, moved, sameBox, boxName) : moved
  }

  compareBoxes(at: string, name: string, drawn: Box, described: Box) {
    if (!sameBox(drawn, described)) this.conflict(at, name, boxName(drawn), boxName(described))
  }

  conflict(at: string, name: string, drawn: string, described: string) {
    this.say(
      `${at}, ${name}: the drawing shows ${drawn}, the description says ${described}; the description is judged.`,
    )
  }

  say(text: string) {
    this.conflicts.push({ about: 'conflict', text })
  }

  private pick<T>(
    at: string,
    name: string,
    drawn: Fact<T>,
    described: Fact<T>,
    same: (a: T, b: T) => boolean,
    write: (value: T) => string,
  ): Fact<T> {
    if (!isKnown(described)) return isKnown(drawn) || drawn.unknown !== 'missing-fact' ? drawn : described
    if (isKnown(drawn)) {
      if (same(drawn.value, described.value)) return drawn
      this.conflict(at, name, write(drawn.value), write(described.value))
    }
    return described
  }
}

/** The place in the drawing with the pointer into the description. */
export const mergePlace = (drawn: Place, described: Place | undefined, corner: Point): Place => ({
  ...(described?.box && { box: moveBox(described.box, corner) }),
  ...drawn,
  ...(described?.pointer !== undefined && { pointer: described.pointer }),
})

export const moveBox = (box: Box, by: Point): Box => ({ ...box, x: box.x + by.x, y: box.y + by.y })

/** Letters and words only: differences of case and of blanks are kept apart elsewhere. */
export const normalised = (text: string): string => text.normalize('NFC').trim().replace(/\s+/gu, ' ')

const move = <T>(fact: Fact<T>, by: (value: T) => T): Fact<T> =>
  isKnown(fact) ? { ...fact, value: by(fact.value) } : fact

const sameBox = (a: Box, b: Box): boolean =>
  [a.x - b.x, a.y - b.y, a.width - b.width, a.height - b.height].every((by) => Math.abs(by) <= SAME_LENGTH)

const FIGURES = 6
const figure = (value: number): string => String(Number(value.toPrecision(FIGURES)))
const millimetres = (value: number): string => `${figure(value)} mm`
const quoted = (text: string): string => `“${text}”`
const boxName = (b: Box): string =>
  `${figure(b.width)} by ${figure(b.height)} mm at (${figure(b.x)}, ${figure(b.y)}) mm`
const colourName = (colour: Colour): string => colour.css ?? `a reflectance of ${figure(colour.luminance * 100)} %`
