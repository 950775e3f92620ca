import { determinant, multiply, scaling, translation, type Matrix } from '../geometry/matrix.js'
import type { Element } from './document.js'
import type { Drawing } from './drawing.js'
import { absoluteUnit, MILLIMETRES_PER_PX, splitLength } from './length.js'
import { LARGEST_COORDINATE, SCALE_RANGE } from './limits.js'
import { malformed, quote, scaleUnknown } from './refuse.js'
import { fitViewBox, parseAspectRatio, parseViewBox, type ViewBox } from './viewbox.js'

/**
 * The true size of the page: the outermost svg element's width, height and viewBox (SVG 1.1, 7.2 and 7.7), or the scale that
 * the client gives. Without either there is no size, and none is guessed.
 */
export interface Page {
  /** From the user space of the outermost svg element's content to millimetres. */
  matrix: Matrix
  /** Millimetres; a side that nothing says is undefined. */
  width?: number
  height?: number
  /** What percentages refer to, in user units. */
  viewport: { width?: number; height?: number }
  millimetresPerPx: number
  scale: Drawing['scale']
  assumptions: Drawing['assumptions']
}

interface Side {
  /** px. */
  length: number
  /** Written with a unit that has a size in the world. */
  physical: boolean
}

const HOW_TO_SEND =
  'Write the width and height of the <svg> element in mm, cm or in, or send the option "scale" (millimetres per user unit).'

/**
 * @param sizes the values of `width` and `height` that hold for the root, from its style or its attributes.
 * @param scale millimetres per user unit, when the client gave it.
 * @throws {Refusal} `malformed-drawing` for a size or viewBox that is none, `scale-unknown` when nothing gives a scale.
 */
export function readPage(root: Element, sizes: { width?: string; height?: string }, scale?: number): Page {
  const width = readSide(root, 'width', sizes.width)
  const height = readSide(root, 'height', sizes.height)
  const viewBox = readViewBox(root)
  const page =
    scale === undefined
      ? pageFromFile(root, width, height, viewBox)
      : pageFromScale(root, scale, width, height, viewBox)
  const { millimetresPerUnit } = page.scale
  const plausible = millimetresPerUnit >= SCALE_RANGE.least && millimetresPerUnit <= SCALE_RANGE.most
  const small = Math.max(page.width ?? 0, page.height ?? 0) <= LARGEST_COORDINATE
  if (!plausible || !small)
    throw scaleUnknown(`The size that the drawing states cannot be that of a sign. ${HOW_TO_SEND}`, root.spot)
  return page
}

/** A side as it is written; undefined when it is automatic or a share of a window that is not there. */
function readSide(root: Element, name: 'width' | 'height', written: string | undefined): Side | undefined {
  if (written === undefined || /^\s*(auto)?\s*$/.test(written)) return undefined
  const split = splitLength(written)
  const fault = `The ${name} of the <svg> element, ${quote(written)}, is no length above 0.`
  if (!split || split.value <= 0) throw malformed(fault, root.spot)
  if (/^(%|em|rem|ex|ch|vw|vh)$/.test(split.unit)) return undefined
  const factor = split.unit === '' ? 1 : absoluteUnit(split.unit)
  if (factor === undefined) throw malformed(fault, root.spot)
  return { length: split.value * factor, physical: split.unit !== '' && split.unit !== 'px' }
}

function readViewBox(root: Element): ViewBox | undefined {
  const written = root.attributes.get('viewBox')
  if (written === undefined) return undefined
  const viewBox = parseViewBox(written)
  if (!viewBox)
    throw malformed(`The viewBox ${quote(written)} is not four numbers with a width and height above 0.`, root.spot)
  return viewBox
}

function pageFromFile(root: Element, width?: Side, height?: Side, viewBox?: ViewBox): Page {
  if (!width && !height) throw scaleUnknown(`The drawing does not say how large it is. ${HOW_TO_SEND}`, root.spot)
  const across = width?.length ?? (viewBox && height && (height.length * viewBox.width) / viewBox.height)
  const down = height?.length ?? (viewBox && width && (width.length * viewBox.height) / viewBox.width)
  const ratio = parseAspectRatio(root.attributes.get('preserveAspectRatio'))
  const toPx =
    viewBox && across !== undefined && down !== undefined ? fitViewBox(viewBox, across, down, ratio) : scaling(1)
  const matrix = multiply(scaling(MILLIMETRES_PER_PX), toPx)
  const physical = viewBox !== undefined && [width, height].every((side) => side?.physical ?? true)
  return {
    matrix,
    width: across === undefined ? undefined : across * MILLIMETRES_PER_PX,
    height: down === undefined ? undefined : down * MILLIMETRES_PER_PX,
    viewport: viewBox ?? { width: across, height: down },
    millimetresPerPx: MILLIMETRES_PER_PX,
    scale: { millimetresPerUnit: Math.sqrt(Math.abs(determinant(matrix))), from: physical ? 'units' : 'css-px' },
    assumptions: physical ? [] : [{ about: 'scale', text: cssPxText(viewBox !== undefined) }],
  }
}

const cssPxText = (viewBox: boolean): string =>
  viewBox
    ? 'The size of the drawing is given in px, not in a unit of length: 96 px were taken as one inch, as CSS says.'
    : 'The drawing has no viewBox, so its user units are px: 96 were taken as one inch, as CSS says.'

function pageFromScale(root: Element, scale: number, width?: Side, height?: Side, viewBox?: ViewBox): Page {
  if (!(scale > 0)) throw scaleUnknown('The option "scale" is not above 0. Send millimetres per user unit.', root.spot)
  const across = viewBox?.width ?? width?.length
  const down = viewBox?.height ?? height?.length
  const overruled = width || height ? ' The size that the drawing itself states was not used.' : ''
  return {
    matrix: multiply(scaling(scale), translation(-(viewBox?.x ?? 0), -(viewBox?.y ?? 0))),
    width: across === undefined ? undefined : across * scale,
    height: down === undefined ? undefined : down * scale,
    viewport: { width: across, height: down },
    millimetresPerPx: scale,
    scale: { millimetresPerUnit: scale, from: 'option' },
    assumptions: [{ about: 'scale', text: `The scale is the given one: ${scale} mm per user unit.${overruled}` }],
  }
}
