import { fixed } from './numbers.js'
import type { ReportPlace } from './place-schema.js'

/** Where something is, for people. */

const PARTS: Record<string, string> = {
  braille: 'braille block',
  lettering: 'lettering',
  pictogram: 'pictogram',
  border: 'border',
  line: 'line',
  cell: 'cell',
  pair: 'pair',
  dot: 'dot',
}

/** `braille/0/line/0/cell/3` → "braille block 1, line 1, cell 4": people count from one. */
export function elementWords(element: string): string {
  return element
    .split('/')
    .reduce<string[]>((words, part) => {
      const previous = words.length - 1
      if (/^\d+$/.test(part) && previous >= 0) words[previous] = `${words[previous]} ${Number(part) + 1}`
      else words.push(PARTS[part] ?? part)
      return words
    }, [])
    .join(', ')
}

/** One line: the part, its place on the sign, its place in the drawing or the description. */
export function placeWords({ element, box, source, pointer }: ReportPlace): string {
  const mm = (value: number) => fixed(value, 1)
  const parts = [elementWords(element)]
  if (box)
    parts.push(`${mm(box.x)} mm from the left, ${mm(box.y)} mm from the top, ${mm(box.width)} × ${mm(box.height)} mm`)
  if (source)
    parts.push(`drawing line ${source.line}, column ${source.column}${source.id === null ? '' : ` (id ${source.id})`}`)
  if (pointer !== null) parts.push(`description ${pointer}`)
  return parts.join('; ')
}
