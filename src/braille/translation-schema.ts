import { z } from 'zod'
import { BRAILLE_CODES } from '../sign/sign.js'
import { MAX_TEXT_CHARACTERS } from './print.js'

/** Shapes of POST /v1/translations. */

const MAX_CELLS = 2000
const MAX_NAMES = 200
const MAX_NAME_CHARACTERS = 100
const MAX_STANDARDS = 20

export const TranslationRequest = z
  .strictObject({
    text: z
      .string()
      .min(1)
      .max(MAX_TEXT_CHARACTERS)
      .optional()
      .meta({ description: 'Print text to translate. Give either this or `cells`.', examples: ['Reading Room 204'] }),
    cells: z
      .string()
      .min(1)
      .max(MAX_CELLS)
      .regex(/^[\u2800-\u283f ]+$/, 'must be six-dot braille characters (U+2800 to U+283F)')
      .optional()
      .meta({
        description: 'Braille to read back, as Unicode braille. Give either this or `text`.',
        examples: ['⠗⠕⠕⠍⠀⠼⠃⠚⠙'],
      }),
    code: z
      .enum(BRAILLE_CODES)
      .optional()
      .meta({
        description:
          'Unified English Braille, contracted or uncontracted. Absent: the grade that the standards ask for, contracted where they leave it open.',
        examples: ['ueb-contracted'],
      }),
    width: z
      .number()
      .positive()
      .optional()
      .meta({
        description:
          'Most that a line may be wide, in millimetres, from the first column of dots to the last. Absent: one line.',
        examples: [120],
      }),
    properNames: z
      .array(z.string().min(1).max(MAX_NAME_CHARACTERS))
      .max(MAX_NAMES)
      .optional()
      .meta({
        description:
          'Names and acronyms that keep their capital signs where a standard otherwise asks for small letters.',
        examples: [['Orchid House']],
      }),
    standards: z
      .array(z.string().min(1))
      .min(1)
      .max(MAX_STANDARDS)
      .optional()
      .meta({
        description:
          'Standards whose grade, capitals rule and braille spacing apply; absent: us-ada-2010, as for checks. `properNames` keep their capitals.',
        examples: [['us-ada-2010']],
      }),
  })
  .refine(({ text, cells }) => (text === undefined) !== (cells === undefined), {
    message: 'or “cells” must be given, and not both',
    path: ['text'],
  })
  .meta({ id: 'TranslationRequest', description: 'A text to put into braille, or braille to read back.' })
export type TranslationRequest = z.infer<typeof TranslationRequest>

const Millimetres = z.number().nonnegative()

export const Translation = z
  .strictObject({
    text: z
      .string()
      .meta({ description: 'The print text as translated, after the capitals rule.', examples: ['reading room 204'] }),
    cells: z.string().meta({ description: 'All cells, words parted by U+2800.', examples: ['⠗⠂⠙⠬⠀⠗⠕⠕⠍⠀⠼⠃⠚⠙'] }),
    code: z.enum(BRAILLE_CODES),
    lines: z.array(z.string()).meta({ description: 'The cells, broken at blanks to the width asked for.' }),
    size: z.strictObject({ width: Millimetres, height: Millimetres, unit: z.literal('mm') }).meta({
      description:
        'The block from dot centre to dot centre, full cells. Add a dot base diameter for the space on the sign.',
    }),
    spacing: z.strictObject({
      dotSpacing: Millimetres,
      cellSpacing: Millimetres,
      lineSpacing: Millimetres,
      unit: z.literal('mm'),
    }),
    dots: z.array(z.tuple([z.number(), z.number()])).meta({
      description:
        'Centres of the raised dots, [x, y] in millimetres from dot 1 of the first cell, x to the right and y down.',
      examples: [
        [
          [0, 0],
          [2.4, 0],
        ],
      ],
    }),
    tooWide: z
      .array(z.string())
      .meta({ description: 'Words that are wider than the width asked for; each stands on its own line.' }),
    engine: z
      .strictObject({ engine: z.string(), version: z.string(), table: z.string(), digest: z.string() })
      .meta({ description: 'What translated: name, version, table and a digest of the tables.' }),
  })
  .meta({ id: 'Translation', description: 'A text in braille, laid out.' })
export type Translation = z.infer<typeof Translation>
