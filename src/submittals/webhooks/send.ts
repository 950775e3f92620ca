import { lookup as lookUp, type LookupAddress } from 'node:dns'
import { request as httpRequest, type IncomingMessage } from 'node:http'
import { request as httpsRequest } from 'node:https'
import type { LookupFunction } from 'node:net'
import { VERSION } from '../../version.js'
import { isPublic } from './address.js'
import { retryAfter } from './schedule.js'
import type { Signed } from './signature.js'
import { literalOf } from './target.js'

/** One sending of one message. No redirect is followed, no proxy asked, and the connection goes to an address that was looked at. */

export interface Message {
  url: string
  headers: Signed
  body: string
}

export type Sent =
  | { status: number; retryAfter: number }
  /** Nothing was answered: why, for people. */
  | { error: string }

/** All addresses that a name leads to. */
export type LookUp = (
  host: string,
  options: { all: true },
  done: (error: NodeJS.ErrnoException | null, addresses: LookupAddress[]) => void,
) => void

export interface SendOptions {
  /** For trying things out on one machine: any address. */
  privateAllowed: boolean
  lookUp?: LookUp
  /** Milliseconds for all of it. */
  timeout?: number
}

const TIMEOUT = 15_000
/** Bytes of an answer that are read; nothing of it is kept. */
const LONGEST_ANSWER = 4096
const NOT_PUBLIC = 'The address is not one of the public internet.'

export async function send(
  { url, headers, body }: Message,
  { privateAllowed, lookUp = lookUpAll, timeout = TIMEOUT }: SendOptions,
): Promise<Sent> {
  const target = new URL(url)
  const literal = literalOf(target)
  // A number is connected to without being looked up.
  if (literal !== undefined && !privateAllowed && !isPublic(literal)) return { error: NOT_PUBLIC }
  const start = target.protocol === 'https:' ? httpsRequest : httpRequest
  const bytes = Buffer.from(body, 'utf8')
  const signal = AbortSignal.timeout(timeout)
  return new Promise((resolve) => {
    const request = start(target, {
      method: 'POST',
      headers: {
        ...headers,
        'content-type': 'application/json',
        'content-length': bytes.length,
        'user-agent': `Fingertrue/${VERSION}`,
        connection: 'close',
      },
      agent: false,
      lookup: privateAllowed ? undefined : onlyPublic(lookUp),
      signal,
    })
    let answered = false
    request.on('error', (error) => {
      if (!answered) resolve({ error: signal.aborted ? tooLate(timeout) : wordsOf(error) })
    })
    request.on('response', (response) => {
      answered = true
      void readAway(response).then(() => {
        const asked = response.statusCode === 429 || response.statusCode === 503
        const header = response.headers['retry-after']
        resolve({ status: response.statusCode ?? 0, retryAfter: asked ? retryAfter(header, new Date()) : 0 })
        request.destroy()
      })
    })
    request.end(bytes)
  })
}

/** Waits for the end of an answer, or for as much of it as is read; what was said already counts. */
function readAway(response: IncomingMessage): Promise<void> {
  return new Promise((resolve) => {
    let read = 0
    response.on('data', (chunk: Buffer) => {
      read += chunk.length
      if (read > LONGEST_ANSWER) resolve()
    })
    response.on('close', resolve).on('error', () => resolve())
  })
}

class NotPublic extends Error {}

const lookUpAll: LookUp = (host, options, done) => lookUp(host, options, done)

/** Looks a name up and lets none of its addresses through unless all are public; the connection goes to what was looked at. */
export const onlyPublic =
  (look: LookUp): LookupFunction =>
  (host, options, done) => {
    look(host, { all: true }, (error, addresses) => {
      const [first] = addresses ?? []
      if (error) return done(error, [])
      if (!first || !addresses.every(({ address }) => isPublic(address))) return done(new NotPublic(NOT_PUBLIC), [])
      if (options.all) done(null, addresses)
      else done(null, first.address, first.family)
    })
  }

const tooLate = (timeout: number): string => `There was no answer within ${timeout / 1000} seconds.`

function wordsOf(error: Error): string {
  if (error instanceof NotPublic) return NOT_PUBLIC
  const code = 'code' in error && typeof error.code === 'string' ? error.code : 'unknown'
  return `No connection could be made, or it broke: ${code}.`
}
