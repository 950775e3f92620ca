// Bytes as an SVG drawing, from the gate to the report.
import { examined, OPTIONS, STANDARDS } from './examined.mjs'

export const fuzz = (bytes) => {
  examined({ drawing: new Uint8Array(bytes), standards: STANDARDS, options: OPTIONS })
}
