import { Html, isolated, markup, NOTHING, type Content } from '../report/html-tag.js'

/** The pieces of a form: every control has a label, a hint and an error that belong to it by id. */

export interface Field {
  id: string
  /** In the form's data; the id where it is the same. */
  name?: string
  label: Content
  hint?: Content
  error?: string | undefined
}

const describedBy = ({ id, hint, error }: Field): string =>
  [...(hint === undefined ? [] : [`${id}-hint`]), ...(error === undefined ? [] : [`${id}-error`])].join(' ')

function attributes(field: Field): Html {
  const described = describedBy(field)
  return markup`id="${field.id}" name="${field.name ?? field.id}"${described === '' ? '' : markup` aria-describedby="${described}"`}${field.error === undefined ? '' : new Html(' aria-invalid="true"')}`
}

function around(field: Field, control: Html): Html {
  const { id, label, hint, error } = field
  return markup`<div class="field${error === undefined ? '' : ' bad'}">
    <label for="${id}">${label}</label>
    ${hint === undefined ? NOTHING : markup`<span class="hint" id="${id}-hint">${hint}</span>`}
    ${error === undefined ? NOTHING : markup`<span class="wrong" id="${id}-error">Error: ${isolated(error)}</span>`}
    ${control}
  </div>`
}

export interface TextInput {
  type?: 'text' | 'search' | 'date' | 'password'
  isShort?: boolean
  isRequired?: boolean
  isDecimal?: boolean
  autocomplete?: 'name' | 'off' | 'current-password'
}

export function textField(field: Field, value: string, input: TextInput = {}): Html {
  const { type = 'text', isShort, isRequired, isDecimal, autocomplete } = input
  const extra = [
    ...(isShort ? [' class="short"'] : []),
    ...(isRequired ? [' required'] : []),
    ...(isDecimal ? [' inputmode="decimal"'] : []),
    ...(autocomplete === undefined ? [] : [` autocomplete="${autocomplete}"`]),
  ].join('')
  return around(field, markup`<input type="${type}" value="${value}" ${attributes(field)}${new Html(extra)} />`)
}

export const textArea = (field: Field, value: string, isRequired = false): Html =>
  around(
    field,
    markup`<textarea rows="3" ${attributes(field)}${new Html(isRequired ? ' required' : '')}>${value}</textarea>`,
  )

export const fileField = (field: Field, isRequired: boolean): Html =>
  around(field, markup`<input type="file" multiple ${attributes(field)}${new Html(isRequired ? ' required' : '')} />`)

/** @param options value and words, in order */
export const selectField = (field: Field, options: readonly (readonly [string, string])[], chosen: string): Html =>
  around(
    field,
    markup`<select ${attributes(field)}>
      ${options.map(
        ([value, words]) =>
          markup`<option value="${value}"${new Html(value === chosen ? ' selected' : '')}>${words}</option>`,
      )}
    </select>`,
  )

export const choice = (name: string, value: string, words: Content, isChosen: boolean): Html =>
  markup`<label class="choice"
    ><input type="checkbox" name="${name}" value="${value}"${new Html(isChosen ? ' checked' : '')} /><span>${words}</span></label
  >`

export const hidden = (name: string, value: string): Html =>
  markup`<input type="hidden" name="${name}" value="${value}" />`

/** Something that is wrong with what was sent, and the control that it is about. */
export interface FormError {
  id: string
  text: string
}

export const errorOf = (errors: readonly FormError[], id: string): string | undefined =>
  errors.find((one) => one.id === id)?.text

/** All that is wrong, first on the page and with the focus on it; each leads to its control. */
export const errorSummary = (errors: readonly FormError[]): Html =>
  errors.length === 0
    ? NOTHING
    : markup`<div class="errors" id="errors" role="alert" tabindex="-1" autofocus>
        <h2>There is a problem</h2>
        <ul>
          ${errors.map(({ id, text }) => markup`<li><a href="#${id}">${isolated(text)}</a></li>`)}
        </ul>
      </div>`
