import { Html, markup, NOTHING } from '../../report/html-tag.js'
import { coordinate, escaped } from '../../report/markup.js'
import { clauseOf, numbered, type Numbered } from '../../report/numbering.js'
import { signIn } from '../../report/pdf-figure.js'
import type { Report } from '../../report/schema.js'
import { framesFor, ranges, type Frame } from '../../report/svg-marks.js'

/** The redrawn sign; each place that a finding speaks of leads to it, and is outlined with it. */

/** Millimetres round a place, so that its outline does not cover it. */
const MARGIN = 1

/** The id of the first place of each finding that has one, by its number. */
export const placesOf = (report: Report): Map<number, string> => {
  const places = new Map<number, string>()
  for (const [i, frame] of placed(report).entries())
    for (const number of numbersOf(frame)) if (!places.has(number)) places.set(number, placeId(i))
  return places
}

const placeId = (index: number): string => `place-${index + 1}`
const numbersOf = ({ failing, undecided }: Frame): number[] => [...failing, ...undecided]

/** The largest first, so that a small place within a large one lies above it. */
function placed(report: Report): Frame[] {
  const { failing, undecided } = numbered(report)
  const area = ({ box }: Frame) => box.width * box.height
  return framesFor(failing, undecided).sort((a, b) => area(b) - area(a))
}

/** @param drawing as `reportSvg` made it of the same report */
export function drawingFigure(report: Report, drawing: string): Html {
  const sign = signIn(drawing)
  if (!sign) return markup`<p>Nothing on this sign has a known place, so there is nothing to draw.</p>`
  const [x, y, width, height] = [sign.box.x, sign.box.y, sign.box.width, sign.box.height].map(coordinate)
  const places = placed(report).map((frame, i) => place(report, frame, i).text)
  return markup`<figure>
    ${new Html(`<svg viewBox="${x} ${y} ${width} ${height}" width="${width}mm" role="group" aria-label="${escaped(sign.description)}" font-family="sans-serif">
      <g aria-hidden="true">${sign.markup}</g>${places.join('')}</svg>`)}
    <figcaption>
      Drawn from what was measured and what was said, not at true scale. Solid frames fail; dashed frames with a question mark are undecided.
      ${places.length > 0 ? 'Each frame leads to its finding.' : NOTHING}
    </figcaption>
  </figure>`
}

function place(report: Report, frame: Frame, index: number): Html {
  const { failing, undecided } = numbered(report)
  const numbers = numbersOf(frame)
  const { box } = frame
  const [x, y, width, height] = [box.x - MARGIN, box.y - MARGIN, box.width + 2 * MARGIN, box.height + 2 * MARGIN].map(
    (value) => coordinate(value),
  )
  const name = ({ finding }: Numbered) => `${clauseOf(report, finding)} ${finding.title}`
  const named = [...failing, ...undecided].filter(({ number }) => numbers.includes(number)).map(name)
  const label = `${numbers.length === 1 ? 'Finding' : 'Findings'} ${ranges(numbers)}: ${named.join('; ')}`
  return markup`<a class="place" id="${placeId(index)}" href="#finding-${numbers[0] ?? 1}" data-findings="${numbers.join(' ')}" aria-label="${label}"><rect x="${x ?? 0}" y="${y ?? 0}" width="${width ?? 0}" height="${height ?? 0}" rx="0.5" /></a>`
}
