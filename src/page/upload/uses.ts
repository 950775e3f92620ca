import type { Use } from '../../sign/vocabulary.js'

/** What signs are for, in the words of the trade. */
export const USE_WORDS: Record<Use, string> = {
  'permanent-room': 'Permanent room or space',
  'exit-door': 'Exit door',
  'elevator-landing': 'Elevator landing (entrance jamb)',
  'elevator-car-control': 'Elevator car control',
  directional: 'Directional',
  informational: 'Informational',
  parking: 'Parking',
  'transit-station': 'Transit station',
  'symbol-of-accessibility': 'Symbol of accessibility',
  temporary: 'Temporary',
  'occupant-name': 'Name of an occupant',
  directory: 'Directory',
  gift: 'Gift (no code asks for it)',
}
