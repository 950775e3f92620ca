import fc from 'fast-check'
import { createTranslator } from '../../src/braille/engine.js'
import { check, type CheckOptions } from '../../src/check.js'
import type { SignOrder } from '../../src/make/draw/order.js'
import { SignDescription } from '../../src/sign/description.js'
import { CONSTRUCTIONS } from '../accuracy/signs/dots.js'
import { SHEETS } from '../accuracy/signs/sheets.js'
import { makeSign } from '../accuracy/signs/sign.js'
import { drawingOf as bytesOf, truths } from '../end-to-end/truth.js'
import { made } from '../make/draw/made.js'
import { heldOutFaces, referenceFaces } from '../recognise/letters/faces.js'
import { outcomeOf, type Outcome } from './outcomes.js'
import { sheetOf, type Sheet } from './sheet.js'

/**
 * The drawings that the properties speak of: those of tests/drawings, by hand and by Inkscape, conforming and not; drawings that this service
 * makes; and signs made from numbers, most of them failing something. All words are invented.
 */

/** Clauses of the United States, of a state, of Australia, Korea and Norway, and sizes that are only advice. */
export const STANDARDS = ['us-ada-2010', 'us-ca-2019', 'au-aba', 'kr-2020', 'no-tek17', 'marburg-medium']

export const translator = createTranslator()

const OPTIONS: CheckOptions = { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' }

/** What a drawing does not show, so that heights above the floor and the product are judged as well. Invented. */
const BESIDE = SignDescription.parse({
  use: 'permanent-room',
  panel: { finish: 'matte' },
  braille: [{ dotHeight: 0.75, dotShape: 'domed' }],
  installation: {
    panelBottomHeight: 1300,
    side: 'latch',
    door: { leafWidth: 915, swing: 'toward-reader', latchToTextCentre: 250 },
  },
})

export const outcomeOfDrawing = (drawing: string): Outcome =>
  outcomeOf(
    check(
      { drawing: new TextEncoder().encode(drawing), sign: BESIDE, standards: STANDARDS, options: OPTIONS },
      translator,
    ),
  )

export interface Drawing {
  name: string
  sheet: Sheet
}

/**
 * Not among them: a drawing without a size is refused; of a viewBox of another shape than its page the page cannot be moved or enlarged
 * without the marks, and per cent are shares of the page.
 */
const ELSEWHERE = /nosize|par-meet|par-xmax|percent/u

const text = (name: string): string => {
  const bytes = bytesOf(name)
  return new TextDecoder(name.includes('latin1') ? 'latin1' : 'utf-8').decode(bytes)
}

export const handDrawn: Drawing[] = truths
  .filter(({ name }) => !ELSEWHERE.test(name))
  .map(({ name }) => ({ name, sheet: sheetOf(text(name)) }))

const ROOMS = ['Kiln Room 204', 'Exit', 'Map Room 12', 'Stair 2', 'Wheel Room', 'Lift 4']
const ORDERED: [Partial<SignOrder>, string[]][] = [
  [{}, ['us-ada-2010']],
  [{ border: { width: 2 } }, ['us-ada-2010', 'us-ca-2019']],
  [{ panel: { width: 300, height: 200, colour: '#20303c' } }, ['au-aba']],
]

const ordered: Drawing[] = ROOMS.flatMap((room, i) => {
  const [more, standards] = ORDERED[i % ORDERED.length]
  const { drawing } = made({ use: 'permanent-room', lettering: [{ text: room }], ...more }, standards)
  return [{ name: `made: ${room} for ${standards.join(', ')}`, sheet: sheetOf(drawing) }]
})

const FACES = ['OpenSans_600SemiBold', 'DejaVuSans', 'Poppins_500Medium']
const fonts = [...referenceFaces(), ...heldOutFaces()]
  .filter(({ name }) => FACES.includes(name))
  .map(({ font }) => font)

const millimetres = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** Sizes round about what the standards ask, and beyond it on both sides; invented. */
const fromNumbers: fc.Arbitrary<Drawing> = fc
  .record({
    font: fc.constantFrom(...fonts),
    lines: fc.constantFrom(['OFFICE', 'HALL'] as const, ['PRINCE', 'PRINTER'] as const, ['MOBILE', 'FILM'] as const),
    construction: fc.constantFrom(...CONSTRUCTIONS),
    characterHeight: millimetres(14, 30),
    leading: millimetres(1.3, 1.6),
    dotSpacing: millimetres(2.25, 2.65),
    cells: millimetres(2.45, 3.2),
    sizes: fc.record({
      dotBaseDiameter: millimetres(1.3, 1.8),
      lineSpacing: millimetres(9.8, 11),
      tracking: millimetres(1, 3),
      clearance: millimetres(8, 13),
    }),
  })
  .map(({ font, lines, construction, characterHeight, leading, dotSpacing, cells, sizes }) => {
    const all = {
      ...sizes,
      characterHeight,
      baselineSpacing: characterHeight * leading,
      dotSpacing,
      cellSpacing: cells * dotSpacing,
    }
    const { svg } = makeSign({ font, lines, sizes: all, construction, sheet: SHEETS[0], turn: 0 }, translator)
    return { name: `${lines.join(' ')} of ${construction.name}: ${JSON.stringify(all)}`, sheet: sheetOf(svg) }
  })

export const drawing: fc.Arbitrary<Drawing> = fc
  .oneof(
    { weight: 3, arbitrary: fc.constantFrom(...handDrawn) },
    { weight: 1, arbitrary: fc.constantFrom(...ordered) },
    { weight: 2, arbitrary: fromNumbers },
  )
  .map((one) => ({ ...one, toString: () => one.name }))

export { ordered as madeHere, fromNumbers }
