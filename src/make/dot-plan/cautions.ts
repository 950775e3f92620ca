/** What is said with every plan and at the head of every program: short lines, since some controls cut long comments. */

export const CAUTIONS: readonly string[] = [
  'Work behind the guard, with the machine’s emergency stop in reach.',
  'With a deposition head mounted, keep the spindle switched off and locked.',
  'Wear eye and skin protection against resin and against the light that cures it.',
  'Ventilate: resin and its vapours are not to be breathed or touched before it is cured.',
  'Run the dry-run program first, then a trial on scrap, before the sign.',
  'Follow the sheets of the makers of the machine, the head and the resin: they come before this plan.',
]
