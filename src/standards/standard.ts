import { z } from 'zod'
import { PARTS, SECTIONS, USES } from '../sign/sign.js'

/** The row type of a standard's table. One file per edition; the file is parsed with these schemas when it is loaded. */

const Ends = z.strictObject({ min: z.number().optional(), max: z.number().optional() })

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
        baselineAbove: z.strictObject({ in: z.number(), mm: z.number() }),
        baselineTo: z.strictObject({ in: z.number(), mm: z.number() }).optional(),
        base: z.strictObject({ in: z.number(), mm: z.number() }),
        /** Distance from which `perStep` is added for each `step` of distance beyond it. */
        from: z.strictObject({ in: z.number(), mm: z.number() }),
        perStep: z.strictObject({ in: z.number(), mm: z.number() }),
        step: z.strictObject({ in: z.number(), mm: z.number() }),
      }),
    ),
    printed: z.string(),
  }),
])
export type Limit = z.infer<typeof Limit>

/** Conditions that a row or an exception may ask for; each is decided in judge/scope.ts. */
export const Condition = z.enum([
  'separate-visual-set',
  'visual-set-elsewhere',
  'dual-use-characters',
  'section-straight',
  'section-not-straight',
  'elevator-car-control',
  'destination-oriented-elevator',
  'main-entry-level',
  'at-a-door',
  'pictogram-designates-room',
  'platform-space-limited',
  'over-circulation-path',
])

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
    confidence: z.enum(['verified', 'secondary', 'our-reading', 'memory', 'conflict']),
    note: z.string().optional(),
  }),
})
export type Requirement = z.infer<typeof Requirement>

export const Standard = z.strictObject({
  id: z.string().regex(/^[a-z0-9.-]+$/),
  title: z.string(),
  edition: z.string(),
  jurisdiction: z.string(),
  /** Ours; raised by one whenever a row changes. */
  revision: z.int().positive(),
  firstUnit: z.enum(['in', 'mm']),
  /** Uses that the standard sets aside altogether, with the clause that does so. */
  setAside: z.partialRecord(z.enum(USES), z.strictObject({ clause: z.string(), text: z.string() })).default({}),
  sources: z.record(z.string(), z.strictObject({ document: z.string(), where: z.string() })),
  requirements: z.array(Requirement).min(1),
})
export type Standard = z.infer<typeof Standard>
