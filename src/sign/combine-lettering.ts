import type { Point } from '../geometry/point.js'
import { mergePlace, moveBox, normalised, type Merge } from './merge.js'
import { declared, isKnown, missing, type Fact, type Lettering, type LetteringLine, type Sign } from './sign.js'

/**
 * Drawn and described lettering as one list. Items answer each other by their place in the list when there are as many of
 * both, else by their text; a single described item without a partner of its own stands for all drawn ones.
 */
export function combineLettering(drawn: Lettering[], description: Sign, corner: Point, merge: Merge): Lettering[] {
  const described = description.lettering
  if (described.length === 0) {
    const finish = description.panel.finish
    return drawn.map((item) => ({ ...item, finish: isKnown(item.finish) ? item.finish : finish }))
  }
  if (drawn.length === described.length) return drawn.map((from, i) => combineOne(from, described[i], i, corner, merge))
  const single = described.length === 1 ? described[0] : undefined
  const partnerOf = partners(drawn, described)
  if (single && drawn.length > 1 && partnerOf.size === 0) return standForAll(drawn, single, corner, merge)
  const joined = drawn.map((from, i) => {
    const to = partnerOf.get(from)
    return to ? combineOne(from, to, i, corner, merge) : from
  })
  const taken = new Set(partnerOf.values())
  const added = described.filter((item) => !taken.has(item)).map((item) => moveLettering(item, corner))
  for (const item of added)
    if (drawn.length > 0)
      merge.say(`${item.place.element}: nothing in the drawing answers it; it is judged beside what is drawn.`)
  return [...joined, ...added]
}

function partners(drawn: Lettering[], described: Lettering[]): Map<Lettering, Lettering> {
  const found = new Map<Lettering, Lettering>()
  const free = new Set(described)
  for (const from of drawn) {
    const to = [...free].find(
      (item) => isKnown(from.text) && isKnown(item.text) && sameWords(from.text.value, item.text.value),
    )
    if (!to) continue
    found.set(from, to)
    free.delete(to)
  }
  return found
}

const sameWords = (a: string, b: string): boolean => normalised(a).toUpperCase() === normalised(b).toUpperCase()

/** A single item says of all drawn lettering what belongs to the product; where the characters are stays as drawn. */
function standForAll(drawn: Lettering[], single: Lettering, corner: Point, merge: Merge): Lettering[] {
  const texts = drawn.map((item) => item.text)
  if (isKnown(single.text) && texts.every(isKnown)) {
    const together = texts.map((text) => text.value).join(' ')
    if (!sameWords(together, single.text.value))
      merge.say(
        `lettering: the drawing shows “${together}”, the description says “${single.text.value}”; what is drawn is read, the rest of the description holds for all of it.`,
      )
  }
  const facts: Lettering = { ...single, text: missing(), lines: [], baselineSpacing: undefined }
  return drawn.map((from, i) => combineOne(from, facts, i, corner, merge))
}

function combineOne(from: Lettering, to: Lettering, index: number, corner: Point, merge: Merge): Lettering {
  const at = `lettering/${index}`
  const saysPart = to.partAssumed !== true
  if (saysPart && from.part !== to.part && from.partAssumed !== true) merge.conflict(at, 'part', from.part, to.part)
  const family = to.family ?? from.family
  const baselineSpacing =
    from.baselineSpacing && to.baselineSpacing
      ? merge.length(at, 'baselineSpacing', from.baselineSpacing, to.baselineSpacing)
      : (from.baselineSpacing ?? to.baselineSpacing)
  return {
    place: mergePlace(from.place, to.place, corner),
    part: saysPart ? to.part : from.part,
    ...(!saysPart && from.partAssumed && { partAssumed: true }),
    text: merge.text(at, 'text', from.text, to.text),
    lines: combineLines(from.lines, to.lines, at, corner, merge),
    ...(family !== undefined && { family }),
    style: merge.kind(at, 'style', from.style, to.style),
    characterProportion: merge.ratio(at, 'characterProportion', from.characterProportion, to.characterProportion),
    characterHeight: merge.length(at, 'characterHeight', from.characterHeight, to.characterHeight),
    strokeThickness: merge.length(at, 'strokeThickness', from.strokeThickness, to.strokeThickness),
    strokeThicknessAtBase: merge.length(
      at,
      'strokeThicknessAtBase',
      from.strokeThicknessAtBase,
      to.strokeThicknessAtBase,
    ),
    relief: merge.length(at, 'relief', from.relief, to.relief),
    section: merge.kind(at, 'section', from.section, to.section),
    characterSpacing: merge.length(at, 'characterSpacing', from.characterSpacing, to.characterSpacing),
    characterSpacingAtBase: merge.length(
      at,
      'characterSpacingAtBase',
      from.characterSpacingAtBase,
      to.characterSpacingAtBase,
    ),
    wordSpacing: merge.length(at, 'wordSpacing', from.wordSpacing, to.wordSpacing),
    alignment: merge.kind(at, 'alignment', from.alignment, to.alignment),
    ...(baselineSpacing && { baselineSpacing }),
    finish: merge.kind(at, 'finish', from.finish, to.finish),
    colour: merge.colour(at, 'colour', from.colour, to.colour),
    background: merge.colour(at, 'background', from.background, to.background),
    ...(from.lie && { lie: from.lie }),
  }
}

/** Lines answer each other when there are as many; a different number of lines keeps the drawn ones, as they have shapes. */
function combineLines(
  drawn: LetteringLine[],
  described: LetteringLine[],
  at: string,
  corner: Point,
  merge: Merge,
): LetteringLine[] {
  if (drawn.length === 0) return described.map((line) => moveLine(line, corner))
  if (drawn.length !== described.length) return drawn
  return drawn.map((from, i) => {
    const to = described[i]
    const whole = drawn.length === 1
    return {
      place: mergePlace(from.place, to.place, corner),
      text: whole ? preferDescribed(from.text, to.text) : merge.text(`${at}/line/${i}`, 'text', from.text, to.text),
      baseline: merge.point(`${at}/line/${i}`, 'baseline', from.baseline, to.baseline, corner),
      outlines: from.outlines,
    }
  })
}

/** The text of an only line is compared with the text of the whole; it is not told twice. */
const preferDescribed = (drawn: Fact<string>, described: Fact<string>): Fact<string> =>
  isKnown(described) && !(isKnown(drawn) && normalised(drawn.value) === normalised(described.value)) ? described : drawn

const moveLine = (line: LetteringLine, by: Point): LetteringLine => ({
  ...line,
  place: { ...line.place, ...(line.place.box && { box: moveBox(line.place.box, by) }) },
  baseline: isKnown(line.baseline)
    ? declared({ x: line.baseline.value.x + by.x, y: line.baseline.value.y + by.y })
    : line.baseline,
})

const moveLettering = (item: Lettering, by: Point): Lettering => ({
  ...item,
  lines: item.lines.map((line) => moveLine(line, by)),
})
