import { Refusal } from '../../refusal.js'
import { blocksOf, malformed, type Block, type Word } from './words.js'
import { Tool, type MadeDot } from './tool.js'

/**
 * A drilling program as the dots that it makes: G0, G1, G81 to G83, G20 and G21, G90 and G91, comments (ISO 6983-1; cycles as in
 * RS274/NGC, T. R. Kramer and others, NIST, 2000; from memory). Whatever could put a dot elsewhere and is not worked out is refused with
 * its line, never passed over.
 */

export interface Program {
  /** Middles of the dots in the order of the program; x to the right, y down, millimetres from the zero of the program. */
  dots: MadeDot[]
  units: 'mm' | 'in'
  /** What the program does not say and was taken so. */
  assumptions: { about: string; text: string }[]
}

export const MOST_PROGRAM_DOTS = 100_000

const MILLIMETRES_PER_INCH = 25.4

/** Words that change nothing of where a dot comes: planes of X and Y, feeds, tools, offsets of the tool's length, accuracy of the path. */
const HARMLESS_G = [17, 40, 43, 49, 54, 61, 61.1, 64, 94]
const HARMLESS_M = [0, 1, 3, 4, 5, 6, 7, 8, 9, 48, 49]
const ENDS = [2, 30]
const HARMLESS_LETTERS = ['F', 'S', 'T', 'D', 'H', 'Q', 'P']
const CYCLES = [81, 82, 83]
/** To places of the machine, which the program does not tell: mostly its end. */
const AWAY = [28, 30, 53]
const READ_G = 'G0, G1, G4, G20, G21, G80 to G83, G90, G91'

/**
 * @throws {Refusal} `malformed-program` with line and column; `scale-unknown` when no unit is said; `no-tactile-elements` when no dot is
 * made; `too-large` and `too-complex` beyond the limits
 */
export function readProgram(bytes: Uint8Array): Program {
  const reading = new Reading()
  for (const block of blocksOf(bytes)) {
    reading.take(block)
    if (reading.ended) break
  }
  return reading.end()
}

class Reading {
  ended = false
  private readonly tool = new Tool(MOST_PROGRAM_DOTS)
  private units: 'mm' | 'in' | undefined
  private relative: boolean | undefined
  private motion: number | undefined

  take(block: Block): void {
    const { line } = block
    const values = new Map<string, Word>()
    let pause = false
    let away = false
    const motions: Word[] = []
    for (const word of block.words) {
      const { letter, value } = word
      if (letter === 'G') {
        if (value === 0 || value === 1 || CYCLES.includes(value)) motions.push(word)
        else if (value === 80) this.motion = undefined
        else if (value === 4) pause = true
        else if (AWAY.includes(value)) away = true
        else this.mode(word, line)
      } else if (letter === 'M') this.machine(word, line)
      else if (values.has(letter)) throw malformed(`“${letter}” stands twice in one block.`, line, word.column)
      else values.set(letter, word)
    }
    if (motions.length > 1) throw malformed('One block holds two kinds of motion.', line, motions[1].column)
    const [motion] = motions
    if (motion) this.begin(motion.value)
    const places = ['X', 'Y', 'Z'].filter((letter) => values.has(letter))
    for (const word of values.values()) this.known(word, line)
    if (away) return this.tool.leave()
    // A pause and the end of a cycle move nothing; R, P and Q without a place only set the cycle.
    if (places.length > 0 && pause) throw malformed('A pause and a move stand in one block.', line, 1)
    if (values.has('R')) this.tool.retract = this.length(values.get('R'), line)
    if (places.length > 0) this.move(values, line)
    if (this.isCycle && values.has('L')) this.once(values.get('L'), line)
  }

  private begin(motion: number): void {
    if (CYCLES.includes(motion) && !this.isCycle) this.tool.startCycle()
    this.motion = motion
  }

  private get isCycle(): boolean {
    return this.motion !== undefined && CYCLES.includes(this.motion)
  }

  private mode({ value, column }: Word, line: number): void {
    if (value === 98 || value === 99) this.tool.returnsToStart = value === 98
    else if (value === 20 || value === 21) {
      const units = value === 20 ? 'in' : 'mm'
      if (this.units !== undefined && units !== this.units)
        throw malformed('The program changes its units; one that keeps them can be read.', line, column)
      this.units = units
    } else if (value === 90 || value === 91) this.relative = value === 91
    else if (!HARMLESS_G.includes(value))
      throw malformed(`G${value} is not worked out here; ${READ_G} are.`, line, column)
  }

  private machine({ value, column }: Word, line: number): void {
    if (ENDS.includes(value)) this.ended = true
    else if (!HARMLESS_M.includes(value)) throw malformed(`M${value} is not worked out here.`, line, column)
  }

  private known({ letter, column }: Word, line: number): void {
    if (!['X', 'Y', 'Z', 'R', 'L', 'K', ...HARMLESS_LETTERS].includes(letter))
      throw malformed(`The word “${letter}” is not worked out here.`, line, column)
    if (letter === 'R' && !this.isCycle) throw malformed('“R” belongs to a cycle, but none is on.', line, column)
    if (letter === 'K') throw malformed('A cycle that repeats itself (K) is not worked out here.', line, column)
  }

  private once(word: Word | undefined, line: number): void {
    if (word && word.value !== 1)
      throw malformed('A cycle that repeats itself (L) is not worked out here.', line, word.column)
  }

  private move(values: Map<string, Word>, line: number): void {
    if (this.motion === undefined)
      throw malformed(
        'A place is named, but no motion is on: G0, G1 or a cycle.',
        line,
        values.values().next().value?.column ?? 1,
      )
    const relative = this.relative ?? false
    const to = {
      x: this.length(values.get('X'), line),
      y: this.length(values.get('Y'), line),
      z: this.length(values.get('Z'), line),
    }
    if (this.isCycle) this.tool.drill(to, relative, line)
    else this.tool.go(to, relative, this.motion === 1, line)
  }

  private length(word: Word | undefined, line: number): number | undefined {
    if (!word) return undefined
    if (this.units === undefined)
      throw new Refusal(
        'scale-unknown',
        'The program says neither G20 nor G21, so that its numbers may be inches or millimetres.',
        [
          {
            detail: 'Here the first length stands. Put G21 (millimetres) or G20 (inches) before it.',
            line,
            column: word.column,
          },
        ],
      )
    return this.units === 'in' ? word.value * MILLIMETRES_PER_INCH : word.value
  }

  end(): Program {
    const { lowest, highest } = this.tool.end()
    const dots = this.tool.made
    if (dots.length === 0)
      throw new Refusal(
        'no-tactile-elements',
        'The program makes no dots: it holds no drilling cycle and no plunge at a feed.',
      )
    return {
      dots: dots.map(({ x, y, line }) => ({ x, y: y === 0 ? 0 : -y, line })),
      units: this.units ?? 'mm',
      assumptions: [
        ...(this.relative === undefined ? [{ about: 'program', text: NOT_SAID }] : []),
        ...(highest - lowest > SAME_DEPTH ? [{ about: 'program', text: DEPTHS_DIFFER }] : []),
      ],
    }
  }
}

const NOT_SAID = 'The program says neither G90 nor G91; its places are taken to be absolute.'
const DEPTHS_DIFFER = 'The plunges of the program end at different depths; each is taken for a dot.'
/** Millimetres. */
const SAME_DEPTH = 0.001
