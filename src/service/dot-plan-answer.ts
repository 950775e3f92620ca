import type { Translator } from '../braille/translator.js'
import { readSign } from '../check.js'
import { planCsv } from '../make/dot-plan/csv.js'
import { groupsOfPoints } from '../make/dot-plan/point-groups.js'
import { inputOfSign, panelBox, planDots, type PlanInput } from '../make/dot-plan/plan.js'
import { planSvg } from '../make/dot-plan/svg.js'
import { programOf } from '../make/gcode/write.js'
import type { PlanTaskInput } from './dot-plan-request.js'
import type { PlanType } from './task.js'

/** A plan in the form asked for. @throws {Refusal} when there are no dots or the head cannot set them */
export function planAnswer(input: PlanTaskInput, type: PlanType, translator: Translator): string {
  const { settings } = input
  const dots = dotsOf(input, translator)
  const plan = planDots(dots, settings)
  switch (type) {
    case 'application/json':
      return JSON.stringify(plan)
    case 'text/csv':
      return planCsv(plan)
    case 'image/svg+xml':
      return planSvg(plan, panelBox(dots.sign))
    case 'text/x-gcode': {
      const { variant = 'real', units = 'mm', moves = 'cycles' } = settings
      return programOf(plan, { variant, units, moves })
    }
  }
}

function dotsOf({ points, check, settings }: PlanTaskInput, translator: Translator): PlanInput {
  if (check) return inputOfSign(readSign(check, translator), check.drawing !== undefined)
  const dots = (points ?? []).map(([x, y]) => ({ x, y }))
  const { cartridge } = settings
  // Which dots make a word matters only where a cartridge may have to be changed.
  const isSplit = cartridge !== undefined && cartridge.dots < dots.length
  return { dots, of: 'points', ...(isSplit && { groups: groupsOfPoints(dots, translator) }) }
}
