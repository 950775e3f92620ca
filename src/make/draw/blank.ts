/** Blanks that shops stock: by inches up to a usual size of a sign's plate (common practice, no source). Millimetres. */

export interface Size {
  width: number
  height: number
}

const STEP = 25
const LEAST = 75
const MOST: Size = { width: 1500, height: 600 }

/** The smallest blank that holds this; undefined when none does. */
export function blankFor({ width, height }: Size): Size | undefined {
  const blank = { width: stepUp(width), height: stepUp(height) }
  return blank.width <= MOST.width && blank.height <= MOST.height ? blank : undefined
}

const stepUp = (length: number): number => Math.max(LEAST, Math.ceil(length / STEP) * STEP)
