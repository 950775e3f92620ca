import { describe, expect, test } from 'vitest'
import { findStandards } from '../../src/standards/catalogue.js'
import { ALIGNMENTS, DOT_SHAPES, FINISHES, SIDES, STYLES } from '../../src/sign/vocabulary.js'
import type { Limit } from '../../src/standards/standard.js'
import { signOf, withValues } from '../measure/signs.js'
import { judgementBy } from './judged.js'
import { KINDS, type Kinds } from './kinds.js'
import { signFor } from './rowsigns.js'
import { letters, WITH_PICTOGRAM } from './settings.js'
import { SWITCHES } from './switches.js'

/** Every row that allows some kinds of a thing, held against each kind there is. */

type Json = Record<string, unknown>

interface Choice {
  kinds: readonly string[]
  base?: Json
  set: (kind: string) => Json
}

const PLACES: Record<string, Json> = { below: { x: 20, y: 95 }, above: { x: 20, y: -10 }, beside: { x: 200, y: 45 } }
const CASES: Record<string, string> = { upper: 'PUMPS', lower: 'pumps', mixed: 'Pumps' }
const said = (text: string): Json => ({ [letters(0, 'text')]: text, [letters(0, 'lines')]: [text] })

const style: Choice = { kinds: STYLES, set: (kind) => ({ [letters(0, 'typeface.style')]: kind }) }
const own = (meaning: string): Choice => ({
  kinds: FINISHES,
  base: { ...WITH_PICTOGRAM, 'pictograms.0.meaning': meaning },
  set: (kind) => ({ 'pictograms.0.finish': kind }),
})
/** Without the places, so that what is said decides. */
const UNPLACED = { [letters(0, 'baseline')]: undefined, 'braille.0.origin': undefined }

const CHOICES: Record<string, Choice> = {
  'raised.style': style,
  'visual.style': style,
  'visual.finish': { kinds: FINISHES, set: (kind) => ({ 'panel.finish': kind }) },
  'pictogram.finish': own('pump'),
  'symbol.finish': own('wheelchair'),
  'braille.dotShape': { kinds: DOT_SHAPES, set: (kind) => ({ 'braille.0.dotShape': kind }) },
  'installation.side': { kinds: SIDES, set: (kind) => ({ 'installation.side': kind }) },
  'braille.position': { kinds: Object.keys(PLACES), set: (kind) => ({ 'braille.0.origin': PLACES[kind] }) },
  'braille.alignment': { kinds: ALIGNMENTS, base: UNPLACED, set: (kind) => ({ 'braille.0.alignment': kind }) },
  'raised.alignment': { kinds: ALIGNMENTS, base: UNPLACED, set: (kind) => ({ [letters(0, 'alignment')]: kind }) },
  'visual.case': { kinds: Object.keys(CASES), set: (kind) => said(CASES[kind]) },
}

const expected = ({ pass, judgement = [] }: Kinds, kind: string): string =>
  pass.includes(kind) ? 'pass' : judgement.includes(kind) ? 'undetermined' : 'fail'

const sorted = (kinds: readonly string[] = []): string[] => [...kinds].sort()

const kindsOf = (limit: Limit | undefined) =>
  limit?.kind === 'one-of' ? { pass: sorted(limit.pass), judgement: sorted(limit.judgement) } : limit?.kind

const ROWS = Object.entries(KINDS).flatMap(([id, all]) =>
  all.map((kinds) => ({ id, kinds, name: kinds.row, when: kinds.when ?? 'always' })),
)

describe.each(ROWS)('$id/$name ($when)', ({ id, name, kinds }) => {
  const row = findStandards([id])[0]?.requirements.find(({ requirement }) => requirement === `${id}/${name}`)
  const choice = row && CHOICES[row.quantity]
  if (!row || !choice) throw new Error(`no way to choose for ${id}/${name}`)
  const on = kinds.when === undefined ? {} : SWITCHES[kinds.when].on
  const base = withValues(withValues(signFor(row).base, choice.base ?? {}), on)

  test('has the kinds that were typed a second time', () => {
    const limit = kinds.when ? row.exceptions.find(({ when }) => when === kinds.when)?.limit : row.limit
    expect(kindsOf(limit)).toEqual({ pass: sorted(kinds.pass), judgement: sorted(kinds.judgement) })
  })

  test.each(choice.kinds)('%s', (kind) => {
    expect(judgementBy(id, name, signOf(base, choice.set(kind))).verdict).toBe(expected(kinds, kind))
  })
})

test.each(Object.keys(KINDS))('the table %s has no row with kinds that were not typed a second time', (id) => {
  const found = findStandards([id])[0]?.requirements.flatMap(({ requirement, limit, exceptions }) => [
    ...(limit.kind === 'one-of' ? [requirement] : []),
    ...exceptions.flatMap((exception) => (exception.limit?.kind === 'one-of' ? [requirement] : [])),
  ])
  expect(found?.sort()).toEqual(KINDS[id].map(({ row }) => `${id}/${row}`).sort())
})
