import { isKnown, type BrailleBlock, type Fact, type Sign } from '../sign/sign.js'

/**
 * What tells the elements of a sign apart whatever else stands on it: characters by their part and words, braille by what it
 * says, a reading of a gauge by its quantity. Their numbers in a list would change with every thing that is put before them.
 */
export function elementKeys(sign: Sign): (element: string) => string {
  let keys: Map<string, string> | undefined
  return (element) => keyOf(element, (keys ??= keysOf(sign)))
}

function keysOf(sign: Sign): Map<string, string> {
  const keys = new Map<string, string>()
  const times = new Map<string, number>()
  /** The second of the same key has its number. */
  const add = (element: string, key: string): string => {
    const before = times.get(key) ?? 0
    times.set(key, before + 1)
    const own = before === 0 ? key : `${key} ${before + 1}`
    keys.set(element, own)
    return own
  }
  for (const { place, part, text, lines } of sign.lettering) {
    const own = add(place.element, `lettering ${part} ${said(text)}`)
    for (const line of lines) add(line.place.element, `${own} line ${said(line.text)}`)
  }
  for (const block of sign.braille) {
    const own = add(block.place.element, `braille ${block.lines.map(cellsOf).join(' ')}`)
    for (const line of block.lines) add(line.place.element, `${own} line ${cellsOf(line)}`)
  }
  for (const { place, meaning } of sign.pictograms) add(place.element, `pictogram ${meaning ?? ''}`)
  for (const { place } of sign.borders) add(place.element, 'border')
  for (const { place, quantity } of sign.measured) add(place.element, `measured ${quantity}`)
  return keys
}

const said = (text: Fact<string>): string => (isKnown(text) ? text.value : '')

const cellsOf = ({ cells }: BrailleBlock['lines'][number]): string => said(cells)

/** The key of an element, or that of the nearest thing that it is a part of, with the rest of its path. */
function keyOf(element: string, keys: Map<string, string>): string {
  for (let end = element.length; end > 0; end = element.lastIndexOf('/', end - 1)) {
    const key = keys.get(element.slice(0, end))
    if (key !== undefined) return key + element.slice(end)
  }
  return element
}
