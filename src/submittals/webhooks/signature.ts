import { createHmac, randomBytes } from 'node:crypto'

/** Signatures of Standard Webhooks 1.0.0: HMAC-SHA256 over `id.timestamp.body`, version `v1`, with the secret behind `whsec_` in base64. */

export interface Secret {
  secret: string
  /** ISO 8601; null: the one that counts. */
  until: string | null
}

const PREFIX = 'whsec_'
/** The scheme asks for 24 to 64. */
const SECRET_BYTES = 32
/** Hours for which the secret before signs too. */
export const ROTATION_HOURS = 24
const MILLISECONDS_AN_HOUR = 3_600_000

export const newSecret = (): string => PREFIX + randomBytes(SECRET_BYTES).toString('base64')

/** A new secret before the one that counted, which ends after a while; any before that ends now. */
export function rotated(secrets: readonly Secret[], secret: string, now: Date): Secret[] {
  const until = new Date(now.getTime() + ROTATION_HOURS * MILLISECONDS_AN_HOUR).toISOString()
  const last = secrets.find((one) => one.until === null)
  return [{ secret, until: null }, ...(last ? [{ ...last, until }] : [])]
}

export interface Signed {
  'webhook-id': string
  'webhook-timestamp': string
  'webhook-signature': string
}

/** The headers of one sending. The same message keeps its id and has a new time whenever it is sent. */
export function signed(id: string, body: string, secrets: readonly Secret[], now: Date): Signed {
  const timestamp = String(Math.floor(now.getTime() / 1000))
  const signatures = secrets
    .filter(({ until }) => until === null || until > now.toISOString())
    .map(({ secret }) => {
      const key = Buffer.from(secret.slice(PREFIX.length), 'base64')
      return `v1,${createHmac('sha256', key).update(`${id}.${timestamp}.${body}`).digest('base64')}`
    })
  return { 'webhook-id': id, 'webhook-timestamp': timestamp, 'webhook-signature': signatures.join(' ') }
}
