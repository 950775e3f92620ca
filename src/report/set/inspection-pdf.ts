import type { Paper } from '../pdf-paper.js'
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

/** The inspection sheet on paper, written onto sheets that may hold more. */

/** Points: room to write by hand. */
const WRITING_HEIGHT = 24
/** Points that a row takes at most times, with those for the name of the sign: a sign stays on one sheet if it can. */
const ROW = 34
const NAME = 60
const MOST_KEPT = 500

export function inspectionSections(paper: Paper, inspection: Inspection): void {
  const { places, nothingLeft, unknown } = inspection
  if (places.length > 0) {
    paper.table(
      BLANKS.heads.map((head, i) => ({ head, share: BLANKS.shares[i] ?? 0 })),
      BLANKS.rows.map((row) => [row, '']),
      WRITING_HEIGHT,
    )
    paper.table(
      INSTRUMENTS.heads.map((head, i) => ({ head, share: INSTRUMENTS.shares[i] ?? 0 })),
      INSTRUMENTS.letters.map((letter) => [letter, ...INSTRUMENTS.heads.slice(1).map(() => '')]),
      WRITING_HEIGHT,
    )
    paper.heading(2, 'How each is measured')
    paper.list(howList(places).map(({ title, how }) => ({ label: `${title}:`, text: how })))
    for (const place of places) placeSection(paper, place)
  }
  paper.heading(2, 'Not on this sheet')
  if (nothingLeft.length > 0) paper.paragraph(nothingLeft.join('; '), 'Nothing is left for gauge and tape: ')
  if (unknown.length > 0) paper.paragraph(unknown.join('; '), 'No report yet, so nobody knows: ')
  paper.paragraph(ADVICE_IS_ELSEWHERE)
}

function placeSection(paper: Paper, { name, signs }: InspectionPlace): void {
  const [first] = signs
  if (first) paper.keep(heightOf(first) + NAME)
  paper.heading(2, name ?? NO_PLACE)
  for (const one of signs) signTable(paper, one)
}

const heightOf = ({ items }: InspectionSign): number => Math.min(NAME + ROW * items.length, MOST_KEPT)

function signTable(paper: Paper, one: InspectionSign): void {
  const { sign, items } = one
  paper.keep(heightOf(one))
  paper.heading(3, nameAt(sign))
  paper.table(
    [
      { head: 'What', share: 0.22 },
      { head: 'Allowed', share: 0.33 },
      { head: 'Found', share: 0.23 },
      { head: 'With', share: 0.06 },
      { head: JUDGED_HEAD, share: 0.16 },
    ],
    items.map((item) => [
      `${STAGE_WORDS[item.stage]}: ${item.title}`,
      limitsOf(item),
      readingBlanks(item).join('  '),
      '',
      judgedBoxes(item).join(' '),
    ]),
    WRITING_HEIGHT,
  )
  const waived = items.flatMap(({ title, limits }) =>
    limits.flatMap((limit) =>
      limit.waived === null ? [] : [{ label: `${limit.clause} ${title}, waived:`, text: limit.waived }],
    ),
  )
  if (waived.length > 0) paper.list(waived)
}

const limitsOf = (item: InspectionItem): string =>
  item.limits.map(({ waived }, i) => `${limitWords(item, i)}${waived === null ? '' : ' (waived)'}`).join('; ')
