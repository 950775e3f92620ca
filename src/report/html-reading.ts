import { spokenCells } from './braille-words.js'
import { table } from './html-table.js'
import { isolated, markup, NOTHING, type Html } from './html-tag.js'
import { fixed } from './numbers.js'
import type { Report, ReportReading } from './schema.js'

/** What the sign reads: lettering and braille, the cells with their dot numbers for those who hear the page. */

const millimetres = (value: number | null): string => (value === null ? 'not known' : `${fixed(value, 2)} mm`)

const PART_WORDS = { raised: 'by touch', visual: 'by sight', both: 'by touch and by sight' }

export function readingSection({ reading }: Report): Html {
  const { lettering, braille, pictograms } = reading
  const letters = lettering.map(
    (line) =>
      markup`<tr>
        <th scope="row">${line.text === null ? 'could not be read' : isolated(line.text)}</th>
        <td>${PART_WORDS[line.part]}</td>
        <td>${millimetres(line.characterHeight)}</td>
      </tr>`,
  )
  const { width, height } = reading.panel
  return markup`<p>
      Panel: ${width === null || height === null ? 'size not known' : `${fixed(width, 1)} × ${fixed(height, 1)} mm`}.
    </p>
    ${letters.length > 0 ? table('Lettering, line by line', ['Text', 'Read', 'Character height'], letters) : markup`<p>No lettering was found.</p>`}
    ${braille.length > 0 ? braille.map(block) : markup`<p>No braille was found.</p>`}
    ${pictograms.length > 0 ? markup`<p>Pictograms: ${pictograms.map((p) => p.meaning ?? 'meaning not given').join(', ')}.</p>` : NOTHING}`
}

function block(item: ReportReading['braille'][number], index: number): Html {
  const rows = item.lines.map(
    ({ cells, text }) =>
      markup`<tr>
        <td>
          ${cells === null ? 'could not be read' : cellsMarkup(cells)}
        </td>
        <td>${text === null ? 'not shown: no print text translates to exactly these cells' : isolated(text)}</td>
      </tr>`,
  )
  const facts = [
    `${item.dots} dots`,
    `dot base ${millimetres(item.dotBaseDiameter)}`,
    `dot spacing ${millimetres(item.dotSpacing)}`,
    `cell spacing ${millimetres(item.cellSpacing)}`,
    ...(item.lines.length > 1 ? [`line spacing ${millimetres(item.lineSpacing)}`] : []),
    ...(item.rotation === 0 ? [] : [`turned by ${fixed(item.rotation, 1)}°`]),
    ...(item.mirrored ? ['drawn for reading from the other side'] : []),
  ]
  return markup`${table(`Braille block ${index + 1}`, ['Cells', 'In print'], rows)}
    <p>${facts.join('; ')}.</p>`
}

/** The cells for those who see them, and by their dots for those who hear the page. */
const cellsMarkup = (cells: string): Html =>
  markup`<span class="cells" aria-hidden="true">${cells}</span><span class="hidden">${spokenCells(cells)}</span>`
