import { describe, expect, test } from 'vitest'
import { missing, type Lettering, type Sign } from '../../src/sign/sign.js'
import { dotsAt, drawn, drawnSign, rectangle } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured } from './values.js'

/** 2010 ADA Standards 703.3.2: braille below the corresponding text, below the whole of a text of several lines. Places are invented. */

const WHERE = 'braille.position'
const RADIUS = 1.55 / 2

/** One set of characters of bars 20 mm high standing on these baselines. */
function setOn(baselines: number[], more: Partial<Lettering> = {}): Lettering {
  const [set] = drawnSign().lettering
  return {
    ...set,
    text: drawn('PUMP'),
    lines: baselines.map((y) => ({
      ...set.lines[0],
      text: drawn('PUMP'),
      baseline: drawn({ x: 20, y }),
      outlines: [rectangle(20, y - 20, 60, 20)],
    })),
    ...more,
  }
}

/** Braille of one line with its first row of dots at y. The last row of its cells is 4.8 mm lower. */
function signAt(y: number, lettering: Lettering[], cells = '⠏⠥⠍⠏'): Sign {
  const sign = drawnSign()
  const [block] = sign.braille
  const line = {
    ...block.lines[0],
    cells: drawn(cells),
    dots: dotsAt(cells, 20, y),
    baseline: drawn({ x: 20, y: y + 4.8 }),
  }
  return { ...sign, lettering, braille: [{ ...block, lines: [line] }] }
}
const at = (y: number, lettering = [setOn([40])]) => measured(signAt(y, lettering), WHERE)
const kind = (y: number, lettering?: Lettering[]) => at(y, lettering).observations.map(({ value }) => value)

describe('a block', () => {
  test('is below from the baseline on, above up to the top, beside between them', () => {
    expect(kind(40 + RADIUS + 1e-9)).toEqual(['below'])
    expect(kind(40 + RADIUS - 0.01)).toEqual(['beside'])
    expect(kind(20 - 4.8 - RADIUS - 1e-9)).toEqual(['above'])
    expect(kind(20 - 4.8 - RADIUS + 0.01)).toEqual(['beside'])
  })

  test('of several lines of text is below the last and above the first', () => {
    const two = [setOn([40, 70])]
    expect(kind(50, two)).toEqual(['beside'])
    expect(kind(75, two)).toEqual(['below'])
    expect(kind(10, two)).toEqual(['above'])
    expect(kind(50, [setOn([70, 40])])).toEqual(['beside'])
  })

  test('is below a baseline that letters hang under', () => {
    const [line] = setOn([40]).lines
    const hanging = setOn([], { lines: [{ ...line, outlines: [rectangle(20, 20, 60, 28)] }] })
    expect(kind(42, [hanging])).toEqual(['below'])
    // without a baseline the outlines tell
    const bare = setOn([], { lines: [{ ...line, baseline: missing(), outlines: [rectangle(20, 20, 60, 28)] }] })
    expect(kind(42, [bare])).toEqual(['beside'])
    expect(kind(49, [bare])).toEqual(['below'])
  })

  test('is told from a baseline alone where nothing else is known', () => {
    const [line] = setOn([40]).lines
    const low = setOn([], { characterHeight: missing(), lines: [{ ...line, outlines: [] }] })
    expect(kind(42, [low])).toEqual(['below'])
    expect(kind(30, [low])).toEqual(['above'])
    expect(kind(38, [low])).toEqual(['beside'])
  })

  test('has its places, and says whether it was drawn', () => {
    expect(at(50).observations).toMatchObject([
      { basis: 'drawn', places: [{ element: 'braille/0' }, { element: 'lettering/0' }] },
    ])
    expect(measured(signOf(PUMP_ROOM), WHERE).observations).toMatchObject([{ value: 'below', basis: 'declared' }])
    const wide = signOf(PUMP_ROOM, { measured: [{ quantity: 'braille.dotBaseDiameter', values: [1.6] }] })
    expect(measured(wide, WHERE).observations[0]?.basis).toBe('measured')
    expect(measured(signOf(PUMP_ROOM, { 'braille.0.dotBaseDiameter': undefined }), WHERE).observations[0]?.basis).toBe(
      'declared',
    )
  })
})

