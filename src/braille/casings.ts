/** Ways to write a word in capitals and small letters. */

const LETTERS = /\p{L}+/gu
export const capitalised = (run: string): string => run.charAt(0).toUpperCase() + run.slice(1).toLowerCase()

/** Lower case, first letter capital, each run of letters with a capital, all capitals, as written; no doubles. */
export function casingsOf(word: string): string[] {
  const lower = word.toLowerCase()
  return [
    ...new Set([
      lower,
      lower.replace(/\p{L}/u, (letter) => letter.toUpperCase()),
      lower.replace(/[\p{L}'\u2019]+/gu, capitalised),
      lower.replace(LETTERS, capitalised),
      word.toUpperCase(),
      word,
    ]),
  ]
}

export const sameLetters = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase()

/** Runs of letters of a text (an apostrophe between letters belongs to the run). */
export const letterRuns = (text: string): string[] => text.match(/\p{L}+(?:['\u2019]\p{L}+)*/gu) ?? []

/** The words of a list of names, in lower case. */
export const wordsOfNames = (names: readonly string[]): Set<string> =>
  new Set(names.flatMap((name) => letterRuns(name)).map((word) => word.toLowerCase().replaceAll('\u2019', "'")))

/**
 * Small letters everywhere but in the listed names, which keep their own capitals, and in letters that stand alone.
 * A name takes its capitals from the text when it has small letters there, else from the list.
 */
export function lowerCaseButNames(text: string, names: readonly string[]): string {
  const spelling = new Map(names.flatMap((name) => letterRuns(name)).map((word) => [word.toLowerCase(), word]))
  return text.replace(/\p{L}+(?:['\u2019]\p{L}+)*/gu, (run) => {
    if (Array.from(run).length === 1) return run
    const listed = spelling.get(run.toLowerCase().replaceAll('\u2019', "'"))
    if (listed === undefined) return run.toLowerCase()
    return run === run.toUpperCase() ? listed : run
  })
}
