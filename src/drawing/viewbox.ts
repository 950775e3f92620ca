import { multiply, scaling, translation, type Matrix } from '../geometry/matrix.js'
import { parseNumbers } from './numbers.js'

/** How a viewBox is fitted into a viewport: SVG 1.1, 7.7 and 7.8. */

export interface ViewBox {
  x: number
  y: number
  width: number
  height: number
}

/** Four numbers with a width and height above 0; undefined for anything else. */
export function parseViewBox(text: string): ViewBox | undefined {
  const { numbers, complete } = parseNumbers(text)
  const [x, y, width, height] = numbers
  return complete && numbers.length === 4 && width > 0 && height > 0 ? { x, y, width, height } : undefined
}

const SHARE = { Min: 0, Mid: 0.5, Max: 1 } as const
type Alignment = keyof typeof SHARE

export interface AspectRatio {
  /** Undefined for `none`: each axis has its own scale. */
  align?: { x: Alignment; y: Alignment }
  slice: boolean
}

const DEFAULT_ASPECT_RATIO: AspectRatio = { align: { x: 'Mid', y: 'Mid' }, slice: false }

/** The attribute preserveAspectRatio; what breaks its grammar counts as not given. */
export function parseAspectRatio(text = ''): AspectRatio {
  const found = /^\s*(?:defer\s+)?(?:none|x(Min|Mid|Max)Y(Min|Mid|Max))(?:\s+(meet|slice))?\s*$/.exec(text)
  if (!found) return DEFAULT_ASPECT_RATIO
  const slice = found[3] === 'slice'
  return found[1] ? { align: { x: found[1] as Alignment, y: found[2] as Alignment }, slice } : { slice }
}

/** The map from the viewBox's coordinates to a viewport of this size with its corner at 0, 0. */
export function fitViewBox(box: ViewBox, width: number, height: number, ratio: AspectRatio): Matrix {
  const across = width / box.width
  const down = height / box.height
  const corner = translation(-box.x, -box.y)
  if (!ratio.align) return multiply(scaling(across, down), corner)
  const scale = ratio.slice ? Math.max(across, down) : Math.min(across, down)
  const left = (width - box.width * scale) * SHARE[ratio.align.x]
  const top = (height - box.height * scale) * SHARE[ratio.align.y]
  return multiply(translation(left, top), multiply(scaling(scale), corner))
}
