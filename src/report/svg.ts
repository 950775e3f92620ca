import { boxOfPoints, unionOfBoxes, type Box } from '../geometry/box.js'
import { isKnown, type Sign } from '../sign/sign.js'
import { standardOfRequirement } from '../standards/requirement-id.js'
import type { Finding } from './finding-schema.js'
import { legendMarkup, type LegendEntry } from './svg-legend.js'
import { coordinate as n, escaped } from './markup.js'
import { fixed } from './numbers.js'
import { numbered, type Numbered } from './numbering.js'
import { reportBox } from './place.js'
import type { ReportBox } from './place-schema.js'
import type { Report } from './schema.js'
import { framesFor, marginsFor, marksMarkup, MOST_MARKS_PER_FINDING, type Margins } from './svg-marks.js'
import { signMarkup } from './svg-sign.js'
import { signName, verdictSentence, VERDICT_WORDS } from './words.js'

/** Text is this share of the sheet's width, and at least this many millimetres high. */
const TEXT_SHARE = 1 / 75
const LEAST_TEXT = 2.6
/** The least width of the sheet, in text sizes: a legend needs room. */
const LEAST_WIDTH = 62
const PAPER = '#ffffff'
const TEXT_INK = '#1f2933'
const QUIET_INK = '#4a5563'
const FONT = 'system-ui, "Segoe UI", "Helvetica Neue", Arial, "DejaVu Sans", sans-serif'

/**
 * The sign redrawn from our own geometry, in millimetres at true scale, with the failing and the undecided findings
 * marked and listed. Nothing of the uploaded markup is in it. The same report gives the same bytes, and ids begin with
 * the report's id, so that several drawings can stand in one page.
 */
