import type { CheckedDrawing } from './drawings.js'
import { ONCE_WRONG, SHOWN, type Claims } from './icons.js'
import type { LetterReading } from './letters.js'
import { flowing, micrometres, percent, table } from './markdown.js'
import { QUANTITIES, type NoiseRow } from './noise.js'
import { sizesSection, type SizesFound } from './page-sizes.js'

/** The accuracy page from what was found. */

export interface Found {
  sizes: SizesFound
  letters: LetterReading
  drawings: CheckedDrawing[]
  braille: { size: number; claims: Pick<Claims, 'icons' | 'read'> }[]
  text: { size: number; every: number; claims: Claims }
  noise: NoiseRow[]
}

export const pageOf = (found: Found): string =>
  flowing(
    [
      HEAD,
      sizesSection(found.sizes),
      lettersSection(found.letters),
      drawingsSection(found.drawings),
      iconsSection(found),
      noiseSection(found.noise),
      LIMITS,
    ].join('\n\n'),
  ) + '\n'

const HEAD = `# Accuracy

How far what is read and measured on a drawing is from the truth, on drawings whose truth is known. This page is
written by \`tests/accuracy\`, and a test compares it with what the code does now:
\`npx vitest run tests/accuracy\`; with \`-u\` it is written anew. Nothing in it depends on the clock or on chance; all
that looks random comes from fixed seeds.`

const KINDS = { sans: 'sans-serif', serif: 'serif' } as const

function lettersSection({ faces, classes }: LetterReading): string {
  const counts = ({ counted: c, texts }: LetterReading['classes'][number]) => [
    String(c.characters),
    `${c.right} (${percent(c.right, c.characters)})`,
    `${c.unreadable} (${percent(c.unreadable, c.characters)})`,
    `${c.wrong} (${percent(c.wrong, c.characters)})`,
    `${texts.right} / ${texts.open} / ${texts.wrong}`,
  ]
  const head = ['characters', 'right', 'unread', 'wrong', 'texts right / open / wrong']
  const confused = classes.flatMap(({ kind, counted }) =>
    counted.confused.map(({ truth, read, count }) => [KINDS[kind], code(truth), code(read), String(count)]),
  )
  const unread = classes.map(
    ({ kind, counted }) =>
      `${KINDS[kind]}: ${counted.unread.map(({ truth, count }) => `${code(truth)} ${count}`).join(', ') || 'none'}.`,
  )
  return `## Outlined letters

Nineteen texts of one or two lines, invented and worded as on signs, are set in the outlines of ${faces.length}
faces and read from shape alone: no braille beside them says what to expect. No weight of these faces is among the
references that the reading was made from. They are not wholly unseen, though: the thresholds of the reading were
set while looking at these same faces, so that a face nobody has looked at may be read somewhat worse. “Unread”
characters are said to be unreadable, or left open between several readings; a text with one of them is open as a
whole.

${table(
  'lrrrrr',
  ['class', ...head],
  classes.map((c) => [KINDS[c.kind], ...counts(c)]),
)}

${table(
  'llrrrrr',
  ['face', 'class', ...head],
  faces.map((f) => [f.name, KINDS[f.kind], ...counts(f)]),
)}

What was taken for something else (all of the confusion matrix that is off its diagonal):

${confused.length > 0 ? table('lllr', ['class', 'stands there', 'was read', 'times'], confused) : 'Nothing.'}

What was left unread, and how often. ${unread.join('\n')}`
}

const code = (text: string): string => '`' + text.replaceAll('|', '\\|') + '`'

function drawingsSection(drawings: readonly CheckedDrawing[]): string {
  const wrong = drawings.filter((d) => d.wrong.length > 0)
  const undecided = drawings.filter((d) => d.wrong.length === 0 && d.undecided.length > 0)
  const right = drawings.length - wrong.length - undecided.length
  const listed = [
    ...wrong.map((d) => [d.name, 'wrong', d.wrong.join('; ')]),
    ...undecided.map((d) => [d.name, 'undecided', [...new Set(d.undecided)].join('; ')]),
  ]
  return `## Whole drawings

The drawings of \`tests/drawings\`, written by hand in many constructions and by Inkscape, each checked whole and
held against what the program that made it wrote down: every dot counted, cells, letters, spacings (to 0.05 mm),
character height and the clauses that the sign violates. A drawing is wrong when anything false is said of it,
undecided when nothing false is said and something was left open.

${table('rrrr', ['drawings', 'right', 'undecided', 'wrong'], [[drawings.length, right, undecided.length, wrong.length].map(String)])}${
    listed.length > 0 ? `\n\n${table('lll', ['drawing', '', 'what'], listed)}` : ''
  }`
}

