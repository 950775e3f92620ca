import { createTranslator } from '../../src/braille/engine.js'
import { SignDescription } from '../../src/sign/description.js'
import { describe as toSign } from '../../src/sign/describe.js'
import type { Sign, Use } from '../../src/sign/sign.js'

/** Signs for the tests of measuring and judging. The place and all sizes are invented; they lie well inside every limit. */

export const translator = createTranslator()

type Json = Record<string, unknown>

/** A conforming sign of an invented pump house: one set of characters for touch and sight, two lines, braille below. */
export const PUMP_ROOM: Json = {
  units: 'mm',
  mark: 'P-1',
  use: 'permanent-room',
  panel: { width: 260, height: 150, finish: 'matte', colour: '#ffffff' },
  lettering: [
    {
      part: 'both',
      text: 'PUMP ROOM 12',
      lines: ['PUMP ROOM', '12'],
      typeface: { style: 'sans-serif' },
      characterProportion: 0.8,
      characterHeight: 20,
      strokeThickness: 2.6,
      relief: 1,
      section: 'straight',
      characterSpacing: 4,
      baselineSpacing: 30,
      colour: '#222222',
      baseline: { x: 20, y: 40 },
    },
  ],
  braille: [
    {
      lines: ['pump room', '12'],
      code: 'ueb-contracted',
      dotBaseDiameter: 1.55,
      dotHeight: 0.75,
      dotShape: 'domed',
      dotSpacing: 2.4,
      cellSpacing: 6.9,
      lineSpacing: 10.1,
      origin: { x: 20, y: 95 },
    },
  ],
  pictograms: [],
  borders: [],
  properNames: [],
  installation: {
    panelBottomHeight: 1300,
    side: 'latch',
    approach: 'interior',
    door: { leafWidth: 900, swing: 'toward-reader', latchToTextCentre: 300 },
  },
}

/** The same words in two sets: raised below, for sight above. */
export const TWO_SETS: Json = {
  ...PUMP_ROOM,
  panel: { width: 260, height: 240, finish: 'matte', colour: '#ffffff' },
  lettering: [
    {
      part: 'visual',
      text: 'Pump Room 12',
      lines: ['Pump Room', '12'],
      typeface: { style: 'serif' },
      characterProportion: 0.8,
      characterHeight: 20,
      strokeThickness: 4,
      characterSpacing: 4,
      baselineSpacing: 30,
      colour: '#222222',
      baseline: { x: 20, y: 40 },
    },
    { ...(PUMP_ROOM.lettering as Json[])[0], part: 'raised', baseline: { x: 20, y: 110 } },
  ],
  braille: [{ ...(PUMP_ROOM.braille as Json[])[0], origin: { x: 20, y: 165 } }],
  installation: { ...(PUMP_ROOM.installation as Json), panelBottomHeight: 1225 },
}

/** A copy with values set at dotted paths (`braille.0.dotHeight`); undefined takes a value away. */
export function withValues(description: Json, values: Record<string, unknown>): Json {
  const copy = structuredClone(description)
  for (const [path, value] of Object.entries(values)) {
    const keys = path.split('.')
    const last = keys.pop() ?? ''
    let at = copy
    for (const key of keys) at = (at[key] ??= {}) as Json
    if (value === undefined) delete at[last]
    else at[last] = structuredClone(value)
  }
  return copy
}

export function signOf(description: Json, values: Record<string, unknown> = {}): Sign {
  return toSign(SignDescription.parse(withValues(description, values)), translator)
}

export const usedFor = (use: Use): Record<string, unknown> => ({ use })
