import { isElement, isSvg, type Element } from './document.js'
import { leave } from './effects.js'
import { enter } from './enter.js'
import { WORDS } from './collector.js'
import { parseLengths } from './length.js'
import { lengthsAt, sourceAt, type Context, type Scene } from './scene.js'

/**
 * The characters of a `text` element in order, each with the element that it stands in and with its own place where the file
 * gives one. Blanks: SVG 2, 11.5 (a line break is a blank; blanks in a row are one unless they are kept). Places: SVG 1.1,
 * 10.5: the lists of an inner element win over those of the elements round it, one entry for each character that is left.
 */

/** One UTF-16 unit. */
export interface Character {
  text: string
  owner: Owner
  x?: number
  y?: number
  dx?: number
  dy?: number
  rotate?: number
}

export interface Owner {
  element: Element
  context: Context
}

interface Range extends Owner {
  start: number
  end: number
}

/** Undefined when a place is written that cannot be read: the text is then entered as passed over. */
export function charactersOf(scene: Scene, element: Element, context: Context): Character[] | undefined {
  const gathered: Character[] = []
  const ranges: Range[] = []
  gather(scene, { element, context }, gathered, ranges)
  const kept = collapse(gathered)
  const characters = gathered.filter((_, i) => kept[i])
  const newIndex = runningCount(kept)
  for (const range of ranges) {
    const [start, end] = [newIndex[range.start], newIndex[range.end]]
    if (!placeRange(scene, range, characters.slice(start, end))) {
      scene.collector.ignore(sourceAt(element, context), 'The places of its characters cannot be read.', WORDS)
      return undefined
    }
  }
  if (characters.length > 0) {
    characters[0].x ??= 0
    characters[0].y ??= 0
  }
  return characters
}

/** Outer elements come before inner ones in `ranges`. */
function gather(scene: Scene, owner: Owner, characters: Character[], ranges: Range[]): void {
  const range: Range = { ...owner, start: characters.length, end: characters.length }
  ranges.push(range)
  for (const child of owner.element.children) {
    if (!isElement(child)) {
      scene.spend('textCharacters', child.length, owner.element)
      for (let i = 0; i < child.length; i++) characters.push({ text: child.charAt(i), owner })
    } else if (isSvg(child)) gatherChild(scene, child, owner.context, characters, ranges)
  }
  range.end = characters.length
}

function gatherChild(scene: Scene, child: Element, parent: Context, characters: Character[], ranges: Range[]): void {
  if (child.name === 'textPath' || child.name === 'tref') {
    const why =
      child.name === 'textPath' ? 'Text along a path is not worked out.' : 'Text from elsewhere is not worked out.'
    return scene.collector.ignore(sourceAt(child, parent), why, WORDS)
  }
  if (child.name !== 'tspan' && child.name !== 'a') return
  const context = enter(scene, child, parent)
  if (!context) return
  gather(scene, { element: child, context }, characters, ranges)
  if (context.barrier !== parent.barrier) context.barrier?.hold(WORDS)
  leave(scene, context, parent)
}

/** Turns line breaks and tabs into blanks in place, and says which characters are left. */
function collapse(characters: Character[]): boolean[] {
  const kept: boolean[] = []
  let last = -1
  characters.forEach((character, i) => {
    if (/[\t\r\n]/.test(character.text)) character.text = ' '
    const collapses = character.text === ' ' && !character.owner.context.style.preserveSpace
    kept[i] = !collapses || (last >= 0 && characters[last].text !== ' ')
    if (kept[i]) last = i
  })
  if (last >= 0 && characters[last].text === ' ' && !characters[last].owner.context.style.preserveSpace)
    kept[last] = false
  return kept
}

/** For each old index, and one past the end, how many are kept before it. */
function runningCount(kept: boolean[]): number[] {
  const counts = [0]
  for (const keep of kept) counts.push(counts[counts.length - 1] + (keep ? 1 : 0))
  return counts
}

function placeRange(scene: Scene, { element, context }: Owner, characters: Character[]): boolean {
  const lengths = lengthsAt(scene, context)
  const lists = [
    ['x', 'x'],
    ['y', 'y'],
    ['dx', 'x'],
    ['dy', 'y'],
  ] as const
  for (const [name, axis] of lists) {
    const written = element.attributes.get(name)
    if (written === undefined) continue
    const values = parseLengths(written, axis, lengths)
    if (values.includes(undefined)) return false
    characters.slice(0, values.length).forEach((character, i) => (character[name] = values[i]))
  }
  const turns = parseLengths(element.attributes.get('rotate') ?? '', 'x', lengths)
  if (turns.includes(undefined)) return false
  if (turns.length > 0) characters.forEach((c, i) => (c.rotate = turns[Math.min(i, turns.length - 1)]))
  return true
}
