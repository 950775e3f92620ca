import { isIP } from 'node:net'
import { isPublic } from './address.js'

/** Which addresses (URLs) may be told of what happens. What a name leads to is seen when a message is sent. */

export const LONGEST_URL = 2000
const HTTPS_PORT = 443
/** Ports below are those of other services of a machine. */
const FIRST_FREE_PORT = 1024

/** The host as a number of the internet, IPv6 without brackets; undefined for a name. */
export function literalOf({ hostname }: URL): string | undefined {
  const bare = hostname.replace(/^\[|\]$/gu, '')
  return isIP(bare) === 0 ? undefined : bare
}

/**
 * @param privateAllowed for trying things out on one machine: http, any port and any address
 * @returns why it may not, for people; undefined when it may
 */
export function refusalOf(text: string, privateAllowed: boolean): string | undefined {
  if (/[\p{Cc}\p{Cs}]/u.test(text)) return 'holds a control character'
  if (!URL.canParse(text)) return 'is no absolute URL'
  const url = new URL(text)
  if (url.username !== '' || url.password !== '') return 'must hold no user name and no password'
  if (url.hash !== '') return 'must end without a fragment (#…)'
  if (url.protocol !== 'https:' && !(privateAllowed && url.protocol === 'http:')) return 'must begin with https://'
  if (privateAllowed) return undefined
  const port = url.port === '' ? HTTPS_PORT : Number(url.port)
  if (port !== HTTPS_PORT && port < FIRST_FREE_PORT)
    return `must name port ${HTTPS_PORT} or one from ${FIRST_FREE_PORT} up`
  const literal = literalOf(url)
  if (literal !== undefined && !isPublic(literal)) return 'must lead to a public address'
  return undefined
}
