import type { Figure } from './figure.js'

/** Figures of ABNT NBR 9050:2020 as an inspection form in a public repository cites them. */
export const FIGURES: Figure[] = [
  // 5.4.1: between 1.20 m and 1.60 m
  { row: '5.4.1/lowest-tactile', millimetres: { min: 1200 } },
  { row: '5.4.1/highest-tactile', millimetres: { max: 1600 } },
  // 5.2.8.2.3: lower edge at least 2.10 m
  { row: '5.2.8.2.3/headroom', millimetres: { min: 2100 } },
]
