import { z } from 'zod'

/** What a dot plan is asked with, and what it answers. Millimetres, millimetres a minute, seconds. */

export const MOST_DOTS = 100_000
const FARTHEST = 10_000
const LARGEST = 1000
const FASTEST = 1_000_000
const LONGEST_DWELL = 600
const LARGEST_CARTRIDGE = 10_000_000

const Size = z.number().positive().max(LARGEST)
const Rate = z.number().positive().max(FASTEST)
const Place = z.number().min(-FARTHEST).max(FARTHEST)

export const Points = z
  .array(z.tuple([Place, Place]))
  .min(1)
  .max(MOST_DOTS)
  .describe('Middles of the dots, x to the right and y down.')

export const Head = z
  .strictObject({
    tipDiameter: Size.optional().describe('Of the end that comes down to the dot.'),
    bodyDiameter: Size.optional().describe('Of what carries the tip, seen from above.'),
    bodyClearance: Size.optional().describe('From the end of the tip up to the lower end of the body.'),
    offset: z
      .strictObject({ x: z.number().min(-LARGEST).max(LARGEST), y: z.number().min(-LARGEST).max(LARGEST) })
      .optional()
      .describe('Middle of the body from the middle of the tip, y down. Absent: none.'),
    lift: Size.optional().describe(
      'Height of the tip above the surface on its way from dot to dot. Below it no part may stand over a laid dot.',
    ),
    plunge: Size.optional().describe('How far the tip goes down from there to set a dot.'),
    approach: z
      .strictObject({
        angle: z
          .number()
          .min(-360)
          .max(360)
          .describe('Degrees, clockwise as seen, from the x axis to where the tip comes from, seen from the dot.'),
        length: Size.describe('Along the surface.'),
        height: Size.describe('How far the tip comes down on that piece: more than nothing, at most the plunge.'),
      })
      .optional()
      .describe('The last piece of the way down comes in sideways. Absent: straight down.'),
  })
  .meta({
    id: 'DotHead',
    description: 'The head that sets one dot at each plunge. What is absent is assumed, and said.',
  })

export const Machine = z
  .strictObject({
    travelRate: Rate.optional().describe('From dot to dot.'),
    plungeRate: Rate.optional().describe('Down and up.'),
    dwell: z.number().nonnegative().max(LONGEST_DWELL).optional().describe('Seconds at the bottom.'),
    acceleration: Rate.optional().describe('Millimetres per second squared; absent: full rate at once.'),
  })
  .meta({ id: 'DotMachine', description: 'How fast the machine goes.' })

export const LaidDot = z
  .strictObject({ baseDiameter: Size.optional(), height: Size.optional() })
  .meta({ id: 'LaidDot', description: 'A dot as it stands when it is laid: a dome.' })

export const VARIANTS = ['real', 'dry-run'] as const
export const PROGRAM_UNITS = ['mm', 'in'] as const
export const PROGRAM_MOVES = ['cycles', 'plain'] as const

export const planSettings = {
  head: Head.optional(),
  machine: Machine.optional(),
  cartridge: z
    .strictObject({ dots: z.int().positive().max(LARGEST_CARTRIDGE) })
    .optional()
    .describe('How many dots one filling gives. Absent: all of them.'),
  dot: LaidDot.optional(),
  variant: z
    .enum(VARIANTS)
    .optional()
    .describe('Of the program: `dry-run` goes the same way, raised above the surface.'),
  units: z.enum(PROGRAM_UNITS).optional().describe('Of the program; absent: millimetres.'),
  moves: z
    .enum(PROGRAM_MOVES)
    .optional()
    .describe('Of the program: drilling cycles, or plain moves for a control that has none. Absent: cycles.'),
}
export const PlanSettings = z.strictObject(planSettings)
export type PlanSettings = z.infer<typeof PlanSettings>

/** The head with everything known. */
export interface Head {
  tipDiameter: number
  bodyDiameter: number
  bodyClearance: number
  lift: number
  plunge: number
  offset?: { x: number; y: number } | undefined
  approach?: { angle: number; length: number; height: number } | undefined
}

export interface Machine {
  travelRate: number
  plungeRate: number
  dwell: number
  acceleration?: number | undefined
}

export const WARNINGS = [
  'dots-merge',
  'tip-over-dot',
  'body-over-dot',
  'ring',
  'near-wall',
  'near-edge',
  'below-surface',
  'lift-below-letters',
  'unread',
  'split-in-cell',
  'split-unknown',
] as const
export type WarningKind = (typeof WARNINGS)[number]

export const PlanWarning = z.strictObject({
  kind: z.enum(WARNINGS),
  count: z.int().positive().describe('How many dots, pairs or parts it is about.'),
  text: z.string(),
  dots: z.array(z.int().nonnegative()).describe('Places in `sequence` of the first of them; pairs follow one another.'),
})
export type PlanWarning = z.infer<typeof PlanWarning>

export const SPLITS = ['block', 'line', 'word', 'cell', 'dot', 'end'] as const

export const Cartridge = z.strictObject({
  from: z.int().nonnegative().describe('Place in `sequence` of its first dot.'),
  to: z.int().nonnegative().describe('Place in `sequence` of its last dot.'),
  dots: z.int().positive(),
  volume: z.number().nullable(),
  after: z.enum(SPLITS).describe('What is whole where the cartridge is changed; `end`: it is the last.'),
})
export type Cartridge = z.infer<typeof Cartridge>

export const DotPlan = z
  .strictObject({
    dots: z.int().positive(),
    sequence: z.array(z.tuple([z.number(), z.number()])).describe('The dots in the order in which they are set.'),
    cartridges: z.array(Cartridge),
    seconds: z.number().describe('From the first dot to the last, without changes of cartridges.'),
    travel: z.number().describe('Length of the way from dot to dot, at the lift height.'),
    travelLowerBound: z.number().describe('No order of these dots is shorter, with or without regard to laid dots.'),
    travelGap: z
      .number()
      .nullable()
      .describe('How much longer the travel is than that, as a share; null where it is 0.'),
    baselineTravel: z.number().describe('The same way in columns from left to right, each from top to bottom.'),
    baselineSeconds: z.number(),
    baselineAllowed: z
      .boolean()
      .describe('Whether the columns keep the head off laid dots as well as this order does.'),
    volume: z.number().nullable().describe('Cubic millimetres of all domes; null where their size is not known.'),
    zero: z.strictObject({
      x: z.number(),
      y: z.number(),
      of: z.enum(['panel', 'drawing', 'points']),
      text: z.string(),
    }),
    head: z.strictObject({
      tipDiameter: z.number(),
      bodyDiameter: z.number(),
      bodyClearance: z.number(),
      lift: z.number(),
      plunge: z.number(),
      offset: z.strictObject({ x: z.number(), y: z.number() }).nullable(),
      approach: z.strictObject({ angle: z.number(), length: z.number(), height: z.number() }).nullable(),
    }),
    machine: z.strictObject({
      travelRate: z.number(),
      plungeRate: z.number(),
      dwell: z.number(),
      acceleration: z.number().nullable(),
    }),
    dot: z.strictObject({ baseDiameter: z.number(), height: z.number() }),
    assumptions: z.array(z.strictObject({ about: z.string(), text: z.string() })),
    warnings: z.array(PlanWarning),
    cautions: z.array(z.string()),
  })
  .meta({ id: 'DotPlan', description: 'The order in which dots are set, and what it takes.' })
export type DotPlan = z.infer<typeof DotPlan>
