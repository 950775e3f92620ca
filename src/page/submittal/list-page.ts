import { isolated, markup, NOTHING, type Html } from '../../report/html-tag.js'
import { timeWords } from '../../report/overlay.js'
import { table } from '../../report/html-table.js'
import type { SubmittalPage } from '../../submittals/submittals.js'
import type { View } from '../layout.js'
import { STATE_WORDS } from './words.js'

/** All submittals, the newest first. */
export const listPage = ({ rows, next }: SubmittalPage, isFirst: boolean, said: Html): View => ({
  title: 'Submittals',
  here: 'submittals',
  main: markup`${said}
    <h1>Submittals</h1>
    ${rows.length === 0 ? markup`<p>${isFirst ? markup`Nothing has been handed in yet. <a href="/">Hand in a set</a>` : 'There are no older ones.'}</p>` : submittals(rows)}
    <nav class="pages" aria-label="Pages of submittals">
      ${isFirst ? NOTHING : markup`<a class="button quiet" href="/submittals">Newest</a>`}
      ${next === null ? NOTHING : markup`<a class="button quiet" rel="next" href="/submittals?before=${next}">Older</a>`}
    </nav>`,
})

const submittals = (rows: SubmittalPage['rows']): Html =>
  table(
    'The newest first',
    ['Name', 'Handed in', 'State', 'Signs', 'Last change'],
    rows.map(
      ({ id, name, created_at, updated_at, state, total, open }) =>
        markup`<tr>
          <th scope="row"><a href="/submittals/${id}">${isolated(name)}</a></th>
          <td>${timeWords(created_at)}</td>
          <td>${STATE_WORDS[state]}</td>
          <td>${total.toLocaleString('en')}${open > 0 ? `, ${open.toLocaleString('en')} not checked yet` : ''}</td>
          <td>${timeWords(updated_at)}</td>
        </tr>`,
    ),
  )
