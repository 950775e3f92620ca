import { Refusal, type Fault } from '../../refusal.js'
import type { Head, Machine, PlanSettings } from './schema.js'

/** What a plan needs and was not told is taken from an example, and said: the values are invented, not those of any head. */

const EXAMPLE_HEAD = { tipDiameter: 1, bodyDiameter: 12, bodyClearance: 6, lift: 3, plunge: 2.5 }
const EXAMPLE_MACHINE = { travelRate: 3000, plungeRate: 1000, dwell: 0.2 }
const EXAMPLE_DOT = { baseDiameter: 1.55, height: 0.7 }

export interface Assumption {
  about: string
  text: string
}

export interface Known {
  head: Head
  machine: Machine
  dot: { baseDiameter: number; height: number }
  /** Whether somebody said or drew how large a dot is, so that its volume is known. */
  isDomeKnown: boolean
  assumptions: Assumption[]
}

/**
 * @param drawnDiameter of the dots, where a drawing shows it; a given one wins
 * @throws {Refusal} `invalid-description` when the head cannot work whatever the order
 */
export function known(
  settings: PlanSettings,
  drawnDiameter: number | undefined,
  drawnHeight: number | undefined,
): Known {
  const assumptions: Assumption[] = []
  const baseDiameter = settings.dot?.baseDiameter ?? drawnDiameter
  const height = settings.dot?.height ?? drawnHeight
  const result: Known = {
    head: filled('head', settings.head, EXAMPLE_HEAD, assumptions),
    machine: filled('machine', settings.machine, EXAMPLE_MACHINE, assumptions),
    dot: filled(
      'dot',
      { ...(baseDiameter !== undefined && { baseDiameter }), ...(height !== undefined && { height }) },
      EXAMPLE_DOT,
      assumptions,
    ),
    isDomeKnown: baseDiameter !== undefined && height !== undefined,
    assumptions,
  }
  if (settings.cartridge === undefined)
    assumptions.push({
      about: 'cartridge',
      text: 'Not said how many dots a cartridge gives; one is taken to be enough.',
    })
  refuseImpossible(result)
  return result
}

function filled<T extends object, E extends object>(
  about: string,
  given: T | undefined,
  example: E,
  assumptions: Assumption[],
): Omit<T, keyof E> & E {
  const absent = Object.entries(example).filter(([key]) => !(given && key in given))
  if (absent.length > 0) {
    const values = absent.map(([key, value]) => `${about}.${key} = ${value}`).join(', ')
    assumptions.push({
      about,
      text: `Not said, so that values of an example were taken, which need not be yours: ${values}.`,
    })
  }
  return { ...(given as T), ...(Object.fromEntries(absent) as E) }
}

function refuseImpossible({ head, dot }: Known): void {
  const faults: Fault[] = []
  const { lift, plunge, approach } = head
  if (lift <= dot.height)
    faults.push({
      detail: `The lift is ${lift} mm, but the dots stand ${dot.height} mm high: the tip would be drawn through each dot that it leaves, whatever the order. Lift it higher than the dots.`,
      pointer: '/head/lift',
    })
  if (approach && approach.height > plunge)
    faults.push({
      detail: `The approach comes down ${approach.height} mm, more than the plunge of ${plunge} mm of which it is the last piece.`,
      pointer: '/head/approach/height',
    })
  if (faults.length > 0) throw new Refusal('invalid-description', 'The head cannot set these dots.', faults)
}
