import { asksForTouch, type Lettering, type LetteringPart, type Sign } from '../sign/sign.js'

/** The part that a set of characters plays on its sign, which other sets and the sign's use have a say in. */

/** Said beside a value of raised characters that are judged for sight too. */
export const STANDS_IN = 'The sign has no characters for sight of their own; the raised ones are taken to serve both.'

/** The part of raised characters on a sign where all are raised. */
export const roleOfAllRaised = ({ use }: Sign): LetteringPart => (asksForTouch(use) ? 'both' : 'visual')

export const allRaised = (sign: Sign): boolean => sign.lettering.every(({ part }) => part === 'raised')

/**
 * Raised characters on a sign without any for sight are taken to serve both: the stricter reading where nobody says that another
 * sign carries the rest. Where nothing need be read by touch they are held to all that is asked of characters for sight.
 */
export const roleOf = (lettering: Lettering, sign: Sign): LetteringPart =>
  lettering.part === 'raised' && allRaised(sign) ? roleOfAllRaised(sign) : lettering.part

/**
 * The first of the characters that a client described as raised on a sign without any for sight: another sign may carry those. In a drawing
 * the word only says what is cut.
 */
export const saidToBeRaisedOnly = (sign: Sign): Lettering | undefined =>
  asksForTouch(sign.use) && allRaised(sign)
    ? sign.lettering.find(({ place }) => place.pointer !== undefined)
    : undefined
