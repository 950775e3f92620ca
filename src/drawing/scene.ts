import type { Matrix } from '../geometry/matrix.js'
import type { Cascade } from './cascade.js'
import type { Clip } from './clipping.js'
import { sourceOf, type Barrier, type Collector } from './collector.js'
import { parseColour, type Colour } from './colour.js'
import type { Element, SvgDocument } from './document.js'
import type { Labels, Source } from './drawing.js'
import type { LengthContext } from './length.js'
import { LIMITS } from './limits.js'
import type { Page } from './page.js'
import { tooComplex } from './refuse.js'
import type { Style } from './style.js'

/** What the walk through a drawing needs everywhere, and what holds at one place of it. */

export class Scene {
  private readonly spent = {
    references: 0,
    rendered: 0,
    pathSegments: 0,
    textCharacters: 0,
    clipEdges: 0,
    patterns: 0,
    patternCopies: 0,
    dashes: 0,
  }
  /** Styles of elements that are painted by reference, by their place in the file. */
  readonly stylesInPlace = new Map<Element, Style>()
  /** Colours by how they are written. */
  private readonly coloursRead = new Map<string, Colour | undefined>()
  /** The colours of gradients; undefined for those that are not understood. */
  readonly stopsRead = new Map<Element, [number, number, number, number][] | undefined>()
  /** The last clip that was made of an element, and where. */
  readonly clipsMade = new Map<Element, { context: Context; matrix: Matrix; clips: readonly Clip[] }>()

  constructor(
    readonly document: SvgDocument,
    readonly cascade: Cascade,
    readonly page: Page,
    public collector: Collector,
    readonly rootFontSize: number,
    /** Paints what is inside an element. */
    readonly paintChildren: (scene: Scene, element: Element, context: Context) => void,
    /** Where it is wanted: each element's map from its own user space to millimetres. */
    readonly spaces?: Map<Element, Matrix>,
  ) {}

  /** The element that a reference like `#dot` leads to, in this file only. */
  readonly find = (reference: string): Element | undefined =>
    reference.startsWith('#') ? this.document.byId.get(decoded(reference.slice(1))) : undefined

  /** A colour as it is written; undefined when it is not understood. */
  colour(written: string): Colour | undefined {
    if (!this.coloursRead.has(written)) this.coloursRead.set(written, parseColour(written))
    return this.coloursRead.get(written)
  }

  /** Counts towards a limit. @throws {Refusal} `too-complex` */
  spend(what: keyof Scene['spent'], count: number, element: Element): void {
    this.spent[what] += count
    if (this.spent[what] > LIMITS[what]) throw tooComplex(WORDS_FOR[what], LIMITS[what], this.spent[what], element.spot)
  }
}

const WORDS_FOR = {
  references: 'references to other elements',
  rendered: 'painted elements, references resolved',
  pathSegments: 'lines and curves',
  dashes: 'dashes',
  clipEdges: 'edges of clips to hold its shapes against',
  textCharacters: 'characters of live text',
  patterns: 'areas painted with a pattern',
  patternCopies: 'copies of shapes in patterns',
} as const

const decoded = (fragment: string): string => {
  try {
    return decodeURIComponent(fragment)
  } catch {
    return fragment
  }
}

export interface Context {
  /** From the user space of the element's content to millimetres. */
  matrix: Matrix
  style: Style
  /** Of all groups, multiplied. */
  opacity: number
  viewport: LengthContext['viewport']
  labels: Labels
  clips: readonly Clip[]
  barrier?: Barrier
  /** Changes the colours of everything inside and nothing else: a filter. */
  tint?: Barrier
  /** Elements that are being painted round this one; a reference to one of them is a circle. */
  chain: { element: Element; above?: Context['chain'] }
  depth: number
  /** The outermost `use`, which is where a painted copy stands. */
  source?: Source
  /** It is painted for something else first, so that the page's edge does not matter. */
  aside?: boolean
}

/**
 * What holds inside an element before it changes anything but its style. Every field is written out: this is done for every
 * element, and an object that is spread costs several times as much.
 */
export const contextInside = (parent: Context, element: Element, style: Style): Context => ({
  matrix: parent.matrix,
  style,
  opacity: parent.opacity,
  viewport: parent.viewport,
  labels: parent.labels,
  clips: parent.clips,
  barrier: parent.barrier,
  tint: parent.tint,
  chain: { element, above: parent.chain },
  depth: parent.depth + 1,
  source: parent.source,
  aside: parent.aside,
})

/** What to resolve lengths against at this place. */
export const lengthsAt = (scene: Scene, context: Context): LengthContext => ({
  viewport: context.viewport,
  fontSize: context.style.fontSize,
  rootFontSize: scene.rootFontSize,
})

export const sourceAt = (element: Element, context: Context): Source => context.source ?? sourceOf(element)
