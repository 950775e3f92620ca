import { multiply, scaling, translation, type Matrix } from '../geometry/matrix.js'
import { Clip } from './clipping.js'
import type { Element } from './document.js'
import type { Shape } from './drawing.js'
import { parseLength, type Axis, type LengthContext } from './length.js'
import { objectBox } from './object-box.js'
import { parseReference } from './reference.js'
import { frameRegion, isWithin, Region } from './region.js'
import { enterResource, paintAside } from './resource.js'
import { lengthsAt, type Context, type Scene } from './scene.js'

/**
 * Masks that let everything through or nothing (SVG 1.1, 14.4): white shapes, or opaque ones of a mask of `mask-type: alpha`,
 * on black or on nothing. Such a mask is a clip. All others are not worked out.
 */

const DEFAULT_FRAME = { x: '-10%', y: '-10%', width: '120%', height: '120%' } as const

/** As far as a mask reaches beyond the box of what it masks, on each side, when nothing else is said: share of the box. */
const DEFAULT_REACH = 0.1

/** @param context that of the masked element. */
export function clipsOfMask(scene: Scene, masked: Element, written: string, context: Context): Clip[] | 'unresolved' {
  const reference = parseReference(written)
  if (!reference || reference.rest !== '') return 'unresolved'
  const element = scene.find(reference.target)
  if (!element) return reference.target.startsWith('#') ? [] : 'unresolved'
  if (element.name !== 'mask') return []
  const matrix = contentMatrix(scene, masked, element, context)
  const frame = frameOf(scene, masked, element, context)
  if (!matrix || frame === 'unresolved') return 'unresolved'
  const inside = enterResource(scene, element, context, { matrix, viewport: context.viewport, opacity: 1 })
  if (!inside) return 'unresolved'
  const declared = scene.cascade.of(element)
  const nested = ['clip-path', 'mask', 'filter', 'opacity'].some(
    (name) => !/^(none|1)?$/.test(declared.get(name) ?? ''),
  )
  if (nested) return 'unresolved'
  const { shapes, texts, ignored } = paintAside(scene, element, inside)
  if (texts.length > 0 || ignored.some(({ couldBe }) => couldBe.length > 0)) return 'unresolved'
  const regions = letThrough(shapes, declared.get('mask-type')?.trim() === 'alpha')
  return regions === 'unresolved' ? regions : [new Clip(regions), ...frame]
}

function contentMatrix(scene: Scene, masked: Element, mask: Element, context: Context): Matrix | undefined {
  if (mask.attributes.get('maskContentUnits')?.trim() !== 'objectBoundingBox') return context.matrix
  const box = objectBox(scene, masked, context)
  return box && multiply(context.matrix, multiply(translation(box.x, box.y), scaling(box.width, box.height)))
}

/**
 * The mask's own rectangle, beyond which nothing is seen. The one that holds by default lies round the masked element, so
 * that only strokes can reach beyond it; a clip is made of it when the element is one shape.
 */
function frameOf(scene: Scene, masked: Element, mask: Element, context: Context): Clip[] | 'unresolved' {
  const names = ['x', 'y', 'width', 'height'] as const
  const given = names.some((name) => mask.attributes.has(name))
  const inUserSpace = mask.attributes.get('maskUnits')?.trim() === 'userSpaceOnUse'
  const box = inUserSpace ? undefined : objectBox(scene, masked, context)
  if (!inUserSpace && !box) return given ? 'unresolved' : []
  if (box && !given) {
    const reach = { x: box.width * DEFAULT_REACH, y: box.height * DEFAULT_REACH }
    const frame = {
      x: box.x - reach.x,
      y: box.y - reach.y,
      width: box.width + 2 * reach.x,
      height: box.height + 2 * reach.y,
    }
    return [new Clip([frameRegion(frame, context.matrix)])]
  }
  const lengths: LengthContext = box
    ? { ...lengthsAt(scene, context), viewport: { width: 1, height: 1 } }
    : lengthsAt(scene, context)
  const read = (name: (typeof names)[number], axis: Axis) =>
    parseLength(mask.attributes.get(name) ?? DEFAULT_FRAME[name], axis, lengths)
  const [x, y, width, height] = [read('x', 'x'), read('y', 'y'), read('width', 'x'), read('height', 'y')]
  if (x === undefined || y === undefined || width === undefined || height === undefined) return 'unresolved'
  const inside = { x, y, width, height }
  const frame = box
    ? { x: box.x + x * box.width, y: box.y + y * box.height, width: width * box.width, height: height * box.height }
    : inside
  return [new Clip([frameRegion(frame, context.matrix)])]
}

type Tone = 'shows' | 'hides' | 'unknown'

/** White lets everything through and black nothing; between them, and through, lies what is not worked out. */
function toneOf({ fill, stroke }: Shape, alpha: boolean): Tone {
  if (stroke || !fill || fill.opacity < 1) return 'unknown'
  if (alpha) return 'shows'
  if (!fill.rgb) return 'unknown'
  if (fill.rgb.every((v) => v === 1)) return 'shows'
  return fill.rgb.every((v) => v === 0) ? 'hides' : 'unknown'
}

/** What the mask shows; black that was painted over white is a hole in it. */
function letThrough(shapes: readonly Shape[], alpha: boolean): Region[] | 'unresolved' {
  let shown: Region[] = []
  for (const shape of shapes) {
    const tone = toneOf(shape, alpha)
    const region = Region.of(shape.contours, shape.fillRule)
    if (tone === 'unknown' || !region) return 'unresolved'
    if (tone === 'shows') {
      region.source = shape.source
      region.circle = shape.circle
      shown.push(region)
      continue
    }
    const left = shown.map((white) => without(white, region))
    if (left.includes('unresolved')) return 'unresolved'
    shown = left.filter((white) => white !== 'unresolved').flatMap((white) => white ?? [])
  }
  return shown
}

/** A white area less a black one: nothing, itself, or one with holes; undefined when nothing is left. */
function without(white: Region, black: Region): Region | 'unresolved' | undefined {
  const apart = new Clip([black]).near(white.box).length === 0
  if (apart) return white
  if (isWithin(white, black)) return undefined
  const countable = white.rule === 'evenodd' || white.contours.length === 1
  if (!countable || black.contours.length > 1 || !isWithin(black, white)) return 'unresolved'
  return new Region([...white.contours, ...black.contours], 'evenodd', white.box)
}
