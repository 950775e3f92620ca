import { z } from 'zod'
import { kept } from '../report/numbers.js'
import { CARRIERS, PARTS, SECTIONS, USES } from '../sign/sign.js'
import type { LoadedStandard } from '../standards/catalogue.js'
import { STANDARD_KINDS } from '../standards/standard.js'
import { commonWindows, type Common } from '../windows/common.js'
import type { JointRegion } from '../windows/domes.js'
import type { Ends } from '../windows/ends.js'
import type { ConditionalRow } from '../windows/in-force.js'
import type { Setting } from '../windows/setting.js'
import type { Conflict, Window } from '../windows/window.js'
import { adviceOf, CommonAdvice } from './common-advice.js'
import { conditionalText, conflictText } from './common-words.js'
import { PublishedLimit, publishedLimit, PublishedUnit } from './published-limit.js'

/** What several standards allow together, as it is answered. */

const CommonEnds = z
  .strictObject({ min: z.number().optional(), max: z.number().optional() })
  .meta({ id: 'CommonEnds', description: 'An interval; without an end it is open on that side.' })

const requirements = z.array(z.string()).describe('The requirements that it comes from.')

const CommonWindow = z
  .strictObject({
    quantity: z.string(),
    unit: PublishedUnit,
    min: z.number().optional(),
    max: z.number().optional(),
    kinds: z.array(z.string()).optional().describe('The kinds that pass everywhere, when `unit` is `kind`.'),
    judgement: z
      .array(z.string())
      .optional()
      .describe('Kinds that fail nowhere and that a person must judge somewhere.'),
    parts: z.array(z.enum(PARTS)).optional().describe('Only lettering of these parts is concerned.'),
    sections: z.array(z.enum(SECTIONS)).optional().describe('Only characters with these sections are concerned.'),
    from: requirements,
  })
  .meta({
    id: 'CommonWindow',
    description: 'What satisfies every row in force on one quantity, as far as nothing else ties it.',
  })

const CommonJoint = z
  .strictObject({
    quantities: z.array(z.string()),
    relation: z.string().describe('How the quantities hang together.'),
    min: z.number().optional().describe('Least radius, mm.'),
    max: z.number().optional().describe('Greatest radius, mm.'),
    from: requirements,
    corners: z
      .array(z.strictObject({ dotBaseDiameter: z.number(), dotHeight: z.array(CommonEnds) }))
      .describe(
        'What is left of the window of the dot height at each end of that of the base diameter; may be in two pieces.',
      ),
    example: z
      .strictObject({ dotBaseDiameter: z.number(), dotHeight: z.number() })
      .nullable()
      .describe('Values well inside; null where a window is open.'),
  })
  .meta({ id: 'CommonJoint', description: 'Two quantities of which one narrows the window of the other.' })

const CommonConflict = z
  .strictObject({
    quantity: z.string(),
    quantities: z.array(z.string()).describe('All that take part, when the rows tie several together.'),
    standards: z.array(z.string()),
    requirements: z.array(z.string()),
    clauses: z.array(z.string()).describe('In the order of the requirements.'),
    text: z.string().describe('The same for people.'),
  })
  .meta({ id: 'CommonConflict', description: 'A smallest set of rows that exclude each other.' })

const CommonConditional = z
  .strictObject({
    requirement: z.string(),
    clause: z.string(),
    quantity: z.string(),
    when: z.array(z.string()).describe('What a sign decides.'),
    exception: z.boolean().describe('It would relax the requirement, which is in the windows as it stands.'),
    limit: PublishedLimit.nullable().describe('Null: the exception sets the requirement aside.'),
    text: z.string(),
  })
  .meta({ id: 'CommonConditional', description: 'A row of which only a sign can tell whether it is in force.' })

