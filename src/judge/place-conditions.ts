import { gapOf, INSTALLATION_POINTER, installationPlace } from '../measure/facts.js'
import { panelSide } from '../measure/panel-edges.js'
import { isKnown, type Sign, type Use } from '../sign/sign.js'
import { tactileWords } from './layout-conditions.js'
import { met, notMet, open, when, type Met } from './met.js'
import type { Condition } from './types.js'

/** Conditions about where a sign stands and what it says there. What a description has no place for stays open. */

/**
 * Heights above the floor between which an arm reads a vertical face, in millimetres: 1.20 to 1.60 m (Orden TMA/851/2021, technical
 * document, article 44.1).
 */
const ARM_ZONE = { from: 1200, to: 1600 }

/** A panel that stands partly in the zone is a person's to judge: the article does not say. */
function inArmZone(sign: Sign): Met {
  const { panelBottomHeight: bottom } = sign.installation
  const height = panelSide(sign, 'height')
  const { place } = sign.panel
  if (!isKnown(bottom)) {
    const pointer = `${INSTALLATION_POINTER}/panelBottomHeight`
    const ask = 'How high above the finish floor is the lower edge of the panel?'
    return { met: 'open', gap: gapOf(bottom, installationPlace(sign), { pointer, ask, unit: 'mm' }) }
  }
  if (bottom.value > ARM_ZONE.to) return notMet('The sign stands above the reach of the arm.')
  if (!isKnown(height)) return open('how high the panel is, and so whether the arm reaches it, is not known', place)
  const top = bottom.value + height.value
  if (top < ARM_ZONE.from) return notMet('The sign stands below the reach of the arm.')
  return bottom.value >= ARM_ZONE.from && top <= ARM_ZONE.to
    ? met
    : open('the sign stands partly within the reach of the arm', place)
}

/** Open for these uses, not met for all others. */
const openFor =
  (uses: readonly Use[], why: string, because: string) =>
  (sign: Sign): Met =>
    uses.includes(sign.use) ? open(why, sign.panel.place) : notMet(because)

const LIFTS: readonly Use[] = ['elevator-landing', 'elevator-car-control']

/** A text of one word is short; how many words make a long one is not said. */
function longerText(sign: Sign): Met {
  const count = tactileWords(sign)
  return count !== undefined && count <= 1
    ? notMet('The text is one word.')
    : open('whether the text counts as a longer one is a matter of judgement', sign.panel.place)
}

const DOOR_NUMBER = /^\d+\s?\p{L}?$/u

function doorNumber(sign: Sign): Met {
  const texts = sign.lettering.filter(({ part }) => part !== 'visual').map(({ text }) => text)
  const may = texts.some((text) => !isKnown(text) || DOOR_NUMBER.test(text.value.trim()))
  return may
    ? open('only numbers at doors of hotels and the like are concerned', sign.panel.place)
    : notMet('The raised characters are no number of a door.')
}

export const PLACE_CONDITIONS = {
  'in-arm-zone': inArmZone,
  'with-pictogram': ({ pictograms }) => when(pictograms.length > 0, 'The sign has no pictogram.'),
  'longer-text': longerText,
  'door-number': doorNumber,
  'black-and-white': (sign) =>
    sign.lettering.length > 0
      ? open('only writing in black and white is concerned', sign.panel.place)
      : notMet('The sign has no characters.'),
  'station-name': openFor(
    ['transit-station'],
    'the name of a station is set aside, and whether the sign gives one is seen at the place',
    'The sign does not name a station.',
  ),
  'posted-timetable': openFor(
    ['informational', 'transit-station'],
    'only posted timetables and the like are concerned',
    'The sign is no posted timetable.',
  ),
  'toilet-or-lift': (sign) =>
    LIFTS.includes(sign.use) ? met : open('only signs of toilets and lifts are concerned', sign.panel.place),
  'sanitary-room': openFor(
    ['permanent-room'],
    'only doors of toilets, showers and changing rooms are concerned',
    'The sign is not at the door of a room.',
  ),
  exterior: ({ installation: { approach }, panel }) =>
    isKnown(approach)
      ? when(approach.value === 'exterior', 'The sign is indoors.')
      : open('whether the sign is outdoors is not given', panel.place),
  'on-a-handrail': (sign) =>
    isKnown(sign.installation.side)
      ? notMet('The sign is on the wall at a door.')
      : open('whether the sign is on a handrail is seen at the place', sign.panel.place),
  'one-direction': ({ panel }) =>
    open('whether the pictograms belong to one direction is seen on the sign', panel.place),
} satisfies Partial<Record<Condition, (sign: Sign) => Met>>
