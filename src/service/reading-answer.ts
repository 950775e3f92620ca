import { z } from 'zod'
import { reportPlace, reportSource } from '../report/place.js'
import { readingOf } from '../report/reading.js'
import { ReportAssumption, ReportIgnored, ReportReading, ReportUnread } from '../report/schema.js'
import type { Sign } from '../sign/sign.js'

/** What POST /v1/readings answers: what would be read off the sign, without judging it. */
export const ReadingAnswer = z
  .strictObject({
    reading: ReportReading,
    assumptions: z.array(ReportAssumption),
    ignored: z.array(ReportIgnored),
    unread: z.array(ReportUnread),
  })
  .meta({ id: 'ReadingAnswer', description: 'The reading of a sign, with what was assumed and what was passed over.' })
export type ReadingAnswer = z.infer<typeof ReadingAnswer>

/** What a sign is for changes how it is judged, not how it reads. */
const NOT_READ = 'use'

export const readingAnswer = (sign: Sign): ReadingAnswer => ({
  reading: readingOf(sign),
  assumptions: sign.assumptions.filter(({ about }) => about !== NOT_READ).map(({ about, text }) => ({ about, text })),
  ignored: sign.ignored.map(({ source, why }) => ({ source: reportSource(source), why })),
  unread: sign.unread.map(({ place, why, couldBe }) => ({ where: reportPlace(place), why, couldBe })),
})
