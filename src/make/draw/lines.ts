import { joinWords, type SetLine, type SetWord } from './setting.js'

/** Words into lines. Print is broken between words only. */

/** As few lines as the width allows, each as full as it goes; a word that is wider stands alone. */
export function fill(words: readonly SetWord[], space: number, width: number): SetLine[] {
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
  return lines.map((line) => joinWords(line, space))
}

/** The same number of lines as `fill` takes, at the least width that allows it, so that the lines are of like length. */
export function balance(words: readonly SetWord[], space: number, width: number): SetLine[] {
  const lines = fill(words, space, width)
  const widths = words.flatMap((_, from) =>
    words.slice(from).map((__, i) => joinWords(words.slice(from, from + i + 1), space).width),
  )
  const least = widths
    .filter((one) => one < width && fill(words, space, one).length === lines.length)
    .filter((one) => widest(fill(words, space, one)) <= one)
    .sort((a, b) => a - b)[0]
  return least === undefined ? lines : fill(words, space, least)
}

export const widest = (lines: readonly { width: number }[]): number => Math.max(0, ...lines.map(({ width }) => width))
