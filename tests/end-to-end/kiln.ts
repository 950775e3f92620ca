import { createTranslator } from '../../src/braille/engine.js'
import { check, type CheckOptions } from '../../src/check.js'
import { SignDescription } from '../../src/sign/description.js'
import type { Report } from '../../src/report/schema.js'
import { dotPlaces, USUAL } from '../recognise/dotted.js'

/** One sign, drawn by hand and described, that passes; tests change one thing of it. All its words and sizes are invented. */

export interface Kiln {
  text: string
  textAt: number
  family: string
  /** The element of the braille: its attributes, and how one dot is drawn. */
  braille: string
  cells: string
  dot: (x: number, y: number) => string
  /** Put round everything, and after everything. */
  all: string
  more: string
}

const KILN: Kiln = {
  text: 'KILN ROOM',
  textAt: 20,
  family: 'Open Sans',
  braille: 'id="braille"',
  cells: '⠅⠊⠇⠝⠀⠗⠕⠕⠍',
  dot: (x, y) => `<circle cx="${x}" cy="${y}" r="${USUAL.diameter / 2}"/>`,
  all: '',
  more: '',
}

/** Width and height of its panel and page, millimetres. */
export const PANEL = { width: 200, height: 110 }

export function kiln(changes: Partial<Kiln> = {}): string {
  const { text, textAt, family, braille, cells, dot, all, more } = { ...KILN, ...changes }
  const dots = dotPlaces([cells], { ...USUAL, x: 20, y: 65 }).map(({ x, y }) => dot(x, y))
  return `<svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="110mm" viewBox="0 0 200 110"><g ${all}>
<rect id="panel" width="200" height="110" fill="#20303c"/>
<g id="both" fill="#ffffff"><text x="${textAt}" y="45" font-family="${family}" font-size="24" letter-spacing="2.2">${text}</text></g>
<g ${braille} fill="#ffffff">${dots.join('')}</g>
${more}</g></svg>`
}

/** What a drawing does not show. */
export const PRODUCT = {
  use: 'permanent-room',
  panel: { finish: 'matte' },
  lettering: [{ relief: 0.9 }],
  braille: [{ dotHeight: 0.75, dotShape: 'domed' }],
  properNames: [],
}

const translator = createTranslator()
const OPTIONS: CheckOptions = { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' }

/** @param sign undefined: the drawing alone */
export const checked = (drawing: string, sign?: unknown, options: Partial<CheckOptions> = {}): Report =>
  check(
    {
      drawing: new TextEncoder().encode(drawing),
      ...(sign !== undefined && { sign: SignDescription.parse(sign) }),
      standards: ['us-ada-2010'],
      options: { ...OPTIONS, ...options },
    },
    translator,
  )

export const finding = (report: Report, name: string): Report['findings'][number] => {
  const found = report.findings.find((f) => f.requirement === `us-ada-2010/${name}`)
  if (!found) throw new Error(`no row ${name}`)
  return found
}
export const verdictOf = (report: Report, name: string): string => finding(report, name).verdict
