import type { Colour, Fact } from './sign.js'
import type { Approach, ControlSide, Hinge, Jambs, Leaves, Side, Swing } from './vocabulary.js'

/** Where a sign hangs and what is round it. A drawing shows nothing of it. Lengths are millimetres. */
export interface Installation {
  panelBottomHeight: Fact<number>
  side: Fact<Side>
  approach: Fact<Approach>
  viewingDistance: Fact<number>
  leafWidth: Fact<number>
  swing: Fact<Swing>
  latchToTextCentre: Fact<number>
  leaves: Fact<Leaves>
  /** Whether there is wall beside the latch to hang the sign on; at double doors, to the right of them. */
  wallAtLatch: Fact<boolean>
  /** From the sign's nearest edge to the architrave, and to the jamb, of the door. */
  edgeToArchitrave: Fact<number>
  edgeToJamb: Fact<number>
  /** Finish floor to the door's handle. */
  handleHeight: Fact<number>
  /** From the closed leaf's latch edge to the inner corner, when the sign is on the adjacent wall. */
  latchToCorner: Fact<number>
  /** Along the wall from the middle of the tactile characters to an inner corner of the room; undefined when nobody said that there is one. */
  innerCorner?: number
  /** Other doors beside the sign; undefined when nobody said. */
  neighbouringDoors?: NeighbouringDoor[]
  /** Of the wall round the sign. */
  wallColour: Fact<Colour>
  /** Least clear wall all round the sign. */
  clearWall: Fact<number>
  /** How near a reader can come without meeting an obstruction or a door's swing. */
  nearestApproach: Fact<number>
  /** Of the sign of an elevator entrance: on which jambs it stands. */
  jambs: Fact<Jambs>
  /** Of a control's sign: where it stands at its control. */
  controlSide: Fact<ControlSide>
}

/** A door beside the sign, in the sign's wall, or in the wall beyond an inner corner when `corner` is given. */
export interface NeighbouringDoor {
  /** Along the wall, from the middle of the tactile characters (beyond a corner: from the corner) to the leaf's nearest edge when closed. */
  distance: number
  leafWidth: number
  swing: Swing
  hinge: Hinge
  /** Along the sign's wall, from the middle of the tactile characters to the inner corner. */
  corner?: number
}
