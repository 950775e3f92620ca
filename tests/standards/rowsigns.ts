import type { Requirement } from '../../src/standards/standard.js'
import { PUMP_ROOM, TWO_SETS, withValues } from '../measure/signs.js'
import { settingFor, type Setting } from './settings.js'
import { SWITCHES } from './switches.js'

/** The sign that a row is proved on: one that the row is in force for, with what it measures. */

type Json = Record<string, unknown>

export interface RowSign {
  base: Json
  setting: Setting
  /** Whether the row is in force is open, whatever the sign says. */
  isOpen: boolean
}

const NOT_STRAIGHT: Json = {
  'lettering.0.section': 'bevelled',
  'lettering.0.characterSpacingAtBase': 2,
  'lettering.0.strokeThicknessAtBase': 4,
}

/** What several say, the last of them winning. */
const all = (said: Json[]): Json => Object.fromEntries(said.flatMap((one) => Object.entries(one)))

/** A use that the row is in force for, of those its conditions want, the most ordinary one first. */
function useFor({ scope: { uses, when } }: Requirement): string {
  const wanted = when.map((condition) => SWITCHES[condition].on.use).find((use) => typeof use === 'string')
  if (wanted !== undefined) return String(wanted)
  return ['permanent-room', 'informational', ...uses].find((use) => uses.some((one) => one === use)) ?? uses[0]
}

/** A set for sight of its own stands first on a sign of two sets; on the same panel as the other sign. */
const SIGHT_FIRST = withValues(TWO_SETS, { 'panel.height': 150, 'installation.panelBottomHeight': 1300 })

/** An exception of which it stays open whether it holds, whatever the sign says. */
const isNeverOff = ({ when }: { when: string }): boolean => SWITCHES[when].isOpen === true && !SWITCHES[when].off

export function signFor(row: Requirement): RowSign {
  const { parts, sections, when } = row.scope
  const start = parts?.every((part) => part === 'visual') ? SIGHT_FIRST : PUMP_ROOM
  const setting = settingFor(row, 0)
  const values: Json = {
    use: useFor(row),
    ...all(row.exceptions.map((exception) => SWITCHES[exception.when].off ?? {})),
    ...(sections && !sections.includes('straight') && NOT_STRAIGHT),
    ...all(when.map((condition) => SWITCHES[condition].on)),
    ...setting.base,
  }
  return {
    base: withValues(start, { ...values, use: useFor(row) }),
    setting,
    isOpen: when.some((condition) => SWITCHES[condition].isOpen) || row.exceptions.some(isNeverOff),
  }
}
