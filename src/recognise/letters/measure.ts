import { edgesOf, gapBetween } from '../../geometry/gap.js'
import type { Fact, Known, Lettering } from '../../sign/sign.js'
import { betweenOf } from '../between.js'
import { contoursOf, mapInk } from './ink.js'
import type { ReadCharacter, ReadLine } from './read.js'
import { viewBack, type Lie } from './rows.js'
import { hasFoot, STEMS_BY_TRUST, stemOf, type Stem } from './stems.js'

/**
 * What can be measured on outlined letters once they are read. Heights are square to the baseline and strokes square to the
 * stem (ICC A117.1-2009 and the 2010 ADA Standards, 703.2: heights on the capital I, proportion on O and I, strokes on I);
 * lengths in millimetres.
 */
export type LetterMeasures = Pick<
  Lettering,
  'characterHeight' | 'characterProportion' | 'strokeThickness' | 'characterSpacing' | 'baselineSpacing' | 'style'
>

/** Capitals with flat tops and feet: as high as I in ordinary faces. Round ones are higher, pointed ones may be. */
const FLAT_CAPITALS = ['HEFTLZ', 'KXBDPRNM'] as const
/** A foot or head that reaches out so far is a serif; one that reaches less far is none. Shares of the stem. */
const SERIF = 0.25
const NO_SERIF = 0.1
/** Stems that lean less than this are upright. Degrees. */
const UPRIGHT = 1
/** Slanted faces lean by more than this; what leans less may as well be a sheared drawing. Degrees; common practice, no source. */
const OBLIQUE = 4

export function measureLetters(lines: readonly ReadLine[], lie: Lie): LetterMeasures {
  const read = lines.flatMap((line) => line.characters.filter((c) => c.readings.length === 1))
  const stemOfEach = onceForEach(stemOfCharacter)
  const characterHeight = heightOf(read)
  return {
    characterHeight,
    characterProportion: proportionOf(read, characterHeight),
    strokeThickness: strokeOf(read, lie, stemOfEach),
    characterSpacing: gapsOf(lines, lie),
    baselineSpacing: baselineSpacingOf(lines),
    style: styleOf(read, lie, stemOfEach),
  }
}

const unreadable = (why: string) => ({ unknown: 'unreadable' as const, why })

type StemOf = (character: ReadCharacter) => Stem | undefined

const stemOfCharacter: StemOf = ({ part, readings }) => stemOf(part, readings[0])

/** The same function, with its answers kept. */
function onceForEach(stem: StemOf): StemOf {
  const known = new Map<ReadCharacter, Stem | undefined>()
  return (character) => {
    if (!known.has(character)) known.set(character, stem(character))
    return known.get(character)
  }
}

function known(values: readonly number[], method: string): Known<number> {
  const [min, max] = [Math.min(...values), Math.max(...values)]
  return {
    value: values.reduce((a, b) => a + b, 0) / values.length,
    basis: 'drawn',
    min,
    max,
    count: values.length,
    method,
  }
}

const among = (read: readonly ReadCharacter[], labels: string) => read.filter((c) => labels.includes(c.readings[0]))

function heightOf(read: readonly ReadCharacter[]): Fact<number> {
  for (const labels of ['I', ...FLAT_CAPITALS]) {
    const these = among(read, labels)
    if (these.length === 0) continue
    const which = [...new Set(these.map((c) => c.readings[0]))].sort().join(', ')
    const method =
      labels === 'I'
        ? 'height of the drawn capital I'
        : `height of the flat-topped capitals ${which}, for want of a capital I`
    return known(
      these.map((c) => c.part.box.height),
      method,
    )
  }
  return unreadable('no capital I and no other flat-topped capital was read')
}

function proportionOf(read: readonly ReadCharacter[], height: Fact<number>): Fact<number> {
  const rounds = among(read, 'O')
  if (rounds.length === 0) return unreadable('no capital O was read')
  if (!('value' in height)) return height
  return known(
    rounds.map((c) => c.part.box.width / height.value),
    `width of the drawn capital O over the ${height.method ?? 'height'}`,
  )
}

