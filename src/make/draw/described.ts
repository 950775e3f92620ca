import type { Box } from '../../geometry/box.js'
import type { SignDescription } from '../../sign/description.js'
import type { Arrangement } from './arrange.js'
import type { Colours } from './colours.js'
import type { SignOrder } from './order.js'
import type { Wanted } from './wanted.js'

/**
 * What goes with the drawing: what was ordered and what no outline shows. The measures that standards take on the capitals I and O of the
 * typeface are described where the text has no such capital, and the baseline, which round letters do not show; all else is left to the drawing.
 */
export function describedBy(order: SignOrder, made: Arrangement, colours: Colours, wanted: Wanted): SignDescription {
  const { units, mark, use, panel, properNames, installation, carrier, pictogram } = order
  const { outline, capitals } = made.setting.face
  const { characterHeight } = made.setting
  const { field } = made.content
  const texts = made.content.lines.map(({ text }) => text)
  return {
    units: units ?? 'mm',
    ...(mark !== undefined && { mark }),
    use,
    panel: {
      width: mm(made.panel.width),
      height: mm(made.panel.height),
      ...(panel?.finish && { finish: panel.finish }),
      colour: colours.panel,
    },
    lettering: [
      {
        part: wanted.part,
        text: texts.join(' '),
        ...(texts.length > 1 && { lines: texts }),
        typeface: { family: outline.family, style: outline.style },
        ...(!shows(texts, 'O') && { characterProportion: capitals.proportion }),
        ...(!shows(texts, 'I') && {
          characterHeight: mm(characterHeight),
          strokeThickness: mm((capitals.stem / capitals.height) * characterHeight),
        }),
        baseline: pointOf(made),
      },
    ],
    ...(made.content.braille && { braille: [{ code: wanted.code, ...(carrier && { carrier }) }] }),
    pictograms: pictogram && field ? [describedField(pictogram, field)] : [],
    ...(!order.border && { borders: [] }),
    properNames: properNames ?? [],
    ...(installation && { installation }),
  }
}

/** The left end of the first baseline. */
function pointOf({ content: { lines } }: Arrangement) {
  const { x, y } = lines[0]?.baseline ?? { x: 0, y: 0 }
  return { x: mm(x), y: mm(y) }
}

function describedField({ meaning, colour, fieldColour }: NonNullable<SignOrder['pictogram']>, field: Box) {
  return { meaning, field: boxOf(field), ...(colour && { colour }), ...(fieldColour && { fieldColour }) }
}

const boxOf = ({ x, y, width, height }: Box) => ({ x: mm(x), y: mm(y), width: mm(width), height: mm(height) })

const shows = (texts: readonly string[], capital: string): boolean => texts.some((text) => text.includes(capital))

const DECIMALS = 1e4

const rounded = (value: number): number => Math.round(value * DECIMALS) / DECIMALS

const mm = (value: number) => ({ value: rounded(value), unit: 'mm' as const })
