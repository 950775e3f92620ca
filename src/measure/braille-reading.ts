import { judgeCapitals } from '../braille/capitals.js'
import { TranslationError } from '../braille/translator.js'
import { isKnown, type BrailleBlock, type Lettering, type Place } from '../sign/sign.js'
import { eachBlock, NO_BRAILLE } from './braille.js'
import { raisedLettering } from './lettering.js'
import { basisOf, gapOf, join, nothing, pointerOf } from './facts.js'
import { LYING, lyingOf } from './lie.js'
import type { Gap, Observation } from './measurement.js'
import { cellsOf, TOO_MANY, type Pair } from './pairing.js'
import type { Found, Quantities, Subject } from './quantity.js'
import { readAs, wrongCells } from './wrong-cells.js'

/**
 * What the braille says. Datum: the cells, compared exactly with the forward translation of the raised text in either grade (capital signs
 * aside), never the other way round (2010 ADA Standards 703.2, 703.3, 703.3.1; contracted braille is that of Unified English
 * Braille, as the Access Board's guide to chapter 7 accepts).
 */

const NO_RAISED = 'The sign has no raised characters.'

const placesOf = ({ blocks, lettering }: Pair): Place[] => [
  ...blocks.map(({ block }) => block.place),
  ...lettering.map((l) => l.place),
]

export const basisOfBlock = (block: BrailleBlock) =>
  basisOf(...block.lines.flatMap(({ cells }) => (isKnown(cells) ? [cells] : [])))

/** Gaps for every line of braille that was not read. */
export function unreadCells(block: BrailleBlock, n: number): Gap[] {
  const unread = block.lines.flatMap((line) => {
    const { cells, place } = line
    if (isKnown(cells)) return []
    return [
      gapOf(cells, place, { pointer: pointerOf(block.place, 'braille', n, 'text'), ask: 'What does the braille say?' }),
    ]
  })
  if (block.lines.length > 0) return unread
  const ask = { pointer: pointerOf(block.place, 'braille', n, 'text'), ask: 'What does the braille say?' }
  return [gapOf({ unknown: 'missing-fact', why: 'the cells are not given' }, block.place, ask)]
}

export function unreadText(subject: Subject): Gap[] {
  return raisedLettering(subject.sign).flatMap(({ lettering: { text, place }, n }) =>
    isKnown(text)
      ? []
      : [
          gapOf(text, place, {
            pointer: pointerOf(place, 'lettering', n, 'text'),
            ask: 'What do the raised characters say?',
          }),
        ],
  )
}

const untranslatable = (error: TranslationError, places: Place[]): Found => ({
  observations: [],
  gaps: [
    { reason: 'needs-judgement', why: `the raised text cannot be translated into braille: ${error.message}`, places },
  ],
})

/** Whether there is any braille for the raised text. */
function repeated({ sign }: Subject): Found {
  const raised = raisedLettering(sign)
  if (raised.length === 0) return nothing(NO_RAISED)
  const places = raised.map(({ lettering }) => lettering.place)
  const [block] = sign.braille
  if (!block)
    return { observations: [{ value: false, basis: 'declared', places, remark: 'There is no braille.' }], gaps: [] }
  const undrawn = sign.braille.every((b) => b.undrawn) ? block.undrawn : undefined
  if (undrawn) return { observations: [], gaps: [gapOf(undrawn, block.place)] }
  return {
    observations: [{ value: true, basis: basisOfBlock(block), places: sign.braille.map((b) => b.place) }],
    gaps: [],
  }
}

const TOO_MANY_TEXTS = 'the texts and blocks of braille are too many to hold each against each'