function strokeOf(read: readonly ReadCharacter[], { slant }: Lie, stemOfEach: StemOf): Fact<number> {
  const cosine = Math.cos((slant * Math.PI) / 180)
  const stems = (labels: readonly ReadCharacter[]) =>
    labels.flatMap((c) => {
      const stem = stemOfEach(c)
      return stem ? [stem.width * cosine] : []
    })
  for (const labels of STEMS_BY_TRUST) {
    const widths = stems(among(read, labels))
    if (widths.length === 0) continue
    const method =
      labels === 'I'
        ? 'stem of the drawn capital I, square to it'
        : 'upright stems of the drawn capitals, square to them, for want of a capital I'
    return known(widths, method)
  }
  return unreadable('no capital with an upright stem was read')
}

function gapsOf(lines: readonly ReadLine[], lie: Lie): Fact<number> {
  const back = viewBack(lie)
  const gaps: { distance: number; pair: [string, string] }[] = []
  for (const { characters, spacing } of lines) {
    // Only a slanted view is no true picture of distances.
    const drawn = lie.slant === 0 ? [] : characters.map((c) => edgesOf(contoursOf(mapInk(c.part.ink, back))))
    for (let i = 1; i < characters.length; i++) {
      const space = spacing.spaces[i - 1]
      if (space === undefined) return unreadable('a gap may be one between letters or one between words')
      const pair: [string, string] = [nameOf(characters[i - 1]), nameOf(characters[i])]
      const distance = lie.slant === 0 ? spacing.gaps[i - 1] : gapBetween(drawn[i - 1], drawn[i]).distance
      if (!space) gaps.push({ distance, pair })
    }
  }
  if (gaps.length === 0) return { unknown: 'missing-fact', why: 'no two characters stand next to each other' }
  const distances = gaps.map(({ distance }) => distance)
  const method = 'least distance between the outlines of neighbouring characters, not across spaces'
  return { ...known(distances, method), between: betweenOf(gaps) }
}

/** A character that was not read beyond doubt has no name. */
const nameOf = ({ readings }: ReadCharacter): string => (readings.length === 1 ? readings[0] : '?')

/** Undefined for a single line. */
export function baselineSpacingOf(lines: readonly ReadLine[]): Fact<number> | undefined {
  if (lines.length < 2) return undefined
  const steps = lines.slice(1).map((line, i) => line.baseline - lines[i].baseline)
  return known(steps, 'distance of successive baselines, square to them')
}

function styleOf(read: readonly ReadCharacter[], { slant }: Lie, stemOfEach: StemOf): Lettering['style'] {
  const lean = Math.abs(slant)
  if (lean >= OBLIQUE)
    return { value: 'oblique', basis: 'drawn', method: `the stems lean by ${lean.toFixed(0)} degrees` }
  if (lean >= UPRIGHT)
    return {
      unknown: 'needs-judgement',
      why: `the stems lean by ${lean.toFixed(1)} degrees: too little for a slanted typeface, too much for an upright one`,
    }
  const feet = read.flatMap((c) => {
    const label = c.readings[0]
    const stem = hasFoot(label) ? stemOfEach(c) : undefined
    return stem ? [{ label, reach: stem.reach }] : []
  })
  // Some sans-serif faces give the I alone serifs, to tell it from l.
  const telling = feet.some((f) => f.label !== 'I') ? feet.filter((f) => f.label !== 'I') : feet
  if (telling.length === 0) return unreadable('no letter with a stem was read, whose ends would show serifs')
  if (telling.every((f) => f.reach <= NO_SERIF))
    return { value: 'sans-serif', basis: 'drawn', method: 'the ends of the stems do not reach out' }
  const onlyI = telling.every((f) => f.label === 'I')
  if (!onlyI && telling.filter((f) => f.reach >= SERIF).length * 2 > telling.length)
    return { value: 'serif', basis: 'drawn', method: 'the ends of the stems reach out' }
  return { unknown: 'needs-judgement', why: 'the ends of some stems reach out and others do not' }
}
