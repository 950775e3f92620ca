import { compareCells } from '../braille/compare.js'
import type { Pictogram, Sign } from '../sign/sign.js'
import { nothing } from './facts.js'
import { cellsOf } from './pairing.js'
import type { Found, Quantities, Subject } from './quantity.js'

/**
 * The braille words beside car controls that are marked with a symbol (2010 ADA Standards, Table 407.4.7.1.3). The symbol's own
 * shape is for the eye.
 */
const CONTROLS: { name: RegExp; word: string }[] = [
  { name: /\bemergency stop\b|^stop$/iu, word: 'stop' },
  { name: /\balarm\b/iu, word: 'alarm' },
  { name: /\bdoor open\b|\bopen door\b/iu, word: 'open' },
  { name: /\bdoor close\b|\bclose door\b/iu, word: 'close' },
  { name: /\bmain entry( floor)?\b|\bstar\b/iu, word: 'main' },
  { name: /\bphone\b|\btelephone\b/iu, word: 'phone' },
]

const controlOf = ({ meaning }: Pictogram) =>
  CONTROLS.find(({ name }) => name.test((meaning ?? '').replace(/[-_]+/gu, ' ')))

function controlBraille({ sign, translator }: Subject): Found {
  const controls = sign.pictograms.flatMap((pictogram) => {
    const control = controlOf(pictogram)
    return control ? [{ pictogram, word: control.word }] : []
  })
  if (controls.length === 0) return nothing('No pictogram is said to mark a control of the table.')
  const blocks = sign.braille.flatMap((block) => cellsOf(block) ?? [])
  const unread = sign.braille.filter((block) => cellsOf(block) === undefined)
  const found: Found = { observations: [], gaps: [] }
  for (const { pictogram, word } of controls) {
    const said = blocks.some((cells) => compareCells(cells, word, translator).grades.includes('ueb-contracted'))
    const places = [pictogram.place, ...sign.braille.map((b) => b.place)]
    if (!said && unread.length > 0) found.gaps.push({ reason: 'unreadable', why: 'some braille was not read', places })
    else
      found.observations.push({
        value: said,
        basis: basisOfCells(sign),
        places,
        remark: `The table gives the word “${word}”.`,
      })
  }
  return found
}

const basisOfCells = (sign: Sign) =>
  sign.braille.some((b) => b.lines.some(({ cells }) => 'basis' in cells && cells.basis === 'drawn'))
    ? 'drawn'
    : 'declared'

export const ELEVATOR: Quantities = {
  'braille.controlWords': {
    unit: 'truth',
    method: 'The cells against the word of the table.',
    couldBe: ['braille', 'pictogram'],
    doubt: 'either',
    take: controlBraille,
  },
}
