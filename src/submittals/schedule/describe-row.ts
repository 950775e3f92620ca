import { SignDescription } from '../../sign/description.js'
import type { Unit } from '../../sign/length.js'
import { COLUMNS } from './columns.js'
import { quoted, type Complaint } from './grid.js'
import type { ReadRow, Said } from './row.js'

/** From what the cells of a row say to the description of its sign. What the schema refuses is left out and named. */

const USE_UNLESS_SAID = 'permanent-room'

export interface DescribedRow {
  sign: SignDescription
  useAssumed: boolean
  complaints: Complaint[]
}

export function describeRow(read: ReadRow): DescribedRow {
  const mark = read.names.get('mark')
  const wordings = [...wordsOf(read, 'lettering'), ...wordsOf(read, 'braille')]
  const rest = read.said.filter(({ property }) => !isWording(property))
  const complaints = linesDiffer(read)
  const said = [...once(rest, read.row, complaints), ...wordings]
  const use = said.find(({ property }) => property === 'use') ?? said.find(({ property }) => property === 'type')
  const base = { ...(mark === undefined ? {} : { mark }), use: use?.value ?? USE_UNLESS_SAID, ...unitsOf(said) }
  const parts = said.filter(({ property }) => property !== 'use' && property !== 'type')

  const whole = SignDescription.safeParse(described(base, parts))
  if (whole.success) return { sign: whole.data, useAssumed: use === undefined, complaints }
  const usable = parts.filter((part) => {
    const alone = SignDescription.safeParse(described(base, [part]))
    if (!alone.success) complaints.push(refusal(read.row, part, alone.error.issues[0]?.message ?? 'is not accepted'))
    return alone.success
  })
  return { sign: SignDescription.parse(described(base, usable)), useAssumed: use === undefined, complaints }
}

const isWording = (property: string): boolean => property === 'text' || /^line\d$/.test(property)

/** Where a row says a thing in two columns (a size and a width), the column that stands first in our table of columns is used. */
function once(said: readonly Said[], row: number, complaints: Complaint[]): Said[] {
  const kept = new Map<string, Said>()
  const surestFirst = [...said].sort((a, b) => COLUMNS.indexOf(a.heading.column) - COLUMNS.indexOf(b.heading.column))
  for (const part of surestFirst) {
    const name = `${part.section}/${part.property}`
    const first = kept.get(name)
    if (!first) kept.set(name, part)
    else if (part.section === 'panel' && JSON.stringify(first.value) !== JSON.stringify(part.value))
      complaints.push({
        row,
        column: part.heading.label,
        detail: `This says another ${part.property} than the column ${quoted(first.heading.label)}, which was used.`,
      })
  }
  return [...kept.values()]
}

/** Words in lines: those of the line columns, else the line breaks of the cell. */
function wordsOf({ said }: ReadRow, section: 'lettering' | 'braille'): Said[] {
  const own = said.filter((part) => part.section === section && isWording(part.property))
  const inLines = inOrder(own.filter(({ property }) => property !== 'text'))
  const source = inLines.length > 0 ? inLines : own
  const [first] = source
  if (!first) return []
  const lines = source
    .flatMap(({ value }) => String(value).split('\n'))
    .map((line) => line.trim())
    .filter((line) => line !== '')
  const text: Said = { ...first, property: 'text', value: lines.join(' ') }
  return lines.length > 1 ? [text, { ...first, property: 'lines', value: lines }] : [text]
}

/** The columns of lines may stand in any order. */
const inOrder = (lines: readonly Said[]): Said[] => [...lines].sort((a, b) => a.property.localeCompare(b.property))

function linesDiffer({ row, said }: ReadRow): Complaint[] {
  const text = said.find(({ section, property }) => section === 'lettering' && property === 'text')
  const lines = inOrder(said.filter(({ property }) => /^line\d$/.test(property))).map(({ value }) => String(value))
  if (!text || lines.length === 0 || squeezed(String(text.value)) === squeezed(lines.join(' '))) return []
  const detail = `The text ${quoted(String(text.value))} and the lines ${quoted(lines.join(' '))} differ; the lines were used.`
  return [{ row, column: text.heading.label, detail }]
}

const squeezed = (text: string): string => text.replace(/\s+/g, ' ').trim()

function refusal(row: number, { heading, property, value }: Said, why: string): Complaint {
  const words = typeof value === 'string' ? quoted(value) : `The value for ${property}`
  return { row, column: heading.label, detail: `${words} cannot be used: ${why.replace(/\.$/, '')}.` }
}

function described(base: Record<string, unknown>, said: readonly Said[]): Record<string, unknown> {
  const part = (section: Said['section']): Record<string, unknown> =>
    Object.fromEntries(said.filter((one) => one.section === section).map(({ property, value }) => [property, value]))
  const { family, style, ...lettering } = part('lettering')
  const typeface = { ...(family === undefined ? {} : { family }), ...(style === undefined ? {} : { style }) }
  const characters = { ...lettering, ...(Object.keys(typeface).length > 0 ? { typeface } : {}) }
  const [braille, panel, installation] = [part('braille'), part('panel'), part('installation')]
  return {
    ...base,
    ...part('sign'),
    ...(Object.keys(panel).length > 0 ? { panel } : {}),
    ...(Object.keys(characters).length > 0 ? { lettering: [characters] } : {}),
    ...(Object.keys(braille).length > 0 ? { braille: [braille] } : {}),
    ...(Object.keys(installation).length > 0 ? { installation } : {}),
  }
}

/** Every length has a unit of its own; this one is that of the questions that a report asks. */
function unitsOf(said: readonly Said[]): { units?: Unit } {
  const units = new Set(said.flatMap(({ value }) => unitIn(value)))
  return units.size === 1 && units.has('in') ? { units: 'in' } : {}
}

const unitIn = (value: unknown): string[] =>
  typeof value === 'object' && value !== null && 'unit' in value ? [String(value.unit)] : []
