import { heading } from '../html-place.js'
import { table } from '../html-table.js'
import { isolated, markup, NOTHING, type Content, type Html } from '../html-tag.js'
import { STAGE_WORDS } from '../words.js'
import type { Inspection, InspectionItem, InspectionPlace, InspectionSign } from './inspection.js'
import {
  ADVICE_IS_ELSEWHERE,
  BLANKS,
  howList,
  INSTRUMENTS,
  JUDGED_HEAD,
  judgedBoxes,
  limitWords,
  nameAt,
  NO_PLACE,
  readingBlanks,
} from './inspection-words.js'

/** The inspection sheet as a part of a page, to be printed and filled in by hand. */

/** @param level of the headings of its places */
export function inspectionMarkup({ places, nothingLeft, unknown }: Inspection, level: 2 | 3): Html {
  return markup`${places.length === 0 ? NOTHING : walk(places, level)} ${heading(level, 'Not on this sheet')}
    ${marks('Nothing is left for gauge and tape:', nothingLeft)}
    ${marks('No report yet, so nobody knows:', unknown)}
    <p>${ADVICE_IS_ELSEWHERE}</p>`
}

const marks = (words: string, list: readonly string[]): Html =>
  list.length === 0
    ? NOTHING
    : markup`<p>${words}</p>
        <ul class="inline">
          ${list.map((mark) => markup`<li>${isolated(mark)}</li>`)}
        </ul>`

const blank = markup`<span class="hidden">to be filled in</span><span class="blank"></span>`

function walk(places: readonly InspectionPlace[], level: 2 | 3): Html {
  const instruments = INSTRUMENTS.letters.map(
    (letter) =>
      markup`<tr>
        <th scope="row">${letter}</th>
        ${INSTRUMENTS.heads.slice(1).map(() => markup`<td>${blank}</td>`)}
      </tr>`,
  )
  return markup`<dl class="blanks">
      ${BLANKS.rows.map(
        (name) =>
          markup`<dt>${name}</dt>
            <dd>${blank}</dd>`,
      )}
    </dl>
    ${table(INSTRUMENTS.caption, INSTRUMENTS.heads, instruments)} ${heading(level, 'How each is measured')}
    <dl>
      ${howList(places).map(
        ({ title, how }) =>
          markup`<dt>${title}</dt>
            <dd>${how}</dd>`,
      )}
    </dl>
    ${places.map((place) => placeMarkup(place, level))}`
}

const placeMarkup = ({ name, signs }: InspectionPlace, level: number): Html =>
  markup`${heading(level, name === null ? NO_PLACE : isolated(name))}
  ${signs.map((one) => signMarkup(one, level + 1))}`

function signMarkup({ sign, items }: InspectionSign, level: number): Html {
  const name = nameAt(sign)
  return markup`<div class="walk">
    ${heading(level, isolated(name))}
    ${table(`To be measured on ${name}`, ['What', 'Allowed', 'Found', 'With', JUDGED_HEAD], items.map(row))}
  </div>`
}

function row(item: InspectionItem): Content {
  const { stage, title, limits } = item
  return markup`<tr>
    <th scope="row">${STAGE_WORDS[stage]}: ${title}</th>
    <td>
      ${limits.map(
        ({ waived }, i) =>
          markup`<div>
            ${limitWords(item, i)}
            ${waived === null ? NOTHING : markup`<span class="waiver"><strong>Waived:</strong> ${isolated(waived)}</span>`}
          </div>`,
      )}
    </td>
    <td><span class="hidden">to be filled in</span>${readingBlanks(item).map((one) => markup`<span class="reading">${one}</span> `)}</td>
    <td><span class="hidden">letter of the instrument</span><span class="blank short"></span></td>
    <td>${judgedBoxes(item).map((boxes) => markup`<div>${boxes}</div>`)}</td>
  </tr>`
}
