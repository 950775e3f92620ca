import { coordinate } from '../../report/markup.js'
import type { DotPlan } from './schema.js'

/** The dots in their order as a table (RFC 4180): millimetres from the zero point of the plan, x to the right, y down. */
export function planCsv({ sequence, cartridges, zero }: DotPlan): string {
  const rows = cartridges.flatMap(({ from, to }, cartridge) =>
    sequence
      .slice(from, to + 1)
      .map(([x, y], k) => [from + k + 1, cartridge + 1, coordinate(x - zero.x), coordinate(y - zero.y)].join(',')),
  )
  return ['number,cartridge,x_mm,y_mm', ...rows, ''].join('\r\n')
}
