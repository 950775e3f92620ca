import { z } from 'zod'
import type { Place } from '../submittals/store/connect.js'
import { ANY_HOST, hostName } from './keys/hosts.js'
import type { Settings } from './settings.js'

/** What the environment says, checked. main.ts hands it in, so that nothing else reads the environment. */

export interface Environment {
  host: string
  port: number
  settings: Pick<
    Settings,
    | 'logLevel'
    | 'role'
    | 'auth'
    | 'hosts'
    | 'rateLimit'
    | 'openSigns'
    | 'webhooksPrivate'
    | 'retention'
    | 'metrics'
    | 'traces'
    | 'restAfter'
  > & {
    place: Place
  }
  /** Said once in the log. */
  remarks: string[]
}

const HIGHEST_PORT = 65_535
/** Milliseconds without a drawing after which the threads that read drawings are let go. */
const REST_AFTER = 600_000
/** Requests a minute of one key, where keys are asked for: more than a busy client sends, less than one that runs wild. */
const RATE_LIMIT = 6000
/** Signs of one organisation that may wait, where keys are asked for: several times the largest upload. */
const OPEN_SIGNS = 100_000
const LOOPBACK = ['127.0.0.1', '::1', 'localhost']

/** What a service that listens on loopback is asked by: the names of a machine for itself. */
const OWN_NAMES = ['127.0.0.1', '[::1]', 'localhost']

const Hosts = z.string().transform((said, context) =>
  said.split(',').map((written) => {
    const name = written.trim() === ANY_HOST ? ANY_HOST : hostName(written.trim())
    if (name !== undefined && (name === ANY_HOST || !name.includes(ANY_HOST))) return name
    context.addIssue(
      `“${written.trim()}” is no name of a host. Separate names by commas: signs.example,localhost; * alone is any.`,
    )
    return z.NEVER
  }),
)

const Variables = z.object({
  PORT: z.coerce.number().int().min(0).max(HIGHEST_PORT).default(8080),
  HOST: z.string().min(1).default('127.0.0.1'),
  DATA_DIR: z.string().min(1).default('./data'),
  DATABASE_URL: z.string().min(1).optional(),
  ROLE: z.enum(['all', 'api', 'worker']).default('all'),
  AUTH: z.enum(['off', 'keys']).optional(),
  ALLOWED_HOSTS: Hosts.optional(),
  RATE_LIMIT: z.coerce.number().int().min(0).optional(),
  OPEN_SIGNS: z.coerce.number().int().min(0).optional(),
  WEBHOOKS_PRIVATE: z.enum(['allow', 'refuse']).default('refuse'),
  RETENTION_DAYS: z.coerce.number().int().positive().optional(),
  UPLOAD_RETENTION_DAYS: z.coerce.number().int().positive().optional(),
  METRICS: z.enum(['on', 'off']).default('on'),
  THREADS: z.enum(['resting', 'ready']).default('resting'),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent']).default('info'),
})

/** The settings, or the reasons why the service must not start. An empty variable counts as one that is not set. */
export function readEnvironment(variables: Record<string, string | undefined>): Environment | { refused: string[] } {
  const set = Object.fromEntries(Object.entries(variables).filter(([, value]) => value !== undefined && value !== ''))
  const parsed = Variables.safeParse(set)
  if (!parsed.success)
    return { refused: parsed.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`) }
  const { PORT, HOST, DATA_DIR, DATABASE_URL, ROLE, AUTH, LOG_LEVEL } = parsed.data
  const loopback = LOOPBACK.includes(HOST)
  const auth = AUTH ?? (loopback ? 'off' : 'keys')
  if (ROLE !== 'all' && DATABASE_URL === undefined)
    return { refused: [`ROLE=${ROLE}: several processes share one PostgreSQL. Set DATABASE_URL, or ROLE=all.`] }
  const place = DATABASE_URL === undefined ? { folder: DATA_DIR } : { url: DATABASE_URL }
  const rateLimit = limit(parsed.data.RATE_LIMIT, auth === 'keys' ? RATE_LIMIT : undefined)
  const openSigns = limit(parsed.data.OPEN_SIGNS, auth === 'keys' ? OPEN_SIGNS : undefined)
  const hosts = parsed.data.ALLOWED_HOSTS ?? (auth === 'off' && loopback ? OWN_NAMES : undefined)
  const settings = {
    logLevel: LOG_LEVEL,
    place,
    role: ROLE,
    auth,
    webhooksPrivate: parsed.data.WEBHOOKS_PRIVATE === 'allow',
    retention: { submittals: parsed.data.RETENTION_DAYS, uploads: parsed.data.UPLOAD_RETENTION_DAYS },
    metrics: parsed.data.METRICS === 'on',
    traces: areTracesAskedFor(set),
    restAfter: parsed.data.THREADS === 'resting' ? REST_AFTER : undefined,
    ...(hosts && { hosts }),
    ...(rateLimit !== undefined && { rateLimit }),
    ...(openSigns !== undefined && { openSigns }),
  }
  const remarks = [
    ...(auth === 'off' && !loopback ? [`AUTH=off: everyone who can reach ${HOST} may call this service.`] : []),
    ...(settings.traces ? remarksOnTraces(set) : []),
    ...(settings.webhooksPrivate ? ['WEBHOOKS_PRIVATE=allow: notifications may be sent into this network.'] : []),
  ]
  return { host: HOST, port: PORT, settings, remarks }
}

/** By the standard variables of OpenTelemetry; the others of them are read by its own libraries. */
function areTracesAskedFor(set: Record<string, string | undefined>): boolean {
  const to = set.OTEL_EXPORTER_OTLP_TRACES_ENDPOINT ?? set.OTEL_EXPORTER_OTLP_ENDPOINT
  return to !== undefined && set.OTEL_SDK_DISABLED?.toLowerCase() !== 'true' && set.OTEL_TRACES_EXPORTER !== 'none'
}

const SPOKEN = 'http/json'

function remarksOnTraces(set: Record<string, string | undefined>): string[] {
  const asked = set.OTEL_EXPORTER_OTLP_TRACES_PROTOCOL ?? set.OTEL_EXPORTER_OTLP_PROTOCOL ?? SPOKEN
  return asked === SPOKEN ? [] : [`OTEL_EXPORTER_OTLP_PROTOCOL=${asked}: traces are sent as ${SPOKEN} all the same.`]
}

/** 0 means none. */
const limit = (said: number | undefined, otherwise: number | undefined): number | undefined =>
  said === undefined ? otherwise : said === 0 ? undefined : said
