import type { DotPlan } from '../dot-plan/schema.js'
import { entryOf } from '../dot-plan/head.js'

/**
 * A plan as a program of drilling moves: ISO 6983-1 words, absolute coordinates, G81 or G82 cycles or plain G0 and G1. X to the right and
 * Y up from the zero point of the plan, Z up from the surface.
 */

export interface ProgramOptions {
  variant: 'real' | 'dry-run'
  units: 'mm' | 'in'
  /** An approach from the side cannot be told in a cycle: such a plan is always written in plain moves. */
  moves: 'cycles' | 'plain'
}

const MILLIMETRES_PER_INCH = 25.4
/** Digits after the point: a tenth of a micrometre, and about a quarter of one. */
const DECIMALS = { mm: 4, in: 5 }
const RATE_DECIMALS = 2
const DWELL_DECIMALS = 3

/** @returns the program, one block a line */
export function programOf(plan: DotPlan, options: ProgramOptions): string {
  const inches = options.units === 'in'
  const scale = inches ? 1 / MILLIMETRES_PER_INCH : 1
  const length = (value: number) => word(value * scale, DECIMALS[options.units])
  const { head, machine, zero } = plan
  const raised = options.variant === 'dry-run' ? head.plunge : 0
  const place = (dot: number, dx = 0, dy = 0) => {
    const [x, y] = plan.sequence[dot]
    return `X${length(x - zero.x + dx)} Y${length(zero.y - y - dy)}`
  }
  const z = (height: number) => `Z${length(height + raised)}`
  const rate = `F${word(machine.plungeRate * scale, RATE_DECIMALS)}`
  const set = head.lift - head.plunge
  const approach = head.approach && entryOf({ ...head, offset: undefined, approach: head.approach })
  const dwell = word(machine.dwell, DWELL_DECIMALS)

  const plain = (dot: number): string[] => {
    if (!approach || !head.approach)
      return [`G0 ${place(dot)}`, `G1 ${z(set)} ${rate}`, ...dwelling(dwell), `G1 ${z(head.lift)}`]
    return [
      `G0 ${place(dot, approach.x, approach.y)}`,
      `G1 ${z(set + head.approach.height)} ${rate}`,
      `G1 ${place(dot)} ${z(set)}`,
      ...dwelling(dwell),
      `G1 ${z(head.lift)}`,
    ]
  }
  const cycle =
    machine.dwell > 0
      ? `G82 ${z(set)} R${length(head.lift + raised)} P${dwell} ${rate}`
      : `G81 ${z(set)} R${length(head.lift + raised)} ${rate}`
  const inCycles = options.moves === 'cycles' && !head.approach
  const blocks = plan.cartridges.flatMap(({ from, to }, number) => {
    const dots = Array.from({ length: to - from + 1 }, (_, k) => from + k)
    const change =
      number === 0 ? [] : [`(CARTRIDGE ${number + 1} OF ${plan.cartridges.length}: CHANGE IT, THEN GO ON)`, 'M0']
    const moves = inCycles
      ? [`G0 ${place(from)}`, ...dots.map((dot, k) => (k === 0 ? `G99 ${cycle} ${place(dot)}` : place(dot))), 'G80']
      : dots.flatMap(plain)
    return [...change, ...moves]
  })
  return [
    '%',
    ...heading(plan, options, inCycles).map(comment),
    `${inches ? 'G20' : 'G21'} G17 G90 G94 G80`,
    'M5',
    `G0 ${z(head.lift)}`,
    ...blocks,
    `G0 ${z(head.lift)}`,
    'M30',
    '%',
    '',
  ].join('\n')
}

const dwelling = (seconds: string): string[] => (Number(seconds) > 0 ? [`G4 P${seconds}`] : [])

function heading(plan: DotPlan, { variant, units }: ProgramOptions, inCycles: boolean): string[] {
  const { dots, cartridges, zero, cautions, warnings, machine } = plan
  return [
    `DOT PLAN: ${dots} DOTS, ${cartridges.length} CARTRIDGE${cartridges.length === 1 ? '' : 'S'}, ${units === 'in' ? 'INCHES' : 'MILLIMETRES'}`,
    ...(variant === 'dry-run' ? ['DRY RUN: RAISED BY THE PLUNGE, THE TIP STAYS ABOVE THE SURFACE'] : []),
    zero.text,
    ...(machine.dwell > 0
      ? [
          `${inCycles ? 'P of the cycle' : 'P of G4'} is the dwell in seconds. Where the control takes milliseconds, change it.`,
        ]
      : []),
    ...cautions.map((caution) => `CAUTION: ${caution}`),
    ...warnings.map(({ text }) => `WARNING: ${text}`),
  ]
}

/** A comment of ISO 6983 stands in brackets, and controls read ASCII only. */
function comment(text: string): string {
  const ascii = text
    .replaceAll('’', "'")
    .replaceAll('×', 'x')
    .replace(/[()]/gu, ' ')
    .replace(/[^\x20-\x7e]/gu, '?')
  return wrapped(ascii)
    .map((line) => `(${line})`)
    .join('\n')
}

/** Some controls refuse longer lines. */
const LONGEST_COMMENT = 76

function wrapped(text: string): string[] {
  const lines: string[] = []
  for (const next of text.split(' ').filter((part) => part !== '')) {
    const last = lines.at(-1)
    if (last !== undefined && last.length + 1 + next.length <= LONGEST_COMMENT)
      lines[lines.length - 1] = `${last} ${next}`
    else lines.push(next)
  }
  return lines
}

/** A number as every control reads it: with a point, since some take whole numbers for thousandths; no exponent, never -0. */
function word(value: number, decimals: number): string {
  const text = value.toFixed(decimals).replace(/0+$/u, '')
  const full = text.endsWith('.') ? `${text}0` : text
  return full === '-0.0' ? '0.0' : full
}
