import { timeWords } from '../overlay.js'
import { VERDICT_SYMBOLS, VERDICT_WORDS } from '../words.js'
import type { IntakeProblem, SetEvidence, SetFinding, SetSign } from './evidence.js'

/** The words that the forms of a set for people share. */

export const FINDING_KINDS: Record<SetFinding['kind'], string> = {
  'same-mark': 'The same mark twice',
  'wording-differs': 'One room, different wording',
  'typefaces-differ': 'Mixed typefaces',
  'braille-spacing-differs': 'Mixed braille spacing',
  'door-without-sign': 'Doors without a sign',
}

/** "schedule.csv, row 12, column Letter height". */
export const problemPlace = ({ file, row, column }: IntakeProblem): string =>
  [file, ...(row === null ? [] : [`row ${row}`]), ...(column === null ? [] : [`column ${column}`])].join(', ')

export const nameOf = ({ name, id }: Pick<SetEvidence, 'name' | 'id'>): string =>
  name === '' ? `Submittal ${id}` : name

export const markOf = ({ mark }: Pick<SetSign, 'mark'>): string => (mark.trim() === '' ? 'Sign without a mark' : mark)

/** Where a sign hangs, as far as the schedule says; empty where it does not. */
export function placeOf({ location, door }: Pick<SetSign, 'location' | 'door'>): string {
  if (location === null) return door === null ? '' : `Door ${door}`
  return door === null ? location : `${location}, door ${door}`
}

/** A finding about the set, with its marks where the message does not name each of them. */
export const findingWords = ({ marks, message }: SetFinding): string =>
  marks.every((mark) => message.includes(mark)) ? message : `${message} Marks: ${marks.join('; ')}.`

/** What a reader of the history needs to hold this evidence against it. */
export const historyWords = (history: NonNullable<SetEvidence['history']>): string =>
  history.events === 1
    ? 'One event is in the history of this submittal. Its digest, which stands for all that happened:'
    : `${history.events} events are in the history of this submittal. The digest of the last, which stands for all before it:`

export const datesOf = ({ createdAt, asOf, history }: SetEvidence): string =>
  history === null
    ? `Checked ${timeWords(asOf)}. Nothing of it was kept.`
    : `Handed in ${timeWords(createdAt)}. Evidence as of ${timeWords(asOf)}.`

/** Where the evidence is of some signs only. */
export const partWords = ({ from, total }: NonNullable<SetEvidence['part']>, { length }: readonly SetSign[]): string =>
  length === 0
    ? `This is evidence of none of the ${total} signs of the submittal.`
    : `This is evidence of signs ${from + 1} to ${from + length} of ${total}, in the order of the upload. What the others come to is not in it.`

/** What a sign comes to in a table. */
export const verdictOf = ({ report, outdated }: Pick<SetSign, 'report' | 'outdated'>): string =>
  report
    ? `${VERDICT_SYMBOLS[report.verdict]} ${VERDICT_WORDS[report.verdict]}${outdated === undefined ? '' : ' (out of date)'}`
    : 'No report'

const COMPARED = 'Nothing was found by comparing the signs with each other.'
const NOT_COMPARED = 'The signs have not been compared with each other since the last change.'

/** What stands before the findings about a set, or in their place. */
export function comparedWords({ setFindings, state }: Pick<SetEvidence, 'setFindings' | 'state'>): string {
  const isCompared = state === 'done'
  if (setFindings.length === 0) return isCompared ? COMPARED : NOT_COMPARED
  return isCompared ? SET_FINDINGS_ARE : `${SET_FINDINGS_ARE} ${NOT_COMPARED}`
}

/** Findings about the set and its upload do not come from a standard. */
export const SET_FINDINGS_ARE =
  'Seen by comparing the signs with each other. No clause is behind these; a person decides.'

export const INTAKE_PROBLEMS_ARE = 'What was not used is in no verdict. Everything else of the upload was used.'

/** Under the schedule. */
export const COUNTED =
  'Counted are requirements; advice is left out. Waived ones are among those that fail or are undecided.'
