import type { ComparedSign } from './compared-sign.js'

/** The words of a sign whatever their lines, order and capitals: a room’s number may stand above or below its name. */
export const wordsOf = ({ wording }: ComparedSign): string | null => {
  if (!wording) return null
  const words =
    wording
      .join(' ')
      .normalize('NFKC')
      .toUpperCase()
      .match(/[\p{L}\p{N}]+/gu) ?? []
  return words.sort().join(' ')
}
