import { NO_CERTIFICATION } from './caveats.js'
import { REPORT_STYLE, REPORT_STYLE_HASH } from './html-style.js'
import { overlaySection } from './html-overlay.js'
import { alone, type OnPage } from './html-place.js'
import { readingSection } from './html-reading.js'
import { restSection } from './html-rest.js'
import { sourcesMarkup } from './html-sources.js'
import { counts, standardSection, standardsTable } from './html-standards.js'
import { table } from './html-table.js'
import { code, Html, isolated, markup, NOTHING } from './html-tag.js'
import { fillIn, undecidedSection } from './html-undecided.js'
import { wrongSection } from './html-wrong.js'
import { numbered, type Numbers } from './numbering.js'
import { isBare, NO_OVERLAY, outdatedWords, type Overlay } from './overlay.js'
import { placeWords } from './place-words.js'
import type { ReportStage } from './finding-schema.js'
import type { Report } from './schema.js'
import { signName, STAGE_WORDS, VERDICT_SYMBOLS, VERDICT_WORDS, verdictSentence } from './words.js'

export { REPORT_STYLE_HASH }

/**
 * The report as one accessible page: no script, no request to anywhere, one style sheet whose hash is
 * `REPORT_STYLE_HASH`. Everything that came from a client is escaped.
 * @param drawing the annotated drawing, as `reportSvg` makes it of the same report; it is put in as it is
 * @param overlay what was laid over the report, when it is kept
 */
export function reportHtml(report: Report, drawing: string, overlay: Overlay = NO_OVERLAY): string {
  const on = alone(overlay)
  const numbers = numbered(report)
  const name = signName(report)
  return markup`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>${name}: ${VERDICT_WORDS[report.verdict]} (report ${report.id})</title>
        <style>${new Html(REPORT_STYLE)}</style>
      </head>
      <body>
        <a class="skip" href="#wrong">Skip to what is wrong</a>
        <header>
          <p class="kind">Report on a tactile sign</p>
          <h1>${isolated(name)}</h1>
        </header>
        <main>
          ${section('verdict', 'Verdict', markup`${outdated(overlay)} ${verdict(report)}`)}
          ${report.standards.length > 1 ? severalStandards(report, numbers, drawing, on) : oneStandard(report, numbers, drawing, on)}
          ${isBare(overlay) ? NOTHING : section('laid-over', 'Waivers, notes and added readings', overlaySection(report, on))}
          ${section('reading', 'What the sign reads', readingSection(report))}
          ${section('assumptions', 'What was assumed', assumptions(report))}
          ${section('ignored', 'What was not looked at', ignored(report))}
          ${section('caveats', 'Before you rely on this report', list(report.caveats))}
          ${section('sources', 'Sources', sourcesMarkup(report))}
          ${section('identity', 'Identity of this report', identity(report))}
        </main>
        <footer><p>${NO_CERTIFICATION}</p></footer>
      </body>
    </html>
`.text
}

const section = (id: string, heading: string, content: Html): Html =>
  markup`<section id="${id}" aria-labelledby="${id}-heading">
    <h2 id="${id}-heading">${heading}</h2>
    ${content}
  </section>`

function oneStandard(report: Report, { failing, undecided }: Numbers, drawing: string, on: OnPage): Html {
  return markup`${section('wrong', 'What is wrong', wrongSection(failing, on))}
  ${section('drawing', DRAWING_HEADING, figure(drawing))}
  ${section('undecided', 'What is undecided', undecidedSection(report, undecided, on))}
  ${section('rest', 'What passed and what does not apply', restSection(report.findings))}`
}

/** A section for each standard, with what is the same for all before and after. */
function severalStandards(report: Report, numbers: Numbers, drawing: string, on: OnPage): Html {
  const sections = report.standards.map((standard) =>
    section(`standard-${standard.id}`, standard.title, standardSection(report, standard, numbers, on)),
  )
  return markup`${section('drawing', DRAWING_HEADING, figure(drawing))}
  <div id="wrong">${sections}</div>
  ${section('undecided', 'What would decide what is undecided', fillIn(report, on))}`
}

const DRAWING_HEADING = 'The sign with its numbers'

const figure = (drawing: string): Html =>
  markup`<figure>
    ${new Html(drawing)}
    <figcaption>
      Drawn from what was measured; panel and characters in their own colours where these are known. Solid frames fail; dashed frames with a question mark are undecided.
    </figcaption>
  </figure>`

function outdated(overlay: Overlay): Html {
  const words = outdatedWords(overlay)
  return words === undefined ? NOTHING : markup`<p><strong>Out of date.</strong> ${words}</p>`
}

function verdict(report: Report): Html {
  const stages = (['drawing', 'product', 'site'] as ReportStage[]).map((stage) => {
    const found = report.stages[stage]
    return markup`<tr>
      <th scope="row">${STAGE_WORDS[stage]}</th>
      <td><span class="${found}">${VERDICT_SYMBOLS[found]} ${VERDICT_WORDS[found]}</span></td>
    </tr>`
  })
  return markup`<div class="verdict ${report.verdict}">
      <strong>${VERDICT_SYMBOLS[report.verdict]} ${VERDICT_WORDS[report.verdict]}</strong>
      <p>${verdictSentence(report)}</p>
    </div>
    ${table('The verdict for each stage of evidence', ['Stage', 'Verdict'], stages)}
    ${report.standards.length > 1 ? standardsTable(report) : NOTHING}
    <p>
      Findings, advice included: ${counts(report.summary)}. Held against
      ${report.standards.map((s) => s.title).join('; ')}. Use of the sign: ${report.use}.
    </p>`
}

const list = (items: string[]): Html =>
  markup`<ul>
    ${items.map((item) => markup`<li>${isolated(item)}</li>`)}
  </ul>`

const assumptions = ({ assumptions }: Report): Html =>
  assumptions.length === 0 ? markup`<p>Nothing.</p>` : list(assumptions.map(({ about, text }) => `${about}: ${text}`))

function ignored({ ignored, unread }: Report): Html {
  const at = (source: { id: string | null; line: number; column: number }) =>
    `line ${source.line}, column ${source.column}${source.id === null ? '' : ` (id ${source.id})`}`
  return markup`${ignored.length === 0 ? markup`<p>Nothing in the drawing was left out.</p>` : list(ignored.map((item) => `${at(item.source)}: ${item.why}`))}
  ${
    unread.length === 0
      ? NOTHING
      : markup`<h3>Seen but not understood</h3>
          ${list(unread.map((item) => `${placeWords(item.where)}: ${item.why}`))}`
  }`
}

function identity(report: Report): Html {
  const { engine } = report
  const standards = report.standards.map(
    (s) =>
      markup`<dt>${s.id}, revision ${s.revision}</dt>
        <dd>${code(s.digest)}</dd>`,
  )
  return markup`<dl>
    <dt>Report</dt>
    <dd>${code(report.id)}</dd>
    ${standards}
    <dt>Service</dt>
    <dd>version ${engine.version}</dd>
    <dt>Braille</dt>
    <dd>
      ${engine.braille.name} ${engine.braille.version}, tables ${Object.values(engine.braille.tables).join(', ')},
      ${code(engine.braille.digest)}
    </dd>
    <dt>Decision rule</dt>
    <dd>${report.decisionRule}</dd>
    <dt>Unit system</dt>
    <dd>${report.unitSystem}</dd>
  </dl>`
}
