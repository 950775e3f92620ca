import type { Facts } from './facts.js'
import type { InstallationDescription } from './installation-description.js'
import { toMillimetres } from './length.js'
import type { Installation } from './sign.js'

/** Where a sign hangs, in millimetres; what is not said is a missing fact. */
export function describeInstallation(said: InstallationDescription | undefined, facts: Facts): Installation {
  const door = said?.door
  const millimetres = (written: Parameters<typeof toMillimetres>[0]) => toMillimetres(written, facts.units)
  return {
    panelBottomHeight: facts.length(said?.panelBottomHeight),
    side: facts.kind(said?.side),
    approach: facts.kind(said?.approach),
    viewingDistance: facts.length(said?.viewingDistance),
    leaves: facts.kind(door?.leaves),
    leafWidth: facts.length(door?.leafWidth),
    swing: facts.kind(door?.swing),
    latchToTextCentre: facts.length(door?.latchToTextCentre),
    wallAtLatch: facts.kind(door?.wallAtLatch),
    latchToCorner: facts.length(door?.latchToCorner),
    edgeToArchitrave: facts.length(door?.edgeToArchitrave),
    edgeToJamb: facts.length(door?.edgeToJamb),
    handleHeight: facts.length(door?.handleHeight),
    ...(said?.innerCorner !== undefined && { innerCorner: millimetres(said.innerCorner) }),
    ...(said?.neighbouringDoors && {
      neighbouringDoors: said.neighbouringDoors.map(({ distance, leafWidth, swing, hinge, corner }) => ({
        distance: millimetres(distance),
        leafWidth: millimetres(leafWidth),
        swing,
        hinge,
        ...(corner !== undefined && { corner: millimetres(corner) }),
      })),
    }),
    wallColour: facts.colour(said?.wallColour),
    clearWall: facts.length(said?.clearWall),
    nearestApproach: facts.length(said?.nearestApproach),
    jambs: facts.kind(said?.jambs),
    controlSide: facts.kind(said?.controlSide),
  }
}
