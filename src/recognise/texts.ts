import type { Point } from '../geometry/point.js'
import type { Assumption, Ignored, LetteringPart, Unread } from '../sign/sign.js'
import { brailleIn } from './brailletext.js'
import type { Labelled } from './labelling.js'
import { layOut, type LaidRun } from './layout.js'
import type { NamedPart } from './parts.js'

/** Live text, told apart: lettering, braille characters, and what is neither. */
export interface Texts {
  lettering: { run: LaidRun; part: LetteringPart }[]
  braille: LaidRun[]
  /** Where all of it stands, what is not read included. */
  places: Point[]
  assumptions: Assumption[]
  unread: Unread[]
  ignored: Ignored[]
}

/** A typeface whose name holds this word shows dots where the file has letters. */
const BRAILLE_FACE = /braille/i

export function readTexts({ texts }: Labelled): Texts {
  const runs = layOut(texts.map((t) => t.text))
  const read: Texts = { lettering: [], braille: [], places: [], assumptions: [], unread: [], ignored: [] }
  texts.forEach(({ text, named }, i) => {
    if (text.text.trim() === '') return
    if (named?.part === 'ignore') read.ignored.push({ source: text.source, why: `It is to be ignored: ${named.how}.` })
    else {
      sortRun(runs[i], named, read)
      read.places.push(...[runs[i].place].filter((place) => place !== undefined))
    }
  })
  const unnamed = texts.some(({ text, named }) => isLettering(text.text) && letteringPart(named) === undefined)
  if (unnamed && read.lettering.length > 0) read.assumptions.push({ about: 'part', text: UNNAMED })
  return read
}

const UNNAMED =
  'Nothing says whether live text is raised or only printed: it is taken for one set of characters that serves touch and sight.'

const isLettering = (text: string) => text.trim() !== '' && brailleIn(text) === 'none'

function sortRun(run: LaidRun, named: NamedPart | undefined, read: Texts): void {
  const { text, source } = run.drawn
  const place = { element: 'drawing', source }
  const kind = brailleIn(text)
  if (kind === 'all') read.braille.push(run)
  else if (kind === 'some')
    read.unread.push({
      place,
      why: 'The text mixes braille characters with others.',
      couldBe: ['braille', 'lettering'],
    })
  else if (named?.part === 'braille' || BRAILLE_FACE.test(run.drawn.fontFamilies[0] ?? ''))
    read.unread.push({
      place,
      why: 'The text is set in a braille typeface, which is not known here: what its dots say is not read.',
      couldBe: ['braille'],
    })
  else if (named?.part === 'pictogram')
    read.unread.push({
      place,
      why: 'The pictogram is a character of a typeface, which is not looked at.',
      couldBe: ['pictogram'],
    })
  else read.lettering.push({ run, part: letteringPart(named) ?? 'both' })
}

function letteringPart(named: NamedPart | undefined): LetteringPart | undefined {
  const part = named?.part
  return part === 'raised' || part === 'visual' || part === 'both' ? part : undefined
}
