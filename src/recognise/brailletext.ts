import { boxOfOutlines, unionOfBoxes } from '../geometry/box.js'
import type { Translator } from '../braille/translator.js'
import { BRAILLE_CODES, missing, type BrailleBlock, type BrailleLine, type Unknown } from '../sign/sign.js'
import { alongLine, downLine, lieOf } from './frame.js'
import type { LaidRun } from './layout.js'

/**
 * Braille written as Unicode braille characters in live text: the cells are certain, the dots depend on the typeface and on
 * the machine that draws it.
 */

const BRAILLE = /[\u2800-\u28ff]/
const NOT_BRAILLE = /[^\u2800-\u28ff\s]/
const BLANK = '\u2800'

const BY_FONT: Unknown = {
  unknown: 'unreadable',
  why: 'the braille is live text, so that its dots depend on the typeface of the machine that draws it',
}

/** Share of the em within which two runs stand on one line. */
const SAME_LINE = 0.3

/** Whether a text is braille characters and blanks, some of both, or has none. */
export function brailleIn(text: string): 'all' | 'some' | 'none' {
  if (!BRAILLE.test(text)) return 'none'
  return NOT_BRAILLE.test(text) ? 'some' : 'all'
}

/** One block of all runs that are braille characters. */
export function brailleOfText(runs: readonly LaidRun[], translator: Translator, element: string): BrailleBlock {
  const frame = runs[0].frame
  const along = frame?.along ?? { x: 1, y: 0 }
  const rows: { down: number; runs: LaidRun[] }[] = []
  for (const run of runs) {
    const down = run.place ? downLine(run.place, along) : Infinity
    const row = rows.find((r) => Math.abs(r.down - down) <= SAME_LINE * (frame?.emAcross ?? 0))
    if (row) row.runs.push(run)
    else rows.push({ down, runs: [run] })
  }
  rows.sort((a, b) => a.down - b.down)
  const lines = rows.map((row, i): BrailleLine => {
    row.runs.sort((a, b) => leftOf(a, along) - leftOf(b, along))
    const cells = row.runs.map((r) => cellsOf(r.drawn.text)).join(BLANK)
    const box = boxOfOutlines(row.runs.flatMap((r) => r.characters.flatMap((c) => c.outlines)))
    const place = { element: `${element}/line/${i}`, box, source: row.runs[0].drawn.source }
    return {
      place,
      cells: { value: cells, basis: 'drawn' },
      text: textOf(cells, translator),
      dots: [],
      baseline: BY_FONT,
    }
  })
  return {
    place: { element, box: unionOfBoxes(lines.map((l) => l.place.box)), source: runs[0].drawn.source },
    lines,
    dotBaseDiameter: BY_FONT,
    dotHeight: missing('a drawing does not say how high dots are'),
    dotShape: missing('a drawing does not say the section of dots'),
    dotSpacing: BY_FONT,
    cellSpacing: BY_FONT,
    lineSpacing: lines.length > 1 ? BY_FONT : undefined,
    alignment: missing(),
    ...(frame ? lieOf(frame) : { rotation: 0, mirrored: false }),
  }
}

const leftOf = (run: LaidRun, along: { x: number; y: number }) => (run.place ? alongLine(run.place, along) : Infinity)

/** The cells of a text: braille characters, and a blank cell for a space between them. */
const cellsOf = (text: string): string => text.trim().replace(/\s/g, BLANK)

function textOf(cells: string, translator: Translator): string | undefined {
  for (const code of BRAILLE_CODES) {
    const text = translator.toText(cells, code)
    if (text !== undefined) return text
  }
  return undefined
}
