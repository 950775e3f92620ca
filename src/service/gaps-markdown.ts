import type { TableGap } from '../standards/standard.js'
import { cell } from './markdown.js'

/** What tables leave out, as tables of a page: one for each reason. */

const HEADINGS: Record<TableGap['kind'], { heading: string; columns: [string, string] }> = {
  'not-read': { heading: 'Not read', columns: ['what it is about', 'why it is not a row'] },
  'recalled-only': {
    heading: 'Known from memory only',
    columns: ['what it is about', 'why it is not a row'],
  },
  conflict: {
    heading: 'Given differently by different sources',
    columns: ['what it is about', 'what the sources say'],
  },
  'of-a-site': {
    heading: 'Asks something of a site, not of one sign',
    columns: ['what it is about', 'why it is not a row'],
  },
  'no-place-in-a-description': {
    heading: 'Is no sign, or has parts that a description does not hold',
    columns: ['what it is about', 'why it is not a row'],
  },
  reading: { heading: 'Can be read in more than one way', columns: ['what it is about', 'how we read it'] },
}

/** @param level marks of the headings: `###` */
export const gapSections = (gaps: readonly TableGap[], level: string): string[] =>
  Object.entries(HEADINGS).flatMap(([kind, { heading, columns }]) => {
    const rows = gaps.filter((gap) => gap.kind === kind)
    if (rows.length === 0) return []
    return [`${level} ${heading}`, tableOf(['clause', ...columns], rows)]
  })

const tableOf = (columns: string[], rows: readonly TableGap[]): string =>
  [
    `| ${columns.join(' | ')} |`,
    `|${' --- |'.repeat(columns.length)}`,
    ...rows.map(({ clause, about, why }) => `| ${cell(clause)} | ${cell(about)} | ${cell(why)} |`),
  ].join('\n')
