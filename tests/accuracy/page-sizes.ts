import { largest, micrometres, rootMeanSquare, table } from './markdown.js'
import { CELL_OVER_DOT, type Share, type SizedSign } from './sizes.js'
import { SHEETS, TURNS } from './signs/sheets.js'
import { MEASURED, type Measured } from './signs/sign.js'

/** The part of the page about sizes. */

const NAMES: Record<Measured, string> = {
  dotBaseDiameter: 'dot base diameter',
  dotSpacing: 'dot spacing',
  cellSpacing: 'cell spacing',
  lineSpacing: 'braille line spacing',
  characterHeight: 'character height (of the I)',
  strokeThickness: 'stroke thickness (of the I)',
  leastCharacterSpacing: 'character spacing, least',
  greatestCharacterSpacing: 'character spacing, greatest',
  baselineSpacing: 'distance of the baselines',
  characterClearance: 'clear distance, braille to characters',
}

/**
 * Diameter at which the table of constructions says how far an outline is from the circle that is meant. Millimetres.
 */
const EXAMPLE_DIAMETER = 1.55

const errorsOf = (signs: readonly SizedSign[], name: Measured): number[] => signs.flatMap((s) => s.errors[name] ?? [])
const errors = (signs: readonly SizedSign[], name: Measured): [string, string, string] => {
  const values = errorsOf(signs, name)
  return [String(values.length), micrometres(largest(values)), micrometres(rootMeanSquare(values))]
}

const READINGS = ['right', 'open', 'wrong'] as const
const readings = (signs: readonly SizedSign[]): string[] =>
  READINGS.map((reading) => String(signs.filter(({ read }) => read === reading).length))

export interface SizesFound {
  signs: SizedSign[]
  /** By the number of digits behind the point. */
  rounded: Map<number, SizedSign[]>
  odd: { share: Share; signs: SizedSign[] }[]
}

export function sizesSection({ signs, rounded, odd }: SizesFound): string {
  const cut = [...rounded.values()]
  const decimals = [...rounded.keys()]
  return `## Sizes on drawings

${signs.length} signs are made from numbers: two lines of capitals in the outlines of five open typefaces with two
lines of braille below, the dots in ten constructions, the page in four ways to say its size
(${SHEETS.map(({ name }) => name).join('; ')}), the whole turned by ${TURNS.join(', ')} degrees, all coordinates
written to the last digit of a double. Sizes are drawn evenly from ranges about what the standards ask and beyond.
The truth is the number that the sign was made with, or an exact number of the font file.

How both texts of each sign were read; “open” says that something was left unread and nothing was read wrong. Cells
that stand nearer or farther than Table 703.3.1 of the 2010 ADA Standards allows are drawn on a few more signs, for
the reading alone:

${table(
  'lrrrr',
  ['cell spacing over dot spacing', 'signs', 'right', 'open', 'wrong'],
  [
    [CELL_OVER_DOT.join(' to '), String(signs.length), ...readings(signs)],
    ...odd.map((o) => [o.share.join(' to '), String(o.signs.length), ...readings(o.signs)]),
  ],
)}

The signs are drawn once more in millimetres with ${decimals.join(' and then ')} digits behind the point
(${cut.map((s) => s.length).join(' and ')} signs), as programs write them: what is lost then, the file has lost.
Errors are in micrometres, the largest and the root mean square; “signs” are those on which the size was measured.

${table(
  'lrrr' + 'rr'.repeat(decimals.length),
  ['size', 'signs', 'largest', 'rms', ...decimals.flatMap((d) => [`${d} digits: largest`, 'rms'])],
  MEASURED.map((name) => [NAMES[name], ...errors(signs, name), ...cut.flatMap((s) => errors(s, name).slice(1))]),
)}

### By the construction of the dots

The diameter of a dot is that of the least circle round its outline, as it is drawn. Where the outline is not the
circle that is meant, that is no error of the measurement, but whoever cuts the file cuts that outline. The two
columns in the middle say what a dot of ${EXAMPLE_DIAMETER} mm becomes: its greatest and its least width over the
circle. Corners of a polygon lie on the circle that is meant; a program that puts the middles of the sides on the
circle draws a larger dot, and is measured so.

${table(
  'lrrrrr',
  [
    'construction',
    'signs',
    'drawn wider by',
    'at its narrowest by',
    'diameter: largest error',
    'dot spacing: largest error',
  ],
  [...new Set(signs.map((s) => s.construction))].map((construction) => {
    const these = signs.filter((s) => s.construction === construction)
    const { name, widest, narrowest } = construction
    const over = (factor: number) => micrometres((factor - 1) * EXAMPLE_DIAMETER)
    const [count, diameter] = errors(these, 'dotBaseDiameter')
    return [name, count, over(widest), over(narrowest), diameter, errors(these, 'dotSpacing')[1]]
  }),
)}

### By turn and by unit

The largest error of any size in the first table.

${table(
  'lrr',
  ['', 'signs', 'largest error'],
  [
    ...TURNS.map((turn) =>
      worst(
        `turned by ${turn} degrees`,
        signs.filter((s) => s.turn === turn),
      ),
    ),
    ...SHEETS.map(({ name }) =>
      worst(
        name,
        signs.filter((s) => s.sheet === name),
      ),
    ),
  ],
)}`
}

const worst = (name: string, signs: readonly SizedSign[]): string[] => [
  name,
  String(signs.length),
  micrometres(largest(MEASURED.flatMap((m) => errorsOf(signs, m)))),
]