export const CommonAnswer = z
  .strictObject({
    use: z.enum(USES),
    carrier: z.enum(CARRIERS).nullable(),
    standards: z.array(
      z.strictObject({
        id: z.string(),
        revision: z.int(),
        title: z.string(),
        kind: z.enum(STANDARD_KINDS),
        digest: z.string(),
        inForce: z.int().describe('How many of its rows are in the windows; 0 when it asks nothing for this use.'),
      }),
    ),
    windows: z.array(CommonWindow),
    joint: z.array(CommonJoint),
    conflicts: z.array(CommonConflict),
    conditional: z.array(CommonConditional),
    advice: z.array(CommonAdvice).describe('Sizes of the reference geometries that were named, and no rule of a sign.'),
  })
  .meta({ id: 'CommonWindows', description: 'What satisfies several standards at once, before there is a sign.' })
export type CommonAnswer = z.infer<typeof CommonAnswer>

/**
 * Lengths in millimetres.
 * @param standards each once, in the order named
 */
export function commonAnswer(standards: readonly LoadedStandard[], setting: Setting): CommonAnswer {
  const common = commonWindows(standards, setting)
  const asked = new Map(common.asked.map(({ standard, inForce }) => [standard, inForce]))
  return {
    use: setting.use,
    carrier: setting.carrier ?? null,
    standards: standards.map((standard) => {
      const { id, revision, title, kind, digest } = standard
      return { id, revision, title, kind, digest, inForce: asked.get(standard) ?? 0 }
    }),
    windows: common.windows.map(windowOf),
    joint: common.domes ? [jointOf(common.domes)] : [],
    conflicts: common.conflicts.map((conflict) => conflictOf(conflict, common)),
    conditional: common.conditional.map(conditionalOf),
    advice: adviceOf(standards, common.windows),
  }
}

const endsOf = ({ min, max }: Ends): Ends => ({
  ...(min !== undefined && { min: kept(min) ?? min }),
  ...(max !== undefined && { max: kept(max) ?? max }),
})

function windowOf({ quantity, region, parts, sections, rows }: Window): CommonAnswer['windows'][number] {
  return {
    quantity,
    unit: region.unit,
    ...('ends' in region && endsOf(region.ends)),
    ...('kinds' in region && { kinds: region.kinds, judgement: region.judgement }),
    ...(parts && { parts }),
    ...(sections && { sections }),
    from: rows.map(({ row }) => row.requirement),
  }
}

const RELATION =
  'r = (d² / 4 + h²) / 2h, the radius of the dome as the cap of a sphere with base diameter d and height h'

function jointOf({ rows, radius, corners, example }: JointRegion): CommonAnswer['joint'][number] {
  return {
    quantities: ['braille.dotBaseDiameter', 'braille.dotHeight'],
    relation: RELATION,
    ...endsOf(radius),
    from: rows.map(({ row }) => row.requirement),
    corners: corners.map(({ diameter, heights }) => ({
      dotBaseDiameter: kept(diameter) ?? diameter,
      dotHeight: heights.map(endsOf),
    })),
    example: example ? { dotBaseDiameter: kept(example.diameter) ?? 0, dotHeight: kept(example.height) ?? 0 } : null,
  }
}

function conflictOf(conflict: Conflict, common: Common): CommonAnswer['conflicts'][number] {
  const { quantities, rows } = conflict
  return {
    quantity: quantities[0] ?? '',
    quantities,
    standards: [...new Set(rows.map(({ standard }) => standard.id))],
    requirements: rows.map(({ row }) => row.requirement),
    clauses: rows.map(({ limit }) => limit.clause),
    text: conflictText(conflict, common.conditional),
  }
}

function conditionalOf(conditional: ConditionalRow): CommonAnswer['conditional'][number] {
  const { standard, row, when, clause, isException, limit } = conditional
  return {
    ...{ requirement: row.requirement, clause, quantity: row.quantity, when, exception: isException },
    limit: limit && publishedLimit(limit, clause, standard.firstUnit),
    text: conditionalText(conditional),
  }
}
