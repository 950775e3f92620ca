import type { FastifyRequest } from 'fastify'

/**
 * Whether a request was made by a page of this service or by another site in the same browser. `Sec-Fetch-Site` (W3C Fetch
 * Metadata) cannot be set by a page; browsers send it to HTTPS and loopback addresses. Elsewhere `Origin` (RFC 6454) is held
 * against the host that was asked.
 */
export function siteOf(request: FastifyRequest): 'same' | 'other' | 'unknown' {
  const site = request.headers['sec-fetch-site']
  // `none`: the person asked, not a page.
  if (site !== undefined) return site === 'same-origin' || site === 'none' ? 'same' : 'other'
  const { origin } = request.headers
  if (origin === undefined) return 'unknown'
  return URL.canParse(origin) && new URL(origin).host === request.host ? 'same' : 'other'
}
