import { z } from 'zod'
import { ColourDescription } from '../../sign/colour.js'
import { InstallationDescription } from '../../sign/installation-description.js'
import { Distance, Length, UNITS } from '../../sign/length.js'
import { LONGEST_NAME, text } from '../../sign/text.js'
import { ALIGNMENTS, CARRIERS, FINISHES, USES } from '../../sign/vocabulary.js'

/** A sign as it is ordered: what it says and what it is for, and as much of its looks as the client wants to settle. */

export const LONGEST_ORDERED_TEXT = 200
export const MOST_ORDERED_LINES = 12
const MOST_NAMES = 100

const Text = text(LONGEST_ORDERED_TEXT)

const OrderedPanel = z
  .strictObject({
    width: Length.optional(),
    height: Length.optional(),
    finish: z.enum(FINISHES).optional(),
    colour: ColourDescription.optional(),
  })
  .refine(({ width, height }) => (width === undefined) === (height === undefined), {
    message: 'needs both a width and a height, or neither',
    path: ['height'],
  })
  .meta({ id: 'OrderedPanel', description: 'The plate. Without a size the smallest stock blank that fits is taken.' })

const OrderedLettering = z
  .strictObject({
    text: Text.optional(),
    lines: z.array(Text).min(1).max(MOST_ORDERED_LINES).optional().describe('The text with its lines settled.'),
    typeface: z
      .strictObject({ family: text(LONGEST_NAME) })
      .optional()
      .describe('A typeface that ships with the service; absent: Open Sans.'),
    characterHeight: Length.optional().describe('Height of the capital I.'),
    alignment: z.enum(ALIGNMENTS).exclude(['other']).optional(),
    colour: ColourDescription.optional(),
  })
  .refine((item) => (item.text === undefined) !== (item.lines === undefined), {
    message: 'or “lines” must be given, and not both',
    path: ['text'],
  })
  .meta({ id: 'OrderedLettering', description: 'What the sign says.' })

const OrderedBorder = z
  .strictObject({
    width: Length.describe('Thickness of the frame.'),
    inset: Distance.optional().describe('From the edge of the panel to the frame; absent: the margin of the edge.'),
  })
  .meta({ id: 'OrderedBorder', description: 'A raised frame round the sign.' })

const OrderedPictogram = z
  .strictObject({
    meaning: Text.describe('What the picture will say.'),
    fieldHeight: Length.optional().describe('Absent: the least that the standards allow.'),
    colour: ColourDescription.optional(),
    fieldColour: ColourDescription.optional(),
  })
  .meta({
    id: 'OrderedPictogram',
    description: 'A field above the text that is kept clear for a picture, which is not drawn.',
  })

export const SignOrder = z
  .strictObject({
    units: z.enum(UNITS).optional().describe('What every bare length means; absent: millimetres.'),
    mark: text(LONGEST_NAME).optional(),
    use: z.enum(USES),
    panel: OrderedPanel.optional(),
    lettering: z.array(OrderedLettering).length(1).describe('One text; it may have several lines.'),
    carrier: z.enum(CARRIERS).optional().describe('What the braille is made on, where a code tells its sizes by that.'),
    border: OrderedBorder.optional(),
    pictogram: OrderedPictogram.optional(),
    properNames: z.array(text(LONGEST_NAME)).max(MOST_NAMES).optional(),
    installation: InstallationDescription.optional(),
  })
  .meta({
    id: 'SignOrder',
    description: 'A sign without its geometry.',
    examples: [{ use: 'permanent-room', lettering: [{ text: 'Seed Library' }] }],
  })
export type SignOrder = z.infer<typeof SignOrder>