export function reportSvg(report: Report, sign: Sign): string {
  const { failing, undecided } = numbered(report)
  const isShort = report.standards.length === 1
  const content = contentBox(sign)
  const size = textSize(content)
  const pad = 2 * size
  const frames = content ? framesFor(failing, undecided) : []
  const margins = content ? marginsFor(frames, content, size) : { left: 0, right: 0 }
  const drawn = (content?.width ?? 0) + margins.left + margins.right
  const width = Math.max(drawn + 2 * pad, LEAST_WIDTH * size)
  const heading = headingMarkup(report, pad, size)

  const left = (width - drawn) / 2 + margins.left
  const top = heading.bottom + pad
  const marks = content ? marksMarkup(frames, content, size) : { markup: '', bottom: 0 }
  const lowest = content ? Math.max(content.y + content.height, marks.bottom) - content.y : 0
  const body = content
    ? `<g data-box="${boxOf(content, margins, marks.bottom, size)}" transform="translate(${n(left - content.x)} ${n(top - content.y)})">\n${signMarkup(sign)}\n${marks.markup}\n</g>`
    : `<text x="${n(pad)}" y="${n(top + size)}" font-size="${n(size)}">Nothing on this sign has a known place, so there is nothing to draw.</text>`
  const legendTop = top + (content ? lowest + pad : 3 * size)
  const legend = legendMarkup(entries(failing, undecided, isShort), pad, legendTop, width - 2 * pad, size)
  const height = legend.bottom + pad
  const id = escaped(report.id)
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}mm" height="${n(height)}mm" viewBox="0 0 ${n(width)} ${n(height)}" role="img" aria-labelledby="${id}-title ${id}-desc" font-family="${escaped(FONT)}" fill="${TEXT_INK}">
<title id="${id}-title">${escaped(`${signName(report)}: ${VERDICT_WORDS[report.verdict]}`)}</title>
<desc id="${id}-desc">${escaped(description(report, failing, undecided))}</desc>
<rect width="${n(width)}" height="${n(height)}" fill="${PAPER}"/>
${heading.markup}
${body}
${legend.markup}
</svg>
`
}

/** What the sign and its marks take up, in the sign's own millimetres, for a sheet that has words of its own (`pdf-figure.ts`). */
function boxOf(content: ReportBox, { left, right }: Margins, lowestMark: number, size: number): string {
  const bottom = Math.max(content.y + content.height, lowestMark)
  const width = left + content.width + right + 2 * size
  return [content.x - left - size, content.y - size, width, bottom - content.y + 2 * size].map(n).join(' ')
}

/** The height of the text beside a sign, in its millimetres. */
const textSize = (content: ReportBox | undefined): number =>
  Math.max(LEAST_TEXT, Math.max(content?.width ?? 0, content?.height ?? 0) * TEXT_SHARE)

/** The box of everything that has a place; undefined when nothing has. */
function contentBox(sign: Sign): ReportBox | undefined {
  const { panel } = sign
  const { width, height } = panel
  const size = isKnown(width) && isKnown(height) ? { x: 0, y: 0, width: width.value, height: height.value } : undefined
  const whole: Box | undefined = panel.place.box ?? size
  const boxes = [
    whole,
    ...sign.lettering.flatMap(({ place, lines }) => [place.box, ...lines.map((line) => line.place.box)]),
    ...sign.braille.flatMap(({ place, lines }) => [place.box, ...lines.map((line) => boxOfPoints(line.dots))]),
    ...sign.pictograms.map(({ field }) => (isKnown(field) ? field.value : undefined)),
    ...sign.borders.map((border) => border.box),
  ].filter((box) => box !== undefined && reportBox(box) !== null)
  return reportBox(unionOfBoxes(boxes)) ?? undefined
}

function headingMarkup(report: Report, pad: number, size: number): { markup: string; bottom: number } {
  const { width, height } = report.reading.panel
  const panel =
    width !== null && height !== null
      ? `Panel ${fixed(width, 1)} × ${fixed(height, 1)} mm, drawn at true scale. `
      : 'Drawn at true scale. '
  const standards = report.standards.map((s) => `${s.id}, revision ${s.revision}`).join('; ')
  const line = (text: string, y: number, attributes: string) =>
    `<text x="${n(pad)}" y="${n(y)}" ${attributes}>${escaped(text)}</text>`
  const first = pad + 1.2 * size
  const markup = [
    line(clipped(signName(report), 44), first, `font-size="${n(1.7 * size)}" font-weight="bold"`),
    line(verdictSentence(report), first + 1.9 * size, `font-size="${n(1.1 * size)}"`),
    line(`${panel}${standards}`, first + 3.4 * size, `font-size="${n(0.9 * size)}" fill="${QUIET_INK}"`),
  ]
  return { markup: markup.join('\n'), bottom: first + 4 * size }
}

const clipped = (text: string, most: number): string => (text.length > most ? `${text.slice(0, most - 1)}…` : text)

/** @param isShort one standard is asked, so that clauses need no name beside them */
function entries(failing: Numbered[], undecided: Numbered[], isShort: boolean): LegendEntry[] {
  const more = ({ finding }: Numbered) =>
    finding.whereTotal > MOST_MARKS_PER_FINDING
      ? ` Marked at ${MOST_MARKS_PER_FINDING} of ${finding.whereTotal} places.`
      : ''
  const entry = (item: Numbered, isOpen: boolean): LegendEntry => {
    const { finding, number } = item
    const force = finding.force === 'shall' ? '' : ' (advice)'
    return {
      number,
      undecided: isOpen,
      head: `${named(finding, isShort)}${force}`,
      text: isOpen ? '' : `${finding.message} ${finding.remedy?.text ?? ''}${more(item)}`,
    }
  }
  return [...failing.map((item) => entry(item, false)), ...undecided.map((item) => entry(item, true))]
}

function named({ requirement, clause, title }: Finding, isShort: boolean): string {
  return `${isShort ? '' : `${standardOfRequirement(requirement)} `}${clause} ${title}`
}

function description(report: Report, failing: Numbered[], undecided: Numbered[]): string {
  const isShort = report.standards.length === 1
  const list = (items: Numbered[]) =>
    items.map(({ number, finding }) => `${number}: ${named(finding, isShort)}`).join('; ')
  return [
    verdictSentence(report),
    failing.length > 0 ? `Failing, marked with solid frames: ${list(failing)}.` : '',
    undecided.length > 0 ? `Undecided, marked with dashed frames and a question mark: ${list(undecided)}.` : '',
  ]
    .filter((part) => part !== '')
    .join(' ')
}
