import { z } from 'zod'
import { Options, Standards } from '../../check-options.js'
import { LIMITS as DRAWING } from '../../drawing/limits.js'
import { POTTERY_ROOM } from '../../sign/examples.js'
import { SignDescription } from '../../sign/description.js'
import { LONGEST_NAME, text } from '../../sign/text.js'
import { UPLOAD_LIMITS } from './limits.js'

/** A set of signs as JSON: the body of a request, or the signs of a file in an upload. */

const Name = text(LONGEST_NAME)

export const SubmittalSign = z
  .strictObject({
    mark: Name.optional().describe('What tells the sign from the others. Absent: that of the description.'),
    location: Name.optional().describe('Room number or place.'),
    door: Name.optional().describe('The door that it stands beside.'),
    sign: SignDescription.optional(),
    drawing: z
      .string()
      .min(1)
      .max(DRAWING.bytes)
      .optional()
      .describe('An SVG document as text, or the name of a drawing that is uploaded beside this file.'),
    options: Options.optional(),
  })
  .refine(({ sign, drawing }) => sign !== undefined || drawing !== undefined, {
    path: ['sign'],
    message: 'is missing: give a sign, a drawing or both',
  })
  .meta({ id: 'SubmittalSign', description: 'One sign of a set: a description, a drawing or both.' })
export type SubmittalSign = z.infer<typeof SubmittalSign>

export const SubmittalRequest = z
  .strictObject({
    name: Name.optional().describe('What the set is called.'),
    standards: Standards.optional(),
    options: Options.optional(),
    signs: z.array(SubmittalSign).min(1).max(UPLOAD_LIMITS.signs),
  })
  .meta({
    id: 'SubmittalRequest',
    description: 'A set of signs to be kept and checked.',
    examples: [{ name: 'Pottery studio', signs: [{ location: '117', sign: POTTERY_ROOM }] }],
  })
export type SubmittalRequest = z.infer<typeof SubmittalRequest>
