import { plain } from '../markup.js'

/** Names of files out of a client's words, that every file system takes and none reads as something else. */

/** Letters, numbers, dots and low lines; all else becomes a hyphen, so that no name leads to another folder or is an option. */
const FOREIGN = /[^\p{L}\p{M}\p{N}._]+/gu
const EDGES = /^[-._]+|[-._]+$/g
const ENDING = /\.[a-z0-9]{1,5}$/i
/** Names that Windows keeps for devices, whatever their ending. */
const DEVICE = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i
/** Characters of a name without its ending: four bytes each at most stay below the 255 bytes that file systems take. */
const LONGEST = 50

/** One name without folders. @param other what it is called when nothing of the text is left */
export function cleanName(text: string, other: string): string {
  const clean = trimmed(plain(text).normalize('NFC').replace(FOREIGN, '-')) || other
  return DEVICE.test(clean) ? `_${clean}` : clean
}

/** The same for a file: its last part, with its ending. */
export function cleanFileName(path: string, other: string): string {
  const last = path.split(/[/\\]/).at(-1) ?? ''
  const ending = ENDING.exec(last)?.[0] ?? ''
  return cleanName(last.slice(0, last.length - ending.length), other) + ending.toLowerCase()
}

const trimmed = (text: string): string =>
  Array.from(text.replace(EDGES, '')).slice(0, LONGEST).join('').replace(EDGES, '')

/** Names in one folder: each once, also where capitals and small letters are the same. */
export class Names {
  private readonly taken = new Set<string>()

  /** The name, with a number behind it (before its ending) when it is taken. */
  unique(name: string): string {
    const ending = ENDING.exec(name)?.[0] ?? ''
    const stem = name.slice(0, name.length - ending.length)
    let free = name
    for (let number = 2; this.taken.has(keyOf(free)); number++) free = `${stem}-${number}${ending}`
    this.taken.add(keyOf(free))
    return free
  }
}

/** Capitals first: some letters become two only then. */
const keyOf = (name: string): string => name.normalize('NFC').toUpperCase().toLowerCase()
