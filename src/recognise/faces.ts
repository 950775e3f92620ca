import type { Font } from 'fontkit'
import type { TypefaceStyle } from '../sign/sign.js'

/** What is known of the typeface that a text is set in. */

/** A face whose outlines are here. */
export interface OutlineFace {
  kind: 'outlines'
  family: string
  /** Family and face, for messages: `DejaVu Sans Bold`. */
  name: string
  font: Font
  style: TypefaceStyle
}

/**
 * A face that is not here, set with another one that has the same advances: the text stands where it would, but its outlines
 * are others.
 */
export interface SubstituteFace {
  kind: 'substitute'
  family: string
  name: string
  /** The face that lends its advances. */
  font: Font
  lender: string
  /** Height of capitals as a share of the em, and who says so; undefined when nobody does. */
  capHeight?: { share: number; source: string }
  style?: TypefaceStyle
}

/** A face of which only the height of capitals is here. */
export interface MetricsFace {
  kind: 'metrics'
  family: string
  name: string
  /** Height of capitals as a share of the em. */
  capHeight: number
  /** Undefined when the category does not decide it. */
  style?: TypefaceStyle
}

export interface UnknownFace {
  kind: 'unknown'
  family?: string
  why: string
}

export type ResolvedFace = OutlineFace | SubstituteFace | MetricsFace | UnknownFace

/** A family by its key, a CSS weight and a slant. */
export interface WantedFace {
  key: string
  weight: number
  slant?: 'italic' | 'oblique'
  /** The name itself says the weight: another one will not do. */
  exact?: boolean
}

/** Families are compared by their letters and digits alone, in lower case: CSS names and PostScript names meet there. */
export const keyOf = (family: string): string => family.toLowerCase().replace(/[^a-z0-9]/g, '')
