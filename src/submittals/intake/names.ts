/**
 * Names as clients give them: made fit to be shown and kept, and brought into the form in which they are compared. Nothing is ever
 * written under such a name.
 */

export const LONGEST_SHOWN_NAME = 200
/** Of a name that is cut, so much of its end is kept: it tells files apart, and holds the extension. */
const KEPT_END = 40
const NAMELESS = 'unnamed'

/** Control and format characters (those that turn the direction of text among them), halves of pairs, breaks of lines. */
const UNSHOWN = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu

/**
 * A file's name for showing and keeping: folders parted by `/`, without drive, `.` and `..`, without characters that are not seen,
 * and at most `LONGEST_SHOWN_NAME` UTF-16 units, cut in the middle. It is still a client's text: each form of the evidence
 * makes it harmless in its own way.
 */
export function shownName(name: string): string {
  const segments = segmentsOf(name).filter((segment) => segment !== '..')
  return cut(segments.join('/')) || NAMELESS
}

/** The last segment of a path, as `shownName` shows it. A browser may send `C:\fakepath\sign.svg`. */
export const shownFileName = (path: string): string => shownName(segmentsOf(path).at(-1) ?? '')

const segmentsOf = (name: string): string[] =>
  name
    .normalize('NFC')
    .replace(UNSHOWN, '')
    .replaceAll('\\', '/')
    .replace(/^[a-z]:/iu, '')
    .split('/')
    .map((segment) => segment.replace(/\s+/gu, ' ').trim())
    .filter((segment) => segment !== '' && segment !== '.')

function cut(name: string): string {
  if (name.length <= LONGEST_SHOWN_NAME) return name
  const start = name.slice(0, LONGEST_SHOWN_NAME - KEPT_END - 1)
  return `${start}…${name.slice(-KEPT_END)}`.replace(UNSHOWN, '')
}

/** A name without folder and extension. `1.04` has no extension, and neither has `Rev.B`: one begins with a letter and is longer. */
export function stemOf(name: string): string {
  const base = name.slice(name.lastIndexOf('/') + 1)
  return base.replace(/(?<=.)\.[a-z][a-z0-9]{1,4}$/iu, '')
}

/**
 * What two marks must have in common to be the same: case, blanks, dashes, underscores and slashes do not count, but between two
 * digits: `H 204`, `h-204` and `H204` are one, `1-12` and `11-2` are not.
 */
export const markKey = (mark: string): string =>
  mark
    .normalize('NFKC')
    .toLowerCase()
    .replace(/(?<=\p{Nd})[\s_\-\u2010-\u2015/]+(?=\p{Nd})/gu, '\0')
    .replace(/[\s_\-\u2010-\u2015/]+/gu, '')
    .replaceAll('\0', '-')

/** So many of the last folders may be written before a drawing's name, or all of them: more ways would be too many to keep. */
const LAST_FOLDERS = 2

/** The ways in which a schedule may write a drawing's name: folders before it or none, in a zip or without its name, extension or none. */
export function waysToName(shown: string): string[] {
  const segments = shown.toLowerCase().split('/')
  const starts = [0, 1, ...Array.from({ length: 1 + LAST_FOLDERS }, (_, i) => segments.length - 1 - i)]
  const paths = starts.filter((i) => i >= 0 && i < segments.length).map((i) => segments.slice(i).join('/'))
  return [...new Set(paths.flatMap((path) => [path, withoutExtension(path)]))]
}

const withoutExtension = (path: string): string => path.slice(0, path.lastIndexOf('/') + 1) + stemOf(path)

/** A name that a schedule gives, in the form of `waysToName`. */
export const nameKey = (written: string): string => shownName(written).toLowerCase()
