import { z } from 'zod'
import { NUMBER_UNITS } from '../sign/quantities.js'
import { PARTS, SECTIONS, USES } from '../sign/sign.js'

/** The row type of a standard's table. One file per edition; the file is parsed with these schemas when it is loaded. */

const Ends = z.strictObject({ min: z.number().optional(), max: z.number().optional() })

/** One length as printed: a table that prints millimetres alone has no inches. */
const Printed = z.strictObject({ in: z.number().optional(), mm: z.number() })

/** What a measured value must satisfy. */
export const Limit = z.discriminatedUnion('kind', [
  /** A length, with the inch and the millimetre figures as printed. Judged in the unit that the standard puts first. */
  z.strictObject({ kind: z.literal('length'), in: Ends.optional(), mm: Ends, printed: z.string() }),
  /** A share or ratio (0.15, not 15). */
  z.strictObject({
    kind: z.literal('ratio'),
    min: z.number().optional(),
    max: z.number().optional(),
    printed: z.string(),
  }),
  /** A figure in a unit of its own: a count, an illuminance, a gloss. */
  z.strictObject({
    kind: z.literal('number'),
    unit: z.enum(NUMBER_UNITS),
    min: z.number().optional(),
    max: z.number().optional(),
    printed: z.string(),
  }),
  /**
   * A length printed without a tolerance: what equals it passes, what differs is left to a person. With `slack` only what is less is
   * left to a person, and what is more fails: another rule in force caps the length at the printed figure.
   */
  z.strictObject({
    kind: z.literal('nominal'),
    in: z.number().optional(),
    mm: z.number().optional(),
    slack: z.literal('downward').optional(),
    printed: z.string(),
  }),
  /** One of several kinds; `judgement` lists kinds that need a person's judgement. */
  z.strictObject({
    kind: z.literal('one-of'),
    pass: z.array(z.string()).min(1),
    judgement: z.array(z.string()).default([]),
    printed: z.string(),
  }),
  /** A plain yes. */
  z.strictObject({ kind: z.literal('yes'), printed: z.string() }),
  /** Character height by viewing distance and height above the floor (a table of bands, lengths as printed). */
  z.strictObject({
    kind: z.literal('by-viewing-distance'),
    bands: z.array(
      z.strictObject({
        /** The band holds for baselines above this height and up to `baselineTo` (no upper end: any height). */
        baselineAbove: Printed,
        baselineTo: Printed.optional(),
        base: Printed,
        /** Distance from which `perStep` is added for each `step` of distance beyond it. */
        from: Printed,
        perStep: Printed,
        step: Printed,
      }),
    ),
    printed: z.string(),
  }),
  /** Least length as a share of the viewing distance (25 mm a metre is 0.025); beyond `upTo`, in millimetres, it grows no further. */
  z.strictObject({
    kind: z.literal('distance-share'),
    share: z.number(),
    upTo: z.number().optional(),
    printed: z.string(),
  }),
  /** Least length by viewing distance, in steps, in millimetres: the first step whose `upTo` is not below the distance; beyond the last, a person decides. */
  z.strictObject({
    kind: z.literal('distance-steps'),
    steps: z.array(z.strictObject({ upTo: z.number(), min: z.number() })).min(1),
    printed: z.string(),
  }),
])
export type Limit = z.infer<typeof Limit>

/** Conditions that a row or an exception may ask for; each is decided in judge/scope.ts. */
export const Condition = z.enum([
  'separate-visual-set',
  'visual-set-elsewhere',
  'elevator-car-control',
  'destination-oriented-elevator',
  'main-entry-level',
  'at-a-door',
  'no-wall-at-latch',
  'pictogram-designates-room',
  'platform-space-limited',
  'over-circulation-path',
  'one-tactile-line',
  'several-tactile-lines',
  'one-word',
  'carrier-pvc',
  'carrier-not-pvc',
  'character-contrast-measured',
  'pictogram-contrast-measured',
  'border-gives-contrast',
  'suspended-overhead',
  'door-symbol',
  'triangle-alone',
  'english-over-ten-words',
  'in-arm-zone',
  'with-pictogram',
  'longer-text',
  'door-number',
  'black-and-white',
  'station-name',
  'posted-timetable',
  'toilet-or-lift',
  'sanitary-room',
  'exterior',
  'on-a-handrail',
  'one-direction',
])

