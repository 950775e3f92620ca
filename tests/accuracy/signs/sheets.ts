/** Ways to say how large a drawing is. The page is a square, so that a sign has room on it however it is turned. */
export interface Sheet {
  name: string
  /** The root's attributes, and how many user units a millimetre is. */
  attributes: string
  perMillimetre: number
}

/** Millimetres. */
export const PAGE = 420

const MM_PER_INCH = 25.4
/** CSS Values and Units 4, 6.2: an inch is 96 px. */
const PX_PER_INCH = 96
/** User units across the page for a drawing whose viewBox has a scale of its own; an invented number. */
const ODD_UNITS = 5953.5

export const SHEETS: readonly Sheet[] = [
  { name: 'mm', perMillimetre: 1, attributes: `width="${PAGE}mm" height="${PAGE}mm" viewBox="0 0 ${PAGE} ${PAGE}"` },
  { name: 'inches', perMillimetre: 1 / MM_PER_INCH, attributes: sized(PAGE / MM_PER_INCH, 'in') },
  {
    name: 'px, no viewBox',
    perMillimetre: PX_PER_INCH / MM_PER_INCH,
    attributes: `width="${(PAGE * PX_PER_INCH) / MM_PER_INCH}" height="${(PAGE * PX_PER_INCH) / MM_PER_INCH}"`,
  },
  {
    name: 'mm, other viewBox',
    perMillimetre: ODD_UNITS / PAGE,
    attributes: `width="${PAGE}mm" height="${PAGE}mm" viewBox="0 0 ${ODD_UNITS} ${ODD_UNITS}"`,
  },
]

function sized(side: number, unit: string): string {
  return `width="${side}${unit}" height="${side}${unit}" viewBox="0 0 ${side} ${side}"`
}

/** Degrees clockwise as seen. */
export const TURNS = [0, 90, 180, 1.5] as const
