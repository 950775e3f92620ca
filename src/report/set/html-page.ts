import { Html, isolated, markup } from '../html-tag.js'
import { SET_STYLE } from './html-style.js'

export { SET_STYLE_HASH } from './html-style.js'

/** The frame of each page of a set: its title, its style, a way past its head. */
export interface PageParts {
  title: string
  /** What kind of page it is. */
  kind: string
  name: string
  skip: { to: string; text: string }
  main: Html
  foot: string
}

export const page = ({ title, kind, name, skip, main, foot }: PageParts): string =>
  markup`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>${title}</title>
        <style>${new Html(SET_STYLE)}</style>
      </head>
      <body>
        <a class="skip" href="#${skip.to}">${skip.text}</a>
        <header>
          <p class="kind">${kind}</p>
          <h1>${isolated(name)}</h1>
        </header>
        <main>${main}</main>
        <footer><p>${foot}</p></footer>
      </body>
    </html>
`.text
