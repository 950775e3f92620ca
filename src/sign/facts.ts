import type { Box } from '../geometry/box.js'
import type { Point } from '../geometry/point.js'
import { toColour, type ColourDescription } from './colour.js'
import type { BoxDescription } from './description.js'
import { toMillimetres, type Length, type Unit } from './length.js'
import { declared, isKnown, missing, type Colour, type Fact, type Unknown } from './sign.js'

/** A length that others follow from: when it is not known, they say that it is what is missing. */
export const needed = <T>(fact: Fact<T>, key: Unknown['key']): Fact<T> => (isKnown(fact) ? fact : { ...fact, key })

/** Turns what a client wrote into facts of the model: lengths in millimetres, what is absent as missing. */
export class Facts {
  constructor(readonly units: Unit) {}

  length = (written: Length | undefined): Fact<number> =>
    written === undefined ? missing() : declared(toMillimetres(written, this.units))

  kind = <T>(written: T | undefined): Fact<T> => (written === undefined ? missing() : declared(written))

  colour = (written: ColourDescription | undefined): Fact<Colour> =>
    written === undefined ? missing() : declared(toColour(written))

  point = (written: { x: Length; y: Length } | undefined): Fact<Point> =>
    written === undefined
      ? missing()
      : declared({ x: toMillimetres(written.x, this.units), y: toMillimetres(written.y, this.units) })

  box = ({ x, y, width, height }: BoxDescription): Box => ({
    x: toMillimetres(x, this.units),
    y: toMillimetres(y, this.units),
    width: toMillimetres(width, this.units),
    height: toMillimetres(height, this.units),
  })
}
