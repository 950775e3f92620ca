import { isKnown, type Alignment, type Basis, type BrailleBlock, type Lettering, type Sign } from '../sign/sign.js'
import { eachBlock } from './braille.js'
import { unplaced, unsized } from './dots.js'
import { gapOf, nothing, pointerOf, take, type Ask } from './facts.js'
import { extentOfBox, frameOf, linesOf, type Extent, type Frame } from './frame.js'
import { raisedLettering, type Numbered } from './lettering.js'
import type { Gap } from './measurement.js'
import { isSurplus } from './pairing.js'
import { repeatedBy } from './position.js'
import type { Found, Quantities, Subject } from './quantity.js'

/**
 * How lines of raised characters stand among each other, or an only line on the panel, and how braille stands under its text.
 *
 * Datum, our reading, as no code says to which edge: a line's left end is that of its outlines or the start of its baseline, the
 * braille's that of the dots or of the first column of its cells, with or without half a dot. The right ends likewise; middles lie
 * halfway. Where described lines end on the right is not known, so they may be seen to stand flush left and no more.
 */

/** Millimetres within which two edges or middles are in line. Our own figure. */
const IN_LINE = 0.5

/** The blank beside a character in its typeface, as a share of the character height: by so much outlines may be off. Our own figure. */
const SIDE_BEARING = 0.15

/** Where a line or a block begins and ends; several values where it may be taken to begin at each. */
interface Ends {
  lefts: number[]
  rights: number[]
  middle: number | undefined
}

interface Line extends Ends {
  extent: Extent | undefined
}

const nearest = (a: number[], b: number[]): number => Math.min(...a.flatMap((x) => b.map((y) => Math.abs(x - y))))

/** How far two things are from standing in each way: flush left, centred, flush right. */
function offsets(a: Ends, b: Ends): { kind: Alignment; off: number }[] {
  const centred = a.middle === undefined || b.middle === undefined ? Infinity : Math.abs(a.middle - b.middle)
  return [
    { kind: 'flush-left', off: nearest(a.lefts, b.lefts) },
    { kind: 'centred', off: centred },
    { kind: 'flush-right', off: nearest(a.rights, b.rights) },
  ]
}

/** The ends of each line of a set of characters, with where it stands; undefined for one whose place is not known. */
function endsOfLines(lettering: Lettering, frame: Frame): (Line | undefined)[] {
  const extents = linesOf(lettering, frame)
  return lettering.lines.map(({ baseline }, i) => {
    const extent = extents[i]
    const start = isKnown(baseline) ? [frame.of(baseline.value).x] : []
    if (!extent) return start.length > 0 ? { lefts: start, rights: [], middle: undefined, extent } : undefined
    const ends = Number.isFinite(extent.right)
    return {
      lefts: [extent.left, ...start],
      rights: ends ? [extent.right] : [],
      middle: ends ? (extent.left + extent.right) / 2 : undefined,
      extent,
    }
  })
}

/** Lines that stand beside each other are one: the number of a room beside its name, say. */
function inRows(lines: Line[]): Ends[] {
  const rows: Line[][] = []
  for (const line of lines) {
    const row = rows.find((others) => others.some((other) => isBeside(line.extent, other.extent)))
    if (row) row.push(line)
    else rows.push([line])
  }
  return rows.map((row) => (row.length === 1 ? row[0] : together(row)))
}

/** Whether two lines share more than half the height of the lower of them. */
const isBeside = (a: Extent | undefined, b: Extent | undefined): boolean =>
  a !== undefined &&
  b !== undefined &&
  Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > Math.min(a.bottom - a.top, b.bottom - b.top) / 2

const heightOf = (lettering: Lettering[]): number =>
  Math.max(0, ...lettering.map(({ characterHeight }) => (isKnown(characterHeight) ? characterHeight.value : 0)))

