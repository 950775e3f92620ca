import type { SetFinding } from '../../report/set/evidence.js'
import { sameName } from '../same-name.js'
import type { ComparedSign } from './compared-sign.js'
import { apart, grouped, listed } from './listing.js'

/** More than one typeface, or more than one kind of typeface, among the signs of which it is known. */
export function typefacesDiffer(signs: readonly ComparedSign[]): SetFinding[] {
  return [...differing(signs, 'families', 'typefaces'), ...differing(signs, 'styles', 'kinds of typeface')]
}

function differing(signs: readonly ComparedSign[], key: 'families' | 'styles', what: string): SetFinding[] {
  const named = signs.flatMap((sign) => sign[key].map((name) => ({ name, mark: sign.mark })))
  const groups = [...grouped(named, ({ name }) => sameName(name)).values()]
  if (groups.length < 2) return []
  const each = groups.map((group) => `${group[0]?.name ?? ''} (${listed([...new Set(group.map(({ mark }) => mark))])})`)
  return [
    {
      kind: 'typefaces-differ',
      marks: [...new Set(named.map(({ mark }) => mark))],
      message: `The set has ${groups.length} ${what}: ${apart(each)}.`,
    },
  ]
}
