import { describe, expect, it } from 'vitest'
import { messageFor } from '../../src/report/messages.js'
import { missing } from '../../src/sign/sign.js'
import { CELL_SPACING, judgement, LINE, observation, requirement } from './sample.js'

const gap = (why: string) => ({ reason: 'missing-fact' as const, why, places: [LINE] })

describe('messages', () => {
  it('says what was found, by how much it is out, and what is allowed', () => {
    expect(messageFor(judgement())).toBe(
      'The cell spacing is 5.80 mm (0.228 in) at its worst, 0.3214 mm too little; allowed is 6.1214 mm (0.241 in) to 7.62 mm (0.300 in).',
    )
  })

  it('tells a distance in digits that add up with those beside it', () => {
    // 3/8 inch is 9.525 mm: 2010 ADA Standards 703.3.2
    const text = messageFor(
      judgement({
        limit: { ...CELL_SPACING, min: 9.525, max: undefined, other: undefined },
        decisive: [observation(0)],
      }),
    )
    expect(text).toContain(
      '0.00 mm (0.000 in) at its worst, 9.525 mm too little; required is at least 9.525 mm (0.375 in)',
    )
  })

  it('shows the worst single value and not the mean', () => {
    const seen = [observation(6.9, { min: 6.8, max: 7.9, count: 5 })]
    const text = messageFor(judgement({ decisive: seen, margin: -0.28 }))
    expect(text).toContain('7.90 mm')
    expect(text).toContain('too much')
  })

  // 7.62 mm is 0.300 inch and more than the printed 7.6 mm: 2010 ADA Standards, Table 703.3.1.
  it('tells when the printed units judge differently', () => {
    const seen = [observation(7.603)]
    const text = messageFor(
      judgement({
        verdict: 'pass',
        decisive: seen,
        unitSplit: { judged: 'in', pass: 'in', fail: 'mm' },
        margin: 0.005,
      }),
    )
    expect(text).toContain(
      'passes by the printed inches, which the standard puts first, and would fail by the printed millimetres',
    )
    const both = messageFor(
      judgement({ decisive: seen, unitSplit: { judged: 'in', pass: 'in', fail: 'mm' }, margin: -0.015 }),
    )
    expect(both).toContain('Both printed units had to pass')
    expect(both).toContain('7.603 mm')
    expect(both).toContain('7.60 mm')
  })

  it('says what is so where a yes was asked for, and not what was asked for', () => {
    const yes = { kind: 'yes' as const, unit: 'truth' as const, printed: '', clause: '703.2' }
    const failed = (quantity: string, context = {}) =>
      messageFor(
        judgement({
          requirement: requirement('us-ada-2010/703.2/wording', {
            quantity,
            text: 'The braille says the raised text.',
          }),
          limit: yes,
          decisive: [observation(false, { context })],
          margin: null,
        }),
      )
    expect(failed('braille.wording')).toBe('The braille does not say the raised text.')
    expect(failed('braille.contracted')).toBe('The braille is not contracted (grade 2).')
    expect(failed('braille.wording', { lying: 'mirrored' })).toMatch(/says the raised text, but does not lie/)
    expect(failed('braille.unheardOf')).toBe('Not met: The braille says the raised text.')
  })

  it('names what is not given where the quantity is a yes or no', () => {
    const of = (quantity: string) =>
      messageFor(
        judgement({
          requirement: requirement('us-ada-2010/703.6.1/field-clear', { quantity }),
          verdict: 'undetermined',
          reason: 'missing-fact',
          decisive: [],
          measurement: undefined,
          gaps: [gap(missing().why)],
        }),
      )
    expect(of('pictogram.fieldClear')).toBe('Not decided: the place of the pictogram field is not given.')
    expect(of('pictogram.descriptor')).toBe(
      'Not decided: the place of the text below the pictogram field is not given.',
    )
  })

  it('gives the reason of everything undetermined', () => {
    const open = (reason: 'missing-fact' | 'needs-judgement' | 'unreadable' | 'limit-reached', why: string) =>
      messageFor(judgement({ verdict: 'undetermined', reason, decisive: [], measurement: undefined, gaps: [gap(why)] }))
    expect(open('missing-fact', missing().why)).toBe('Not decided: the cell spacing is not given.')
    expect(open('needs-judgement', 'the symbol is judged by eye')).toBe(
      'Not decided; a person must judge it: the symbol is judged by eye.',
    )
    expect(open('unreadable', 'the letters are an image')).toContain('the letters are an image')
    expect(open('limit-reached', 'there are too many dots')).toContain('a limit of this service was reached')
  })

  it('gives the spread of a value within its uncertainty', () => {
    const seen = [observation(6.13, { uncertainty: 0.02 })]
    const text = messageFor(
      judgement({ verdict: 'undetermined', reason: 'within-uncertainty', decisive: seen, margin: 0.0086 }),
    )
    expect(text).toContain('within its uncertainty')
    expect(text).toContain('give or take 0.04 mm')
  })

  it('says why nothing applies, and names kinds', () => {
    expect(messageFor(judgement({ verdict: 'not-applicable', because: 'the sign has one line' }))).toBe(
      'The sign has one line.',
    )
    const seen = [observation('flat', { basis: 'declared' })]
    const shape = judgement({
      requirement: requirement('us-ada-2010/703.3.1/dot-shape', { quantity: 'braille.dotShape' }),
      limit: {
        kind: 'one-of',
        pass: ['domed', 'rounded'],
        unit: 'kind',
        printed: 'domed or rounded',
        clause: '703.3.1',
      },
      decisive: seen,
    })
    expect(messageFor(shape)).toBe('The shape of the dots is flat; allowed is domed or rounded.')
  })

  it('keeps the remark of a measurement and what could not be measured beside a failure', () => {
    const seen = [observation(5.8, { basis: 'declared', remark: 'the third cell stands off' })]
    const text = messageFor(judgement({ decisive: seen, gaps: [gap('the second line was not read')] }))
    expect(text).toContain('The third cell stands off.')
    expect(text).toContain('Not everything could be measured: The second line was not read.')
  })

  it('says so when a limit is exact', () => {
    const text = messageFor(judgement({ limit: { ...CELL_SPACING, min: 7, max: 7, other: undefined } }))
    expect(text).toContain('required is 7.00 mm')
  })
})
