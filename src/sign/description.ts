import { z } from 'zod'
import { ColourDescription } from './colour.js'
import { POTTERY_ROOM } from './examples.js'
import { InstallationDescription } from './installation-description.js'
import { Coordinate, Distance, Length, UNITS } from './length.js'
import { MeasuredDescription } from './measured-description.js'
import { LONGEST_NAME, MOST_ITEMS, text } from './text.js'
import {
  ALIGNMENTS,
  BRAILLE_CODES,
  CARRIERS,
  DOT_SHAPES,
  EDGES,
  FINISHES,
  PARTS,
  SECTIONS,
  STYLES,
  SYMBOL_SHAPES,
  USES,
} from './vocabulary.js'

/** The sign description: the JSON form of a sign. Strict everywhere, so that a misspelt key is named, never ignored. */

export { MOST_DOORS } from './installation-description.js'
export { LARGEST_READING, MOST_VALUES } from './measured-description.js'
export { LONGEST_NAME, MOST_ITEMS } from './text.js'

export const LONGEST_TEXT = 500
export const MOST_LINES = 40
export const MOST_NAMES = 500
export const HIGHEST_RATIO = 100

const Text = text(LONGEST_TEXT)
const Lines = z.array(Text).min(1).max(MOST_LINES)

const PointDescription = z.strictObject({ x: Coordinate, y: Coordinate }).meta({
  id: 'PointDescription',
  description: 'A place on the sign, from the panel’s top left corner.',
})

const BoxDescription = z.strictObject({ x: Coordinate, y: Coordinate, width: Length, height: Length }).meta({
  id: 'BoxDescription',
  description: 'An upright rectangle: its left and top edge and its size.',
})
export type BoxDescription = z.infer<typeof BoxDescription>

const PanelDescription = z
  .strictObject({
    width: Length.optional(),
    height: Length.optional(),
    finish: z.enum(FINISHES).optional(),
    colour: ColourDescription.optional(),
    edge: z.enum(EDGES).optional().describe('The edge all round the panel, as a finger meets it.'),
  })
  .meta({ id: 'PanelDescription', description: 'The plate that the sign is made of.' })

const LetteringDescription = z
  .strictObject({
    part: z
      .enum(PARTS)
      .optional()
      .describe(
        'Read by touch, by sight, or one set of characters for both. Absent: both; for a use that asks for nothing to be read by touch, visual.',
      ),
    text: Text.optional(),
    lines: Lines.optional().describe('The text line by line; absent: one line.'),
    typeface: z.strictObject({ family: text(LONGEST_NAME).optional(), style: z.enum(STYLES).optional() }).optional(),
    characterProportion: z.number().positive().max(HIGHEST_RATIO).optional().describe('Width of O over height of I.'),
    characterHeight: Length.optional().describe('Height of the capital I.'),
    strokeThickness: Length.optional(),
    strokeThicknessAtBase: Length.optional().describe('Width of the stroke where it meets the background.'),
    relief: Length.optional().describe('Height of raised characters above the background.'),
    section: z.enum(SECTIONS).optional().describe('Cross section of a raised stroke.'),
    characterSpacing: Length.optional().describe('Least distance between the tops of neighbouring characters.'),
    characterSpacingAtBase: Length.optional().describe('The same at the base, where the section is not straight.'),
    wordSpacing: Length.optional().describe('Least gap between neighbouring words of one line.'),
    baselineSpacing: Length.optional().describe('Distance of successive baselines.'),
    alignment: z
      .enum(ALIGNMENTS)
      .optional()
      .describe('How the lines stand: among each other, or one line on the panel.'),
    finish: z.enum(FINISHES).optional().describe('Absent: the panel’s.'),
    colour: ColourDescription.optional(),
    baseline: PointDescription.optional().describe('Left end of the first line’s baseline.'),
  })
  .meta({ id: 'LetteringDescription', description: 'A run of characters.' })
export type LetteringDescription = z.infer<typeof LetteringDescription>

