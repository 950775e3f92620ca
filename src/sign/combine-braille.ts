import type { Point } from '../geometry/point.js'
import { mergePlace, moveBox, type Merge } from './merge.js'
import { isKnown, missing, type BrailleBlock, type BrailleLine, type Unknown } from './sign.js'

const BLANK = '\u2800'

/**
 * Drawn and described braille as one list. Blocks answer each other by their place in the list when there are as many of
 * both, else by their cells; a single described block without a partner of its own stands for all drawn ones.
 */
export function combineBraille(
  drawn: BrailleBlock[],
  described: BrailleBlock[],
  corner: Point,
  merge: Merge,
): BrailleBlock[] {
  if (described.length === 0) return drawn
  if (drawn.length === 0) return described.flatMap((block) => notDrawn(block, merge))
  if (drawn.length === described.length) return drawn.map((from, i) => combineOne(from, described[i], i, corner, merge))
  const partnerOf = partners(drawn, described)
  const single = described.length === 1 ? described[0] : undefined
  if (single && drawn.length > 1 && partnerOf.size === 0) return standForAll(drawn, single, corner, merge)
  const joined = drawn.map((from, i) => {
    const to = partnerOf.get(from)
    return to ? combineOne(from, to, i, corner, merge) : from
  })
  const taken = new Set(partnerOf.values())
  const left = described.filter((block) => !taken.has(block))
  for (const block of left)
    merge.say(
      hasWords(block)
        ? `${block.place.element}: nothing in the drawing answers it; it is judged beside what is drawn.`
        : `${block.place.element}: nothing in the drawing answers it, and it says no words; it was left out.`,
    )
  return [...joined, ...left.filter(hasWords).map((block) => moveBlock(block, corner))]
}

/**
 * A described block for a drawing that shows no braille. The drawing is what will be made: facts of the product have nothing to
 * hold them there, and what the block says is for a person to reconcile with the drawing.
 */
function notDrawn(block: BrailleBlock, merge: Merge): BrailleBlock[] {
  const { element } = block.place
  if (!hasWords(block)) {
    merge.say(`${element}: the drawing shows no braille, and nothing in it answers the description; it was left out.`)
    return []
  }
  const said = block.lines.map(({ text, cells }) => text ?? (isKnown(cells) ? cells.value : '')).join(' ')
  const why = `the drawing shows no braille, the description says “${said}”`
  merge.say(`${element}: ${why}; what will be made of it is left undecided.`)
  const open: Unknown = { unknown: 'needs-judgement', why }
  return [
    {
      ...block,
      lines: block.lines.map((line) => ({ place: line.place, cells: open, dots: [], baseline: open })),
      dotBaseDiameter: open,
      dotSpacing: open,
      cellSpacing: open,
      ...(block.lineSpacing && { lineSpacing: open }),
      alignment: open,
      undrawn: open,
    },
  ]
}

/** Whether a described block says anything; one without words says only what its dots are like. */
const hasWords = ({ lines }: BrailleBlock): boolean =>
  lines.some(({ cells }) => isKnown(cells) || cells.unknown !== 'missing-fact')

/** All cells of a block as one line; undefined when a line is unread or there is none. */
function cellsOf(block: BrailleBlock): string | undefined {
  const lines = block.lines.map((line) => line.cells)
  return lines.length > 0 && lines.every(isKnown) ? lines.map((cells) => cells.value).join(BLANK) : undefined
}

function partners(drawn: BrailleBlock[], described: BrailleBlock[]): Map<BrailleBlock, BrailleBlock> {
  const found = new Map<BrailleBlock, BrailleBlock>()
  const free = new Set(described)
  for (const from of drawn) {
    const cells = cellsOf(from)
    const to = cells === undefined ? undefined : [...free].find((block) => cellsOf(block) === cells)
    if (!to) continue
    found.set(from, to)
    free.delete(to)
  }
  return found
}

/** A single block says of all drawn braille what belongs to the product; which cells there are stays as drawn. */
function standForAll(drawn: BrailleBlock[], single: BrailleBlock, corner: Point, merge: Merge): BrailleBlock[] {
  const together = drawn.map(cellsOf)
  const said = cellsOf(single)
  if (said !== undefined && together.every((cells) => cells !== undefined) && together.join(BLANK) !== said)
    merge.say(
      `braille: the drawing shows ${together.join(BLANK)}, the description says ${said}; what is drawn is read, the rest of the description holds for all of it.`,
    )
  const facts: BrailleBlock = { ...single, lines: [], lineSpacing: undefined }
  return drawn.map((from, i) => combineOne(from, facts, i, corner, merge))
}

