import type { Setting } from './settings.js'

/** Colours for a contrast of a certain value, by each formula. */

type Json = Record<string, unknown>

/** Reflectance of the lighter side, and of the darker one for a contrast by each formula, from 0 to 1. */
const LIGHT = 0.8
const DARK_FOR: Record<string, (contrast: number) => number> = {
  // (L1 + 0.05) / (L2 + 0.05), WCAG 2.2
  ratio: (c) => (LIGHT + 0.05) / c - 0.05,
  // (B1 - B2) / B1, ADAAG 1991, A4.30.5
  Lighter: (c) => LIGHT * (1 - c),
  // |Yo - Yb| / Yb, dark on light
  Background: (c) => LIGHT * (1 - c),
  Michelson: (c) => (LIGHT * (1 - c)) / (1 + c),
  // 1.25 (Y1 - Y2) / (Y1 + Y2 + 0.25)
  BowmanSapolinski: (c) => (1.25 * LIGHT - c * (LIGHT + 0.25)) / (1.25 + c),
  Difference: (c) => LIGHT - c,
}
const lrv = (reflectance: number) => ({ lrv: reflectance * 100 })
const darker = (formula: string, contrast: number) => lrv(DARK_FOR[formula](contrast))

/** All contrasts of a sign hang on the same colours. */
const contrastSetting = (light: string, dark: string, formula: string, base: Json = {}): Setting => ({
  base: { ...base, [light]: lrv(LIGHT) },
  set: (contrast) => ({ [dark]: darker(formula, contrast) }),
  couples: ['contrast.'],
})

/**
 * @param n number of the lettering that the row looks at
 * @param signs what a sign needs beside for a pictogram and for a symbol of accessibility
 */
export function contrastSettingFor(
  name: string,
  n: number,
  signs: { pictogram: Json; symbol: Json },
): Setting | undefined {
  const characters = `lettering.${n}.colour`
  const [, pair, formula = 'ratio'] = /^contrast\.([a-z]+)(?:By(\w+))?$/u.exec(name) ?? []
  if (pair === 'characters') return contrastSetting('panel.colour', characters, formula)
  if (pair === 'reflectance') return contrastSetting('panel.colour', characters, 'Lighter')
  if (pair === 'pictogram')
    return contrastSetting('pictograms.0.fieldColour', 'pictograms.0.colour', formula, signs.pictogram)
  if (pair === 'symbol')
    return contrastSetting('pictograms.0.fieldColour', 'pictograms.0.colour', formula, signs.symbol)
  if (pair === 'wall') return contrastSetting('installation.wallColour', 'panel.colour', formula)
  if (name === 'contrast.lighterReflectance')
    return {
      base: { [characters]: lrv(0.02) },
      set: (value) => ({ 'panel.colour': lrv(value) }),
      couples: ['contrast.'],
    }
  return undefined
}
