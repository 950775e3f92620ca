/** Blanks that shops stock: by inches up to a usual size of a sign's plate (common practice, no source). Millimetres. */

export interface Size {
  width: number
  height: number
}

const STEP = 25
const LEAST = 75
export const LARGEST_BLANK: Size = { width: 1500, height: 600 }

/** The smallest blank that holds this; undefined when none does. */
export function blankFor({ width, height }: Size): Size | undefined {
  const blank = { width: stepUp(width), height: stepUp(height) }
  return blank.width <= LARGEST_BLANK.width && blank.height <= LARGEST_BLANK.height ? blank : undefined
}

const stepUp = (length: number): number => Math.max(LEAST, Math.ceil(length / STEP) * STEP)
