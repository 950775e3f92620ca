import type { Translator } from '../../braille/translator.js'
import type { Exclusion } from '../../refusal.js'
import type { SignDescription } from '../../sign/description.js'
import { toMillimetres } from '../../sign/length.js'
import { asksForTouch } from '../../sign/vocabulary.js'
import type { LoadedStandard } from '../../standards/catalogue.js'
import { commonWindows } from '../../windows/common.js'
import { nearestTo } from './aim.js'
import { arrange } from './arrange.js'
import { cannotSatisfy, exclusionOf } from './cannot.js'
import { coloursOf } from './colours.js'
import type { SetAlignment } from './content.js'
import { describedBy } from './described.js'
import { excludingOf, gapAgainstClearance } from './excluding.js'
import { frameOf } from './margins.js'
import type { SignOrder } from './order.js'
import { writeSvg } from './svg.js'
import { wantedOf, type Wanted } from './wanted.js'
import { wordingOf } from './wording.js'

/** From an order to a drawing: what the standards ask together, the words, the places, the file. Pure. */

export interface Drawn {
  drawing: string
  sign: SignDescription
  /** Requirements that only some texts satisfy together: what to name when this one does not. */
  opposites: Exclusion[]
}

/**
 * Where in the window of line spacing lines may stand, the best first: a mark at the end of a line may stand over a letter of the next so
 * that a reader of outlines takes both for one, and other distances part them.
 */
export const LEADINGS = [0.5, 0.85, 0.15] as const

/**
 * A drawing at true scale that aims at the common windows of the standards. Whether it passes is for a check of the very file to say.
 * @throws {Refusal} `cannot-satisfy` when requirements on the drawing exclude each other or the text does not fit;
 *   `untranslatable-text` when the text has no braille; `invalid-description` for a typeface or character that is not here.
 */
export function draw(
  order: SignOrder,
  standards: readonly LoadedStandard[],
  translator: Translator,
  leading: number = LEADINGS[0],
): Drawn {
  const { use, carrier, units = 'mm', installation } = order
  const common = commonWindows(standards, { use, ...(carrier && { carrier }) })
  const opposites = excludingOf(common)
  const distance = installation?.viewingDistance
  const part = asksForTouch(use) ? 'both' : 'visual'
  const wanted = wantedOf(common, part, distance === undefined ? undefined : toMillimetres(distance, units))
  const tied = gapAgainstClearance(wanted)
  if (tied.length > 0) throw cannotSatisfy(EXCLUDED, [...opposites, ...tied])
  const wording = wordingOf(order, wanted, translator)
  const alignment = alignmentOf(order, wanted)
  const field = fieldOf(order, wanted)
  const made = arrange({ order, wanted, wording, alignment, field, leading })
  const colours = coloursOf(order)
  const drawing = writeSvg(made.content, {
    title: wording.text,
    part,
    panel: { ...made.panel, colour: colours.panel },
    frame: frameOf(order),
    ink: colours.ink,
  })
  return { drawing, sign: describedBy(order, made, colours, wanted), opposites }
}

const EXCLUDED = 'The standards exclude each other: no drawing satisfies them all.'

const ALIGNED = ['raised.alignment', 'braille.alignment']

/** Flush left unless something else is wished or asked. */
function alignmentOf({ lettering }: SignOrder, wanted: Wanted): SetAlignment {
  const all: SetAlignment[] = ['flush-left', 'centred', 'flush-right']
  const allowed = ALIGNED.reduce((so, quantity) => {
    const kinds = wanted.kinds(quantity)
    return kinds ? so.filter((kind) => kinds.includes(kind)) : so
  }, all)
  const wish = lettering[0].alignment ?? allowed[0]
  if (wish !== undefined && allowed.includes(wish)) return wish
  const text = wish
    ? `The standards do not allow the alignment “${wish}”; they allow ${allowed.join(', ') || 'none together'}.`
    : 'The standards ask for text and braille in different alignments.'
  throw cannotSatisfy(text, [exclusionOf('raised.alignment', text, wanted, ALIGNED)])
}

const FIELD_INSIDE = 0.6
const USUAL_FIELD = 100

function fieldOf({ pictogram, units = 'mm' }: SignOrder, wanted: Wanted): number | undefined {
  if (!pictogram) return undefined
  if (pictogram.fieldHeight !== undefined) return toMillimetres(pictogram.fieldHeight, units)
  return nearestTo(USUAL_FIELD, wanted.likelyEnds('pictogram.fieldHeight'), FIELD_INSIDE)
}
