import type { Change } from '../standards/standard.js'
import { gapSections } from './gaps-markdown.js'
import { anchor, cell, KIND_WORDS } from './markdown.js'
import type { StandardTable } from './standard-table.js'

type Row = StandardTable['requirements'][number]

/** A standard's table as a page of the docs: one section for each requirement, named by its id; what it leaves out; what changed. */
export function standardMarkdown(standard: StandardTable, changes: readonly Change[]): string {
  const { id, title, edition, jurisdiction, kind, supersededBy, revision, requirements, gaps } = standard
  const head = [
    `# ${title}`,
    `\`${id}\`, edition ${edition}, ${jurisdiction}; revision ${revision} of our table. ${KIND_WORDS[kind]}`,
    ...(supersededBy === null ? [] : [`Superseded by [\`${supersededBy}\`](${supersededBy}.md).`]),
    'Made from the table; change the table, not this page. The words are ours; the limits are quoted as printed.',
  ]
  const overview = [
    '| requirement | title | force | stage | limit |\n| --- | --- | --- | --- | --- |',
    ...requirements.map(
      ({ requirement, title, force, stage, limit }) =>
        `| [${shortName(requirement)}](#${anchor(requirement)}) | ${cell(title)} | ${force} | ${stage} | ${cell(limit.printed)} |`,
    ),
  ].join('\n')
  const left = gaps.length === 0 ? ['The table lists nothing here.'] : gapSections(gaps, '###')
  return `${[
    ...head,
    overview,
    ...requirements.map(section),
    '## What this table does not say',
    'A clause becomes a row when its text was read and one sign can be held against it. Silence on the rest is no pass.',
    ...left,
    '## Changes of the table',
    changes.map(changed).join('\n'),
  ].join('\n\n')}\n`
}

function section(row: Row): string {
  const { requirement, clause, title, text, quantity, limit, exceptions, howToMeasure, citation } = row
  const note = citation.note === undefined ? '' : ` ${citation.note}`
  return [
    `<a id="${anchor(requirement)}"></a>`,
    `## ${title}`,
    `\`${requirement}\`: clause ${clause}, \`${quantity}\``,
    text,
    [
      `- **Limit:** ${limit.printed}`,
      ...exceptions.map((exception) => `- **Except** (${exception.clause}): ${exception.text}`),
      `- **In force for:** ${inForce(row)}`,
      `- **How to measure:** ${howToMeasure}`,
      `- **Source:** ${citation.document}, ${citation.where} (${citation.confidence}).${note}`,
    ].join('\n'),
  ].join('\n\n')
}

function inForce({ uses, parts, sections, when }: Row): string {
  const named = (names: readonly string[]) => names.map((name) => `\`${name}\``).join(', ')
  return [
    uses.join(', '),
    ...(parts ? [`lettering ${parts.join(', ')}`] : []),
    ...(sections ? [`section ${sections.join(', ')}`] : []),
    ...(when.length > 0 ? [`when ${named(when)}`] : []),
  ].join('; ')
}

function changed({ revision, date, text, requirements }: Change): string {
  const rows = requirements.map((name) => `\`${shortName(name)}\``).join(', ')
  return `- **${revision}** (${date}): ${text}${rows === '' ? '' : ` Rows: ${rows}.`}`
}

const shortName = (requirement: string): string => requirement.split('/').slice(1).join('/')
