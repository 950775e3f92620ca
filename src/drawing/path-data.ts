/**
 * Path data by the grammar of SVG 1.1, 8.3.9: all commands, numbers without blanks between them, flags of arcs in one digit.
 * Commands are told in absolute coordinates as they are read; an error ends the reading and leaves what stands before it (F.2).
 */

/** What a path draws. Coordinates are absolute; the pen stands where the command before left it. */
export interface PathSink {
  move(x: number, y: number): void
  line(x: number, y: number): void
  cubic(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void
  quadratic(x1: number, y1: number, x: number, y: number): void
  /** @param rotation degrees. */
  arc(rx: number, ry: number, rotation: number, large: boolean, positive: boolean, x: number, y: number): void
  close(): void
}

/** Whether the whole text was path data. */
export const readPathData = (text: string, sink: PathSink): boolean => new Reader(text, sink).read()

const codeOf = (character: string): number => character.charCodeAt(0)
const [ZERO, ONE, NINE, PLUS, MINUS, POINT, COMMA, E] = Array.from('019+-.,e', codeOf)
const [M, L, H, V, C, S, Q, T, A, Z] = Array.from('mlhvcsqtaz', codeOf)
const [SPACE, TAB, FEED, PAGE, RETURN] = Array.from(' \t\n\f\r', codeOf)
/** What a small letter has and its capital has not. */
const SMALL = codeOf('a') - codeOf('A')

/** How many numbers follow each command. */
const PARAMETERS = new Map([
  [M, 2],
  [L, 2],
  [H, 1],
  [V, 1],
  [C, 6],
  [S, 4],
  [Q, 4],
  [T, 2],
  [A, 7],
])
/** Of the numbers of an arc, those that are a single 0 or 1. */
const FLAGS = { first: 3, last: 4 }

/** A whole number of so many digits, and a power of ten of such an exponent, are exact, and so is the rounding of their quotient. */
const EXACT_DIGITS = 15
const POWERS = Array.from({ length: EXACT_DIGITS + 1 }, (_, i) => 10 ** i)

const isDigit = (code: number): boolean => code >= ZERO && code <= NINE

class Reader {
  private at = 0
  private x = 0
  private y = 0
  private startX = 0
  private startY = 0
  /** The last control of the curve before, for a smooth one: only after one of the same kind. */
  private bend: 'cubic' | 'quadratic' | undefined
  private bendX = 0
  private bendY = 0
  private readonly numbers = new Float64Array(7)

  constructor(
    private readonly text: string,
    private readonly sink: PathSink,
  ) {}

  read(): boolean {
    const { text } = this
    this.skipBlanks()
    if (this.at < text.length && (text.charCodeAt(this.at) | SMALL) !== M) return false
    while (this.at < text.length) {
      const command = text.charCodeAt(this.at++)
      this.skipBlanks()
      if ((command | SMALL) === Z) this.close()
      else if (!this.run(command)) return false
    }
    return true
  }

  /** A command with all its sets of numbers; false at an error, with the whole sets before it drawn. */
  private run(command: number): boolean {
    const relative = command >= SMALL + codeOf('A')
    let kind = relative ? command : command + SMALL
    const count = PARAMETERS.get(kind)
    if (count === undefined) return false
    for (let more = true; more;) {
      let comma = false
      for (let i = 0; i < count; i++) {
        const value = kind === A && i >= FLAGS.first && i <= FLAGS.last ? this.flag() : this.number()
        if (Number.isNaN(value)) return false
        this.numbers[i] = value
        comma = this.skipSeparator()
      }
      this.draw(kind, relative ? this.x : 0, relative ? this.y : 0)
      // Further pairs behind a move are lines.
      if (kind === M) kind = L
      more = comma || this.isAtNumber()
    }
    return true
  }

