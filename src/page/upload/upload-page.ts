import { Html, isolated, markup, NOTHING } from '../../report/html-tag.js'
import { timeWords } from '../../report/overlay.js'
import type { SubmittalRow } from '../../submittals/store/tables.js'
import { errorOf, errorSummary, fileField, selectField, textField, type FormError } from '../form.js'
import { STATE_WORDS } from '../submittal/words.js'
import { standardsChoice } from './standards-choice.js'
import { USE_WORDS } from './uses.js'

/** The first page: hand in a set of signs, and come back to one. */

export interface Typed {
  name: string
  standards: ReadonlySet<string>
  use: string
}

const KINDS_OF_FILES =
  'SVG drawings, sign schedules (CSV or XLSX), descriptions (JSON), or a zip of these. Any number at once.'

export function filesField(errors: readonly FormError[]): Html {
  const field = { id: 'files', label: 'Files', hint: KINDS_OF_FILES, error: errorOf(errors, 'files') }
  return markup`<div class="drop" data-drop>
    ${fileField(field, true)}
    <p class="hint" data-drop-said role="status"></p>
  </div>`
}

/** @param recent undefined where nobody is signed in */
export function uploadPage(typed: Typed, errors: readonly FormError[], recent: SubmittalRow[] | undefined): Html {
  return markup`${errorSummary(errors)}
    <h1>Check a set of tactile signs</h1>
    <p class="lead">
      Hand in drawings or a sign schedule. Each sign is measured and held against the standards that you choose: what passes, what fails and by
      how much, and what only a gauge or a tape can decide.
    </p>
    ${recent ? markup`${form(typed, errors)} ${recentList(recent)}` : markup`<p><a class="button" href="/sign-in">Sign in to hand in a set</a></p>`}`
}

const form = (typed: Typed, errors: readonly FormError[]): Html =>
  markup`<form method="post" action="/submittals" enctype="multipart/form-data" aria-label="Hand in a set">
    ${filesField(errors)}
    ${textField({ id: 'name', label: 'Name of the set', hint: 'As you will look for it: the project, the floor, the date. May be left empty.', error: errorOf(errors, 'name') }, typed.name, { autocomplete: 'off' })}
    ${standardsChoice(typed.standards, errorOf(errors, 'standards'))}
    ${selectField(
      {
        id: 'use',
        label: 'What the signs are for',
        hint: 'For signs that do not say so themselves. What a schedule or a description says goes before. Where nothing is said, each report names what was taken.',
        error: errorOf(errors, 'use'),
      },
      [['', 'Not said: taken as permanent rooms'], ...Object.entries(USE_WORDS)],
      typed.use,
    )}
    <div class="actions"><button type="submit">Hand in and check</button></div>
  </form>`

function recentList(recent: SubmittalRow[]): Html {
  if (recent.length === 0) return NOTHING
  return markup`<section aria-labelledby="recent">
    <h2 id="recent">Handed in last</h2>
    <ul>
      ${recent.map(
        ({ id, name, state, created_at }) =>
          markup`<li><a href="/submittals/${id}">${isolated(name)}</a>, ${timeWords(created_at)}: ${STATE_WORDS[state]}</li>`,
      )}
    </ul>
    <p><a href="/submittals">All submittals</a></p>
  </section>`
}
