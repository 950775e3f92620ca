import type { FastifyRequest } from 'fastify'
import type { CheckInput } from '../check.js'
import { Refusal } from '../refusal.js'
import { hasContent, SignDescription } from '../sign/description.js'
import { faultsOf } from '../sign/faults.js'
import { findStandards, type LoadedStandard } from '../standards/catalogue.js'
import { DEFAULT_STANDARDS, DEFAULT_USE, Options, Standards } from '../check-options.js'
import { drawingOfText } from '../drawing/drawing-of-text.js'
import { CheckQuery, CheckRequest, CheckRequestKeys } from './check-request.js'
import { isProgram, unsupported } from './errors.js'
import { readForm } from './read-form.js'
import { LongJson, readJson } from './json.js'
import { ServiceProblem } from './problems.js'

/** A request for a check, in whichever of its three forms it came, as the one question that the core takes; long JSON unread. */
export async function readRequest(request: FastifyRequest): Promise<CheckInput | LongJson> {
  if (request.isMultipart()) {
    refuseQuery(request)
    return fromForm(await readForm(request))
  }
  if (Buffer.isBuffer(request.body)) {
    const drawn = isProgram(request) ? { program: request.body } : { drawing: request.body }
    return fromQuery(drawn, request.query as Query)
  }
  if (request.body === undefined) throw unsupported(request)
  refuseQuery(request)
  return request.body instanceof LongJson ? request.body : fromJson(request.body)
}

type Query = Record<string, string | string[]>

/** @throws {Refusal} `invalid-description` with every error and where it is. */
export function fromJson(body: unknown): CheckInput {
  const parsed = CheckRequest.safeParse(body)
  if (!parsed.success) throw looksBare(body) ? bare() : invalid(parsed.error, CheckRequestKeys, '')
  const { sign, drawing, program, standards, options } = parsed.data
  const drawn = {
    ...(drawing !== undefined && { drawing: drawingOfText(drawing) }),
    ...(program !== undefined && { program: new TextEncoder().encode(program) }),
  }
  return question(drawn, sign, standards, options)
}

/** A description on its own, where a request that holds one is asked for. */
const looksBare = (body: unknown): boolean =>
  typeof body === 'object' &&
  body !== null &&
  'use' in body &&
  !['sign', 'drawing', 'program'].some((key) => key in body)

const bare = (): Refusal =>
  new Refusal('invalid-description', 'The body is a description on its own. Wrap it: {"sign": …}.', [
    { detail: 'Give the description as the value of “sign”.', pointer: '/sign' },
  ])

async function fromForm(form: Map<string, Buffer>): Promise<CheckInput> {
  const textOf = (name: string) => form.get(name)?.toString('utf8')
  const jsonOf = (name: string) => {
    const text = textOf(name)
    return text === undefined || text.trim() === '' ? undefined : readJson(text)
  }
  const drawing = form.get('drawing')
  const program = form.get('program')
  if (drawing && program)
    throw new Refusal('invalid-description', 'The form holds a drawing and a drilling program; give one of the two.')
  const sign = parse(SignDescription.optional(), jsonOf('sign'), '/sign')
  if (!drawing && !program && !(sign && hasContent(sign)))
    throw new Refusal('invalid-description', 'The form holds neither a drawing nor a sign with anything to check.', [
      { detail: 'Give a part “drawing”, or a part “sign” with lettering, braille or pictograms.', pointer: '/sign' },
    ])
  const written = textOf('standards')?.trim()
  const listed = written?.startsWith('[') ? readJson(written) : listOf(written)
  const standards = parse(Standards.optional(), listed, '/standards')
  if (standards) knownByName(standards, 'standards')
  const drawn = { ...(drawing && { drawing }), ...(program && { program }) }
  return question(drawn, sign, standards, parse(Options.optional(), jsonOf('options'), '/options'))
}

