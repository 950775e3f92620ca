import { markup, type Html } from '../../report/html-tag.js'
import type { ReportVerdict } from '../../report/finding-schema.js'
import { VERDICT_SYMBOLS, VERDICT_WORDS } from '../../report/words.js'
import type { SubmittalState } from '../../submittals/store/tables.js'

/** Words that the pages of kept sets share. */

export const STATE_WORDS: Record<SubmittalState, string> = {
  queued: 'waiting to be checked',
  running: 'being checked',
  done: 'checked',
  cancelled: 'cancelled',
}

export const verdictMark = (verdict: ReportVerdict): Html =>
  markup`<span class="${verdict}">${VERDICT_SYMBOLS[verdict]} ${VERDICT_WORDS[verdict]}</span>`

export const isUnderWay = (state: SubmittalState): boolean => state === 'queued' || state === 'running'

export const counted = (count: number, one: string, many: string): string =>
  `${count.toLocaleString('en')} ${count === 1 ? one : many}`