describe('of several texts', () => {
  const pump = setOn([40])
  const other = setOn([100], { text: drawn('ROOM') })

  test('the one that a block repeats counts', () => {
    const [first] = signAt(50, []).braille
    const [second] = signAt(110, [], '⠗⠕⠕⠍').braille
    const [high] = signAt(60, [], '⠗⠕⠕⠍').braille
    const kinds = (...braille: Sign['braille']) =>
      measured({ ...signAt(50, [pump, other]), braille }, WHERE).observations.map(({ value }) => value)
    expect(kinds(first, second)).toEqual(['below', 'below'])
    expect(kinds(first, high)).toEqual(['below', 'above'])
  })

  test('none that it repeats leaves it to a person, if it stands below one of them', () => {
    const unlike = [setOn([40], { text: drawn('WARD') }), other]
    expect(at(50, unlike)).toMatchObject({
      observations: [],
      gaps: [
        {
          reason: 'needs-judgement',
          places: [{ element: 'braille/0' }, { element: 'lettering/0' }, { element: 'lettering/0' }],
        },
      ],
    })
    expect(kind(5, unlike)).toEqual(['above'])
    expect(kind(110, unlike)).toEqual(['below'])
    expect(kind(50, [setOn([60], { text: drawn('WARD') })])).toEqual(['beside'])
  })
})

describe('what is not known', () => {
  const unread = (why: 'unreadable' | 'missing-fact') => setOn([40], { text: { unknown: why, why: 'no words' } })

  test('of the words leaves open what is not below', () => {
    expect(kind(50, [unread('unreadable')])).toEqual(['below'])
    expect(at(30, [unread('unreadable')]).gaps).toMatchObject([
      { reason: 'unreadable', places: [{ element: 'braille/0' }, { element: 'lettering/0' }] },
    ])
    expect(at(30, [unread('missing-fact')]).gaps).toMatchObject([{ reason: 'missing-fact' }])
    expect(at(30, [unread('missing-fact'), unread('unreadable')]).gaps).toMatchObject([{ reason: 'unreadable' }])
  })

  test('of the place of the text is asked for', () => {
    const [line] = setOn([40]).lines
    const nowhere = setOn([], { lines: [{ ...line, baseline: missing(), outlines: [] }] })
    expect(at(50, [nowhere])).toMatchObject({
      observations: [],
      gaps: [
        {
          reason: 'missing-fact',
          why: 'the place of the raised text is not given',
          places: [{ element: 'braille/0' }],
          ask: { pointer: '/sign/lettering/0/baseline' },
        },
      ],
    })
    const second = setOn([], { text: drawn('ROOM'), lines: nowhere.lines })
    expect(at(50, [setOn([40], { text: drawn('WARD') }), second]).gaps[0]?.ask?.pointer).toBe(
      '/sign/lettering/1/baseline',
    )
    expect(at(50, [setOn([])]).gaps[0]?.ask?.pointer).toBe('/sign/lettering/0/baseline')
    expect(at(50, [setOn([], { lines: [...setOn([40]).lines, ...nowhere.lines] })]).observations).toEqual([])
  })

  test('of the place of the braille is asked for', () => {
    const { observations, gaps } = measured(signOf(PUMP_ROOM, { 'braille.0.origin': undefined }), WHERE)
    expect(observations).toEqual([])
    expect(gaps).toMatchObject([{ ask: { pointer: '/sign/braille/0/origin' } }])
  })

  test('of a later line of braille leaves it below, and open where it is above', () => {
    const placed =
      (y: number) =>
      (lines: Sign['braille'][number]['lines']): unknown[] => {
        const sign = signAt(y, [setOn([40])])
        const braille = sign.braille.map((block) => ({ ...block, lines }))
        return measured({ ...sign, braille }, WHERE).observations.map(({ value }) => value)
      }
    const lineAt = (y: number) => signAt(y, [setOn([40])]).braille[0].lines[0]
    const lost = { ...lineAt(0), dots: [], baseline: missing() }
    expect(placed(50)([lineAt(50), lost])).toEqual(['below'])
    expect(placed(50)([lost, lineAt(50)])).toEqual([])
    expect(placed(5)([lineAt(5), lost])).toEqual([])
    expect(placed(30)([lineAt(30), lost])).toEqual(['beside'])
  })

  test('nothing is to be placed without raised characters or without dots', () => {
    expect(at(50, []).nothing).toBe('The sign has no raised characters.')
    expect(measured(signAt(50, [setOn([40])], '⠀⠀'), WHERE).nothing).toBe('The braille has no dots.')
  })
})
