import { Collector } from './collector.js'
import { XLINK_HREF, type Element } from './document.js'
import { LIMITS } from './limits.js'
import { tooComplex } from './refuse.js'
import type { Context, Scene } from './scene.js'
import { computeStyle, INITIAL_STYLE, type Style } from './style.js'

/**
 * Elements that are painted only where something refers to them: markers, patterns, clips, masks. Properties are inherited
 * from the elements that they stand in, not from what refers to them (SVG 1.1, 11.6.2, 13.3, 14.3.5).
 */

export type Resource = Pick<Context, 'matrix' | 'opacity' | 'viewport'>

/** What holds inside a resource; undefined when it refers to itself, directly or not. */
export function enterResource(scene: Scene, element: Element, from: Context, place: Resource): Context | undefined {
  if (isRound(element, from)) return undefined
  scene.spend('references', 1, element)
  const depth = from.depth + 1
  if (depth > LIMITS.renderedDepth)
    throw tooComplex('elements inside one another, references resolved', LIMITS.renderedDepth, depth, element.spot)
  return {
    ...place,
    style: styleFromAncestors(scene, element),
    labels: from.labels,
    clips: [],
    chain: { element, above: from.chain },
    depth,
    source: from.source,
  }
}

/** Whether an element is being painted round this place, so that a reference to it would go round for ever. */
export function isRound(element: Element, { chain }: Context): boolean {
  for (let link: Context['chain'] | undefined = chain; link; link = link.above)
    if (link.element === element) return true
  return false
}

/** The style of an element as its place in the file alone gives it. */
export function styleFromAncestors(scene: Scene, element: Element): Style {
  const known = scene.stylesInPlace.get(element)
  if (known) return known
  const waiting: Element[] = []
  let top: Element | undefined = element
  while (top && !scene.stylesInPlace.has(top)) {
    waiting.push(top)
    top = top.parent
  }
  let style = (top && scene.stylesInPlace.get(top)) ?? INITIAL_STYLE
  for (const next of waiting.reverse()) {
    const { viewport } = scene.page
    style = computeStyle(scene.cascade.of(next), style, { viewport, rootFontSize: scene.rootFontSize })
    scene.stylesInPlace.set(next, style)
  }
  return style
}

/** What a resource paints, on its own: nothing of it is listed in the drawing. */
export function paintAside(scene: Scene, element: Element, context: Context): Collector {
  const { collector } = scene
  const aside = new Collector()
  scene.collector = aside
  try {
    scene.paintChildren(scene, element, { ...context, aside: true })
    context.barrier?.report(aside)
  } finally {
    scene.collector = collector
  }
  return aside
}

/** The element and those that it takes attributes from by `href`, the nearest first; each once. */
export function lineOf(scene: Scene, element: Element, names: RegExp): Element[] {
  const line: Element[] = []
  const seen = new Set<Element>()
  for (let next: Element | undefined = element; next && names.test(next.name) && !seen.has(next);) {
    scene.spend('references', 1, next)
    seen.add(next)
    line.push(next)
    const reference: string | undefined = next.attributes.get('href') ?? next.attributes.get(XLINK_HREF)
    next = reference === undefined ? undefined : scene.find(reference.trim())
  }
  return line
}
