import { parseArgs } from 'node:util'
import { z } from 'zod'
import { DEFAULT_STANDARDS, Options, Standards } from '../check-options.js'
import { Refusal } from '../refusal.js'
import { LONGEST_NAME } from '../sign/text.js'
import { STAGES, type ReportStage } from '../report/finding-schema.js'
import { findStandards } from '../standards/catalogue.js'
import { faultsOf } from '../sign/faults.js'
import { FORMATS, type Format } from './usage.js'

/** What was asked for on the command line. */

export interface CheckCommand {
  files: string[]
  /** Each pinned to a revision. */
  standards: string[]
  /** File of a description of the one drawing. */
  sign?: string
  options: Options
  name: string
  format: Format
  results: 'all' | 'failing'
  output?: string
  undetermined: 'fail' | 'pass'
  /** The exit status is that of this stage; without it, of all. */
  stage?: ReportStage
}

export type Command = { kind: 'help' } | { kind: 'version' } | { kind: 'check'; command: CheckCommand }

/** Thrown for arguments that cannot be used; the message is for people. */
export class UsageError extends Error {}

const NAMELESS = 'Signs'

const FLAGS = {
  standard: { type: 'string', multiple: true },
  sign: { type: 'string' },
  use: { type: 'string' },
  part: { type: 'string', multiple: true },
  panel: { type: 'string' },
  scale: { type: 'string' },
  'proper-names': { type: 'string' },
  'decision-rule': { type: 'string' },
  'unit-system': { type: 'string' },
  name: { type: 'string' },
  format: { type: 'string' },
  results: { type: 'string' },
  output: { type: 'string' },
  undetermined: { type: 'string' },
  stage: { type: 'string' },
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean' },
} as const

type Values = ReturnType<typeof parsed>['values']

const parsed = (args: string[]) => parseArgs({ args, options: FLAGS, allowPositionals: true })

/** @param args what stands behind the name of the program @throws {UsageError} */
export function readArguments(args: string[]): Command {
  const { values, positionals } = readFlags(args)
  if (values.help) return { kind: 'help' }
  if (values.version) return { kind: 'version' }
  const [action, ...files] = positionals
  if (action !== 'check')
    throw new UsageError(action === undefined ? 'Nothing is asked for.' : `“${action}” is no command.`)
  if (files.length === 0) throw new UsageError('No file is named.')
  const format = chosen('format', values.format, FORMATS)
  if (values.results !== undefined && format !== 'sarif')
    throw new UsageError('--results goes with --format sarif only: the other forms always hold everything.')
  const command: CheckCommand = {
    files,
    standards: pinned(listOf(values.standard) ?? DEFAULT_STANDARDS),
    ...(values.sign !== undefined && { sign: values.sign }),
    options: optionsOf(values),
    name: valid('--name', z.string().min(1).max(LONGEST_NAME), values.name ?? NAMELESS),
    format,
    results: chosen('results', values.results, ['all', 'failing']),
    ...(values.output !== undefined && { output: values.output }),
    undetermined: chosen('undetermined', values.undetermined, ['fail', 'pass']),
    ...(values.stage !== undefined && { stage: chosen('stage', values.stage, STAGES) }),
  }
  return { kind: 'check', command }
}

function readFlags(args: string[]): ReturnType<typeof parsed> {
  try {
    return parsed(args)
  } catch (error) {
    throw new UsageError(error instanceof Error ? error.message : 'The arguments cannot be read.')
  }
}

/** The first choice where nothing is said. */
function chosen<T extends string>(flag: string, value: string | undefined, choices: readonly [T, ...T[]]): T {
  const choice = value === undefined ? choices[0] : choices.find((one) => one === value)
  if (choice === undefined) throw new UsageError(`--${flag} is one of ${choices.join(', ')}.`)
  return choice
}

/** Given several times, or with commas. */
const listOf = (values: string[] | undefined): string[] | undefined => values?.flatMap(parted)

const parted = (text: string): string[] =>
  text
    .split(',')
    .map((item) => item.trim())
    .filter((item) => item !== '')

function pinned(standards: string[]): string[] {
  try {
    return findStandards(valid('--standard', Standards, standards)).map(({ id, revision }) => `${id}@${revision}`)
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    throw new UsageError([...new Set([error.detail, ...error.errors.map(({ detail }) => detail)])].join(' '))
  }
}

function optionsOf(values: Values): Options {
  const panel = values.panel
  const number = panel !== undefined && /^[1-9]\d*$/.test(panel) ? Number(panel) : panel
  return valid('The options', Options, {
    ...(values.use !== undefined && { use: values.use }),
    ...(values.part && { part: Object.fromEntries(values.part.map(partOf)) }),
    ...(number !== undefined && { panel: number }),
    ...(values.scale !== undefined && { scale: Number(values.scale) }),
    ...(values['proper-names'] !== undefined && { properNames: parted(values['proper-names']) }),
    ...(values['decision-rule'] !== undefined && { decisionRule: values['decision-rule'] }),
    ...(values['unit-system'] !== undefined && { unitSystem: values['unit-system'] }),
  })
}

function partOf(text: string): [string, string] {
  const at = text.lastIndexOf('=')
  if (at < 1) throw new UsageError('--part is written NAME=PART.')
  return [text.slice(0, at), text.slice(at + 1)]
}

function valid<T extends z.ZodType>(what: string, schema: T, value: unknown): z.infer<T> {
  const read = schema.safeParse(value)
  if (read.success) return read.data
  const faults = faultsOf(read.error, schema).map(
    ({ detail, pointer }) => `${pointer ? `${pointer.slice(1)} ` : ''}${detail}`,
  )
  throw new UsageError(`${what} cannot be used: ${faults.join('; ')}.`)
}