const BrailleDescription = z
  .strictObject({
    text: Text.optional().describe('The print text, or the cells themselves as Unicode braille.'),
    lines: Lines.optional().describe('The same line by line; absent: one line.'),
    code: z.enum(BRAILLE_CODES).optional().describe('Absent: contracted Unified English Braille.'),
    dotBaseDiameter: Length.optional(),
    dotHeight: Length.optional(),
    dotShape: z.enum(DOT_SHAPES).optional(),
    dotSpacing: Length.optional().describe('Between dots of one cell, centre to centre.'),
    cellSpacing: Length.optional().describe('Between the same dots of neighbouring cells.'),
    lineSpacing: Length.optional().describe('Between the same dots of neighbouring lines.'),
    origin: PointDescription.optional().describe('Centre of dot 1 of the first cell.'),
    alignment: z.enum(ALIGNMENTS).optional().describe('How the braille stands under the text that it repeats.'),
    carrier: z.enum(CARRIERS).optional().describe('What the braille is made on, where a code tells its sizes by that.'),
  })
  .meta({ id: 'BrailleDescription', description: 'A block of braille.' })
export type BrailleDescription = z.infer<typeof BrailleDescription>

const PictogramDescription = z
  .strictObject({
    meaning: Text.optional(),
    shape: z
      .enum(SYMBOL_SHAPES)
      .optional()
      .describe('Of a symbol that is told by its outline, such as the door symbols of California.'),
    field: BoxDescription.optional().describe('The whole area set apart for the pictogram.'),
    colour: ColourDescription.optional(),
    fieldColour: ColourDescription.optional(),
    finish: z.enum(FINISHES).optional().describe('Absent: the panel’s.'),
    figureHeight: Length.optional().describe('Height of the figure in the field.'),
    triangleEdge: Length.optional().describe('Edge of the triangle of a symbol that is told by its outline.'),
    circleDiameter: Length.optional().describe('Diameter of its circle.'),
    thickness: Length.optional().describe('How thick such a symbol is.'),
    centreHeight: Length.optional().describe('Finish floor to the centre of such a symbol.'),
    doorCentreOffset: Distance.optional().describe('From its centre to the upright centreline of the door.'),
  })
  .meta({ id: 'PictogramDescription', description: 'A picture that stands for a word.' })
export type PictogramDescription = z.infer<typeof PictogramDescription>

const BorderDescription = z
  .strictObject({
    box: BoxDescription.describe('Outer edge.'),
    width: Length.optional().describe('Thickness of the frame.'),
    raised: z.boolean().optional(),
    colour: ColourDescription.optional(),
  })
  .meta({ id: 'BorderDescription', description: 'A frame on the panel.' })
export type BorderDescription = z.infer<typeof BorderDescription>

export const SignDescription = z
  .strictObject({
    units: z.enum(UNITS).optional().describe('What every bare length means; absent: millimetres.'),
    mark: text(LONGEST_NAME).optional().describe('The sign’s name in the sign schedule.'),
    use: z.enum(USES),
    panel: PanelDescription.optional(),
    lettering: z.array(LetteringDescription).max(MOST_ITEMS).optional(),
    braille: z.array(BrailleDescription).max(MOST_ITEMS).optional(),
    pictograms: z.array(PictogramDescription).max(MOST_ITEMS).optional().describe('Absent: none, as an assumption.'),
    borders: z.array(BorderDescription).max(MOST_ITEMS).optional().describe('Absent: none, as an assumption.'),
    properNames: z
      .array(text(LONGEST_NAME))
      .max(MOST_NAMES)
      .optional()
      .describe(
        'Words that may keep their capital sign in braille; given, even empty, the capitals rule can be decided.',
      ),
    installation: InstallationDescription.optional(),
    measured: z.array(MeasuredDescription).max(MOST_ITEMS).optional(),
  })
  .meta({
    id: 'SignDescription',
    description: 'A sign in the trade’s terms. What is missing becomes `undetermined`, never an error.',
    examples: [POTTERY_ROOM],
  })
export type SignDescription = z.infer<typeof SignDescription>

/** Whether the description holds anything to read; without a drawing beside it, it must. */
export const hasContent = (sign: SignDescription): boolean =>
  [sign.lettering, sign.braille, sign.pictograms].some((items) => items !== undefined && items.length > 0)
