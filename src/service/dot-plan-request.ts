import { z } from 'zod'
import type { CheckInput } from '../check.js'
import { Points, PlanSettings, planSettings, PROGRAM_MOVES, PROGRAM_UNITS, VARIANTS } from '../make/dot-plan/schema.js'
import { SignDescription } from '../sign/description.js'
import { Options } from '../check-options.js'
import { ServiceProblem } from './problems.js'
import { fromJson, invalid, invalidQuery } from './read-request.js'
import { LIMITS } from './settings.js'

/** What POST /v1/dot-plans takes: points, a drawing, a description or both of these, with the head and the machine. */

const request = z.strictObject({
  points: Points.optional(),
  drawing: z.string().max(LIMITS.drawing).optional().describe('An SVG document as text.'),
  sign: SignDescription.optional(),
  options: Options.optional().describe('How to read the drawing, as in a check.'),
  ...planSettings,
})

export const DotPlanRequest = request
  .superRefine(({ points, drawing, sign }, context) => {
    const isSign = drawing !== undefined || sign !== undefined
    if (points && isSign)
      context.addIssue({
        code: 'custom',
        path: ['points'],
        message: 'stand beside a drawing or a sign: give one or the other',
      })
    if (!points && !isSign)
      context.addIssue({ code: 'custom', path: ['points'], message: 'are missing: give points, a drawing or a sign' })
  })
  .meta({ id: 'DotPlanRequest', description: 'The dots to set, and what sets them. Millimetres.' })

/** The program's form, which may be asked for beside any body. */
const form = {
  variant: z.enum(VARIANTS).optional().describe('Of the program: `dry-run` stays above the surface.'),
  units: z.enum(PROGRAM_UNITS).optional().describe('Of the program.'),
  moves: z.enum(PROGRAM_MOVES).optional().describe('Of the program: drilling cycles or plain moves.'),
}
const ProgramForm = z.strictObject(form)

const NESTED = ['head', 'machine', 'cartridge', 'dot']

export const DotPlanQuery = z.strictObject({
  ...form,
  scale: z.coerce.number().optional().describe('Millimetres per user unit. Only beside a bare drawing.'),
  panel: z.string().optional().describe('Of several panels on one sheet, the one that is the sign.'),
})

/** What the core takes for a plan. */
export interface PlanTaskInput {
  points?: [number, number][]
  /** The sign that the dots are on, read as for a check. */
  check?: CheckInput
  settings: PlanSettings
}

type Query = Record<string, unknown>

/**
 * Beside JSON: only the form of the program, which wins over the body.
 * @throws {ServiceProblem} `invalid-parameters`
 */
export function programForm(query: Query): PlanSettings {
  const parsed = ProgramForm.safeParse(query)
  if (!parsed.success) throw invalidQuery(parsed.error, ProgramForm)
  return parsed.data
}

/** @throws {Refusal} `invalid-description` */
export function planFromJson(body: unknown, query: PlanSettings): PlanTaskInput {
  const parsed = DotPlanRequest.safeParse(body)
  if (!parsed.success) throw invalid(parsed.error, request, '')
  const { points, drawing, sign, options, ...settings } = parsed.data
  const whole = { ...settings, ...query }
  if (points) return { points, settings: whole }
  return { check: fromJson({ drawing, sign, options }), settings: whole }
}

/**
 * Beside a bare drawing: sizes as `head.lift=3`, `machine.dwell=0.2`.
 * @throws {ServiceProblem} `invalid-parameters`
 */
export function planFromDrawing(drawing: Uint8Array, query: Query): PlanTaskInput {
  const settings: Record<string, unknown> = {}
  const options: Record<string, unknown> = {}
  for (const [key, value] of Object.entries(query)) {
    const [group, ...rest] = key.split('.')
    if (key === 'scale' || key === 'panel') options[key] = key === 'scale' ? Number(value) : value
    else if (NESTED.includes(group) && rest.length > 0) put(settings, [group, ...rest], Number(value))
    else settings[key] = value
  }
  const parsed = PlanSettings.safeParse(settings)
  if (!parsed.success) throw invalidQuery(parsed.error, PlanSettings)
  const read = Options.safeParse(options)
  if (!read.success) throw invalidQuery(read.error, Options)
  return { check: { ...fromJson({ drawing: '', options }), drawing }, settings: parsed.data }
}

const DEEPEST = 3

function put(into: Record<string, unknown>, path: readonly string[], value: number): void {
  if (path.length > DEEPEST) throw new ServiceProblem('invalid-parameters', `“${path.join('.')}” is not known.`)
  const [first, ...rest] = path
  if (rest.length === 0) {
    into[first] = value
    return
  }
  const inner = Object.hasOwn(into, first) ? into[first] : {}
  const next = typeof inner === 'object' && inner !== null ? (inner as Record<string, unknown>) : {}
  into[first] = next
  put(next, rest, value)
}
