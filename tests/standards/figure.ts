/** A figure of a standard as printed, typed anew and apart from its table. One of the forms is given; a length may have both units. */
export interface Figure {
  /** Row, without the standard's name. */
  row: string
  /** Ends of a length. */
  inches?: Ends
  millimetres?: Ends
  /** Ends of a ratio. */
  share?: Ends
  /** Ends of a figure in a unit of its own (a count, lx, gloss units). */
  number?: Ends
  /** A length printed without a tolerance, in millimetres. */
  nominal?: number
  /** The same in inches. */
  nominalInches?: number
  /** Such a length that another rule caps. */
  isCapped?: true
  /** Least height by the height of the baseline and the distance, in inches: [baseline up to, height, under this distance], and what a foot adds. */
  bands?: [number, number, number][]
  perFoot?: number
  /** Least length per length of distance, up to a distance in millimetres where it grows no further. */
  perDistance?: { share: number; upTo?: number }
  /** Least lengths by distance, in millimetres: [up to this distance, at least]. */
  steps?: [number, number][]
}

export interface Ends {
  min?: number
  max?: number
}

/** A figure that holds under a condition instead. */
export type ExceptionFigure = Figure & { when: string }
