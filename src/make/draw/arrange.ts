import { toMillimetres } from '../../sign/length.js'
import { blankFor, type Size } from './blank.js'
import { cannotSatisfy, exclusionOf } from './cannot.js'
import { compose, moveContent, type Content, type SetAlignment } from './content.js'
import { setCells, sizesOf, widthOf } from './dots.js'
import { balance, fill, widest } from './lines.js'
import { marginsOf, type Margins } from './margins.js'
import type { SignOrder } from './order.js'
import { joinWords, type SetLine } from './setting.js'
import { heightsOf, setAt, type Setting } from './size.js'
import type { Wanted } from './wanted.js'
import type { Wording } from './wording.js'

/** Text and braille on a panel: as large as they fit on the one that is given, else on the smallest blank. Millimetres. */

export interface Question {
  order: SignOrder
  wanted: Wanted
  wording: Wording
  alignment: SetAlignment
  /** Height of the field of a pictogram. */
  field: number | undefined
  /** Where in the window of line spacing the lines stand, 0 to 1. */
  leading: number
}

export interface Arrangement {
  panel: Size
  setting: Setting
  content: Content
}

/**
 * @throws {Refusal} `cannot-satisfy` when the text does not fit, or the client's wishes or the standards leave no way
 */
export function arrange(question: Question): Arrangement {
  const { order, wanted } = question
  const heights = heightsOf(order, wanted)
  const { panel, units = 'mm' } = order
  if (panel?.width === undefined || panel.height === undefined) return onBlank(question, heights)
  const given = { width: toMillimetres(panel.width, units), height: toMillimetres(panel.height, units) }
  return onPanel(question, given, heights)
}

interface Heights {
  wish: number
  least: number
}

interface Laid {
  setting: Setting
  content: Content
  /** No word of cells is wider than the room, and nothing that hangs below the baseline comes near the braille. */
  isSound: boolean
}

/** Text lines are not made longer than so many character heights where the panel is free (common practice, no source). */
const LONGEST_LINE = 14
/** Nor braille lines, millimetres (common practice, no source). */
const LONGEST_BRAILLE = 250
/** Where a standard counts from the baseline, dots and descenders may come near each other: so near a finger takes them for one (common practice, no source). */
const LEAST_CLEARANCE = 1
/** A line that stands flush left ends clearly nearer to the left edge. */
const FLUSH_SLACK = 3

/** @param room that lines may take; without it as much as they like */
function layOut(question: Question, height: number, room: Size | undefined, isOneLine: boolean): Laid {
  const { order, wanted, wording, alignment, field, leading } = question
  const setting = setAt(height, order, wanted, wording)
  const lines = linesOf(setting, room?.width ?? LONGEST_LINE * height, room !== undefined, isOneLine)
  const { cells } = wording
  const sizes = sizesOf(wanted)
  const wish = cells === undefined ? 0 : Math.min(widthOf(cells, sizes), LONGEST_BRAILLE)
  const dots = cells === undefined ? undefined : setCells(cells, sizes, room?.width ?? Math.max(widest(lines), wish))
  const content = compose({ lines, characterHeight: height, alignment, dots, field, leading }, wanted)
  return { setting, content, isSound: dots?.tooWide !== true && content.clearance >= LEAST_CLEARANCE }
}

function linesOf({ words, space }: Setting, width: number, isBound: boolean, isOneLine: boolean): SetLine[] {
  const [all = []] = words
  if (words.length > 1 || isOneLine) return words.map((line) => joinWords(line, space))
  return isBound ? fill(all, space, width) : balance(all, space, width)
}

function onBlank(question: Question, { wish, least }: Heights): Arrangement {
  const { order, wanted } = question
  const margins = marginsOf(order, wanted, false)
  for (const height of [wish, least]) {
    const { setting, content, isSound } = layOut(question, height, undefined, wanted.prefersOneLine)
    const panel = blankFor(sizeWith(content, margins, question.alignment))
    if (panel && isSound) return place({ panel, setting, content }, margins, question.alignment)
  }
  throw cannotSatisfy(TOO_LONG, [exclusionOf('panel.size', TOO_LONG, wanted, WHAT_MAKES_IT_LARGE)])
}

