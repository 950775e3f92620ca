import type { LoadedStandard } from '../standards/catalogue.js'
import { gapSections } from './gaps-markdown.js'
import { cell, KIND_WORDS } from './markdown.js'

/** The pages that speak of all tables: the list of them, and what they leave out. */

export function indexMarkdown(standards: readonly LoadedStandard[]): string {
  const rows = standards.map(({ id, title, jurisdiction, kind, revision, requirements, supersededBy }) => {
    const replaced = supersededBy === undefined ? '' : `[\`${supersededBy}\`](${supersededBy}.md)`
    return `| [\`${id}\`](${id}.md) | ${cell(title)} | ${cell(jurisdiction)} | ${kind} | ${requirements.length} | ${revision} | ${replaced} |`
  })
  const kinds = [...new Set(standards.map(({ kind }) => kind))]
  return `${[
    '# The standards',
    'Made from the tables; change a table, not this page.',
    [
      '| id | title | where it holds | kind | rows | revision | superseded by |',
      '| --- | --- | --- | --- | --- | --- | --- |',
      ...rows,
    ].join('\n'),
    kinds.map((kind) => `- \`${kind}\`: ${KIND_WORDS[kind]}`).join('\n'),
    'What the tables leave out, and why, is on [a page of its own](gaps.md). A table is pinned to a revision by its number, as in `id@1`; earlier revisions stay callable. `GET /v1/standards/{id}/changes` says what changed.',
  ].join('\n\n')}\n`
}

export function gapsMarkdown(standards: readonly LoadedStandard[]): string {
  const sections = standards.flatMap(({ id, title, gaps }) =>
    gaps.length === 0 ? [] : [`## ${title}`, `\`${id}\`: [its table](${id}.md)`, ...gapSections(gaps, '###')],
  )
  return `${[
    '# What the tables leave out',
    'A clause becomes a row when its text was read and one sign can be held against it. Everything else on signs that we know of is here, with the reason, so that nobody takes silence for a pass. Made from the tables; change a table, not this page.',
    ...sections,
  ].join('\n\n')}\n`
}
