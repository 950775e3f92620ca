import type { Translator } from '../braille/translator.js'
import { unionOfBoxes, type Box } from '../geometry/box.js'
import { medianOf } from '../geometry/fit.js'
import type { Point } from '../geometry/point.js'
import {
  missing,
  type Assumption,
  type BrailleBlock,
  type BrailleLine,
  type Lie,
  type Place,
  type Unread,
} from '../sign/sign.js'
import { FEWEST_DOTS, groupsOf, looksLikeBraille, MOST_DOTS_IN_BLOCK, type Group } from './blocks.js'
import { directions } from './cells.js'
import { distortionWords } from './distortion.js'
import type { Dot } from './dots.js'
import { doubtOf } from './doubtful.js'
import { chooseReading, MOST_LINES, type ChosenReading, type Surroundings } from './orientation.js'
import { diameterFact, spacingsOf } from './spacing.js'
import { MOST_RUNS, WordingJudge } from './wording.js'

export interface BrailleOptions {
  translator: Translator
  /** Print texts of the sign that are known without reading outlines; may be empty. */
  expected: string[]
  /** The client said that these dots are braille: odd sizes and few dots are then braille too. */
  named: boolean
  /** Boxes of what is probably lettering, if known: braille stands below it, which helps to tell which end is up. */
  lettering?: Box[]
  /** How the lettering lies, as far as it is known. */
  lies?: Lie[]
}

export interface BrailleFound {
  blocks: BrailleBlock[]
  /** Dots that belong to no block. */
  strays: Dot[]
  assumptions: Assumption[]
  unread: Unread[]
}

/** Fewest dots of a block that says an expected text, or that the client named. */
const FEWEST_EXPECTED = 2
/** Diameters that an unreadable group must have to be spoken of as braille, millimetres. */
const LIKELY_DIAMETER = [0.8, 2.5] as const
/** Groups that could not be read are spoken of one by one up to this many. */
const MOST_UNREAD = 50
/** Rotations are told to this fraction of a degree. */
const ROTATION_STEPS = 10_000

const NOT_SHOWN = 'a flat drawing does not show it'

/** Braille read from dots: blocks from the top down, cells, text where a translation confirms it, and spacings. Pure. */
export function readBraille(dots: Dot[], options: BrailleOptions): BrailleFound {
  const judge = new WordingJudge(options.translator, options.expected)
  const found: BrailleFound = { blocks: [], strays: [], assumptions: [], unread: [] }
  const groups = groupsOf(dots).map((group) => ({ group, box: boxOf(group.dots) }))
  groups.sort((a, b) => a.box.y - b.box.y || a.box.x - b.box.x)
  const alone = groups.map(({ group }) => chooseFor(group, judge, options))
  const neighbours = surestDirection(alone)
  for (const [i, { group, box }] of groups.entries()) {
    const choice = neighbours ? chooseFor(group, judge, options, neighbours) : alone[i]
    if (choice === 'stray') {
      found.strays.push(...group.dots)
    } else if ('unread' in choice) {
      found.strays.push(...group.dots)
      const place = { element: 'braille', box, source: group.dots[0].shape.source }
      if (found.unread.length < MOST_UNREAD) found.unread.push({ place, why: choice.unread, couldBe: ['braille'] })
    } else {
      addBlock(found, choice)
    }
  }
  return found
}

