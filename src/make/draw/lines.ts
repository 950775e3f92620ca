import { joinWords, type SetLine, type SetWord } from './setting.js'

/** Words into lines. Print is broken between words only. */

/** As few lines as the width allows, each as full as it goes; a word that is wider stands alone. */
export const fill = (words: readonly SetWord[], space: number, width: number): SetLine[] =>
  filled(words, space, width).map((line) => joinWords(line, space))

function filled(words: readonly SetWord[], space: number, width: number): SetWord[][] {
  const lines: SetWord[][] = []
  let used = 0
  for (const word of words) {
    const longer = used + space + word.width
    const last = lines.at(-1)
    if (last && longer <= width) {
      last.push(word)
      used = longer
    } else {
      lines.push([word])
      used = word.width
    }
  }
  return lines
}

/** The same number of lines as `fill` takes, at the least width that allows it, so that the lines are of like length. */
export function balance(words: readonly SetWord[], space: number, width: number): SetLine[] {
  const count = filled(words, space, width).length
  const widths = widthsOfRuns(words, space).filter((one) => one < width)
  // The wider the room, the fewer the lines.
  let [low, high] = [0, widths.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (filled(words, space, widths[middle]).length <= count) high = middle
    else low = middle + 1
  }
  const lines = fill(words, space, widths[low] ?? width)
  return widest(lines) <= width ? lines : fill(words, space, width)
}

/** Widths of all runs of successive words, ascending. */
function widthsOfRuns(words: readonly SetWord[], space: number): number[] {
  const widths = words.flatMap((_, from) => {
    let width = -space
    return words.slice(from).map((word) => (width += space + word.width))
  })
  return widths.sort((a, b) => a - b)
}

export const widest = (lines: readonly { width: number }[]): number => Math.max(0, ...lines.map(({ width }) => width))
