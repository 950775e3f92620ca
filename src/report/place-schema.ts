import { z } from 'zod'

/** A box on the sign. */
export const ReportBox = z
  .strictObject({
    x: z.number().describe('Left edge, mm from the left edge of the panel.'),
    y: z.number().describe('Top edge, mm down from the top edge of the panel.'),
    width: z.number().describe('Width, mm.'),
    height: z.number().describe('Height, mm.'),
  })
  .meta({ id: 'Box', description: 'A box on the sign, in millimetres, y down.' })

/** A position in the uploaded drawing. */
export const ReportSource = z
  .strictObject({
    id: z.string().nullable().describe('The id of the element in the drawing, when it has one.'),
    line: z.int().describe('Line of the drawing, counted from 1.'),
    column: z.int().describe('Column of that line, counted from 1.'),
  })
  .meta({ id: 'Source', description: 'Where an element stands in the uploaded drawing.' })

/** A place that a finding speaks of: on the sign, in the drawing, in the description. */
export const ReportPlace = z
  .strictObject({
    element: z.string().describe('Our name of the part, e.g. `braille/0/line/0`.'),
    box: ReportBox.nullable().describe('Where it is on the sign; null when that is not known.'),
    source: ReportSource.nullable().describe('Where it stands in the drawing; null when it was not drawn.'),
    pointer: z.string().nullable().describe('JSON Pointer into the request; null when it was not described.'),
  })
  .meta({ id: 'Place', description: 'A part of the sign and where it comes from.' })

export type ReportPlace = z.infer<typeof ReportPlace>
export type ReportBox = z.infer<typeof ReportBox>
export type ReportSource = z.infer<typeof ReportSource>
