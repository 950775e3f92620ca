import type { Paint } from '../drawing/drawing.js'
import { over, relativeLuminance, type Rgb } from './rgb.js'

/**
 * Paints of more than one colour: gradients. Between two stops of a gradient every colour between theirs is seen, so that the
 * lightest and the darkest stop bound what is seen anywhere.
 */

export interface Tone {
  rgb: Rgb
  opacity: number
}

/** So many colours of one place are told apart; of more, the lightest and the darkest are kept. */
const MOST_TONES = 16

/** The colours that a paint has anywhere; undefined when it is not understood. */
export function tonesOf({ rgb, stops, opacity }: Paint): Tone[] | undefined {
  if (rgb) return [{ rgb, opacity }]
  return stops?.map(([red, green, blue, own]) => ({ rgb: [red, green, blue], opacity: own }))
}

/** All that is seen of veils over a ground. @param veils the topmost first. */
export function throughVeils(veils: readonly Tone[][], ground: readonly Tone[]): Rgb[] {
  return veils.reduceRight<Rgb[]>(
    (below, veil) => bounds(veil.flatMap(({ rgb, opacity }) => below.map((back) => over(rgb, opacity, back)))),
    bounds(ground.map(({ rgb }) => rgb)),
  )
}

function bounds(colours: Rgb[]): Rgb[] {
  if (colours.length <= MOST_TONES) return colours
  const sorted = [...colours].sort((a, b) => relativeLuminance(a) - relativeLuminance(b))
  return [sorted[0], sorted[sorted.length - 1]]
}

/** Whether some shade of the one is as light as some shade of the other, when each runs from its darkest to its lightest. */
export function meetInLightness(fronts: readonly Rgb[], backs: readonly Rgb[]): boolean {
  const [front, back] = [fronts, backs].map((colours) => colours.map(relativeLuminance))
  return Math.max(...front) >= Math.min(...back) && Math.max(...back) >= Math.min(...front)
}
