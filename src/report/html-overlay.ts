import { heading, type OnPage } from './html-place.js'
import { isolated, markup, NOTHING, type Html } from './html-tag.js'
import {
  idleWaivers,
  isBare,
  readingsWords,
  STANDING_WORDS,
  timeWords,
  waiverTarget,
  waiverWords,
  WAIVERS_CHANGE_NOTHING,
  type Overlay,
} from './overlay.js'
import type { Report } from './schema.js'

/** The parts of the page that show what people laid over a report. */

type Waivers = Overlay['waivers']

/** In the list of what is known of a finding. */
export const waiverEntries = (waivers: Waivers): Html =>
  markup`${waivers.map(
    (waiver) =>
      markup`<dt class="waiver">${STANDING_WORDS[waiver.standing]}</dt>
        <dd class="waiver">${isolated(waiverWords(waiver))}</dd>`,
  )}`

/** Behind a finding in a line or a cell. */
export const waiverParagraphs = (waivers: Waivers): Html =>
  markup`${waivers.map(
    (waiver) =>
      markup`<span class="waiver"><strong>${STANDING_WORDS[waiver.standing]}:</strong> ${isolated(waiverWords(waiver))}</span>`,
  )}`

/** Notes, readings that were added, and waivers that hold nothing. */
export function overlaySection(report: Pick<Report, 'findings'>, { overlay, level }: OnPage): Html {
  if (isBare(overlay)) return NOTHING
  const { notes, measurements } = overlay
  const idle = idleWaivers(overlay)
  return markup`<p>${WAIVERS_CHANGE_NOTHING}</p>
    ${group(
      level,
      'Waivers that hold nothing',
      idle.map(
        (waiver) =>
          markup`<strong>${STANDING_WORDS[waiver.standing]}:</strong>
            ${isolated(`${waiverTarget(report, waiver)}. ${waiverWords(waiver)}`)}`,
      ),
    )}
    ${group(
      level,
      'Readings that were added',
      measurements.map((one) => markup`${isolated(one.quantity)}: ${isolated(readingsWords(one))}`),
    )}
    ${group(
      level,
      'Notes',
      notes.map(({ text, author, at }) => markup`${isolated(text)} (${isolated(author)}, ${timeWords(at)})`),
    )}`
}

const group = (level: number, name: string, items: Html[]): Html =>
  items.length === 0
    ? NOTHING
    : markup`${heading(level + 1, name)}
        <ul>
          ${items.map((item) => markup`<li>${item}</li>`)}
        </ul>`
