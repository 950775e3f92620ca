import type { Point } from '../geometry/point.js'
import { isKnown, type Border, type BrailleBlock, type Lettering, type LetteringLine, type Sign } from '../sign/sign.js'
import { coordinate as n, escaped } from './markup.js'
import { inksOn, isBarelySeen, PAPER, paintOf, type Inks, type Paint } from './svg-colours.js'

/** The sign itself, drawn from our model in the colours that are known of it, not a picture of its materials. */

const BASELINE_INK = '#9aa5b1'
/** The edge of the panel stands on the white sheet. */
const PANEL_EDGE = '#5b6470'

/** Height of capitals as a share of the font size where letters are only sketched: common practice, no source. */
const SKETCH_CAPITALS = 0.7
/** Radius of a dot whose diameter nobody gave, in millimetres; it is drawn as a ring. */
const SKETCH_RADIUS = 0.6
const THIN = 0.2

const isFinitePoint = ({ x, y }: Point): boolean => Number.isFinite(x) && Number.isFinite(y)

/** The markup of the sign in its own millimetres. */
export function signMarkup(sign: Sign): string {
  const ground = paintOf(sign.panel.colour) ?? PAPER
  const inks = inksOn(ground)
  return [
    panel(sign, ground),
    ...sign.borders.map((item) => border(item, inks)),
    ...sign.pictograms.map(({ field, fieldColour }) =>
      isKnown(field)
        ? rectangle(
            field.value,
            `fill="${paintOf(fieldColour)?.hex ?? 'none'}" stroke="${inks.edge}" stroke-width="${THIN}" stroke-dasharray="2 1"`,
          )
        : '',
    ),
    ...sign.lettering.map((item) => lettering(item, ground, inks)),
    ...sign.braille.map((item) => braille(item, inks)),
  ]
    .filter((part) => part !== '')
    .join('\n')
}

type Rectangle = { x: number; y: number; width: number; height: number }

const rectangle = ({ x, y, width, height }: Rectangle, attributes: string): string =>
  [x, y, width, height].every(Number.isFinite) && width >= 0 && height >= 0
    ? `<rect x="${n(x)}" y="${n(y)}" width="${n(width)}" height="${n(height)}" ${attributes}/>`
    : ''

function panel({ panel: { place, width, height } }: Sign, { hex }: Paint): string {
  const box =
    place.box ??
    (isKnown(width) && isKnown(height) ? { x: 0, y: 0, width: width.value, height: height.value } : undefined)
  return box ? rectangle(box, `fill="${hex}" stroke="${PANEL_EDGE}" stroke-width="0.35"`) : ''
}

function border({ box, width, outlines }: Border, inks: Inks): string {
  if (outlines.length > 0) return filled(outlines, `fill="${inks.border}"`)
  const thickness = isKnown(width) ? width.value : 0
  const inset = thickness / 2
  const middle = { x: box.x + inset, y: box.y + inset, width: box.width - thickness, height: box.height - thickness }
  return rectangle(middle, `fill="none" stroke="${inks.border}" stroke-width="${n(Math.max(thickness, THIN))}"`)
}

/** Closed polylines as one path; a contour with a point that is not finite is left out. */
function filled(outlines: readonly Point[][], paint: string): string {
  const contours = outlines.filter((points) => points.length > 1 && points.every(isFinitePoint))
  if (contours.length === 0) return ''
  const data = contours.map((points) => `M${points.map(({ x, y }) => `${n(x)} ${n(y)}`).join('L')}Z`).join('')
  return `<path d="${data}" ${paint} fill-rule="evenodd"/>`
}

function lettering(item: Lettering, ground: Paint, inks: Inks): string {
  const own = paintOf(item.colour)
  const outline = own && isBarelySeen(own, ground) ? ` stroke="${inks.edge}" stroke-width="${THIN}"` : ''
  const paint = `fill="${own?.hex ?? (item.part === 'visual' ? inks.visual : inks.tactile)}"${outline}`
  return item.lines
    .map(
      (line) =>
        (line.outlines.length > 0 ? filled(line.outlines, paint) : sketch(item, line, paint)) + baseline(item, line),
    )
    .join('\n')
}

/** Letters that were described and not drawn: set in whatever face is at hand, at their height. */
function sketch({ characterHeight }: Lettering, { place, text, baseline }: LetteringLine, paint: string): string {
  if (!isKnown(text) || !isKnown(baseline) || !isFinitePoint(baseline.value)) return ''
  const height = isKnown(characterHeight) ? characterHeight.value : place.box?.height
  if (height === undefined || !Number.isFinite(height) || height <= 0) return ''
  const { x, y } = baseline.value
  const size = n(height / SKETCH_CAPITALS)
  const width =
    place.box && place.box.width > 0 ? ` textLength="${n(place.box.width)}" lengthAdjust="spacingAndGlyphs"` : ''
  return `<text x="${n(x)}" y="${n(y)}" font-size="${size}" ${paint} fill-opacity="0.75" font-family="sans-serif"${width}>${escaped(text.value)}</text>`
}

/** The baseline, as thin dashes; nothing when its length is unknown. */
function baseline(_: Lettering, { place, baseline }: LetteringLine): string {
  if (!isKnown(baseline) || !isFinitePoint(baseline.value) || !place.box) return ''
  const { x, y } = baseline.value
  return `<path d="M${n(x)} ${n(y)}H${n(place.box.x + place.box.width)}" stroke="${BASELINE_INK}" stroke-width="${THIN}" stroke-dasharray="1.5 1" fill="none"/>`
}

function braille({ lines, dotBaseDiameter }: BrailleBlock, inks: Inks): string {
  const radius = isKnown(dotBaseDiameter) && dotBaseDiameter.value > 0 ? dotBaseDiameter.value / 2 : undefined
  const r = n(radius ?? SKETCH_RADIUS)
  const across = n(2 * Number(r))
  const data = lines
    .flatMap((line) => line.dots.filter(isFinitePoint))
    .map(({ x, y }) => `M${n(x - Number(r))} ${n(y)}a${r} ${r} 0 1 0 ${across} 0a${r} ${r} 0 1 0 -${across} 0`)
    .join('')
  if (data === '') return ''
  const paint = radius === undefined ? `fill="none" stroke="${inks.dot}" stroke-width="${THIN}"` : `fill="${inks.dot}"`
  return `<path d="${data}" ${paint}/>`
}
