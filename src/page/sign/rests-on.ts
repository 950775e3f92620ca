import { isolated, markup, NOTHING, type Html } from '../../report/html-tag.js'
import { placeWords } from '../../report/place-words.js'
import type { Report } from '../../report/schema.js'

/** What a report rests on: what was assumed, left out, not understood, and the caveats. */
export function restsOn({ assumptions, ignored, unread, caveats }: Report): Html {
  const parts: [string, string[]][] = [
    ['Assumed', assumptions.map(({ about, text }) => `${about}: ${text}`)],
    ['Not looked at', ignored.map(({ source, why }) => `line ${source.line}, column ${source.column}: ${why}`)],
    ['Seen but not understood', unread.map(({ where, why }) => `${placeWords(where)}: ${why}`)],
    ['Before you rely on this report', caveats],
  ]
  return markup`<section aria-labelledby="rests-on">
    <h2 id="rests-on">What this report rests on</h2>
    ${parts.map(([name, items]) =>
      items.length === 0
        ? NOTHING
        : markup`<h3>${name}</h3>
            <ul>
              ${items.map((item) => markup`<li>${isolated(item)}</li>`)}
            </ul>`,
    )}
  </section>`
}
