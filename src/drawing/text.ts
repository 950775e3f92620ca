import { unionOfBoxes, type Box } from '../geometry/box.js'
import { charactersOf, type Character, type Owner } from './characters.js'
import { WORDS } from './collector.js'
import { isElement, type Element } from './document.js'
import type { DrawnText } from './drawing.js'
import { parseFamilies } from './font.js'
import { parseLengths } from './length.js'
import { LARGEST_COORDINATE } from './limits.js'
import { fillOf, strokeOf } from './paint.js'
import { isSeenWhole } from './place.js'
import { boxOfFrame } from './region.js'
import { lengthsAt, sourceAt, type Context, type Scene } from './scene.js'

/** Live text to runs of one style, with each character's place as far as the file fixes it. Nothing is laid out here. */
export function renderText(scene: Scene, element: Element, context: Context): void {
  const characters = charactersOf(scene, element, context)
  if (!characters) return
  const baselines = baselinesOf(characters)
  const owners = new Set(characters.map(({ owner }) => owner)).size
  let unseenBefore = false
  for (let start = 0; start < characters.length;) {
    const owner = characters[start].owner
    let end = start + 1
    while (end < characters.length && characters[end].owner === owner) end++
    const alone = owners === 1 && end - start === characters.length
    const run = runOf(scene, owner, characters.slice(start, end), baselines.slice(start, end), alone)
    if (run.continues && unseenBefore) run.unsupported.push('text before it that is not seen')
    const seen = isSeen(scene, run, owner)
    if (seen) scene.collector.texts.push(run)
    unseenBefore = !seen
    start = end
  }
}

/** In horizontal text the height of the baseline depends on nothing but the lists of places. */
function baselinesOf(characters: Character[]): number[] {
  let baseline = 0
  return characters.map(({ y, dy }) => (baseline = (y ?? baseline) + (dy ?? 0)))
}

/** @param alone the run is the whole text */
function runOf(
  scene: Scene,
  { element, context }: Owner,
  characters: Character[],
  baselines: number[],
  alone: boolean,
): DrawnText {
  const { style } = context
  const length = lengthOf(scene, context, element, alone)
  const fill = fillOf(scene, context)
  const continues = characters[0].x === undefined
  return {
    text: characters.map(({ text }) => text).join(''),
    matrix: context.matrix,
    fontSize: style.fontSize,
    fontFamilies: parseFamilies(style.fontFamily),
    fontStyle: style.fontStyle,
    fontWeight: style.fontWeight,
    letterSpacing: style.letterSpacing,
    ...(style.wordSpacing !== 0 && { wordSpacing: style.wordSpacing }),
    ...(length && length !== 'unsupported' && { fitted: length }),
    textAnchor: style.textAnchor,
    positions: characters.map((character, i) => positionOf(character, baselines[i], i === 0)),
    unsupported: [...(length === 'unsupported' ? ['textLength'] : []), ...unsupportedIn(scene, context)],
    ...(continues ? { continues } : {}),
    ...(fill ? { fill: fill.paint } : {}),
    source: sourceAt(element, context),
    labels: context.labels,
    after: scene.collector.shapes.length,
  }
}

function positionOf(character: Character, baseline: number, first: boolean): DrawnText['positions'][number] {
  const { x, y, dx, dy, rotate } = character
  const position = {
    ...(x !== undefined ? { x: x + (dx ?? 0) } : dx !== undefined && dx !== 0 ? { dx } : {}),
    ...(first || y !== undefined || (dy !== undefined && dy !== 0) ? { y: baseline } : {}),
    ...(rotate !== undefined && rotate !== 0 ? { rotate } : {}),
  }
  return Object.keys(position).length > 0 ? position : undefined
}

/** Properties and attributes that move or change characters, with the values that do not. */
const LAYOUT_PROPERTIES: [property: string, harmless: RegExp][] = [
  ['baseline-shift', /^(baseline|0\w*|0%)$/],
  ['dominant-baseline', /^(auto|alphabetic|use-script|no-change|reset-size)$/],
  ['alignment-baseline', /^(auto|baseline|alphabetic)$/],
  ['font-variant', /^normal$/],
  ['font-stretch', /^(normal|100%)$/],
  ['text-transform', /^none$/],
  ['inline-size', /^(auto|0)$/],
  ['shape-inside', /^(auto|none)$/],
  ['unicode-bidi', /^normal$/],
]

