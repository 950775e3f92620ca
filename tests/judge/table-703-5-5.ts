import type { Limit } from '../../src/standards/standard.js'

const perStep = { in: 1 / 8, mm: 3.2 }
const step = { in: 12, mm: 305 }

/**
 * The first two rows of table 703.5.5 (2010 ADA Standards): up to 70 inches (1780 mm) above the floor, 5/8 inch (16 mm) from less than
 * 72 inches (1830 mm) and 1/8 inch (3.2 mm) per foot (305 mm) more; up to 120 inches (3050 mm) 2 inches (51 mm) from 180 inches (4570 mm).
 */
export const FIRST_ROWS: Extract<Limit, { kind: 'by-viewing-distance' }>['bands'] = [
  {
    baselineAbove: { in: 40, mm: 1015 },
    baselineTo: { in: 70, mm: 1780 },
    from: { in: 72, mm: 1830 },
    base: { in: 5 / 8, mm: 16 },
    perStep,
    step,
  },
  {
    baselineAbove: { in: 70, mm: 1780 },
    baselineTo: { in: 120, mm: 3050 },
    from: { in: 180, mm: 4570 },
    base: { in: 2, mm: 51 },
    perStep,
    step,
  },
]
