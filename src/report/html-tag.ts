import { escaped } from './markup.js'

/** HTML that is safe by construction: whatever is put into the template is escaped, unless it is such HTML itself. */
export class Html {
  constructor(readonly text: string) {}
}

export type Content = Html | string | number | Content[]

const textOf = (content: Content): string => {
  if (content instanceof Html) return content.text
  if (Array.isArray(content)) return content.map(textOf).join('')
  return escaped(String(content))
}

/** Template tag: escapes every string and number, joins lists, keeps `Html` as it is. */
export function markup(parts: TemplateStringsArray, ...contents: Content[]): Html {
  return new Html(parts.map((part, i) => part + (i < contents.length ? textOf(contents[i]) : '')).join(''))
}

export const NOTHING = new Html('')

/** A client's text, kept from turning the direction of the text round it. */
export const isolated = (text: string): Html => markup`<bdi>${text}</bdi>`

/** An id or digest: set apart, broken anywhere. */
export const code = (text: string): Html => markup`<code><bdi>${text}</bdi></code>`