function combineOne(from: BrailleBlock, to: BrailleBlock, index: number, corner: Point, merge: Merge): BrailleBlock {
  const at = `braille/${index}`
  const code = to.code ?? from.code
  const lineSpacing =
    from.lineSpacing && to.lineSpacing
      ? merge.length(at, 'lineSpacing', from.lineSpacing, to.lineSpacing)
      : (from.lineSpacing ?? to.lineSpacing)
  return {
    place: mergePlace(from.place, to.place, corner),
    lines: combineLines(from, to, at, corner, merge),
    ...(code && { code }),
    ...((to.carrier ?? from.carrier) && { carrier: to.carrier ?? from.carrier }),
    dotBaseDiameter: merge.length(at, 'dotBaseDiameter', from.dotBaseDiameter, to.dotBaseDiameter),
    dotHeight: merge.length(at, 'dotHeight', from.dotHeight, to.dotHeight),
    dotShape: merge.kind(at, 'dotShape', from.dotShape, to.dotShape),
    dotSpacing: merge.length(at, 'dotSpacing', from.dotSpacing, to.dotSpacing),
    cellSpacing: merge.length(at, 'cellSpacing', from.cellSpacing, to.cellSpacing),
    ...(lineSpacing && { lineSpacing }),
    alignment: merge.kind(at, 'alignment', from.alignment, to.alignment),
    rotation: from.rotation,
    mirrored: from.mirrored,
  }
}

/**
 * Dots stay where they are drawn. Cells are the description's where they differ, line by line when there are as many lines;
 * with another number of lines the drawn lines stay when they say the same in sum, else the described lines are taken.
 */
function combineLines(from: BrailleBlock, to: BrailleBlock, at: string, corner: Point, merge: Merge): BrailleLine[] {
  if (to.lines.length === 0) return from.lines
  if (from.lines.length === 0) return moveBlock(to, corner).lines
  if (from.lines.length !== to.lines.length) {
    const [drawn, described] = [cellsOf(from), cellsOf(to)]
    if (described === undefined || drawn === described) return from.lines
    if (drawn !== undefined) merge.conflict(at, 'cells', drawn, described)
    return to.lines.map((line, i) => withDots(line, from.lines[i], corner))
  }
  return from.lines.map((drawn, i) => {
    const line = to.lines[i]
    const cells = merge.kind(`${at}/line/${i}`, 'cells', drawn.cells, line.cells)
    const text = cells === drawn.cells ? (drawn.text ?? line.text) : line.text
    return {
      place: mergePlace(drawn.place, line.place, corner),
      cells,
      ...(text !== undefined && { text }),
      dots: drawn.dots.length > 0 ? drawn.dots : moveLine(line, corner).dots,
      baseline: merge.point(`${at}/line/${i}`, 'baseline', drawn.baseline, line.baseline, corner),
    }
  })
}

const withDots = (line: BrailleLine, drawn: BrailleLine | undefined, corner: Point): BrailleLine => ({
  ...line,
  place: drawn ? mergePlace(drawn.place, line.place, corner) : moveLine(line, corner).place,
  dots: drawn?.dots ?? [],
  baseline: drawn?.baseline ?? missing('the drawing does not show this line'),
})

const moveLine = (line: BrailleLine, by: Point): BrailleLine => ({
  ...line,
  place: { ...line.place, ...(line.place.box && { box: moveBox(line.place.box, by) }) },
  dots: line.dots.map(({ x, y }) => ({ x: x + by.x, y: y + by.y })),
  baseline: isKnown(line.baseline)
    ? { ...line.baseline, value: { x: line.baseline.value.x + by.x, y: line.baseline.value.y + by.y } }
    : line.baseline,
})

const moveBlock = (block: BrailleBlock, by: Point): BrailleBlock => ({
  ...block,
  place: { ...block.place, ...(block.place.box && { box: moveBox(block.place.box, by) }) },
  lines: block.lines.map((line) => moveLine(line, by)),
})
