import { missing, type Installation, type Lettering, type SymbolSizes } from '../sign/sign.js'

/** What no drawing says. Where lines and words stand is measured on their outlines. */

const SECTION = missing('a drawing does not say the section of raised characters')

export const UNDRAWN_OF_LETTERING: Pick<
  Lettering,
  'relief' | 'strokeThicknessAtBase' | 'characterSpacingAtBase' | 'wordSpacing' | 'alignment' | 'finish'
> = {
  relief: missing('a drawing does not say how high characters are raised'),
  strokeThicknessAtBase: SECTION,
  characterSpacingAtBase: SECTION,
  wordSpacing: missing(),
  alignment: missing(),
  finish: missing('a drawing does not say the finish'),
}

const NO_SYMBOL = missing('a drawing does not say which outline is that of a symbol')

export const UNDRAWN_SYMBOL: SymbolSizes = {
  triangleEdge: NO_SYMBOL,
  circleDiameter: NO_SYMBOL,
  thickness: NO_SYMBOL,
  centreHeight: NO_SYMBOL,
  doorCentreOffset: NO_SYMBOL,
}

export function nothingInstalled(): Installation {
  const unknown = missing('a drawing does not say how the sign is installed')
  return {
    panelBottomHeight: unknown,
    side: unknown,
    approach: unknown,
    viewingDistance: unknown,
    leaves: unknown,
    leafWidth: unknown,
    swing: unknown,
    latchToTextCentre: unknown,
    wallAtLatch: unknown,
    latchToCorner: unknown,
    edgeToArchitrave: unknown,
    edgeToJamb: unknown,
    handleHeight: unknown,
    wallColour: unknown,
    clearWall: unknown,
    nearestApproach: unknown,
    jambs: unknown,
    controlSide: unknown,
  }
}
