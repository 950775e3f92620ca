/**
 * Path data by the letter: some of its subpaths taken out or moved, all others left as they are written. Subpaths are counted as they are
 * drawn: a move that draws nothing is none, and what is drawn behind a close without a move is one (SVG 1.1, 8.3).
 */

/** What becomes of a subpath: taken out, or moved by so much in the path's own coordinates. */
export type SubpathChange = 'remove' | { x: number; y: number }

/** How many numbers each command takes (SVG 1.1, 8.3.9). */
const PARAMETERS: Record<string, number> = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, t: 2, a: 7, z: 0 }
/** Of the numbers of an arc, those that are one digit. */
const FLAGS = [3, 4]
const COMMAND = /([MLHVCSQTAZmlhvcsqtaz])([^MLHVCSQTAZmlhvcsqtaz]*)/g
const NUMBER = /\s*,?\s*([-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)/y
const FLAG = /\s*,?\s*([01])/y

interface Step {
  command: string
  written: string
  numbers: number[]
}

interface Subpath {
  /** The move before it, where it has one of its own. */
  steps: Step[]
  /** Where it starts, in the path's coordinates. */
  x: number
  y: number
  hasMove: boolean
  draws: boolean
}

/** How many subpaths the data draw; undefined when they cannot be taken apart. */
export const subpathsIn = (data: string): number | undefined => subpathsOf(data)?.filter(({ draws }) => draws).length

/**
 * The data with some subpaths changed; undefined when they cannot be taken apart.
 * @param decimals of the coordinates that have to be written anew
 */
export function withSubpaths(
  data: string,
  changeOf: (index: number) => SubpathChange | undefined,
  decimals: number,
): string | undefined {
  const subpaths = subpathsOf(data)
  if (!subpaths) return undefined
  let index = 0
  let moved = false
  const pieces = subpaths.map((subpath) => {
    const change = subpath.draws ? changeOf(index++) : undefined
    const piece = change === 'remove' ? '' : writtenAs(subpath, change, moved, decimals)
    if (change) moved = true
    return piece
  })
  return pieces.join('').trim()
}

function writtenAs(
  subpath: Subpath,
  by: { x: number; y: number } | undefined,
  moved: boolean,
  decimals: number,
): string {
  const shift = by ?? { x: 0, y: 0 }
  const say = (value: number) => String(Number(value.toFixed(decimals)))
  const startAnew = by !== undefined || (moved && (!subpath.hasMove || subpath.steps[0].command === 'm'))
  const [first, ...rest] = subpath.steps
  const others = subpath.hasMove ? rest : subpath.steps
  const start = startAnew
    ? `M${say(subpath.x + shift.x)},${say(subpath.y + shift.y)}${furtherLines(subpath, first, shift, say)} `
    : subpath.hasMove
      ? first.command + first.written
      : ''
  return start + others.map((step) => (by ? movedStep(step, by, say) : step.command + step.written)).join('')
}

/** Pairs behind those of a move are lines (SVG 1.1, 8.3.2). */
function furtherLines(
  { hasMove }: Subpath,
  { command, numbers }: Step,
  shift: { x: number; y: number },
  say: (value: number) => string,
): string {
  if (!hasMove || numbers.length <= 2) return ''
  const lines = numbers.slice(2)
  if (command === 'm') return ` l${lines.map(say).join(' ')}`
  return ` L${lines.map((value, i) => say(value + (i % 2 === 0 ? shift.x : shift.y))).join(' ')}`
}

function movedStep({ command, written, numbers }: Step, by: { x: number; y: number }, say: (value: number) => string) {
  if (command === command.toLowerCase() || command === 'Z') return command + written
  const count = PARAMETERS[command.toLowerCase()]
  const shifted = numbers.map((value, i) => {
    const at = i % count
    if (command === 'H') return value + by.x
    if (command === 'V') return value + by.y
    if (command === 'A') return at === count - 2 ? value + by.x : at === count - 1 ? value + by.y : value
    return at % 2 === 0 ? value + by.x : value + by.y
  })
  return `${command}${shifted.map(say).join(' ')} `
}

function subpathsOf(data: string): Subpath[] | undefined {
  const subpaths: Subpath[] = []
  let [x, y, startX, startY] = [0, 0, 0, 0]
  let current: Subpath | undefined
  for (const [, command, written] of data.matchAll(COMMAND)) {
    const numbers = numbersOf(command.toLowerCase(), written)
    if (!numbers) return undefined
    const step: Step = { command, written, numbers }
    const from = command === command.toLowerCase() ? { x, y } : { x: 0, y: 0 }
    if (command.toLowerCase() === 'm') {
      ;[startX, startY] = [from.x + numbers[0], from.y + numbers[1]]
      current = { steps: [step], x: startX, y: startY, hasMove: true, draws: numbers.length > 2 }
      subpaths.push(current)
    } else {
      if (!current) {
        current = { steps: [], x, y, hasMove: false, draws: false }
        subpaths.push(current)
      }
      current.steps.push(step)
      current.draws = true
    }
    ;[x, y] = endOf(step, { x, y }, { x: startX, y: startY })
    if (command.toLowerCase() === 'z') current = undefined
  }
  return subpaths
}

/** Undefined where the numbers are not whole sets of what the command takes. */
function numbersOf(kind: string, written: string): number[] | undefined {
  const count = PARAMETERS[kind]
  const numbers: number[] = []
  let at = 0
  while (written.slice(at).trim() !== '') {
    const pattern = kind === 'a' && FLAGS.includes(numbers.length % count) ? FLAG : NUMBER
    pattern.lastIndex = at
    const found = pattern.exec(written)
    if (!found) return undefined
    numbers.push(Number(found[1]))
    at = pattern.lastIndex
  }
  const whole = count === 0 ? numbers.length === 0 : numbers.length > 0 && numbers.length % count === 0
  return whole ? numbers : undefined
}

function endOf({ command, numbers }: Step, pen: { x: number; y: number }, start: { x: number; y: number }) {
  const kind = command.toLowerCase()
  if (kind === 'z') return [start.x, start.y]
  const count = PARAMETERS[kind]
  let { x, y } = pen
  for (let i = 0; i < numbers.length; i += count) {
    const relative = command === kind
    if (kind === 'h') x = numbers[i] + (relative ? x : 0)
    else if (kind === 'v') y = numbers[i] + (relative ? y : 0)
    else [x, y] = [numbers[i + count - 2] + (relative ? x : 0), numbers[i + count - 1] + (relative ? y : 0)]
  }
  return [x, y]
}
