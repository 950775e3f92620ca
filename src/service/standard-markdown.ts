import type { StandardTable } from './standard-table.js'

type Row = StandardTable['requirements'][number]

/** A standard's table as a page of the docs, one section for each requirement, named by its id. */
export function standardMarkdown(standard: StandardTable): string {
  const head = [
    `# ${standard.title}`,
    `\`${standard.id}\`, edition ${standard.edition}, ${standard.jurisdiction}; revision ${standard.revision} of our table.`,
    'Made from the table; change the table, not this page. The words are ours; the limits are quoted as printed.',
  ]
  const overview = [
    '| requirement | title | force | stage | limit |\n| --- | --- | --- | --- | --- |',
    ...standard.requirements.map(
      ({ requirement, title, force, stage, limit }) =>
        `| [${shortName(requirement)}](#${anchor(requirement)}) | ${cell(title)} | ${force} | ${stage} | ${cell(limit.printed)} |`,
    ),
  ].join('\n')
  return `${[...head, overview, ...standard.requirements.map(section)].join('\n\n')}\n`
}

function section(row: Row): string {
  const { requirement, clause, title, text, quantity, limit, exceptions, uses, howToMeasure, citation } = row
  const note = citation.note === undefined ? '' : ` ${citation.note}`
  return [
    `<a id="${anchor(requirement)}"></a>`,
    `## ${title}`,
    `\`${requirement}\`: clause ${clause}, \`${quantity}\``,
    text,
    [
      `- **Limit:** ${limit.printed}`,
      ...exceptions.map((exception) => `- **Except** (${exception.clause}): ${exception.text}`),
      `- **In force for:** ${uses.join(', ')}`,
      `- **How to measure:** ${howToMeasure}`,
      `- **Source:** ${citation.document}, ${citation.where} (${citation.confidence}).${note}`,
    ].join('\n'),
  ].join('\n\n')
}

const shortName = (requirement: string): string => requirement.split('/').slice(1).join('/')
const anchor = (requirement: string): string => requirement.replaceAll('/', '-')
const cell = (text: string): string => text.replaceAll('|', '\\|')
