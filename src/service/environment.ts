import { z } from 'zod'
import type { Place } from '../submittals/store/connect.js'
import type { Settings } from './settings.js'

/** What the environment says, checked. main.ts hands it in, so that nothing else reads the environment. */

export interface Environment {
  host: string
  port: number
  logLevel: string
  place: Place
  role: Settings['role']
  /** Said once in the log: settings that have no effect yet. */
  remarks: string[]
}

const HIGHEST_PORT = 65_535
const LOOPBACK = ['127.0.0.1', '::1', 'localhost']

const Variables = z.object({
  PORT: z.coerce.number().int().min(0).max(HIGHEST_PORT).default(8080),
  HOST: z.string().min(1).default('127.0.0.1'),
  DATA_DIR: z.string().min(1).default('./data'),
  DATABASE_URL: z.string().min(1).optional(),
  ROLE: z.enum(['all', 'api', 'worker']).default('all'),
  AUTH: z.enum(['off', 'keys']).optional(),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent']).default('info'),
})

/** The settings, or the reasons why the service must not start. An empty variable counts as one that is not set. */
export function readEnvironment(variables: Record<string, string | undefined>): Environment | { refused: string[] } {
  const set = Object.fromEntries(Object.entries(variables).filter(([, value]) => value !== undefined && value !== ''))
  const parsed = Variables.safeParse(set)
  if (!parsed.success)
    return { refused: parsed.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`) }
  const { PORT, HOST, DATA_DIR, DATABASE_URL, ROLE, AUTH, LOG_LEVEL } = parsed.data
  const refused: string[] = []
  if (AUTH === 'keys')
    refused.push('AUTH=keys: API keys do not exist in this version. Set AUTH=off and let a proxy decide who may call.')
  else if (AUTH === undefined && !LOOPBACK.includes(HOST))
    refused.push(
      `HOST=${HOST} can be reached from other machines, and API keys do not exist in this version. ` +
        'Set AUTH=off if everyone who can reach it may call it, or HOST=127.0.0.1.',
    )
  if (ROLE !== 'all' && DATABASE_URL === undefined)
    refused.push(`ROLE=${ROLE}: several processes share one PostgreSQL. Set DATABASE_URL, or ROLE=all.`)
  if (refused.length > 0) return { refused }
  const place = DATABASE_URL === undefined ? { folder: DATA_DIR } : { url: DATABASE_URL }
  return { host: HOST, port: PORT, logLevel: LOG_LEVEL, place, role: ROLE, remarks: [] }
}
