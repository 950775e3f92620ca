import { isKnown, type BrailleBlock, type Fact, type Lettering, type Sign } from '../sign/sign.js'
import { kept } from './numbers.js'
import { reportBox } from './place.js'
import type { ReportReading } from './schema.js'

/** The reading of a sign as the report gives it: what a finger or an eye would read off it. */
export function readingOf(sign: Sign): ReportReading {
  return {
    panel: { width: length(sign.panel.width), height: length(sign.panel.height) },
    lettering: sign.lettering.flatMap(letteringLines),
    braille: sign.braille.map(brailleBlock),
    pictograms: sign.pictograms.map(({ meaning, field }) => ({
      meaning: meaning ?? null,
      field: isKnown(field) ? reportBox(field.value) : null,
    })),
    borders: sign.borders.flatMap(({ box, raised }) => {
      const reported = reportBox(box)
      return reported ? [{ box: reported, raised: isKnown(raised) ? raised.value : null }] : []
    }),
  }
}

const length = (fact: Fact<number> | undefined): number | null => (isKnown(fact) ? kept(fact.value) : null)

function letteringLines({ place, part, text, lines, characterHeight }: Lettering): ReportReading['lettering'] {
  const height = length(characterHeight)
  if (lines.length === 0)
    return [{ text: isKnown(text) ? text.value : null, part, characterHeight: height, box: reportBox(place.box) }]
  return lines.map((line) => ({
    text: isKnown(line.text) ? line.text.value : null,
    part,
    characterHeight: height,
    box: reportBox(line.place.box),
  }))
}

function brailleBlock(block: BrailleBlock): ReportReading['braille'][number] {
  return {
    lines: block.lines.map((line) => ({
      cells: isKnown(line.cells) ? line.cells.value : null,
      text: line.text ?? null,
      box: reportBox(line.place.box),
    })),
    dots: block.lines.reduce(
      (sum, line) => sum + (line.dots.length || (isKnown(line.cells) ? dotsIn(line.cells.value) : 0)),
      0,
    ),
    dotBaseDiameter: length(block.dotBaseDiameter),
    dotSpacing: length(block.dotSpacing),
    cellSpacing: length(block.cellSpacing),
    lineSpacing: length(block.lineSpacing),
    rotation: kept(block.rotation) ?? 0,
    mirrored: block.mirrored,
  }
}

const FIRST_CELL = 0x2800
const LAST_CELL = 0x28ff

/** How many dots a run of Unicode braille has: one for each bit of a cell (The Unicode Standard, Braille Patterns). */
export function dotsIn(cells: string): number {
  let dots = 0
  for (const cell of cells) {
    const code = cell.codePointAt(0) ?? 0
    if (code < FIRST_CELL || code > LAST_CELL) continue
    for (let bits = code - FIRST_CELL; bits > 0; bits >>= 1) dots += bits & 1
  }
  return dots
}
