import ipaddr from 'ipaddr.js'

/**
 * Whether an address is one of the public internet: notifications go nowhere else, so that nobody reaches our own network
 * through them. What is not public is told by the registries of special-purpose addresses (IANA; RFC 6890), in any spelling.
 */

/** What is handed out of IPv6 so far (IANA, IPv6 global unicast address assignments). */
const HANDED_OUT = ipaddr.IPv6.parseCIDR('2000::/3')
/** Public by its number, and inside every machine of one cloud (Microsoft, “What is IP address 168.63.129.16?”). */
const INSIDE_CLOUDS = ['168.63.129.16']

/** @param text an address as a number, IPv6 without brackets. @returns false for what is no such address, too */
export function isPublic(text: string): boolean {
  if (!ipaddr.isValid(text)) return false
  const address = ipaddr.parse(text)
  if (address.range() !== 'unicast' || INSIDE_CLOUDS.includes(address.toString())) return false
  return !(address instanceof ipaddr.IPv6) || address.match(HANDED_OUT)
}