/** What one group of dots is: a block with its reading, something unreadable, or dots of no braille. */
function chooseFor(
  group: Group,
  judge: WordingJudge,
  options: BrailleOptions,
  neighbours?: Surroundings['neighbours'],
): ChosenReading | { unread: string } | 'stray' {
  if (group.tooMany)
    return {
      unread: `a field of ${group.dots.length} dots is more than is read (limit-reached: at most ${MOST_DOTS_IN_BLOCK} dots in a block)`,
    }
  const lattices = group.lattices.filter((lattice) => options.named || looksLikeBraille(lattice))
  if (lattices.length === 0)
    return options.named || likely(group)
      ? { unread: 'these dots look like braille, but stand on no regular lattice of cells' }
      : 'stray'
  const choice = chooseReading(lattices, judge, { lettering: options.lettering ?? [], neighbours })
  if (choice === 'limit-reached')
    return {
      unread: `there is more braille than is read (limit-reached: at most ${MOST_LINES} lines in a block and ${MOST_RUNS} runs of cells)`,
    }
  const fewest = options.named || (!('undecided' in choice) && isExpected(choice)) ? FEWEST_EXPECTED : FEWEST_DOTS
  if (group.dots.length < fewest) return 'stray'
  if ('undecided' in choice) return { unread: choice.undecided }
  if (options.named || isExpected(choice)) return choice
  const lies = options.lies ?? []
  const characters = { areKnown: options.expected.length > 0 || lies.length > 0, lies }
  const doubt = doubtOf(choice, rotationOf(choice), characters)
  return doubt === undefined ? choice : { unread: doubt }
}

/** The way round of the block that is read with most certainty: the other blocks of a drawing most likely run alike. */
function surestDirection(choices: ReturnType<typeof chooseFor>[]): Surroundings['neighbours'] {
  const read = choices.flatMap((choice) => (choice === 'stray' || 'unread' in choice ? [] : [choice]))
  if (read.length < 2) return undefined
  const surest = read.reduce((a, b) => (b.score > a.score ? b : a))
  if (!isExpected(surest) && surest.lines.some((line) => line.wording.text === undefined)) return undefined
  return { reading: directions(surest.lattice, surest.facing).reading, mirrored: surest.facing.mirrored }
}

const isExpected = (choice: ChosenReading): boolean => choice.lines.every((line) => line.wording.expected)

function likely(group: Group): boolean {
  const diameter = medianOf(group.dots.map((d) => d.diameter))
  return group.dots.length >= FEWEST_DOTS && diameter >= LIKELY_DIAMETER[0] && diameter <= LIKELY_DIAMETER[1]
}

function addBlock(found: BrailleFound, choice: ChosenReading): void {
  const { lattice, facing } = choice
  const element = `braille/${found.blocks.length}`
  const lines = choice.lines.map((line) => line.reading.dots)
  const placeOf = (line: number, cell: number, number?: number): Place => {
    const members = lines[line].filter((d) => d.cell === cell && (number === undefined || d.number === number))
    const name = `${element}/line/${line}/cell/${cell}`
    return placeOfDots(
      number === undefined ? name : `${name}/dot/${number}`,
      members.map((d) => d.dot),
    )
  }
  const { reading, down } = directions(lattice, facing)
  const spacings = spacingsOf(lines, { along: reading, down }, placeOf)
  const lineSeen = (line: number) => (facing.turned ? lines.length - 1 - line : line)
  const inside = lattice.outliers.flatMap(({ dot, line }) =>
    line === undefined ? [] : [{ dot, line: lineSeen(line) }],
  )
  found.strays.push(...lattice.outliers.map(({ dot }) => dot))
  const why = 'a dot stands clearly off the places of the cells, so that they cannot be told apart'
  const brailleLines = choice.lines.map((line, l): BrailleLine => {
    const { reading, wording } = line
    const irregular =
      inside.some((outsider) => outsider.line === l) || (inside.length > 0 && wording.text === undefined)
    const doubt = irregular ? why : line.isOpen ? openWords(line) : undefined
    const { x, y } = spacings.origins[l]
    return {
      place: placeOfDots(
        `${element}/line/${l}`,
        lines[l].map((d) => d.dot),
      ),
      cells: doubt === undefined ? { value: reading.cells, basis: 'drawn' } : { unknown: 'unreadable', why: doubt },
      ...(doubt === undefined && wording.text !== undefined && { text: wording.text }),
      dots: lines[l].map(({ dot }) => ({ x: dot.x, y: dot.y })),
      baseline: line.isOpen
        ? { unknown: 'unreadable', why: openWords(line) }
        : { value: { x: x + 2 * spacings.down.x, y: y + 2 * spacings.down.y }, basis: 'drawn' },
    }
  })
  const all = lines.flatMap((dots, line) => dots.map((d) => ({ ...d, line })))
  const placeOfDot = (dot: Dot): Place => {
    const at = all.find((d) => d.dot === dot)
    return at ? placeOf(at.line, at.cell, at.number) : placeOfDots(element, [dot])
  }
  for (const { dot, line } of inside)
    found.unread.push({ place: placeOfDots(`${element}/line/${line}`, [dot]), why, couldBe: ['braille'] })
  const uncertain = inside.length > 0
  const unreadable = { unknown: 'unreadable', why } as const
  found.blocks.push({
    place: placeOfDots(
      element,
      all.map((d) => d.dot),
    ),
    lines: brailleLines,
    dotBaseDiameter: diameterFact(
      all.map((d) => d.dot),
      placeOfDot,
    ),
    dotHeight: missing(NOT_SHOWN),
    dotShape: missing(NOT_SHOWN),
    dotSpacing: uncertain ? unreadable : spacings.dotSpacing,
    cellSpacing: uncertain ? unreadable : spacings.cellSpacing,
    ...(spacings.lineSpacing && { lineSpacing: uncertain ? unreadable : spacings.lineSpacing }),
    alignment: missing(),
    rotation: rotationOf(choice),
    mirrored: facing.mirrored,
  })
  const distorted = distortionWords(spacings.distortion, element).map((text) => ({ about: 'lattice', text }))
  found.assumptions.push(...assumptionsOf(choice, element), ...distorted)
}

