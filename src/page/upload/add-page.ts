import { isolated, markup } from '../../report/html-tag.js'
import type { SubmittalRow } from '../../submittals/store/tables.js'
import { errorSummary, type FormError } from '../form.js'
import type { View } from '../layout.js'
import { filesField } from './upload-page.js'

/** Further files for a set that is there. */
export const addPage = ({ id, name }: SubmittalRow, errors: readonly FormError[]): View => ({
  title: `${errors.length > 0 ? 'Error: ' : ''}Add files to ${name}`,
  here: 'submittals',
  above: [
    { address: '/submittals', name: 'Submittals' },
    { address: `/submittals/${id}`, name },
  ],
  main: markup`${errorSummary(errors)}
    <h1>Add files to ${isolated(name)}</h1>
    <p>The signs in them come behind those that are there and are held against the same standards. A sign that is there is not replaced.</p>
    <form method="post" action="/submittals/${id}/signs" enctype="multipart/form-data" aria-label="Add files">
      ${filesField(errors)}
      <div class="actions">
        <button type="submit">Add and check</button> <a href="/submittals/${id}">Back without adding</a>
      </div>
    </form>`,
})
