import { isolated, markup, NOTHING, Html } from '../../report/html-tag.js'
import { listStandards, type LoadedStandard } from '../../standards/catalogue.js'
import { choice } from '../form.js'

/** The catalogue as a list to choose from: the codes of the country that most signs are made for, the others by place, what is only a name. */

interface Group {
  name: string
  hint: string
  has: (standard: LoadedStandard) => boolean
}

const isNamedOnly = ({ kind }: LoadedStandard): boolean => kind === 'reference-geometry'
const isAmerican = ({ id }: LoadedStandard): boolean => id.startsWith('us-')

const GROUPS: Group[] = [
  { name: 'United States', hint: '', has: (one) => isAmerican(one) && !isNamedOnly(one) },
  { name: 'Other places', hint: '', has: (one) => !isAmerican(one) && !isNamedOnly(one) },
  { name: 'Sizes with a name', hint: 'No code asks them of a sign; what they say is advice.', has: isNamedOnly },
]

const KINDS: Record<LoadedStandard['kind'], string> = {
  code: 'Code',
  standard: 'Standard',
  guidance: 'Guidance',
  'reference-geometry': 'Reference',
}

/** @param chosen ids of the standards that are ticked */
export function standardsChoice(chosen: ReadonlySet<string>, error: string | undefined): Html {
  const all = listStandards()
  return markup`<fieldset class="plain" id="standards" tabindex="-1"${error === undefined ? '' : new Html(' aria-describedby="standards-error"')}>
    <legend>Standards to hold the signs against</legend>
    ${error === undefined ? NOTHING : markup`<span class="wrong" id="standards-error">Error: ${isolated(error)}</span>`}
    ${GROUPS.map((group, i) => folded(group, all.filter(group.has), chosen, i === 0))}
  </fieldset>`
}

function folded(
  { name, hint }: Group,
  standards: LoadedStandard[],
  chosen: ReadonlySet<string>,
  isFirst: boolean,
): Html {
  const taken = standards.filter(({ id }) => chosen.has(id)).length
  const isOpen = isFirst || taken > 0
  return markup`<details${isOpen ? new Html(' open') : ''}>
    <summary>${name} (${standards.length})</summary>
    <div class="inside">
      ${hint === '' ? NOTHING : markup`<p class="hint">${hint}</p>`}
      <div class="columns" role="group" aria-label="${name}">
        ${byPlace(standards).map((one) => choice('standards', one.id, wordsOf(one), chosen.has(one.id)))}
      </div>
    </div>
  </details>`
}

/** Those of the first group are in the order of the catalogue, newest first; the sort keeps it among equals. */
const byPlace = (standards: LoadedStandard[]): LoadedStandard[] =>
  standards.every(isAmerican)
    ? standards
    : [...standards].sort((a, b) => a.jurisdiction.localeCompare(b.jurisdiction, 'en'))

function wordsOf({ title, kind, jurisdiction, supersededBy }: LoadedStandard): Html {
  const replaced = supersededBy === undefined ? '' : `; superseded by ${supersededBy}`
  return markup`${title}<span class="hint">${KINDS[kind]} · ${jurisdiction}${replaced}</span>`
}
