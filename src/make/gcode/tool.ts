import type { Point } from '../../geometry/point.js'
import { Refusal } from '../../refusal.js'
import { malformed } from './words.js'

/**
 * The tool of a machine as it follows a program, and the dots that it makes: in a cycle one at each place; in plain moves wherever it is
 * fed down (G1) and then goes up again. Millimetres, y up as in the program.
 */

/** Where a block sends the tool; an axis that it does not name stays as it is. */
export interface To {
  x: number | undefined
  y: number | undefined
  z: number | undefined
}

/** A dot, and the line of the program that makes it. */
export interface MadeDot extends Point {
  line: number
}

/** How deep the tool was, and on which line it went there. */
interface Depth {
  z: number
  line: number
}

/** Millimetres from the zero of the program; no machine reaches as far. */
export const FARTHEST_PLACE = 100_000

export class Tool {
  readonly made: MadeDot[] = []
  /** The height that a cycle starts from, as written. */
  retract: number | undefined
  /** G98: after each place of a cycle the tool goes back to the height from which the cycle began; G99: to its start. */
  returnsToStart = true
  private at: To = { x: undefined, y: undefined, z: undefined }
  private depth: number | undefined
  /** Where the tool was fed down to and has not come up from. */
  private down: (Point & Depth) | undefined
  /** It has gone down at the rapid rate, and has not come up. */
  private dropped: Depth | undefined
  /** It has gone sideways at its depth, on this line. */
  private cutAt: number | undefined
  /** It was sent to a place that the program does not name. */
  private isLost = false
  private lowestDrop: Depth | undefined
  private highest = -Infinity
  private lowest = Infinity

  constructor(private readonly most: number) {}

  startCycle(): void {
    this.depth = undefined
    this.retract = undefined
  }

  /** One place of a cycle. */
  drill(to: To, relative: boolean, line: number): void {
    const start = this.at.z
    this.at = { ...this.moved({ ...to, z: undefined }, relative, line), z: start }
    if (to.z !== undefined) this.depth = to.z
    if (this.depth === undefined) throw malformed('The cycle has no depth (Z).', line, 1)
    if (this.retract === undefined) throw malformed('The cycle does not say from which height it starts (R).', line, 1)
    // In relative programs the depth counts from the start of the plunge downwards.
    if (this.depth >= (relative ? 0 : this.retract))
      throw malformed('The cycle does not go down: its depth (Z) is not below its start (R).', line, 1)
    const retracted = relative ? (start ?? 0) + this.retract : this.retract
    this.make({ ...this.placed(line), z: relative ? retracted + this.depth : this.depth, line })
    this.at.z = this.returnsToStart ? Math.max(start ?? retracted, retracted) : retracted
  }

  /** A plain move. @param fed G1, not G0 */
  go(to: To, relative: boolean, fed: boolean, line: number): void {
    const before = this.at
    this.at = this.moved(to, relative, line)
    const { z } = this.at
    if (z === undefined) return
    if (before.z === undefined) {
      if (fed) throw malformed('The tool is fed to a height before the program has said how high it was.', line, 1)
      return
    }
    if (z < before.z) this.sink({ z, line }, fed)
    else if (z > before.z) this.rise()
    else if (before.x !== this.at.x || before.y !== this.at.y) this.cutAt ??= line
  }

  /** To a place of the machine, which the program does not tell. */
  leave(): void {
    this.rise()
    this.at = { x: undefined, y: undefined, z: undefined }
    this.isLost = true
  }

  /** @throws {Refusal} `malformed-program` when a rapid move goes as deep as a dot: it may or may not make one */
  end(): { lowest: number; highest: number } {
    this.rise()
    const { lowestDrop } = this
    if (this.made.length > 0 && lowestDrop && lowestDrop.z <= this.highest)
      throw malformed(
        'The tool goes as deep as a dot at the rapid rate (G0): whether that makes one cannot be told.',
        lowestDrop.line,
        1,
      )
    return { lowest: this.lowest, highest: this.highest }
  }

  private sink(depth: Depth, fed: boolean): void {
    this.cutAt = undefined
    if (fed || this.down) this.down = { ...this.placed(depth.line), ...depth }
    else this.dropped = depth
  }

  private rise(): void {
    const { down, dropped, cutAt } = this
    if (down && cutAt !== undefined)
      throw malformed('The tool is fed down and then goes sideways: that is a cut, not a dot.', cutAt, 1)
    if (down) this.make(down)
    else if (dropped && dropped.z < (this.lowestDrop?.z ?? Infinity)) this.lowestDrop = dropped
    this.down = undefined
    this.dropped = undefined
    this.cutAt = undefined
  }

  private make({ x, y, z, line }: Point & Depth): void {
    if (this.made.length >= this.most)
      throw new Refusal(
        'too-complex',
        'The program makes more dots than are read here.',
        [{ detail: 'Here one too many is made.', line }],
        { limit: this.most, actual: this.most + 1 },
      )
    this.made.push({ x, y, line })
    this.highest = Math.max(this.highest, z)
    this.lowest = Math.min(this.lowest, z)
  }

  private moved(to: To, relative: boolean, line: number): To {
    const axis = (name: 'x' | 'y' | 'z'): number | undefined => {
      const [from, by] = [this.at[name], to[name]]
      if (by === undefined) return from
      if (relative && from === undefined && this.isLost)
        throw malformed('A relative move begins at a place that the program does not tell.', line, 1)
      const place = relative ? (from ?? 0) + by : by
      if (Math.abs(place) > FARTHEST_PLACE)
        throw malformed('The tool goes farther from the zero of the program than any machine reaches.', line, 1)
      return place
    }
    return { x: axis('x'), y: axis('y'), z: axis('z') }
  }

  private placed(line: number): Point {
    const { x, y } = this.at
    if (x === undefined || y === undefined)
      throw malformed('The tool goes down before the program has said where: X and Y.', line, 1)
    return { x, y }
  }
}