  /** @param left what the numbers count from */
  private draw(kind: number, left: number, top: number): void {
    const { numbers: n, sink } = this
    switch (kind) {
      case M:
        this.moveTo(left + n[0], top + n[1])
        return
      case L:
        return this.lineTo(left + n[0], top + n[1])
      case H:
        return this.lineTo(left + n[0], this.y)
      case V:
        return this.lineTo(this.x, top + n[0])
      case C:
        return this.curveTo(left + n[0], top + n[1], left + n[2], top + n[3], left + n[4], top + n[5])
      case S: {
        const smooth = this.bend === 'cubic'
        const x1 = smooth ? this.x - (this.bendX - this.x) : this.x
        const y1 = smooth ? this.y - (this.bendY - this.y) : this.y
        return this.curveTo(x1, y1, left + n[0], top + n[1], left + n[2], top + n[3])
      }
      case Q:
        return this.bendTo(left + n[0], top + n[1], left + n[2], top + n[3])
      case T: {
        const smooth = this.bend === 'quadratic'
        const x1 = smooth ? this.x - (this.bendX - this.x) : this.x
        const y1 = smooth ? this.y - (this.bendY - this.y) : this.y
        return this.bendTo(x1, y1, left + n[0], top + n[1])
      }
      default:
        sink.arc(n[0], n[1], n[2], n[3] === 1, n[4] === 1, left + n[5], top + n[6])
        this.stand(left + n[5], top + n[6])
    }
  }

  private moveTo(x: number, y: number): void {
    this.sink.move(x, y)
    this.stand(x, y)
    this.startX = x
    this.startY = y
  }

  private lineTo(x: number, y: number): void {
    this.sink.line(x, y)
    this.stand(x, y)
  }

  private curveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void {
    this.sink.cubic(x1, y1, x2, y2, x, y)
    this.stand(x, y, 'cubic', x2, y2)
  }

  private bendTo(x1: number, y1: number, x: number, y: number): void {
    this.sink.quadratic(x1, y1, x, y)
    this.stand(x, y, 'quadratic', x1, y1)
  }

  private close(): void {
    this.sink.close()
    this.stand(this.startX, this.startY)
  }

  private stand(x: number, y: number, bend?: Reader['bend'], bendX = 0, bendY = 0): void {
    this.x = x
    this.y = y
    this.bend = bend
    this.bendX = bendX
    this.bendY = bendY
  }

  private skipBlanks(): void {
    for (; ; this.at++) {
      const code = this.text.charCodeAt(this.at)
      if (code !== SPACE && code !== FEED && code !== TAB && code !== RETURN && code !== PAGE) return
    }
  }

  /** Blanks with at most one comma in them. Whether there was a comma. */
  private skipSeparator(): boolean {
    this.skipBlanks()
    if (this.text.charCodeAt(this.at) !== COMMA) return false
    this.at++
    this.skipBlanks()
    return true
  }

  private isAtNumber(): boolean {
    const code = this.text.charCodeAt(this.at)
    return isDigit(code) || code === MINUS || code === POINT || code === PLUS
  }

  /** NaN for anything but 0 or 1. */
  private flag(): number {
    const code = this.text.charCodeAt(this.at)
    if (code !== ZERO && code !== ONE) return NaN
    this.at++
    return code - ZERO
  }

  /** The number that starts here, never -0; NaN when none does. */
  private number(): number {
    const { text } = this
    const start = this.at
    let i = start
    let code = text.charCodeAt(i)
    const negative = code === MINUS
    if (negative || code === PLUS) code = text.charCodeAt(++i)
    let [whole, digits, decimals] = [0, 0, 0]
    for (; isDigit(code); code = text.charCodeAt(++i), digits++) whole = 10 * whole + code - ZERO
    if (code === POINT) {
      code = text.charCodeAt(++i)
      for (; isDigit(code); code = text.charCodeAt(++i), decimals++) whole = 10 * whole + code - ZERO
    }
    if (digits + decimals === 0) return NaN
    const plain = (code | SMALL) !== E
    if (!plain) {
      code = text.charCodeAt(++i)
      if (code === MINUS || code === PLUS) code = text.charCodeAt(++i)
      if (!isDigit(code)) return NaN
      while (isDigit(code)) code = text.charCodeAt(++i)
    }
    this.at = i
    if (!plain || digits + decimals > EXACT_DIGITS) return Number(text.slice(start, i)) + 0
    const value = whole / POWERS[decimals]
    return negative ? 0 - value : value
  }
}
