import type { Finding } from './finding-schema.js'
import { Html, markup, type Content } from './html-tag.js'
import type { Numbered } from './numbering.js'
import { NO_OVERLAY, type Overlay } from './overlay.js'

/** Where on a page a sign stands: alone, or as one of a set, where headings are lower and ids and clauses say whose they are. */
export interface OnPage {
  overlay: Overlay
  /** Of the headings of its sections. */
  level: 2 | 3
  /** Begins each id. */
  prefix: string
  clause: (finding: Finding) => string
  /** What stands below each finding that fails, where more can be done with it than to read it. */
  below?: (item: Numbered) => Html
}

export const alone = (overlay: Overlay = NO_OVERLAY): OnPage => ({
  overlay,
  level: 2,
  prefix: '',
  clause: ({ clause }) => clause,
})

export const heading = (level: number, content: Content): Html =>
  markup`${new Html(`<h${level}>`)}${content}${new Html(`</h${level}>`)}`

export const numberMark = (number: number, open: boolean): Html =>
  markup`<span class="number${open ? ' open' : ''}">${open ? `? ${number}` : number}</span>`
