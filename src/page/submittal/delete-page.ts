import { isolated, markup } from '../../report/html-tag.js'
import type { SubmittalRow } from '../../submittals/store/tables.js'
import type { View } from '../layout.js'
import { counted } from './words.js'

/** Asks before a set is gone for good. */
export const deletePage = ({ id, name, total, event_count }: SubmittalRow): View => ({
  title: `Delete ${name}`,
  here: 'submittals',
  above: [
    { address: '/submittals', name: 'Submittals' },
    { address: `/submittals/${id}`, name },
  ],
  main: markup`<h1>Delete ${isolated(name)}?</h1>
    <p>
      ${counted(total, 'sign', 'signs')} with all reports, readings, waivers and notes, and the history of
      ${counted(event_count, 'event', 'events')} will be gone. This cannot be undone.
    </p>
    <p><a href="/v1/submittals/${id}/evidence.zip">Take the evidence along first (zip)</a></p>
    <form method="post" action="/submittals/${id}/delete">
      <div class="actions">
        <button class="grave" type="submit">Delete for good</button> <a class="button quiet" href="/submittals/${id}">Keep it</a>
      </div>
    </form>`,
})
