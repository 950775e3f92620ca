/** The kinds that a sign is described with. Everything that a client may write as a word is here. */

export const USES = [
  'permanent-room',
  'exit-door',
  'elevator-landing',
  'elevator-car-control',
  'directional',
  'informational',
  'parking',
  'transit-station',
  'symbol-of-accessibility',
  'temporary',
  'occupant-name',
  'directory',
  'gift',
] as const
export type Use = (typeof USES)[number]

/** Signs that no clause asks to be read by touch (2010 ADA Standards 216.3 and 216.5 to 216.12). */
const FOR_SIGHT_ONLY: readonly Use[] = ['directional', 'informational', 'parking', 'symbol-of-accessibility']
export const asksForTouch = (use: Use): boolean => !FOR_SIGHT_ONLY.includes(use)

export const PARTS = ['raised', 'visual', 'both'] as const
/** `raised`: read by touch; `visual`: read by sight; `both`: one set of characters for both. */
export type LetteringPart = (typeof PARTS)[number]

export const SECTIONS = ['straight', 'bevelled', 'rounded', 'other'] as const
export const DOT_SHAPES = ['domed', 'rounded', 'flat', 'pointed'] as const
export const FINISHES = ['non-glare', 'matte', 'eggshell', 'satin', 'glossy'] as const
export const STYLES = ['sans-serif', 'serif', 'italic', 'oblique', 'script', 'decorative', 'unusual'] as const
export const SIDES = [
  'latch',
  'hinge',
  'inactive-leaf',
  'right-of-double-doors',
  'nearest-adjacent-wall',
  'on-door-push-side',
] as const
export const SWINGS = ['toward-reader', 'away', 'sliding', 'none'] as const
export const APPROACHES = ['interior', 'exterior'] as const
/** Whether one leaf or two close the doorway. */
export const LEAVES = ['single', 'double'] as const
/** Which edge of a neighbouring door's closed leaf turns: the one nearer to the sign or the farther. */
export const HINGES = ['near', 'far'] as const
/** Where the sign of an elevator entrance stands. */
export const JAMBS = ['both', 'one'] as const
/** Where the characters and the braille of a control stand, as one who faces it has it. */
export const CONTROL_SIDES = ['left', 'right', 'above', 'below', 'lower-left', 'on-control', 'other'] as const
/** The edge of the panel, as a finger meets it. */
export const EDGES = ['rounded', 'chamfered', 'square'] as const
/** How lines stand among each other, or one thing under another. */
export const ALIGNMENTS = ['flush-left', 'centred', 'flush-right', 'other'] as const
/** What braille is made on, where a code tells its sizes by that. */
export const CARRIERS = ['paper', 'sticker', 'pvc', 'stainless-steel', 'other'] as const
/** The outline of a symbol that is told by touch: at toilet doors in California. */
export const SYMBOL_SHAPES = ['triangle', 'circle', 'triangle-in-circle', 'other'] as const
export const BRAILLE_CODES = ['ueb-contracted', 'ueb-uncontracted'] as const

export type Section = (typeof SECTIONS)[number]
export type Carrier = (typeof CARRIERS)[number]
export type SymbolShape = (typeof SYMBOL_SHAPES)[number]
export type DotShape = (typeof DOT_SHAPES)[number]
export type Finish = (typeof FINISHES)[number]
export type TypefaceStyle = (typeof STYLES)[number]
export type Side = (typeof SIDES)[number]
export type Swing = (typeof SWINGS)[number]
export type Approach = (typeof APPROACHES)[number]
export type Leaves = (typeof LEAVES)[number]
export type Hinge = (typeof HINGES)[number]
export type Jambs = (typeof JAMBS)[number]
export type ControlSide = (typeof CONTROL_SIDES)[number]
export type Edge = (typeof EDGES)[number]
export type Alignment = (typeof ALIGNMENTS)[number]
export type BrailleCode = (typeof BRAILLE_CODES)[number]
