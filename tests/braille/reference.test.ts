import { execFileSync, spawnSync } from 'node:child_process'
import { describe, expect, it } from 'vitest'
import { BLANK } from '../../src/braille/cells.js'
import { BRAILLE_CODES, type BrailleCode } from '../../src/sign/sign.js'
import { translator } from './translator.js'

/**
 * Outside source: lou_translate of Debian's liblouis-bin, another release of the same engine with its own tables. In small letters and
 * Title Case the releases agree on sign texts; all-capitals passages, where the older ones are wrong, are left out.
 */
const installed = spawnSync('lou_translate', ['--version']).status === 0
const mustRun = process.env.CI !== undefined
if (!installed && !mustRun)
  console.info('lou_translate (Debian package liblouis-bin) is not installed: comparison skipped.')

const TABLES: Record<BrailleCode, string> = { 'ueb-contracted': 'en-ueb-g2.ctb', 'ueb-uncontracted': 'en-ueb-g1.ctb' }
/** Invented sign texts. */
const WORDS =
  'room exit stair women men restroom office conference storage electrical mechanical janitor lobby elevator library reading laboratory theater kitchen nurse waiting reception mother children boiler garage parking entrance auditorium courtroom registrar accounts laundry consultation conservatory launderette'
const NUMBERS = ['1', '12', '204', '204A', '204a', '3B', 'B1', '12-A', '3.5', '1,250', '24/7', '2nd', '1st']
const title = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1)
const TEXTS = WORDS.split(' ').flatMap((word, index) => {
  const number = NUMBERS[index % NUMBERS.length] ?? ''
  return [
    word,
    title(word),
    word.toUpperCase(),
    `${title(word)} ${number}`,
    `${word} ${number}`,
    `Authorized ${word} only.`,
  ]
})
/** Debian's release has the same defect there; the right cells are in engine.test.ts. */
const WRONG_THERE = /^CONS|^LAUNDER/

describe.skipIf(!installed && !mustRun)('lou_translate', () => {
  it.each(BRAILLE_CODES)('%s: the same cells for every sign text', (code) => {
    const texts = TEXTS.filter((text) => !WRONG_THERE.test(text))
    const output = execFileSync('lou_translate', ['--forward', `unicode.dis,${TABLES[code]}`], {
      input: texts.join('\n') + '\n',
    })
    const theirs = output.toString('utf8').trimEnd().replaceAll(' ', BLANK).split('\n')
    expect(texts.map((text) => `${text}: ${translator().toCells(text, code)}`)).toEqual(
      texts.map((text, index) => `${text}: ${theirs[index]}`),
    )
  })
})