/**
 * How surely a row is known. `verified`: read in the document itself; `secondary`: read in a page that reports it;
 * `earlier-edition`: read in an earlier edition of the same code and carried over from memory; `our-reading`: the clause gives no
 * number or leaves it open. A number that is only recalled, or that sources give differently, is no row: it is a gap.
 */
export const CONFIDENCES = ['verified', 'secondary', 'earlier-edition', 'our-reading'] as const

export const Requirement = z.strictObject({
  /** `<standard>/<clause>/<slug>`. */
  requirement: z.string().regex(/^[a-z0-9.-]+\/[A-Za-z0-9.]+\/[a-z0-9-]+$/),
  clause: z.string(),
  title: z.string(),
  /** In our own words. */
  text: z.string(),
  force: z.enum(['shall', 'should', 'advice']),
  stage: z.enum(['drawing', 'product', 'site']),
  quantity: z.string().regex(/^[a-z]+\.[a-zA-Z]+$/),
  limit: Limit,
  /** Limits that replace `limit` under a condition, first match wins. */
  exceptions: z
    .array(
      z.strictObject({
        when: Condition,
        clause: z.string(),
        limit: Limit.optional(),
        exempt: z.boolean().default(false),
        text: z.string(),
      }),
    )
    .default([]),
  scope: z.strictObject({
    uses: z.array(z.enum(USES)).min(1),
    /** Only lettering of these parts is looked at; absent: not about lettering. */
    parts: z.array(z.enum(PARTS)).optional(),
    sections: z.array(z.enum(SECTIONS)).optional(),
    when: z.array(Condition).default([]),
    /** The clause that puts the row in force for these uses. */
    clause: z.string(),
  }),
  /** How a person would measure it on the bench or the site. */
  howToMeasure: z.string(),
  citation: z.strictObject({
    source: z.string(),
    confidence: z.enum(CONFIDENCES),
    note: z.string().optional(),
  }),
})
export type Requirement = z.infer<typeof Requirement>

/** What a table leaves out, so that nobody takes silence for a pass. */
export const GAP_KINDS = [
  'not-read',
  'recalled-only',
  'conflict',
  'of-a-site',
  'no-place-in-a-description',
  'reading',
] as const

export const TableGap = z.strictObject({
  clause: z.string(),
  about: z.string(),
  /**
   * `not-read`; `recalled-only`: a number from memory alone; `conflict`: sources differ; `of-a-site`: asks something of a site, not of
   * one sign; `no-place-in-a-description`; `reading`: there is a row, and this is how its clause was read.
   */
  kind: z.enum(GAP_KINDS),
  why: z.string(),
})
export type TableGap = z.infer<typeof TableGap>

export const STANDARD_KINDS = ['code', 'standard', 'guidance', 'reference-geometry'] as const

/** One raise of the revision: what changed in our table, newest last. */
export const Change = z.strictObject({
  revision: z.int().positive(),
  date: z.iso.date(),
  text: z.string(),
  requirements: z.array(z.string()).default([]),
})
export type Change = z.infer<typeof Change>

export const Standard = z.strictObject({
  id: z.string().regex(/^[a-z0-9.-]+$/),
  title: z.string(),
  edition: z.string(),
  jurisdiction: z.string(),
  /** `reference-geometry`: sizes with a name, which no code asks of a sign; its rows are advice. */
  kind: z.enum(STANDARD_KINDS),
  /** The edition that took the place of this one, when it has a table here. */
  supersededBy: z.string().optional(),
  /** Ours; raised by one whenever a row changes. */
  revision: z.int().positive(),
  changes: z.array(Change).min(1),
  firstUnit: z.enum(['in', 'mm']),
  /** Uses that the standard sets aside altogether, with the clause that does so. */
  setAside: z.partialRecord(z.enum(USES), z.strictObject({ clause: z.string(), text: z.string() })).default({}),
  sources: z.record(z.string(), z.strictObject({ document: z.string(), where: z.string() })),
  gaps: z.array(TableGap),
  requirements: z.array(Requirement).min(1),
})
export type Standard = z.infer<typeof Standard>
