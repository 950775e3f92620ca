import { z } from 'zod'
import { ColourDescription } from './colour.js'
import { POTTERY_ROOM } from './examples.js'
import { Coordinate, Distance, Length, UNITS } from './length.js'
import { MEASURABLE, MEASURABLE_QUANTITIES } from './quantities.js'
import {
  APPROACHES,
  BRAILLE_CODES,
  CARRIERS,
  DOT_SHAPES,
  FINISHES,
  PARTS,
  SECTIONS,
  SIDES,
  STYLES,
  SYMBOL_SHAPES,
  SWINGS,
  USES,
} from './sign.js'

/** The sign description: the JSON form of a sign. Strict everywhere, so that a misspelt key is named, never ignored. */

export const LONGEST_TEXT = 500
export const LONGEST_NAME = 100
export const MOST_ITEMS = 100
export const MOST_LINES = 40
export const MOST_NAMES = 500
export const MOST_VALUES = 1000
export const HIGHEST_RATIO = 100

/** Control characters (line breaks among them) and halves of surrogate pairs. */
const UNPRINTABLE = /[\p{Cc}\p{Cs}]/u

const text = (longest: number) =>
  z
    .string()
    .max(longest)
    .refine((value) => value.trim() !== '', 'is empty')
    .refine((value) => !UNPRINTABLE.test(value), 'holds a control character; give lines of text as `lines`')

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
    relief: Length.optional().describe('Height of raised characters above the background.'),
    section: z.enum(SECTIONS).optional().describe('Cross section of a raised stroke.'),
    characterSpacing: Length.optional().describe('Least distance between the tops of neighbouring characters.'),
    characterSpacingAtBase: Length.optional().describe('The same at the base, where the section is not straight.'),
    baselineSpacing: Length.optional().describe('Distance of successive baselines.'),
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
  })
  .meta({ id: 'PictogramDescription', description: 'A picture that stands for a word.' })
export type PictogramDescription = z.infer<typeof PictogramDescription>

const BorderDescription = z
  .strictObject({
    box: BoxDescription.describe('Outer edge.'),
    width: Length.optional().describe('Thickness of the frame.'),
    raised: z.boolean().optional(),
  })
  .meta({ id: 'BorderDescription', description: 'A frame on the panel.' })
export type BorderDescription = z.infer<typeof BorderDescription>

const InstallationDescription = z
  .strictObject({
    panelBottomHeight: Distance.optional().describe('Finish floor to the panel’s lower edge.'),
    side: z.enum(SIDES).optional(),
    approach: z.enum(APPROACHES).optional(),
    viewingDistance: Length.optional(),
    door: z
      .strictObject({
        leafWidth: Length.optional(),
        swing: z.enum(SWINGS).optional(),
        latchToTextCentre: Distance.optional().describe(
          'Along the wall, from the latch edge of the closed leaf to the middle of all tactile characters and braille.',
        ),
      })
      .optional(),
  })
  .meta({ id: 'InstallationDescription', description: 'Where and how the sign hangs.' })

const MeasuredDescription = z
  .strictObject({
    quantity: z.enum(MEASURABLE_QUANTITIES, { error: 'is no quantity that can be measured here' }),
    values: z.array(z.number().nonnegative()).min(1).max(MOST_VALUES),
    unit: z
      .enum([...UNITS, 'ratio'])
      .optional()
      .describe('Absent: the `units` of the description, or `ratio` for a ratio.'),
    expandedUncertainty: z
      .number()
      .nonnegative()
      .optional()
      .describe('With coverage factor 2, in the unit of the values.'),
    instrument: text(LONGEST_NAME).optional(),
  })
  .refine(({ quantity, unit }) => unit === undefined || (unit === 'ratio') === (MEASURABLE[quantity] === 'ratio'), {
    path: ['unit'],
    error: 'does not suit the quantity: lengths are in mm or in, shares and proportions are a ratio',
  })
  .meta({ id: 'MeasuredDescription', description: 'Values read with an instrument; they win over declared ones.' })
export type MeasuredDescription = z.infer<typeof MeasuredDescription>

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
