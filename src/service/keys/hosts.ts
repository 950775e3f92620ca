import type { FastifyRequest } from 'fastify'
import { ServiceProblem } from '../problems.js'

/**
 * The names by which the service may be asked. Where no keys are asked for, a page in a browser on the same machine could otherwise make
 * requests of its own site: its owner has the site's name lead to this machine (DNS rebinding), and to the browser it is the same site still.
 * The name that was asked for gives it away, since no page can set `Host` (WHATWG Fetch, forbidden request-headers).
 */

/** Any name: there is something in front of the service that knows which it goes by. */
export const ANY_HOST = '*'

/** An address of IPv6 outside its brackets. */
const BARE_IPV6 = /^[^[\]]*:[^[\]]*:/u

/** A name as it is compared: without port, in one spelling of addresses and letters. Undefined for what is no name. */
export function hostName(written: string): string | undefined {
  const address = `http://${BARE_IPV6.test(written) ? `[${written}]` : written}`
  if (!URL.canParse(address)) return undefined
  const { host, hostname, href } = new URL(address)
  // Whatever stands before or after the name is not of it.
  return href === `http://${host}/` ? hostname.replace(/\.$/u, '') : undefined
}

/**
 * @param allowed as `hostName` gives them
 * @throws {ServiceProblem} `misdirected-request`; a request without a name, as HTTP/1.0 has it, comes from no browser
 */
export function demandHost({ headers }: FastifyRequest, allowed: readonly string[]): void {
  const { host } = headers
  if (host === undefined || allowed.includes(ANY_HOST)) return
  const name = hostName(host)
  if (name === undefined || !allowed.includes(name))
    throw new ServiceProblem(
      'misdirected-request',
      `This service does not go by the name “${name ?? host}”. The setting ALLOWED_HOSTS says by which names it may be asked.`,
    )
}