/** When all icons were read. */
const WHOLE_RUN = '25 November 2026'

function iconsSection({ braille, text }: Found): string {
  const icons = braille[0].claims.icons
  const [right, wrong] = [true, false].map((is) => text.claims.read.filter((r) => (SHOWN[r.name] === r.text) === is))
  const list = (read: Claims['read']) => read.map((r) => `${r.name} ${code(r.text)}`).join(', ') || 'none'
  return `## What is claimed of drawings that are no signs

The ${icons} icons of the package bootstrap-icons hold no braille. All are looked at for braille as a check does, at
several sizes, since small ones have round dots of the size of braille:

${table(
  'rrl',
  ['side of the icon', 'braille claimed', 'on which icons, and the cells'],
  braille.map(({ size, claims }) => [`${size.toFixed(1)} mm`, String(claims.read.length), list(claims.read)]),
)}

Reading letters takes longer. All icons were read whole once, on ${WHOLE_RUN}: a text was claimed on
${Object.keys(SHOWN).length} of them, and it was what the icon shows on each. For this page every
${ordinal(text.every)} icon is read, and those ${ONCE_WRONG.length} on which an earlier version claimed a text that
they do not show (${ONCE_WRONG.join(', ')}): ${text.claims.icons} of ${icons}, ${text.size} mm wide. On
${text.claims.refused} nothing tactile is found; on ${text.claims.open} nothing is read, and what could be
characters, a pictogram or braille is left open; on ${text.claims.read.length} a text is claimed. The icon shows
just that text, judged by eye, on ${right.length} of them: ${list(right)}. It does not on ${wrong.length}${wrong.length > 0 ? `: ${list(wrong)}` : ''}.`
}

const ordinal = (n: number): string => ({ 2: 'second', 3: 'third', 4: 'fourth', 5: 'fifth', 6: 'sixth' })[n] ?? `${n}th`

const NOISE_NAMES: Record<(typeof QUANTITIES)[number], string> = {
  dotSpacing: 'dot spacing',
  cellSpacing: 'cell spacing',
  lineSpacing: 'line spacing',
  rotation: 'rotation',
}

function noiseSection(rows: readonly NoiseRow[]): string {
  const { signs } = rows[0]
  // The relative standard deviation of a root mean square of n Gaussian values is 1 / sqrt(2 n).
  const doubt = (100 / Math.sqrt(2 * signs)).toFixed(0)
  const bound = (row: NoiseRow, name: (typeof QUANTITIES)[number]) =>
    name === 'rotation' ? `${row.bound[name].toFixed(4)}°` : `${micrometres(row.bound[name])} µm`
  return `## Dots under noise

Two lines of braille, turned by 1.5 degrees, with each coordinate of each dot off by Gaussian noise, read and
measured ${signs} times for each level of noise. No unbiased way to measure can have a smaller root mean square
error than the Cramér–Rao bound, which is computed here for the strictest model, one stiff lattice with a place, a
rotation and three spacings (the fit itself also allows for shear and unequal scale, so that these are seen and
named). The ratio is the error found over that bound; with ${signs} signs it is itself known to about ${doubt} %, so
that it may come out a little below 1.

${table(
  'rrrr' + 'r'.repeat(QUANTITIES.length),
  ['noise', 'signs', 'measured', 'cells wrong', ...QUANTITIES.map((q) => `${NOISE_NAMES[q]}: ratio (bound)`)],
  rows.map((row) => [
    `${row.sigma} mm`,
    String(row.signs),
    String(row.measured),
    String(row.wrong),
    ...QUANTITIES.map((q) => `${row.ratio[q].toFixed(2)} (${bound(row, q)})`),
  ]),
)}`
}

const LIMITS = `## What this page does not say

- Nothing here is about a product. What a machine makes of a drawing, how high a dot or how wide its base comes out,
  and what an instrument reads of it, is not measured; a report takes such values only with the uncertainty that is
  given for them.
- Nothing is printed, cut or scanned here: these are errors of reading files.
- The signs of known size are written by the program that knows the sizes. Drawings of other programs than those
  named, with letters cut, joined, drawn as strokes or hidden under other shapes, may leave more open; no rate is
  stated for them.
- Faces in script, blackletter, stencil or display styles, and alphabets other than the Latin one, are not among the
  faces.
- Colours, borders, pictograms and the place of braille under the text have tests of their own and no figure here.`
