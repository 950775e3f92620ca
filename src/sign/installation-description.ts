import { z } from 'zod'
import { ColourDescription } from './colour.js'
import { Distance, Length } from './length.js'
import { APPROACHES, CONTROL_SIDES, HINGES, JAMBS, LEAVES, SIDES, SWINGS } from './vocabulary.js'

/** Where a sign hangs, as a client writes it. */

/** Doors beside one sign; more are another sign's. */
export const MOST_DOORS = 10

const DoorDescription = z
  .strictObject({
    leaves: z.enum(LEAVES).optional().describe('One leaf or two in the doorway.'),
    leafWidth: Length.optional(),
    swing: z.enum(SWINGS).optional(),
    latchToTextCentre: Distance.optional().describe(
      'Along the wall, from the latch edge of the closed leaf to the middle of all tactile characters and braille.',
    ),
    wallAtLatch: z
      .boolean()
      .optional()
      .describe('Whether there is wall for the sign beside the latch; at two active leaves, to the right of them.'),
    latchToCorner: Distance.optional().describe(
      'From the latch edge of the closed leaf to the inner corner, for a sign on the adjacent wall.',
    ),
    edgeToArchitrave: Distance.optional().describe('From the sign’s nearest edge to the architrave of the door.'),
    edgeToJamb: Distance.optional().describe('From the sign’s nearest edge to the jamb of the door.'),
    handleHeight: Length.optional().describe('Finish floor to the door’s handle.'),
  })
  .meta({ id: 'DoorDescription', description: 'The door that the sign belongs to.' })

const NeighbouringDoorDescription = z
  .strictObject({
    distance: Distance.describe(
      'Along the wall, from the middle of the tactile characters to the nearest edge of the closed leaf; with `corner`, from the corner.',
    ),
    leafWidth: Length,
    swing: z.enum(SWINGS),
    hinge: z.enum(HINGES).describe('Which edge of the closed leaf turns: the one nearer to the sign or the farther.'),
    corner: Distance.optional().describe(
      'For a door in the adjacent wall: along the sign’s wall, from the middle of the tactile characters to the inner corner.',
    ),
  })
  .meta({
    id: 'NeighbouringDoorDescription',
    description: 'Another door whose leaf may turn over the floor at the sign.',
  })

export const InstallationDescription = z
  .strictObject({
    panelBottomHeight: Distance.optional().describe('Finish floor to the panel’s lower edge.'),
    side: z.enum(SIDES).optional(),
    approach: z.enum(APPROACHES).optional(),
    viewingDistance: Length.optional(),
    door: DoorDescription.optional(),
    neighbouringDoors: z
      .array(NeighbouringDoorDescription)
      .max(MOST_DOORS)
      .optional()
      .describe('Absent: not known; empty: none.'),
    innerCorner: Distance.optional().describe(
      'Along the wall, from the middle of the tactile characters to an inner corner of the room.',
    ),
    wallColour: ColourDescription.optional().describe('Of the wall round the sign.'),
    clearWall: Distance.optional().describe('Least clear wall all round the sign.'),
    nearestApproach: Distance.optional().describe(
      'How near to the sign a reader can come without meeting an obstruction or standing in the swing of a door.',
    ),
    jambs: z.enum(JAMBS).optional().describe('At an elevator entrance: whether both jambs carry the sign.'),
    controlSide: z.enum(CONTROL_SIDES).optional().describe('Of a control’s sign: where it stands at its control.'),
  })
  .meta({ id: 'InstallationDescription', description: 'Where and how the sign hangs.' })
export type InstallationDescription = z.infer<typeof InstallationDescription>
