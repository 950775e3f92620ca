import { z } from 'zod'
import { InstallationDescription } from '../../sign/installation-description.js'
import { UNITS } from '../../sign/length.js'
import { MeasuredDescription } from '../../sign/measured-description.js'
import { LONGEST_NAME, MOST_ITEMS, text } from '../../sign/text.js'

/** Bodies that add something to a kept sign, and what they are answered with. */

const LONGEST_REASON = 4000
const LONGEST_FINGERPRINT = 100

const Author = text(LONGEST_NAME).optional().describe('Who says so; absent: the name of the API key.')
const Measured = z.array(MeasuredDescription).min(1).max(MOST_ITEMS)

export const MeasurementsRequest = z.union([Measured, z.strictObject({ measured: Measured, author: Author })]).meta({
  id: 'MeasurementsRequest',
  description: 'Readings, each of one quantity. A length without a unit is in millimetres.',
})

export const InstallationRequest = InstallationDescription.extend({
  units: z.enum(UNITS).optional().describe('What every bare length means; absent: millimetres.'),
}).meta({ id: 'InstallationRequest', description: 'Where and how the sign hangs.' })

export const WaiverRequest = z
  .strictObject({
    fingerprint: text(LONGEST_FINGERPRINT).describe('Of the finding, as the report gives it.'),
    reason: text(LONGEST_REASON),
    author: Author,
    authority: text(LONGEST_NAME).describe('The authority’s own number or letter.'),
    expires: z.iso.date().nullable().optional().describe('The last day on which it holds; absent: until withdrawn.'),
  })
  .meta({ id: 'WaiverRequest', description: 'A finding that an authority lets stand.' })

export const NoteRequest = z
  .strictObject({ text: text(LONGEST_REASON), author: Author })
  .meta({ id: 'NoteRequest', description: 'A remark on a sign.' })

export const Change = z
  .strictObject({
    sign: z.string(),
    revision: z.int().positive().describe('The revision that waits for its report.'),
    state: z.enum(['queued', 'done', 'cancelled']),
  })
  .meta({ id: 'SignChange', description: 'What a change comes to: the sign is queued to be checked again.' })