function fromQuery(drawn: Drawn, query: Query): CheckInput {
  const parts: Record<string, unknown> = {}
  const rest: Record<string, unknown> = {}
  for (const [key, value] of Object.entries(query)) {
    const layer = key.startsWith('part.') ? key.slice('part.'.length) : undefined
    if (layer !== undefined) parts[layer] = value
    else rest[key] = Array.isArray(value) && LISTS.includes(key) ? value.join(',') : value
  }
  const parsed = CheckQuery.safeParse(rest)
  if (!parsed.success) throw invalidQuery(parsed.error, CheckQuery)
  const { standards, part, properNames, ...plain } = parsed.data
  const mapping = part === undefined ? parts : { ...objectOf(readJson(part)), ...parts }
  const options = Options.safeParse({
    ...plain,
    ...(Object.keys(mapping).length > 0 && { part: mapping }),
    ...(properNames !== undefined && { properNames: listOf(properNames) ?? [] }),
  })
  if (!options.success) throw invalidQuery(options.error, CheckQuery)
  const list = Standards.optional().safeParse(listOf(standards))
  if (!list.success) throw invalidQuery(list.error, CheckQuery, 'standards')
  if (list.data) knownByName(list.data, 'standards')
  return question(drawn, undefined, list.data, options.data)
}

/**
 * The standards that a parameter or a part of a form names.
 * @throws {ServiceProblem} `unknown-standard`, naming the parameter or part: there is no body that a pointer could point into.
 */
export function knownByName(standards: readonly string[], parameter: string): LoadedStandard[] {
  try {
    return findStandards(standards)
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    const faults = error.errors.map(({ detail }) => ({ detail, parameter }))
    throw new ServiceProblem('unknown-standard', error.detail, faults)
  }
}

const LISTS = ['standards', 'properNames']

export const listOf = (text: string | undefined): string[] | undefined => {
  const items = text
    ?.split(',')
    .map((item) => item.trim())
    .filter((item) => item !== '')
  return items && items.length > 0 ? items : undefined
}

const objectOf = (value: unknown): object => (typeof value === 'object' && value !== null ? value : { '': value })

type Drawn = Pick<CheckInput, 'drawing' | 'program'>

function question(
  drawn: Drawn,
  sign: SignDescription | undefined,
  standards: string[] | undefined,
  options: Options = {},
): CheckInput {
  const properNames = sign?.properNames ?? options.properNames
  const use = sign?.use ?? options.use
  return {
    ...drawn,
    ...(sign && { sign }),
    standards: standards ?? DEFAULT_STANDARDS,
    options: {
      ...(options.part && { part: options.part }),
      ...(options.scale !== undefined && { scale: options.scale }),
      ...(options.dotBaseDiameter !== undefined && { dotBaseDiameter: options.dotBaseDiameter }),
      use: use ?? DEFAULT_USE,
      ...(use === undefined && { useAssumed: true }),
      ...(properNames && { properNames }),
      ...(options.panel !== undefined && { panel: options.panel }),
      decisionRule: options.decisionRule ?? 'simple',
      unitSystem: options.unitSystem ?? 'printed',
      language: options.language ?? 'en',
    },
  }
}

function refuseQuery(request: FastifyRequest) {
  const names = Object.keys(request.query as Query)
  if (names.length === 0) return
  throw new ServiceProblem(
    'invalid-parameters',
    'Query parameters go with a bare drawing only; here they stand in the body.',
    names.map((parameter) => ({ detail: `“${parameter}” is not read beside this body.`, parameter })),
  )
}

type Schema<T> = { safeParse(value: unknown): { success: true; data: T } | { success: false; error: ZodError } }
type ZodError = Parameters<typeof faultsOf>[0]

function parse<T>(schema: Schema<T> & Parameters<typeof faultsOf>[1], value: unknown, pointer: string): T {
  const parsed = schema.safeParse(value)
  if (parsed.success) return parsed.data
  throw invalid(parsed.error, schema, pointer)
}

export function invalid(error: ZodError, schema: Parameters<typeof faultsOf>[1], pointer: string): Refusal {
  const faults = faultsOf(error, schema, pointer)
  const count = faults.length === 1 ? 'one error' : `${faults.length} errors`
  return new Refusal('invalid-description', `The description has ${count}.`, faults)
}

/** @param name the parameter, when the error is one of what it holds */
export function invalidQuery(error: ZodError, schema: Parameters<typeof faultsOf>[1], name?: string): ServiceProblem {
  const faults = faultsOf(error, schema).map(({ detail, pointer }) => ({
    detail,
    parameter: name ?? (pointer ?? '').slice(1).replaceAll('/', '.'),
  }))
  const count = faults.length === 1 ? 'one error' : `${faults.length} errors`
  return new ServiceProblem('invalid-parameters', `The query has ${count}.`, faults)
}