const ALIGNED_ASK: Omit<Ask, 'pointer'> = {
  ask: 'How do the lines stand among each other, or the one line on the panel?',
  choices: ['flush-left', 'centred', 'flush-right', 'other'],
}
const UNDER_ASK: Omit<Ask, 'pointer'> = {
  ask: 'How does the braille stand under its text?',
  choices: ['flush-left', 'centred', 'flush-right', 'other'],
}

const RIGHT_END = 'where the lines end on the right is not known'

const isWhole = (ends: Ends): boolean => ends.middle !== undefined

function alignmentOfLines(sign: Sign): Found {
  const raised = raisedLettering(sign)
  const [first] = raised
  if (!first) return nothing('The sign has no raised characters.')
  const said = raised.map(({ lettering }) => lettering.alignment)
  const [one] = said
  if (isKnown(one) && said.every((other) => isKnown(other) && other.value === one.value))
    return {
      observations: [{ value: one.value, basis: one.basis, places: raised.map(({ lettering }) => lettering.place) }],
      gaps: [],
    }
  const pointer = pointerOf(first.lettering.place, 'lettering', first.n, 'alignment')
  const gap = (why: string): Found => ({
    observations: [],
    gaps: [gapOf({ unknown: 'missing-fact', why }, first.lettering.place, { ...ALIGNED_ASK, pointer })],
  })
  const frame = frameOf(sign)
  const lines = raised.flatMap(({ lettering }) => endsOfLines(lettering, frame))
  const placed = lines.filter((ends) => ends !== undefined)
  if (placed.length < lines.length || placed.length === 0) return gap('the place of the lines is not known')
  // The lines of one described set are placed by its first alone.
  if (
    raised.some(({ lettering: { lines: own } }) => own.length > 1 && own.every(({ outlines }) => outlines.length === 0))
  )
    return gap('a description places the first line only')
  const known = inRows(placed)
  const kind = known.length === 1 ? onPanel(known[0], sign) : amongEachOther(known, raised)
  if (kind === undefined) return gap(known.every(isWhole) ? 'the panel is not known' : RIGHT_END)
  return {
    observations: [
      { value: kind, basis: basisOfLines(raised), places: raised.map(({ lettering }) => lettering.place) },
    ],
    gaps: [],
  }
}

const basisOfLines = (raised: Numbered[]): Basis =>
  raised.some(({ lettering }) => lettering.lines.some(({ outlines }) => outlines.length > 0)) ? 'drawn' : 'declared'

/** An only line is centred on the panel, or stands to the side that it is nearer to. */
function onPanel(line: Ends, sign: Sign): Alignment | undefined {
  const { box } = sign.panel.place
  if (!box || line.middle === undefined) return undefined
  const { left, right } = extentOfBox(box, frameOf(sign))
  const off = line.middle - (left + right) / 2
  if (Math.abs(off) <= IN_LINE) return 'centred'
  return off < 0 ? 'flush-left' : 'flush-right'
}

function amongEachOther(lines: Ends[], raised: Numbered[]): Alignment | undefined {
  const slack = Math.max(IN_LINE, SIDE_BEARING * heightOf(raised.map(({ lettering }) => lettering)))
  const [first, ...others] = lines
  const fits = (kind: Alignment): boolean =>
    others.every((line) => offsets(line, first).some((found) => found.kind === kind && found.off <= slack))
  const found = (['flush-left', 'centred', 'flush-right'] as const).find(fits)
  return found ?? (lines.every(isWhole) ? 'other' : undefined)
}

/** The ends of a block: of its dots, and of the columns of its cells, with and without half a dot. */
function endsOfBraille({ lines, dotBaseDiameter, dotSpacing }: BrailleBlock, frame: Frame): Ends[] {
  const radius = isKnown(dotBaseDiameter) ? dotBaseDiameter.value / 2 : 0
  return lines.flatMap(({ dots, baseline }): Ends[] => {
    const along = dots.map((dot) => frame.of(dot).x)
    if (along.length === 0) return []
    const [least, most] = [Math.min(...along), Math.max(...along)]
    const column = isKnown(baseline) ? [frame.of(baseline.value).x] : []
    const last = isKnown(dotSpacing) ? [most, most + dotSpacing.value] : [most]
    const lefts = [least, ...column].flatMap((x) => [x, x - radius])
    return [{ lefts, rights: last.flatMap((x) => [x, x + radius]), middle: (least + most) / 2 }]
  })
}

