import { clauseOf, numbered } from '../numbering.js'
import { isBare, outdatedWords } from '../overlay.js'
import { placeWords } from '../place-words.js'
import { STAGES } from '../finding-schema.js'
import { spokenCells } from '../braille-words.js'
import { overlaySection } from '../html-overlay.js'
import { heading, type OnPage } from '../html-place.js'
import { Html, isolated, markup, NOTHING, code } from '../html-tag.js'
import { undecidedInShort } from '../html-undecided.js'
import { wrongSection, wrongTable } from '../html-wrong.js'
import { coordinate, escaped } from '../markup.js'
import { signIn } from '../pdf-figure.js'
import type { Report } from '../schema.js'
import { STAGE_WORDS, VERDICT_SYMBOLS, VERDICT_WORDS, verdictSentence } from '../words.js'
import type { SetSign } from './evidence.js'
import { whyNoReport } from './outcome.js'
import { ownCaveats } from './shared-caveats.js'
import { markOf, placeOf } from './words.js'

/** One sign of a set on the page: in full what is wrong or open, in short what passed. Its measuring is on the inspection sheet. */

/**
 * An article and no region: a list of regions that names each sign of a large set helps nobody.
 * @param anchor its id, which begins the ids in it
 * @param shared the caveats that are said once for the whole set
 */
export function signSection(sign: SetSign, anchor: string, shared: readonly string[]): Html {
  const { report } = sign
  const state = report ? VERDICT_WORDS[report.verdict] : 'No report'
  return markup`<article class="sign" id="${anchor}">
    <h2>${isolated(markOf(sign))}: ${state}</h2>
    ${facts(sign)} ${report ? checked(sign, report, anchor, shared) : unchecked(sign, anchor)}
  </article>`
}

const place = (sign: SetSign, report: Pick<Report, 'standards'>, anchor: string): OnPage => ({
  overlay: sign,
  level: 3,
  prefix: `${anchor}-`,
  clause: (finding) => clauseOf(report, finding),
})

function unchecked(sign: SetSign, anchor: string): Html {
  return laidOver({ findings: [] }, place(sign, { standards: [] }, anchor))
}

function checked(sign: SetSign, report: Report, anchor: string, shared: readonly string[]): Html {
  const { failing, undecided } = numbered(report)
  const on = place(sign, report, anchor)
  const table = failing.length === 0 ? NOTHING : wrongTable(failing, `What is wrong with ${markOf(sign)}`, on)
  return markup`${figure(sign)} ${heading(3, 'What is wrong')} ${table} ${wrongSection(failing, on)}
  ${heading(3, 'What is undecided')} ${undecidedInShort(undecided, on)} ${laidOver(report, on)} ${passed(report, on)}
  ${restsOn(report, ownCaveats(sign, shared))}`
}

const laidOver = (report: Pick<Report, 'findings'>, on: OnPage): Html =>
  isBare(on.overlay)
    ? NOTHING
    : markup`${heading(3, 'Waivers, notes and added readings')} ${overlaySection(report, on)}`

function facts(sign: SetSign): Html {
  const { report, files } = sign
  const where = placeOf(sign)
  const outdated = outdatedWords(sign)
  return markup`${outdated === undefined ? NOTHING : markup`<p><strong>Out of date.</strong> ${outdated}</p>`} ${report ? verdict(report) : markup`<p class="verdict"><strong>No report</strong>${isolated(whyNoReport(sign))}</p>`}
    <dl>
      ${where === '' ? NOTHING : entry('Place', isolated(where))} ${report ? reading(report) : NOTHING}
      ${files.length === 0 ? NOTHING : entry('From', isolated(files.join('; ')))}
      ${report ? entry('Use', report.use) : NOTHING} ${report ? entry('Report', code(report.id)) : NOTHING}
    </dl>`
}

const entry = (name: string, content: Html | string): Html =>
  markup`<dt>${name}</dt>
    <dd>${content}</dd>`

function verdict(report: Report): Html {
  const { verdict, stages } = report
  const words = STAGES.map(
    (stage) => `${STAGE_WORDS[stage].toLowerCase()}: ${VERDICT_WORDS[stages[stage]].toLowerCase()}`,
  )
  return markup`<div class="verdict ${verdict}">
    <strong>${VERDICT_SYMBOLS[verdict]} ${VERDICT_WORDS[verdict]}</strong>
    <p>${verdictSentence(report)} By stage: ${words.join('; ')}.</p>
  </div>`
}

function reading({ reading }: Report): Html {
  const lettering = reading.lettering.map(({ text }) => text ?? 'could not be read')
  const braille = reading.braille.flatMap(({ lines }) => lines)
  const cells = braille.map(
    (line, i) => markup`${i === 0 ? '' : ' / '}${line.cells === null ? 'could not be read' : cellsOf(line.cells)}`,
  )
  return markup`${entry('Lettering', isolated(lettering.length === 0 ? 'none' : lettering.join(' / ')))}
  ${entry('Braille', braille.length === 0 ? 'none' : markup`${cells}`)}`
}

/** The cells for those who see them, and by their dots for those who hear the page. */
const cellsOf = (cells: string): Html =>
  markup`<span aria-hidden="true">${cells}</span><span class="hidden">${spokenCells(cells)}</span>`

/** The sign and its marks without the list that the drawing has of its own, since the page says all of it. */
function figure({ drawing }: SetSign): Html {
  const sign = drawing === null ? undefined : signIn(drawing)
  if (!sign) return markup`<p>Nothing on this sign has a known place, so there is nothing to draw.</p>`
  const { box, description } = sign
  const [x, y, width, height] = [box.x, box.y, box.width, box.height].map(coordinate)
  const svg = `<svg viewBox="${x} ${y} ${width} ${height}" width="${width}mm" role="img" aria-label="${escaped(description)}" font-family="sans-serif">${sign.markup}</svg>`
  return markup`<figure>
    ${new Html(svg)}
    <figcaption>Drawn from what was measured. Solid frames fail; dashed frames with a question mark are undecided.</figcaption>
  </figure>`
}

function passed({ findings }: Report, on: OnPage): Html {
  const passes = findings.filter(({ verdict }) => verdict === 'pass')
  const outside = findings.filter(({ verdict }) => verdict === 'not-applicable').length
  return markup`<details>
    <summary><span class="pass">✓ Passed</span>: ${passes.length}; do not apply to this sign: ${outside}</summary>
    <ul class="inline">
      ${passes.map((finding) => markup`<li>${on.clause(finding)} ${finding.title}</li>`)}
    </ul>
  </details>`
}

/** What was assumed, what was left out, and the caveats of this sign alone. */
function restsOn({ assumptions, ignored, unread }: Report, caveats: readonly string[]): Html {
  const told = [
    ...assumptions.map(({ about, text }) => `Assumed, ${about}: ${text}`),
    ...ignored.map(({ source, why }) => `Not looked at, line ${source.line}, column ${source.column}: ${why}`),
    ...unread.map(({ where, why }) => `Not understood, ${placeWords(where)}: ${why}`),
    ...caveats.map((text) => `To bear in mind: ${text}`),
  ]
  if (told.length === 0) return NOTHING
  return markup`<details>
    <summary>What this rests on: ${told.length}</summary>
    <ul>
      ${told.map((text) => markup`<li>${isolated(text)}</li>`)}
    </ul>
  </details>`
}
