import type { ReportBox } from './place-schema.js'
import type { Numbered } from './numbering.js'
import { coordinate as n, escaped } from './markup.js'

/** Numbered marks: a frame round each place, a label in the margin beside it and a line between the two. */

export const FAIL_INK = '#b3261e'
export const OPEN_INK = '#1d4f91'

/** Under each line of a mark, so that it is seen on a panel of any colour. */
const HALO = '#ffffff'
const HALO_TIMES = 2.6

/** How many places of one finding are marked, and how many frames one drawing holds. */
export const MOST_MARKS_PER_FINDING = 12
const MOST_FRAMES = 60
/** Boxes that agree within this many millimetres share a frame. */
const SAME_BOX = 0.5

/** Sizes in units of the legend's text size. */
const LABEL_HEIGHT = 1.7
const ROW = 2
const CHARACTER = 0.6
const FRAME_GAP = 0.5
const LEADER = 2.5

export interface Frame {
  box: ReportBox
  failing: number[]
  undecided: number[]
}

/**
 * The places of all findings, equal places together, in the order of the numbers. Advice that is undecided is in the legend
 * only: it would hide what decides.
 */
export function framesFor(failing: readonly Numbered[], undecided: readonly Numbered[]): Frame[] {
  const frames = new Map<string, Frame>()
  const add = ({ number, finding }: Numbered, list: 'failing' | 'undecided') => {
    for (const { box } of finding.where.slice(0, MOST_MARKS_PER_FINDING)) {
      if (!box) continue
      const key = [box.x, box.y, box.width, box.height].map((v) => Math.round(v / SAME_BOX)).join('|')
      const frame = frames.get(key) ?? { box, failing: [], undecided: [] }
      if (!frame[list].includes(number)) frame[list].push(number)
      if (frames.has(key) || frames.size < MOST_FRAMES) frames.set(key, frame)
    }
  }
  for (const item of failing) add(item, 'failing')
  for (const item of undecided) if (item.finding.force === 'shall') add(item, 'undecided')
  return [...frames.values()]
}

/** "1, 3–5": numbers in rising order, runs of three and more drawn together. */
export function ranges(numbers: readonly number[]): string {
  const sorted = [...numbers].sort((a, b) => a - b)
  const runs: [number, number][] = []
  for (const number of sorted) {
    const last = runs[runs.length - 1]
    if (last && number === last[1] + 1) last[1] = number
    else runs.push([number, number])
  }
  return runs.map(([a, b]) => (a === b ? `${a}` : b === a + 1 ? `${a}, ${b}` : `${a}–${b}`)).join(', ')
}

interface Label {
  text: string
  ink: string
  dashed: boolean
  width: number
}

function labelsOf({ failing, undecided }: Frame, size: number): Label[] {
  const label = (text: string, ink: string, dashed: boolean): Label => ({
    text,
    ink,
    dashed,
    width: (text.length * CHARACTER + 1.2) * size,
  })
  return [
    ...(failing.length > 0 ? [label(ranges(failing), FAIL_INK, false)] : []),
    ...(undecided.length > 0 ? [label(`? ${ranges(undecided)}`, OPEN_INK, true)] : []),
  ]
}

const widthOf = (labels: Label[], size: number): number =>
  labels.reduce((sum, label) => sum + label.width, 0) + Math.max(0, labels.length - 1) * size * 0.4

export interface Margins {
  left: number
  right: number
}

const isLeft = ({ box }: Frame, content: ReportBox): boolean =>
  box.x + box.width / 2 < content.x + content.width / 2 + SAME_BOX

/** How wide the margins must be, in millimetres, for the labels and their lines. */
export function marginsFor(frames: readonly Frame[], content: ReportBox, size: number): Margins {
  const widest = (side: boolean) =>
    frames.filter((f) => isLeft(f, content) === side).reduce((w, f) => Math.max(w, widthOf(labelsOf(f, size), size)), 0)
  const margin = (w: number) => (w === 0 ? 0 : w + LEADER * size)
  return { left: margin(widest(true)), right: margin(widest(false)) }
}

/**
 * The marks in the sign's own millimetres.
 * @param content the box that the sign takes up; labels stand left and right of it
 * @returns the markup and the lowest edge of any label
 */