/** Why a line is open that has no dot in some rows or columns of its cells. */
const openWords = ({ reading, alternatives }: ChosenReading['lines'][number]): string =>
  `no dot shows in which rows and columns of its cells the line stands: it may be ${[reading, ...alternatives].map(({ cells }) => cells).join(' or ')}`

function assumptionsOf({ lattice, facing, lines }: ChosenReading, element: string): Assumption[] {
  const assumptions: Assumption[] = []
  const say = (about: string, text: string) => assumptions.push({ about, text })
  if (facing.mirrored)
    say('braille-orientation', `${element} is read as drawn from the back (mirrored): only that way it gives words.`)
  else if (facing.turned || Math.abs(lattice.along.y) > Math.abs(lattice.along.x))
    say(
      'braille-orientation',
      `${element} does not run from left to right on the drawing; it is read the way round in which it gives words.`,
    )
  lines.forEach(({ reading, wording, alternatives, isOpen }, l) => {
    if (isOpen) return
    const shifted = reading.rowShift > 0 || reading.columnShift > 0
    const where = `${element}/line/${l}`
    if (alternatives.length > 0)
      say(
        'braille-phase',
        `${where} has no dot in some rows or columns of its cells; it is taken as ${reading.cells}, but ${alternatives.map((a) => a.cells).join(' or ')} would have the same dots.`,
      )
    else if (shifted)
      say(
        'braille-phase',
        `${where} has no dot in some rows or columns of its cells; it is taken as ${reading.cells}${wording.text === undefined ? '' : `, which says “${wording.text}”`}.`,
      )
  })
  return assumptions
}

/** Reading direction; that of a mirrored block as seen from its other side. */
function rotationOf({ lattice, facing }: Pick<ChosenReading, 'lattice' | 'facing'>): number {
  const { reading } = directions(lattice, facing)
  return degreesOf(facing.mirrored ? { x: -reading.x, y: reading.y } : reading)
}

/** Clockwise as seen, above -180 and up to 180. */
function degreesOf({ x, y }: Point): number {
  const degrees = Math.round((Math.atan2(y, x) * 180 * ROTATION_STEPS) / Math.PI) / ROTATION_STEPS
  return degrees === -180 ? 180 : degrees + 0
}

const placeOfDots = (element: string, dots: readonly Dot[]): Place => ({
  element,
  box: boxOf(dots),
  ...(dots.length > 0 && { source: dots[0].shape.source }),
})

const boxOf = (dots: readonly Dot[]): Box =>
  unionOfBoxes(
    dots.map((d) => ({ x: d.x - d.diameter / 2, y: d.y - d.diameter / 2, width: d.diameter, height: d.diameter })),
  ) ?? { x: 0, y: 0, width: 0, height: 0 }
