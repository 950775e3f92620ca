/**
 * For rows that allow some kinds of a thing: which pass and which are left to a person, typed anew and apart from the tables. All others
 * fail. The sources are those of the tables' figures; what is left to a person is our reading wherever a clause does not say so.
 */
export interface Kinds {
  row: string
  pass: string[]
  judgement?: string[]
  when?: string
}

/** No clause prints a figure of gloss: of the kinds of the trade these are free of glare, and satin is a person's to judge (our reading). */
const WITHOUT_GLARE = { pass: ['non-glare', 'matte', 'eggshell'], judgement: ['satin'] }
/** "uppercase or lowercase or a combination of both" */
const ANY_CASE = ['upper', 'lower', 'mixed']
/** "latch side", "inactive leaf", "right of the right hand door"; "push side of doors with closers": a closer is a person's to see */
const AT_DOOR = { pass: ['latch', 'inactive-leaf', 'right-of-double-doors'], judgement: ['on-door-push-side'] }
/** "where there is no wall space at the latch side": the nearest adjacent wall */
const NO_WALL = { ...AT_DOOR, pass: [...AT_DOOR.pass, 'nearest-adjacent-wall'], when: 'no-wall-at-latch' }
const DOMED_OR_ROUNDED = ['domed', 'rounded']
const ON_CAR_CONTROLS = { pass: ['below', 'beside'], when: 'elevator-car-control' }

export const KINDS: Record<string, Kinds[]> = {
  'us-ada-2010': [
    { row: '703.2.3/style', pass: ['sans-serif'] },
    { row: '703.3.1/dot-shape', pass: DOMED_OR_ROUNDED },
    { row: '703.3.2/below-text', pass: ['below'] },
    { row: '703.3.2/below-text', ...ON_CAR_CONTROLS },
    { row: '703.4.2/side', ...AT_DOOR },
    { row: '703.4.2/side', ...NO_WALL },
    { row: '703.5.1/finish', ...WITHOUT_GLARE },
    { row: '703.5.2/case', pass: ANY_CASE },
    { row: '703.5.3/style', pass: ['sans-serif', 'serif'] },
    { row: '703.6.2/finish', ...WITHOUT_GLARE },
    { row: '703.7.1/finish', ...WITHOUT_GLARE },
  ],
  'us-adaag-1991': [
    // 4.30.4: "sans serif or simple serif type"; which serif faces are simple, and slanted sans-serif ones, are for a person
    { row: '4.30.4/style', pass: ['sans-serif'], judgement: ['serif', 'italic', 'oblique', 'unusual'] },
    // 4.30.5: "eggshell, matte, or other non-glare finish"
    { row: '4.30.5/finish', ...WITHOUT_GLARE },
    // 4.30.6: "adjacent to the latch side"; without wall there, "including at double leaf doors", the nearest adjacent wall: whether the
    // door has two leaves is for a person
    { row: '4.30.6/side', pass: ['latch'], judgement: ['nearest-adjacent-wall', 'right-of-double-doors'] },
    {
      row: '4.30.6/side',
      pass: ['latch', 'nearest-adjacent-wall'],
      judgement: ['right-of-double-doors'],
      when: 'no-wall-at-latch',
    },
  ],
  'us-a117.1-2003': [
    { row: '703.3.4/style', pass: ['sans-serif'] },
    { row: '703.3.11/side', ...AT_DOOR },
    { row: '703.3.11/side', ...NO_WALL },
    { row: '703.3.12/finish', ...WITHOUT_GLARE },
    { row: '703.4.3/dot-shape', pass: DOMED_OR_ROUNDED },
    { row: '703.4.4/below-text', pass: ['below'] },
    { row: '703.4.4/below-text', ...ON_CAR_CONTROLS },
    { row: '703.2.2/case', pass: ANY_CASE },
    { row: '703.2.3/style', pass: ['sans-serif', 'serif'] },
    { row: '703.2.10/finish', ...WITHOUT_GLARE },
    { row: '703.5.3/finish', ...WITHOUT_GLARE },
    { row: '703.6.2/finish', ...WITHOUT_GLARE },
  ],
  'us-ca-2019': [
    { row: '11B.703.3.1/dot-shape', pass: DOMED_OR_ROUNDED },
    { row: '11B.703.3.2/below-text', pass: ['below'] },
    // "flush left or centered"
    { row: '11B.703.3.2/alignment', pass: ['flush-left', 'centred'] },
    { row: '11B.703.5.1/finish', ...WITHOUT_GLARE },
    { row: '11B.703.5.2/case', pass: ANY_CASE },
    { row: '11B.703.5.3/style', pass: ['sans-serif', 'serif'] },
  ],
  'au-ncc-2022': [
    // on the wall at the latch side; on the door where that is not possible; other places are not addressed
    {
      row: 'S15C2.c/side',
      pass: ['latch'],
      judgement: ['on-door-push-side', 'inactive-leaf', 'right-of-double-doors', 'nearest-adjacent-wall'],
    },
    // left justified; single words may be centred
    { row: 'S15C3/alignment', pass: ['flush-left'] },
    { row: 'S15C3/alignment', pass: ['flush-left', 'centred'], when: 'one-word' },
    // matt or low sheen
    { row: 'S15C3/finish', ...WITHOUT_GLARE },
    // raised and domed
    { row: 'S15C6/dot-shape', pass: ['domed'], judgement: ['rounded'] },
    { row: 'S15C6/alignment', pass: ['flush-left'] },
  ],
}
