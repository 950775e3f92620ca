// Bytes as a drilling program: read and judged, then planned anew, written, and read back as the same dots.
import { planDots } from '../../dist/make/dot-plan/plan.js'
import { readProgram } from '../../dist/make/gcode/read.js'
import { programOf } from '../../dist/make/gcode/write.js'
import { examined, foreseen, OPTIONS, STANDARDS } from './examined.mjs'

/** Plans of more dots take long and show nothing else. */
const MOST_PLANNED = 60
/** Millimetres: the last digit that is written, and what is lost beside it in numbers as large as those of a program may be. */
const LAST_DIGIT = 0.0005

const SETTINGS = {
  head: { tipDiameter: 1, bodyDiameter: 12, bodyClearance: 6, lift: 3, plunge: 2.5 },
  machine: { travelRate: 3000, plungeRate: 1000, dwell: 0.2 },
  dot: { baseDiameter: 1.55, height: 0.7 },
}

export const fuzz = (bytes) => {
  const program = new Uint8Array(bytes)
  examined({ program, standards: STANDARDS, options: { ...OPTIONS, dotBaseDiameter: SETTINGS.dot.baseDiameter } })
  const read = foreseen(() => readProgram(program))
  if (!read || read.dots.length > MOST_PLANNED) return
  const plan = foreseen(() => planDots({ dots: read.dots, of: 'points' }, SETTINGS))
  if (plan) for (const moves of ['cycles', 'plain']) comesBack(plan, moves)
}

function comesBack(plan, moves) {
  const written = programOf(plan, { variant: 'real', units: 'mm', moves })
  const again = readProgram(Buffer.from(written)).dots
  if (again.length !== plan.dots)
    throw new Error(`${plan.dots} dots were written in ${moves}, and ${again.length} came back`)
  again.forEach(({ x, y }, k) => {
    const far = Math.max(Math.abs(x - plan.sequence[k][0]), Math.abs(y - plan.sequence[k][1]))
    if (!(far <= LAST_DIGIT)) throw new Error(`dot ${k} came back ${far} mm from where it was, in ${moves}`)
  })
}
