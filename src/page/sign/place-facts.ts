import { kindWords } from '../../report/quantities.js'
import { withUnits } from '../../service/submittals/changes.js'
import { faultsOf } from '../../sign/faults.js'
import { InstallationDescription } from '../../sign/installation-description.js'
import { MILLIMETRES_PER_INCH, type Length, type Unit } from '../../sign/length.js'
import { APPROACHES, CONTROL_SIDES, JAMBS, LEAVES, SIDES, SWINGS } from '../../sign/vocabulary.js'
import type { FormError } from '../form.js'

/** The facts of the place of a sign, as a form shows them and takes them. */

export interface Fact {
  /** Where it stands in the description of the installation. */
  path: readonly string[]
  label: string
  kind: 'length' | 'truth' | readonly string[]
}

export const FACTS: readonly Fact[] = [
  { path: ['panelBottomHeight'], label: 'Finished floor to the lower edge of the panel', kind: 'length' },
  { path: ['side'], label: 'Where it stands at the door', kind: SIDES },
  { path: ['door', 'swing'], label: 'How the door opens', kind: SWINGS },
  { path: ['door', 'leaves'], label: 'Leaves of the door', kind: LEAVES },
  { path: ['door', 'leafWidth'], label: 'Width of the leaf', kind: 'length' },
  {
    path: ['door', 'latchToTextCentre'],
    label: 'Latch edge of the closed leaf to the middle of all tactile characters and braille',
    kind: 'length',
  },
  { path: ['door', 'wallAtLatch'], label: 'Is there wall for the sign beside the latch?', kind: 'truth' },
  { path: ['door', 'latchToCorner'], label: 'Latch edge of the closed leaf to the inner corner', kind: 'length' },
  { path: ['door', 'edgeToArchitrave'], label: 'Nearest edge of the sign to the architrave', kind: 'length' },
  { path: ['door', 'edgeToJamb'], label: 'Nearest edge of the sign to the jamb', kind: 'length' },
  { path: ['door', 'handleHeight'], label: 'Finished floor to the handle of the door', kind: 'length' },
  { path: ['innerCorner'], label: 'Middle of the tactile characters to an inner corner of the room', kind: 'length' },
  { path: ['clearWall'], label: 'Least clear wall all round the sign', kind: 'length' },
  { path: ['nearestApproach'], label: 'How near to the sign a reader can come unhindered', kind: 'length' },
  { path: ['viewingDistance'], label: 'Viewing distance', kind: 'length' },
  { path: ['approach'], label: 'Read from inside or outside', kind: APPROACHES },
  { path: ['jambs'], label: 'At an elevator entrance: jambs that carry the sign', kind: JAMBS },
  { path: ['controlSide'], label: 'At a control: where its sign stands', kind: CONTROL_SIDES },
]

export const factId = ({ path }: Fact): string => `place-${path.join('.')}`

export const optionWords = (kind: string): string => kindWords(kind).replaceAll('-', ' ')

type Facts = Record<string, unknown>

const at = (facts: Facts, path: readonly string[]): unknown =>
  path.reduce<unknown>(
    (value, key) => (typeof value === 'object' && value !== null ? (value as Facts)[key] : undefined),
    facts,
  )

const DECIMALS = 6

/** What a control of the form holds for a fact that is known. @param bare what a bare length means @param unit of the form */
export function shownFact(facts: Facts, { path, kind }: Fact, bare: Unit, unit: Unit): string {
  const value = at(facts, path)
  if (value === undefined || value === null) return ''
  if (kind === 'truth') return value === true ? 'yes' : 'no'
  return kind === 'length' ? String(inUnit(value as Length, bare, unit)) : typeof value === 'string' ? value : ''
}

function inUnit(length: Length, bare: Unit, unit: Unit): number {
  const written = typeof length === 'number' ? { value: length, unit: bare } : length
  if (written.unit === unit) return written.value
  const factor = unit === 'mm' ? MILLIMETRES_PER_INCH : 1 / MILLIMETRES_PER_INCH
  return Number((written.value * factor).toFixed(DECIMALS))
}

/** The unit of the first length that is known, so that what was written in inches is shown in inches. */
export function unitOf(facts: Facts, bare: Unit): Unit {
  const lengths = FACTS.filter(({ kind }) => kind === 'length').map(({ path }) => at(facts, path))
  const first = lengths.find((value) => value !== undefined)
  return typeof first === 'object' && first !== null ? (first as { unit: Unit }).unit : bare
}

/**
 * Reads the form. What it has no control for stays as it was; an empty control takes its fact away.
 * @param known the facts so far @param bare what a bare length of them means
 */
export function readFacts(
  values: URLSearchParams,
  known: Facts,
  bare: Unit,
): { installation: InstallationDescription } | { errors: FormError[] } {
  const unit: Unit = values.get('place-unit') === 'in' ? 'in' : 'mm'
  const facts: Facts = { ...withUnits(known, bare) }
  const errors: FormError[] = []
  for (const fact of FACTS) {
    const text = values.get(factId(fact))?.trim() ?? ''
    // Shown as it stands: written back as it was, not as it was rounded for the form.
    if (text !== '' && text === shownFact(known, fact, bare, unit)) continue
    const read = readFact(text, fact, unit)
    if ('error' in read) errors.push({ id: factId(fact), text: read.error })
    else put(facts, fact.path, read.value)
  }
  if (values.get('place-no-other-door') === 'yes') facts.neighbouringDoors = []
  else if (Array.isArray(known.neighbouringDoors) && known.neighbouringDoors.length === 0)
    delete facts.neighbouringDoors
  if (errors.length > 0) return { errors }
  const parsed = InstallationDescription.safeParse(facts)
  if (parsed.success) return { installation: parsed.data }
  const faults = faultsOf(parsed.error, InstallationDescription)
  return { errors: faults.map(({ pointer = '', detail }) => ({ id: controlFor(pointer), text: detail })) }
}

function controlFor(pointer: string): string {
  const fact = FACTS.find(({ path }) => pointer.startsWith(`/${path.join('/')}`))
  return fact ? factId(fact) : 'place'
}

const NUMBER = /^\d+(?:\.\d+)?$/u

function readFact(text: string, { kind }: Fact, unit: Unit): { value: unknown } | { error: string } {
  if (text === '') return { value: undefined }
  if (kind === 'truth') return { value: text === 'yes' }
  if (kind !== 'length') return { value: text }
  if (!NUMBER.test(text))
    return { error: `“${text}” is not read as a number. Write decimals behind a full stop, without the unit.` }
  return { value: { value: Number(text), unit } }
}

function put(facts: Facts, path: readonly string[], value: unknown): void {
  const [key = '', ...rest] = path
  if (rest.length > 0) {
    const inner = { ...(facts[key] as Facts | undefined) }
    put(inner, rest, value)
    if (Object.keys(inner).length > 0) facts[key] = inner
    else delete facts[key]
  } else if (value === undefined) delete facts[key]
  else facts[key] = value
}