const TOO_LONG =
  'At the least character height that will do the text is too long for any stock blank, or what hangs below its baseline meets the braille.'
const WHAT_MAKES_IT_LARGE = [
  'raised.characterHeight',
  'raised.characterSpacing',
  'raised.wordSpacing',
  'braille.cellSpacing',
  'braille.characterClearance',
  'braille.textGap',
]

const sizeWith = ({ box }: Content, margins: Margins, alignment: SetAlignment): Size => ({
  width: margins.left + box.width + margins.right + (alignment === 'flush-left' ? FLUSH_SLACK : 0),
  height: margins.top + box.height + margins.bottom,
})

const fitsOn = (panel: Size, { content, isSound }: Laid, margins: Margins, alignment: SetAlignment): boolean => {
  const size = sizeWith(content, margins, alignment)
  return isSound && size.width <= panel.width && size.height <= panel.height
}

/** Millimetres to which the greatest height is found. */
const EXACT = 0.25

/** With the usual margins or tight ones, and with one line where several bring in more requirements, whichever comes first. */
function onPanel(question: Question, panel: Size, heights: Heights): Arrangement {
  const { order, wanted, alignment } = question
  const usual = marginsOf(order, wanted, false)
  const tight = marginsOf(order, wanted, true)
  const ways = (wanted.prefersOneLine ? [true, false] : [false]).flatMap((isOneLine) =>
    [usual, tight].map((margins) => ({ isOneLine, margins })),
  )
  for (const { isOneLine, margins } of ways) {
    const found = largest(question, panel, heights, margins, isOneLine)
    if (found) return place({ panel, ...found }, margins, alignment)
  }
  const { content } = layOut(question, heights.least, undefined, wanted.prefersOneLine)
  const need = sizeWith(content, tight, alignment)
  const text =
    `The text does not fit on ${panel.width} × ${panel.height} mm: at the least character height that will do ` +
    `(${heights.least.toFixed(1)} mm) it takes ${Math.ceil(need.width)} × ${Math.ceil(need.height)} mm with its margins, or the like in other lines.`
  throw cannotSatisfy(text, [exclusionOf('panel.size', text, wanted, WHAT_MAKES_IT_LARGE)])
}

const roomOn = (panel: Size, margins: Margins, alignment: SetAlignment): Size => ({
  width: panel.width - margins.left - margins.right - (alignment === 'flush-left' ? FLUSH_SLACK : 0),
  height: panel.height - margins.top - margins.bottom,
})

function largest(question: Question, panel: Size, { wish, least }: Heights, margins: Margins, isOneLine: boolean) {
  const { alignment } = question
  const room = roomOn(panel, margins, alignment)
  if (room.width <= 0 || room.height <= 0) return undefined
  const tried = (height: number): Laid | undefined => {
    const laid = layOut(question, height, room, isOneLine)
    return fitsOn(panel, laid, margins, alignment) ? laid : undefined
  }
  const first = tried(wish)
  let found = first ?? tried(least)
  if (first || !found) return found
  let [low, high] = [least, wish]
  while (high - low > EXACT) {
    const middle = (low + high) / 2
    const laid = tried(middle)
    if (laid) [low, found] = [middle, laid]
    else high = middle
  }
  return found
}

/** The content in its place on the panel. */
function place({ panel, setting, content }: Arrangement, margins: Margins, alignment: SetAlignment): Arrangement {
  const { box } = content
  const rest = panel.width - box.width
  const left = alignment === 'flush-left' ? margins.left : alignment === 'centred' ? rest / 2 : rest - margins.right
  const above = panel.height - margins.top - margins.bottom - box.height
  const top = margins.isBottomFixed ? panel.height - margins.bottom - box.height : margins.top + above / 2
  return { panel, setting, content: moveContent(content, left - box.x, top - box.y) }
}