/**
 * The length that a run is fitted into, in its own units: only where the run is all of the text that is to be fitted.
 * Undefined when nothing asks for one.
 */
function lengthOf(scene: Scene, context: Context, owner: Element, alone: boolean): DrawnText['fitted'] | 'unsupported' {
  const asking: Element[] = []
  for (let link: Context['chain'] | undefined = context.chain; link; link = link.above)
    if (link.element.attributes.has('textLength')) asking.push(link.element)
  const [element, ...more] = asking
  if (!element) return undefined
  const whole = alone || (element === owner && !owner.children.some(isElement))
  const [length] = parseLengths(element.attributes.get('textLength') ?? '', 'x', lengthsAt(scene, context))
  if (more.length > 0 || !whole || length === undefined || !(length > 0)) return 'unsupported'
  return {
    length,
    adjust: element.attributes.get('lengthAdjust') === 'spacingAndGlyphs' ? 'spacingAndGlyphs' : 'spacing',
  }
}

/** `rotate` lists are in the positions; a word for each other thing that the layout would have to know. */
function unsupportedIn(scene: Scene, context: Context): string[] {
  const found = new Set<string>()
  const { style } = context
  for (let link: Context['chain'] | undefined = context.chain; link; link = link.above) {
    const declared = scene.cascade.of(link.element)
    for (const [property, harmless] of LAYOUT_PROPERTIES) {
      const written = declared.get(property)?.trim()
      if (written !== undefined && written !== '' && !harmless.test(written)) found.add(property)
    }
    const shorthand = declared.get('font') ?? ''
    if (/\bsmall-caps\b/i.test(shorthand)) found.add('font-variant')
    if (/\b(condensed|expanded)\b/i.test(shorthand.split(',')[0].split(/["']/)[0])) found.add('font-stretch')
  }
  if (!/^(horizontal-tb|lr|lr-tb)$/.test(style.writingMode)) found.add('writing-mode')
  if (style.direction !== 'ltr') found.add('direction')
  const stroke = strokeOf(scene, context, context.matrix)
  if (stroke && stroke.paint.width > 0) found.add('stroke')
  return [...found]
}

/** Enters what is not seen whole among what was passed over. Blanks count as seen: they move what follows. */
function isSeen(scene: Scene, run: DrawnText, { element, context }: Owner): boolean {
  if (!context.style.visible || (!run.fill && !run.unsupported.includes('stroke'))) return false
  if (run.fontSize === 0) return false
  const box = roughBox(run)
  const far = !box || [box.x, box.y, box.width, box.height].some((v) => !(Math.abs(v) <= LARGEST_COORDINATE))
  if (far) {
    scene.collector.ignore(sourceAt(element, context), 'It lies too far away to be part of a sign.', WORDS)
    return false
  }
  return isSeenWhole(scene, element, context, box, WORDS)
}

/**
 * Certainly large enough to hold the run: an em for each character to both sides of the first, for the anchor may be
 * anywhere, and an em above and below the baseline.
 */
function roughBox({ positions, fontSize, letterSpacing, wordSpacing = 0, fitted, matrix }: DrawnText): Box | undefined {
  const each = fontSize + Math.abs(letterSpacing) + Math.abs(wordSpacing)
  const reach = positions.length * each + (fitted?.length ?? 0)
  const baseline = positions[0]?.y ?? 0
  const boxes = positions.flatMap((p, i) => {
    if (i > 0 && p?.x === undefined && p?.y === undefined) return []
    const [x, y] = [p?.x ?? 0, p?.y ?? baseline]
    return [boxOfFrame({ x: x - reach, y: y - fontSize, width: 2 * reach, height: 2 * fontSize }, matrix)]
  })
  return unionOfBoxes(boxes)
}
