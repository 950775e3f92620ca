import { markup, type Content, type Html } from './html-tag.js'

/** A table with a caption and a head, in a region that scrolls by keyboard where it is too wide. */
export function table(caption: string, heads: string[], rows: Content[]): Html {
  return markup`<div class="scroll" tabindex="0" role="group" aria-label="${caption}">
    <table>
      <caption>
        ${caption}
      </caption>
      <thead>
        <tr>
          ${heads.map((head) => markup`<th scope="col">${head}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows}
      </tbody>
    </table>
  </div>`
}
