/** Numbers as SVG writes them (SVG 1.1, 4.2 and 8.3.9): `1`, `-.5`, `+1e-3`, `2.`. Scanned from left to right, never guessed. */

const NUMBER = /[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?/y
const BLANKS = /[ \t\r\n\f]*/y
const COMMA_OR_BLANKS = /[ \t\r\n\f]*,?[ \t\r\n\f]*/y

/** A place in a text that moves as things are read off it. */
export class Scanner {
  at = 0

  constructor(readonly text: string) {}

  get atEnd(): boolean {
    return this.at >= this.text.length
  }

  /** What the sticky pattern matches here; moves past it. */
  take(pattern: RegExp): string | undefined {
    pattern.lastIndex = this.at
    const found = pattern.exec(this.text)
    if (!found) return undefined
    this.at += found[0].length
    return found[0]
  }

  /** A finite number here, or nothing. */
  number(): number | undefined {
    const start = this.at
    const written = this.take(NUMBER)
    const value = written === undefined ? NaN : Number(written)
    if (Number.isFinite(value)) return value
    this.at = start
    return undefined
  }

  skipBlanks(): void {
    this.take(BLANKS)
  }

  /** Blanks with at most one comma in them. Whether there was a comma. */
  skipSeparator(): boolean {
    return this.take(COMMA_OR_BLANKS)?.includes(',') ?? false
  }
}

/** A text that is one number and nothing else, blanks around it allowed. */
export function parseNumber(text: string): number | undefined {
  const scanner = new Scanner(text)
  scanner.skipBlanks()
  const value = scanner.number()
  scanner.skipBlanks()
  return scanner.atEnd ? value : undefined
}

/** A list of numbers, separated by blanks, commas or nothing. `complete` is false when the text holds anything else. */
export function parseNumbers(text: string): { numbers: number[]; complete: boolean } {
  const scanner = new Scanner(text)
  const numbers: number[] = []
  scanner.skipBlanks()
  let comma = false
  while (!scanner.atEnd) {
    const value = scanner.number()
    if (value === undefined) return { numbers, complete: false }
    numbers.push(value)
    comma = scanner.skipSeparator()
  }
  return { numbers, complete: !comma }
}
