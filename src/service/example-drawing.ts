import { dotPositions } from '../braille/cells.js'

/** The drawing in the examples of the interactive reference: a room sign of our own invention. */

/** “pottery”, with the groupsign for er (The Rules of Unified English Braille, 10.4). */
const CELLS = '⠏⠕⠞⠞⠻⠽'
const PLACE = { origin: { x: 20, y: 70 }, dotSpacing: 2.4, cellSpacing: 6.9, lineSpacing: 10.1 }
const DECIMALS = 10

const round = (value: number): number => Math.round(value * DECIMALS) / DECIMALS

const dots = dotPositions([CELLS], PLACE).map(({ x, y }) => `<circle cx="${round(x)}" cy="${round(y)}" r="0.775"/>`)

export const EXAMPLE_DRAWING = `<svg xmlns="http://www.w3.org/2000/svg" width="230mm" height="120mm" viewBox="0 0 230 120">
<rect id="panel" width="230" height="120" fill="#f4f1e6"/>
<g id="both" fill="#16324f"><text x="20" y="45" font-family="Open Sans" font-size="24" letter-spacing="3">POTTERY</text></g>
<g id="braille" fill="#16324f">
${dots.join('\n')}
</g>
</svg>
`

/** What a drawing cannot hold. */
export const EXAMPLE_PRODUCT = {
  units: 'mm',
  use: 'permanent-room',
  panel: { finish: 'matte' },
  lettering: [{ relief: 0.9 }],
  braille: [{ dotHeight: 0.75, dotShape: 'domed' }],
  properNames: [],
}