function wording(subject: Subject): Found {
  const { sign } = subject
  if (raisedLettering(sign).length === 0) return nothing(NO_RAISED)
  if (sign.braille.length === 0) return nothing(NO_BRAILLE)
  const gaps = [...unreadText(subject), ...sign.braille.flatMap(unreadCells)]
  if (gaps.length > 0) return { observations: [], gaps }
  const pairs = subject.pairs()
  if (pairs instanceof TranslationError)
    return untranslatable(
      pairs,
      sign.braille.map((b) => b.place),
    )
  if (pairs === TOO_MANY)
    return { observations: [], gaps: [{ reason: 'limit-reached', why: TOO_MANY_TEXTS, places: [sign.panel.place] }] }
  return join(
    (pairs ?? []).map((p) =>
      wordingOf(
        p,
        raisedLettering(sign).map(({ lettering }) => lettering),
      ),
    ),
    NO_BRAILLE,
  )
}

/** What one pair says, and whether its braille lies as the letters do: those it repeats tell first, then any others. */
function wordingOf(p: Pair, raised: Lettering[]): Found {
  const lying = p.blocks.map(({ block }) => lyingOf(block, [...p.lettering, ...raised])).find((l) => l !== 'alike')
  const doubtful = lying === 'askew' || lying === 'unknown'
  if (p.grades.length > 0 && doubtful)
    return { observations: [], gaps: [{ reason: 'needs-judgement', why: LYING[lying], places: placesOf(p) }] }
  const wrongWay = doubtful ? undefined : lying
  const blocks = p.blocks.map(({ block }) => block)
  const wrong = p.grades.length > 0 ? undefined : wrongCells(blocks, p.cells, [p.expected, p.uncontracted])
  const remark = [
    `The cells are ${p.cells}${wrong ? readAs(blocks) : ''}; the raised text “${p.print}” is ${p.expected} in contracted braille.`,
    wrong?.text ?? '',
  ]
    .join(' ')
    .trim()
  const observation: Observation = {
    value: p.grades.length > 0 && !wrongWay,
    basis: basisOf(
      ...p.blocks.map(({ block }) => ({ basis: basisOfBlock(block) })),
      ...p.lettering.flatMap(({ text }) => (isKnown(text) ? [text] : [])),
    ),
    places: [...(wrong?.places ?? []), ...placesOf(p)],
    context: {
      cells: p.cells,
      print: p.print,
      expected: p.expected,
      ...(wrongWay && p.grades.length > 0 && { lying: wrongWay }),
    },
    remark: wrongWay ? `${LYING[wrongWay]} ${remark}` : remark,
  }
  return { observations: [observation], gaps: [] }
}

const CAPITALS_GAP = {
  'needs-names': 'missing-fact',
  unreadable: 'unreadable',
} as const

function capitals(subject: Subject): Found {
  const { sign, translator } = subject
  return eachBlock((block, n) => {
    const cells = cellsOf(block)
    if (cells === undefined) return { observations: [], gaps: unreadCells(block, n) }
    const { verdict, remark } = judgeCapitals(cells, translator, sign.properNames)
    if (verdict === 'needs-names' || verdict === 'unreadable') {
      const ask = {
        pointer: '/sign/properNames',
        ask: 'Which words of the sign are proper names, initials or acronyms?',
      }
      return {
        observations: [],
        gaps: [
          {
            reason: CAPITALS_GAP[verdict],
            why: remark,
            places: [block.place],
            ...(verdict === 'needs-names' && { ask }),
          },
        ],
      }
    }
    return {
      observations: [{ value: verdict !== 'wrong', basis: basisOfBlock(block), places: [block.place], remark }],
      gaps: [],
    }
  })(subject)
}

export const BRAILLE_READING: Quantities = {
  'braille.repeatsRaisedText': {
    unit: 'truth',
    method: 'Whether there is braille for the raised text.',
    couldBe: ['braille'],
    doubt: 'no',
    take: repeated,
  },
  'braille.wording': {
    unit: 'truth',
    method: 'The cells against the translation of the raised text, capital signs aside.',
    couldBe: ['braille', 'lettering'],
    doubt: 'either',
    take: wording,
  },
  'braille.capitals': {
    unit: 'truth',
    method: 'Where the cells have a capital sign, and before which words.',
    couldBe: ['braille'],
    doubt: 'more',
    take: capitals,
  },
}
