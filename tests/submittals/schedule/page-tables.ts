import { COLUMNS, type Column } from '../../../src/submittals/schedule/columns.js'
import { spellingsOf } from '../../../src/submittals/schedule/vocabulary.js'

/** The tables of docs/schedules.md as the code has them. */

const UNITS: Partial<Record<Column['kind'], string>> = {
  length: 'a length',
  size: 'two lengths, such as 8 x 6 in',
  colour: 'a CSS colour, or LRV 70',
  reflectance: '0 to 100',
  colours: 'two colours, such as white on navy',
  list: 'words, divided by commas or semicolons; “none” for none',
  choice: 'a word, see below',
  words: 'words; a line break in the cell is one on the sign',
  line: 'words',
  name: 'words',
}

const named = (names: readonly string[]) => names.join(', ')

export const headingRows = (): string[] =>
  COLUMNS.filter(({ kind }) => kind !== 'unused').map(
    ({ heading, kind, also, because }) =>
      `| ${heading} | ${because === undefined ? (UNITS[kind] ?? '') : 'not used, see below'} | ${named(also)} |`,
  )

export const unusedRows = (): string[] =>
  COLUMNS.filter(({ kind }) => kind === 'unused').map(({ heading, also }) => `| ${heading} | ${named(also)} |`)

export const wordRows = (): string[] =>
  COLUMNS.filter(({ kind, key }) => kind === 'choice' && key !== 'type').flatMap(({ key, heading }) =>
    spellingsOf(key).map(([word, also]) => `| ${heading} | \`${word}\` | ${named(also)} |`),
  )
