import { z } from 'zod'
import { Options } from '../../check-options.js'

/** The parts of a form that uploads signs, for the OpenAPI document. */
export const UploadForm = z
  .strictObject({
    files: z
      .array(z.string().meta({ contentMediaType: 'application/octet-stream' }))
      .describe('Any number of files: SVG drawings, zips, schedules as CSV or XLSX, descriptions as JSON.'),
    name: z.string().optional().describe('What the set is called.'),
    standards: z.string().optional().describe('Ids parted by commas, or a JSON array.'),
    options: Options.optional(),
  })
  .meta({ id: 'UploadForm', description: 'A set of signs as files.' })
