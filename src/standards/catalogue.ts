import { Refusal, type Fault } from '../refusal.js'
import { load, type LoadedStandard, type Table } from './load.js'
import aeDubai from './ae-dubai.json' with { type: 'json' }
import auAba from './au-aba.json' with { type: 'json' }
import auNcc2022 from './au-ncc-2022.json' with { type: 'json' }
import brNbr90502020 from './br-nbr-9050-2020.json' with { type: 'json' }
import caCnib from './ca-cnib.json' with { type: 'json' }
import caCsaB6512004 from './ca-csa-b651-2004.json' with { type: 'json' }
import chVaboev from './ch-vaboev.json' with { type: 'json' }
import cz3982009 from './cz-398-2009.json' with { type: 'json' }
import deDin32975 from './de-din-32975.json' with { type: 'json' }
import deDin32976 from './de-din-32976.json' with { type: 'json' }
import dkAssociation from './dk-association.json' with { type: 'json' }
import esTma8512021 from './es-tma-851-2021.json' with { type: 'json' }
import euTsiPrm from './eu-tsi-prm.json' with { type: 'json' }
import kr2020 from './kr-2020.json' with { type: 'json' }
import marburgMedium from './marburg-medium.json' with { type: 'json' }
import nls800 from './nls-800.json' with { type: 'json' }
import noTek17 from './no-tek17.json' with { type: 'json' }
import { EARLIER } from './revisions.js'
import usA1172003 from './us-a117.1-2003.json' with { type: 'json' }
import usAda2010 from './us-ada-2010.json' with { type: 'json' }
import usAdaag1991 from './us-adaag-1991.json' with { type: 'json' }
import usCa2019 from './us-ca-2019.json' with { type: 'json' }

export type { LoadedStandard }

/** Every table, in the order in which it is listed. One line per edition. */
const TABLES: Table[] = [
  usAda2010,
  usAdaag1991,
  usA1172003,
  usCa2019,
  auNcc2022,
  auAba,
  kr2020,
  esTma8512021,
  euTsiPrm,
  caCnib,
  caCsaB6512004,
  noTek17,
  deDin32975,
  deDin32976,
  chVaboev,
  dkAssociation,
  cz3982009,
  brNbr90502020,
  aeDubai,
  nls800,
  marburgMedium,
]

/** Standards by name. A table is read by its schema when it is first asked for: most requests ask for one. */
export interface Catalogue {
  /** Every standard in its newest revision, in order. */
  list: () => LoadedStandard[]
  /**
   * The standards that a client names, each once, in the order named. An id may be pinned to a revision: `us-ada-2010@1`.
   * @throws {Refusal} `unknown-standard`, with a pointer to each name that is not known.
   */
  find: (ids: readonly string[]) => LoadedStandard[]
}

/**
 * @param tables the newest revision of each standard
 * @param earlier revisions that stay callable by their number
 */
export function catalogueOf(tables: readonly Table[], earlier: readonly Table[]): Catalogue {
  const named = new Map([...earlier, ...tables].map((table) => [pinned(table), table]))
  for (const table of tables) named.set(table.id, table)
  return {
    list: () => tables.map(load),
    find: (ids) => {
      const errors: Fault[] = []
      const found = new Set<LoadedStandard>()
      ids.forEach((id, i) => {
        const table = named.get(id)
        const why = table ? namedTwice(table, found) : whyUnknown(id, tables, earlier)
        if (why !== undefined) errors.push({ detail: why, pointer: `/standards/${i}` })
        else if (table) found.add(load(table))
      })
      if (errors.length > 0) throw new Refusal('unknown-standard', errors.map((e) => e.detail).join(' '), errors)
      return [...found]
    },
  }
}

const pinned = ({ id, revision }: Table): string => `${id}@${revision}`

/** One answer speaks of a standard by its id, so that it holds one revision of it. */
function namedTwice({ id, revision }: Table, found: ReadonlySet<LoadedStandard>): string | undefined {
  const other = [...found].find((standard) => standard.id === id && standard.revision !== revision)
  return other && `The standard ${id} is named in revisions ${other.revision} and ${revision}; ask for one at a time.`
}

/** Names are echoed in messages up to this many characters. */
const LONGEST_ECHO = 60

function whyUnknown(id: string, tables: readonly Table[], earlier: readonly Table[]): string {
  const [name] = id.split('@')
  const same = [...earlier, ...tables].filter((table) => table.id === name).map(pinned)
  if (same.length > 0) return `The standard ${name} is here as ${same.join(', ')} only.`
  return `The standard “${id.slice(0, LONGEST_ECHO)}” is not known here. Known are: ${tables.map((t) => t.id).join(', ')}.`
}

const CATALOGUE = catalogueOf(TABLES, EARLIER)

export const listStandards = (): LoadedStandard[] => CATALOGUE.list()

/** The standards of this service by name; see `Catalogue.find`. */
export const findStandards = (ids: readonly string[]): LoadedStandard[] => CATALOGUE.find(ids)
