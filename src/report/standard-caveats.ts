import type { LoadedStandard } from '../standards/catalogue.js'
import type { Finding } from './finding-schema.js'

/** What a reader must know of each standard that a sign was held against: what it is, how surely it is known, what is left out. */

type Confidence = Finding['citation']['confidence']

/** The confidences that a reader must be told of, with what they mean. */
const DOUBTS: [Confidence, string][] = [
  ['secondary', 'was read in a secondary source, not in the standard itself'],
  ['our-reading', 'is our reading of a clause that gives no number or leaves it open'],
  [
    'earlier-edition',
    'was read in an earlier edition of the same code, and it is from memory that this edition carries it on',
  ],
]

/** @param findings those of each standard, in the same order */
export const standardCaveats = (
  standards: readonly LoadedStandard[],
  findings: readonly (readonly Finding[])[],
): string[] =>
  standards.flatMap((standard, i) => [
    ...whatItIs(standard),
    ...doubts(standard.id, findings[i] ?? []),
    ...leftOut(standard),
  ])

function whatItIs({ id, title, kind, supersededBy }: LoadedStandard): string[] {
  const name = `${title} (${id})`
  return [
    ...(kind === 'guidance' ? [`${name} is guidance: no law asks for it by itself.`] : []),
    ...(kind === 'reference-geometry'
      ? [`${name} gives sizes a name. No code asks them of a sign, and what is said of them is advice.`]
      : []),
    ...(supersededBy === undefined
      ? []
      : [
          `${name} is superseded by ${supersededBy}. It tells what an older sign was made to; hold a new one against the other.`,
        ]),
  ]
}

function doubts(id: string, findings: readonly Finding[]): string[] {
  const rows = new Map<Confidence, string[]>(DOUBTS.map(([confidence]) => [confidence, []]))
  for (const { verdict, citation, requirement } of findings)
    if (verdict !== 'not-applicable') rows.get(citation.confidence)?.push(requirement)
  return DOUBTS.flatMap(([confidence, meaning]) => {
    const named = rows.get(confidence) ?? []
    return named.length === 0
      ? []
      : [`What this report uses of the following rows of ${id} ${meaning}: ${named.join(', ')}.`]
  })
}

/** Gaps that are no row at all; of the others there is a row, and how its clause was read. */
function leftOut({ id, gaps }: LoadedStandard): string[] {
  const count = gaps.filter(({ kind }) => kind !== 'reading').length
  if (count === 0) return []
  const clauses = count === 1 ? 'One matter' : `${count} matters`
  return [
    `${clauses} of ${id} that may bear on a sign ${count === 1 ? 'is' : 'are'} not looked at here; /v1/standards/${id} lists them under gaps.`,
  ]
}