function underText(block: BrailleBlock, n: number, subject: Subject): Found {
  const { sign } = subject
  const ask = { ...UNDER_ASK, pointer: pointerOf(block.place, 'braille', n, 'alignment') }
  if (isKnown(block.alignment)) return take(block.alignment, block.place, ask)
  const pairs = subject.pairs()
  if (isSurplus(pairs, n)) return nothing('The braille repeats none of the raised text, which other braille repeats.')
  const own = repeatedBy(n, pairs)
  const text = raisedLettering(sign).flatMap(({ lettering }) => (!own || own.includes(lettering) ? [lettering] : []))
  if (text.length === 0) return nothing('The sign has no raised characters.')
  const gap = (why: string, reason: Gap['reason'] = 'missing-fact'): Found => ({
    observations: [],
    gaps: [{ reason, why, places: [block.place], ...(reason === 'missing-fact' && { ask }) }],
  })
  const gaps = [...unplaced(block, n), ...(isKnown(block.dotBaseDiameter) ? [] : [unsized(block, n)])]
  if (gaps.length > 0) return { observations: [], gaps }
  const frame = frameOf(sign)
  const lines = text.flatMap((lettering) => endsOfLines(lettering, frame))
  const known = lines.filter((ends) => ends !== undefined)
  if (known.length === 0 || known.length < lines.length) return gap('the place of the text is not known')
  const whole = together(known)
  const found = endsOfBraille(block, frame).map((ends) => offsets(ends, whole))
  const worst = (kind: Alignment): number =>
    Math.max(...found.map((one) => one.find((offset) => offset.kind === kind)?.off ?? Infinity))
  const kinds = (['flush-left', 'centred', 'flush-right'] as const).map((kind) => ({ kind, off: worst(kind) }))
  const sure = kinds.find(({ off }) => off <= IN_LINE)
  if (!sure && !isWhole(whole)) return gap(RIGHT_END)
  if (!sure && kinds.some(({ off }) => off <= SIDE_BEARING * heightOf(text))) return gap(NEARLY, 'needs-judgement')
  const drawn = text.some((lettering) => lettering.lines.some(({ outlines }) => outlines.length > 0))
  const basis: Basis = drawn || block.place.source ? 'drawn' : 'declared'
  const places = [block.place, ...text.map(({ place }) => place)]
  return { observations: [{ value: sure?.kind ?? 'other', basis, places }], gaps: [] }
}

const NEARLY = 'the braille is nearly in line with the text, by less than the blank that characters have beside them'

/** The ends of all lines of a text taken together. */
function together(lines: Ends[]): Ends {
  const left = Math.min(...lines.flatMap(({ lefts }) => lefts))
  const whole = lines.every(isWhole)
  const right = Math.max(...lines.flatMap(({ rights }) => rights))
  const first = lines.reduce((a, b) => (Math.min(...b.lefts) < Math.min(...a.lefts) ? b : a))
  return {
    lefts: first.lefts,
    rights: whole ? [right] : [],
    middle: whole ? (left + right) / 2 : undefined,
  }
}

export const ALIGNMENT: Quantities = {
  'raised.alignment': {
    unit: 'kind',
    method: 'The ends and middles of the lines against each other, of an only line against the panel.',
    couldBe: ['lettering'],
    doubt: 'more',
    take: ({ sign }) => alignmentOfLines(sign),
  },
  'braille.alignment': {
    unit: 'kind',
    method: 'The ends and the middle of the braille against those of the text that it repeats.',
    couldBe: ['lettering', 'braille'],
    doubt: 'more',
    take: (subject) => eachBlock((block, n) => underText(block, n, subject))(subject),
  },
}
