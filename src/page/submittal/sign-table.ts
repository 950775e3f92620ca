import { isolated, markup, NOTHING, type Html } from '../../report/html-tag.js'
import { placeOf } from '../../report/set/words.js'
import type { ReportVerdict } from '../../report/finding-schema.js'
import type { Report } from '../../report/schema.js'
import type { SignRow } from '../../submittals/store/tables.js'
import type { SignFilter } from '../../submittals/submittals.js'
import { selectField, textField } from '../form.js'
import { pager, type Part } from '../pager.js'
import { counted, verdictMark } from './words.js'

/** The signs of a set as a table with a filter. */

const VERDICTS: [NonNullable<SignFilter['verdict']>, string][] = [
  ['fail', '✗ Fails'],
  ['undetermined', '? Undecided'],
  ['pass', '✓ Passes'],
  ['not-applicable', '– Not applicable'],
  ['none', 'No report'],
]

export const filterIn = (query: URLSearchParams): SignFilter => {
  const verdict = VERDICTS.find(([name]) => name === query.get('verdict'))?.[0]
  const text = query.get('text')?.trim()
  return { ...(verdict && { verdict }), ...(text && { text }) }
}

/** What of a filter stands in an address. */
export const queryOfFilter = ({ verdict, text }: SignFilter): URLSearchParams =>
  new URLSearchParams({ ...(verdict && { verdict }), ...(text !== undefined && { text }) })

export interface Listed {
  submittal: string
  rows: SignRow[]
  part: Part
  filter: SignFilter
}

export function signTable({ submittal, rows, part, filter }: Listed): Html {
  const address = `/submittals/${submittal}`
  const isFiltered = filter.verdict !== undefined || filter.text !== undefined
  const found = `${counted(part.total, 'sign', 'signs')}${isFiltered ? ' as asked for' : ''}`
  return markup`<form class="filter" method="get" action="${address}" data-filter role="search" aria-label="Filter the signs">
      ${textField({ id: 'text', label: 'Mark, place or door' }, filter.text ?? '', { type: 'search', autocomplete: 'off' })}
      ${selectField({ id: 'verdict', label: 'Verdict' }, [['', 'All'], ...VERDICTS], filter.verdict ?? '')}
      <button class="quiet" type="submit">Filter</button>
      ${isFiltered ? markup`<a href="${address}#signs">Show all</a>` : NOTHING}
    </form>
    <div id="sign-list" data-live>
      <p id="found">${found}. Failing and undecided findings are counted with advice, on which no verdict rests.</p>
      ${rows.length === 0 ? NOTHING : markup`${list(rows, submittal)} ${pager(part, address, queryOfFilter(filter), 'signs')}`}
    </div>`
}

const list = (rows: SignRow[], submittal: string): Html =>
  markup`<div class="scroll" tabindex="0" role="group" aria-label="Signs">
    <table class="list">
      <caption class="hidden">Signs of this set, in the order in which they were handed in</caption>
      <thead>
        <tr>
          <th scope="col">Mark</th><th scope="col">Place</th><th scope="col">Verdict</th><th scope="col">Failing</th><th scope="col">Undecided</th>
        </tr>
      </thead>
      <tbody>${rows.map((row) => line(row, submittal))}</tbody>
    </table>
  </div>`

function line(row: SignRow, submittal: string): Html {
  const { id, mark, verdict, summary } = row
  const counts = summary === null ? undefined : (JSON.parse(summary) as Report['summary'])
  return markup`<tr>
    <th scope="row"><a href="/submittals/${submittal}/signs/${id}">${isolated(mark === '' ? 'Without a mark' : mark)}</a></th>
    <td>${isolated(placeOf(row))}</td>
    <td>${verdict === null ? NOTHING : verdictMark(verdict as ReportVerdict)} ${state(row)}</td>
    <td>${counts?.fail ?? '–'}</td>
    <td>${counts?.undetermined ?? '–'}</td>
  </tr>`
}

function state({ state, verdict, problem }: SignRow): Html | string {
  if (state === 'queued') return verdict === null ? 'Waits to be checked' : '(being checked again)'
  if (state === 'cancelled') return verdict === null ? 'Not checked: cancelled' : '(not checked again: cancelled)'
  if (problem === null) return ''
  const { title } = JSON.parse(problem) as { title: string }
  return markup`<strong>! No report:</strong> ${title}`
}
