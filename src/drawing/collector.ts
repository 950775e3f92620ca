import { unionOfBoxes, type Box } from '../geometry/box.js'
import type { Element } from './document.js'
import type { DrawnText, IgnoredElement, Labels, Shape, Source } from './drawing.js'
import { IGNORED_LISTED, NAME_LENGTH } from './limits.js'

/** What the walk through the drawing finds, in paint order. */

export type CouldBe = IgnoredElement['couldBe']

export const ANYTHING: CouldBe = ['braille', 'lettering', 'pictogram', 'border', 'colour']
export const PICTURE: CouldBe = ['braille', 'lettering', 'pictogram', 'colour']
export const WORDS: CouldBe = ['braille', 'lettering']
export const NOTHING: CouldBe = []

/** Where an element stands; its id is left out when it has none. */
export function sourceOf(element: Element): Source {
  const { line, column } = element.spot
  const id = element.attributes.get('id')
  return id ? { id: id.slice(0, NAME_LENGTH), line, column } : { line, column }
}

export class Collector {
  readonly shapes: Shape[] = []
  readonly texts: DrawnText[] = []
  /** Of the shapes, those wholly off the page, and those whose only paint is a stroke of width 0: told at the end. */
  readonly offPage = new Set<Shape>()
  readonly thin = new Set<Shape>()
  private readonly entries: IgnoredElement[] = []
  private readonly rest = new Set<CouldBe[number]>()
  private unlisted = 0

  ignore(source: Source, why: string, couldBe: CouldBe, box?: Box, labels?: Labels): void {
    if (this.entries.length < IGNORED_LISTED) {
      this.entries.push({ source, why, couldBe: [...couldBe], ...(box ? { box } : {}), ...(labels && { labels }) })
      return
    }
    this.unlisted++
    for (const kind of couldBe) this.rest.add(kind)
  }

  /** All that was passed over; beyond a number, the remainder as one entry. */
  get ignored(): IgnoredElement[] {
    if (this.unlisted === 0) return this.entries
    const why = `${this.unlisted} more elements were passed over in the same ways.`
    return [...this.entries, { source: { line: 1, column: 1 }, why, couldBe: [...this.rest] }]
  }
}

/** Something that changes how everything inside it is seen, in a way that is not worked out: a mask, a filter, a clip. */
export class Barrier {
  private readonly boxes: Box[] = []
  private readonly kinds = new Set<CouldBe[number]>()

  constructor(
    private readonly source: Source,
    private readonly why: string,
    private readonly labels?: Labels,
  ) {}

  hold(couldBe: CouldBe, box?: Box): void {
    if (box) this.boxes.push(box)
    for (const kind of couldBe) this.kinds.add(kind)
  }

  /** Whether something was held that could matter. */
  get holds(): boolean {
    return this.kinds.size > 0
  }

  /** One entry for all that it held back; none when it held nothing. */
  report(collector: Collector): void {
    if (this.holds) collector.ignore(this.source, this.why, [...this.kinds], unionOfBoxes(this.boxes), this.labels)
  }
}