export function marksMarkup(
  frames: readonly Frame[],
  content: ReportBox,
  size: number,
): { markup: string; bottom: number } {
  const parts: string[] = []
  let bottom = content.y
  for (const left of [true, false]) {
    const side = frames.filter((f) => isLeft(f, content) === left)
    const sorted = side.sort((a, b) => middle(a) - middle(b) || a.box.x - b.box.x)
    let next = content.y
    for (const frame of sorted) {
      const y = Math.max(next, middle(frame) - (LABEL_HEIGHT * size) / 2)
      next = y + ROW * size
      bottom = Math.max(bottom, next)
      parts.push(markOf(frame, content, size, left, y))
    }
  }
  return { markup: parts.join('\n'), bottom }
}

const middle = ({ box }: Frame): number => box.y + box.height / 2

function markOf(frame: Frame, content: ReportBox, size: number, left: boolean, y: number): string {
  const labels = labelsOf(frame, size)
  const outer = frameMarkup(frame, size)
  const edge = left ? content.x - LEADER * size : content.x + content.width + LEADER * size
  const target = left ? frame.box.x - FRAME_GAP * size : frame.box.x + frame.box.width + FRAME_GAP * size
  const ink = labels[0]?.ink ?? OPEN_INK
  const labelMiddle = y + (LABEL_HEIGHT * size) / 2
  const line = (stroke: string, width: number) =>
    `<path d="M${n(edge)} ${n(labelMiddle)}L${n(target)} ${n(middle(frame))}" stroke="${stroke}" stroke-width="${n(size * width)}" fill="none"/>`
  const leader = line(HALO, 0.07 * HALO_TIMES) + line(ink, 0.07)
  let x = left ? edge - widthOf(labels, size) : edge
  const pills = labels.map((label) => {
    const pill = pillMarkup(label, x, y, size)
    x += label.width + size * 0.4
    return pill
  })
  return [outer, leader, ...pills].join('\n')
}

function frameMarkup({ box, failing, undecided }: Frame, size: number): string {
  const outline = (gap: number, ink: string, width: number, dash: string) =>
    `<rect x="${n(box.x - gap)}" y="${n(box.y - gap)}" width="${n(box.width + 2 * gap)}" height="${n(box.height + 2 * gap)}" rx="${n(size * 0.25)}" fill="none" stroke="${ink}" stroke-width="${n(size * width)}"${dash}/>`
  const frame = (gap: number, ink: string, dash: string) =>
    outline(gap, HALO, 0.12 * HALO_TIMES, '') + outline(gap, ink, 0.12, dash)
  const dash = ` stroke-dasharray="${n(size * 0.5)} ${n(size * 0.35)}"`
  const gap = FRAME_GAP * size
  return [
    undecided.length > 0 ? frame(failing.length > 0 ? gap * 1.8 : gap, OPEN_INK, dash) : '',
    failing.length > 0 ? frame(gap, FAIL_INK, '') : '',
  ].join('')
}

/** One label: solid for a failure, dashed with a question mark for what is undecided. */
export function pillMarkup(label: Label, x: number, y: number, size: number): string {
  const height = LABEL_HEIGHT * size
  const dash = label.dashed ? ` stroke-dasharray="${n(size * 0.35)} ${n(size * 0.22)}"` : ''
  const box = `<rect x="${n(x)}" y="${n(y)}" width="${n(label.width)}" height="${n(height)}" rx="${n(height / 2)}" fill="${label.dashed ? '#ffffff' : label.ink}" stroke="${label.ink}" stroke-width="${n(size * 0.12)}"${dash}/>`
  const text = `<text x="${n(x + label.width / 2)}" y="${n(y + height * 0.71)}" text-anchor="middle" font-weight="bold" font-size="${n(size)}" fill="${label.dashed ? label.ink : '#ffffff'}">${escaped(label.text)}</text>`
  return box + text
}

/** The label that stands before an entry of the legend. */
export const legendLabel = (number: number, undecided: boolean, size: number): Label => {
  const text = undecided ? `? ${number}` : `${number}`
  return {
    text,
    ink: undecided ? OPEN_INK : FAIL_INK,
    dashed: undecided,
    width: (text.length * CHARACTER + 1.2) * size,
  }
}
