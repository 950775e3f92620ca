/** Text and numbers in markup. Nothing of a client's text reaches markup but through here. */

/** Characters that XML 1.0 or HTML do not allow, and those that would turn the direction of the text round them. */
const CONTROLS = /[\p{Cc}\p{Bidi_Control}\p{Noncharacter_Code_Point}]/gu
const LONE_SURROGATE = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g

const ENTITIES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }

/** The text without control characters and half characters; line ends and tabs become blanks. */
export const plain = (text: string): string =>
  text
    .replace(/[\t\n\r\u2028\u2029]+/g, ' ')
    .replace(CONTROLS, '')
    .replace(LONE_SURROGATE, '\ufffd')

/** The text, safe as element content and as a quoted attribute of HTML and SVG. */
export const escaped = (text: string): string => plain(text).replace(/[&<>"']/g, (c) => ENTITIES[c] ?? c)

const DECIMALS = 4

/** A number for a coordinate: at most four decimals, no exponent; 0 when it is not finite. */
export function coordinate(value: number): string {
  if (!Number.isFinite(value)) return '0'
  const text = value.toFixed(DECIMALS)
  if (text.includes('e')) return '0'
  const short = text.replace(/\.?0+$/, '')
  return short === '-0' ? '0' : short
}
