import { z } from 'zod'
import { Report } from '../report/schema.js'
import { SignDescription } from '../sign/description.js'

export const DrawingAnswer = z
  .strictObject({
    drawing: z.string().describe('The SVG document, at true scale.'),
    sign: SignDescription.describe('What belongs to the drawing and no drawing shows: send both to a check.'),
    report: Report.describe('The check of this drawing with this description.'),
  })
  .meta({ id: 'DrawingAnswer', description: 'A drawing that passes its own check at the drawing stage.' })
