import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readProgram } from '../../../src/make/gcode/read.js'
import { FARTHEST_PLACE } from '../../../src/make/gcode/tool.js'
import { PROGRAM_LIMITS } from '../../../src/make/gcode/words.js'
import { Refusal } from '../../../src/refusal.js'

/**
 * Programs as other writers make them. The programs are invented; what the words mean is from RS274/NGC (NIST, 2000) and ISO 6983-1, from
 * memory. Places are turned: Y of a program runs up, y of a sign down.
 */

const read = (...lines: string[]) => readProgram(new TextEncoder().encode(lines.join('\n')))
const places = (...lines: string[]) =>
  read(...lines).dots.map(({ x, y }) => [Number(x.toFixed(6)), Number(y.toFixed(6))])

function refusal(...lines: string[]): Refusal {
  try {
    read(...lines)
  } catch (error) {
    if (error instanceof Refusal) return error
    throw error
  }
  throw new Error('It was read.')
}

describe('cycles', () => {
  it.each(['G81', 'G82 P0.2', 'G83 Q0.5'])('%s makes a dot at each place', (cycle) => {
    expect(
      places('G21 G90', 'G0 Z5', `${cycle} X10 Y-20 Z0.5 R3 F100`, 'X12.4', 'Y-22.4', 'G80', 'G0 X50 Y50', 'M30'),
    ).toEqual([
      [10, 20],
      [12.4, 20],
      [12.4, 22.4],
    ])
  })

  it('go on after the feed alone is changed, and make no dot by that', () => {
    expect(places('G21G90', 'G81X1Y-1Z0R3', 'F200', 'X2')).toHaveLength(2)
  })

  it('are read in inches: an inch is 25.4 mm by definition', () => {
    expect(places('G20 G90', 'G81 X1. Y-.5 Z.02 R.1')).toEqual([[25.4, 12.7]])
  })

  it('are read with relative places', () => {
    expect(places('G21 G90', 'G0 X10 Y-10 Z3', 'G91', 'G81 X2 Y0 Z-2.5 R0', 'X2.4', 'Y-2.4')).toEqual([
      [12, 10],
      [14.4, 10],
      [14.4, 12.4],
    ])
  })
})

describe('plain moves', () => {
  it('make a dot where the tool is fed down and goes up again', () => {
    expect(
      places(
        '%',
        'O1234 (braille)',
        'N10 G21 G90 ; set up',
        'N20 g0 z5',
        'N30 X1 Y-2',
        'G1 Z0.5 F300',
        'G4 P0.2',
        'G0 Z5',
        'X3.4',
        'G1 Z0.5',
        'Z5',
        'M2',
        'G1 Z0',
        '%',
      ),
    ).toEqual([
      [1, 2],
      [3.4, 2],
    ])
  })

  it('make one dot of a plunge in steps, and of one that slants in at the place where it ends', () => {
    expect(places('G21 G90', 'G0 Z5', 'G0 X1 Y-1', 'G1 Z2', 'G1 Z1', 'G1 Z0.5', 'G0 Z5')).toEqual([[1, 1]])
    expect(places('G21 G90', 'G0 Z5', 'G0 X5 Y-1', 'G1 Z2', 'G1 X1 Z0.5', 'G0 Z5')).toEqual([[1, 1]])
  })

  it('make a dot of the last plunge, from which the tool does not come up', () => {
    expect(places('G21 G90', 'G0 Z5', 'X1 Y-1', 'G1 Z0.5')).toEqual([[1, 1]])
  })

  it('make none by rapid moves between heights above the dots', () => {
    expect(places('G21 G90', 'G0 Z20', 'G0 X1 Y-1', 'G0 Z3', 'G1 Z0.5', 'G0 Z20', 'G0 X9', 'G0 Z3', 'G0 Z20')).toEqual([
      [1, 1],
    ])
  })

  it('after going home must begin with a place', () => {
    expect(places('G21 G90', 'G0 Z5', 'X1 Y-1', 'G1 Z0.5', 'G0 Z5', 'G91 G28 Z0', 'M30')).toEqual([[1, 1]])
    expect(refusal('G21 G90', 'G0 Z5', 'G28 Z0', 'G91', 'G0 X1 Y1 Z-1').errors[0]).toMatchObject({ line: 5 })
  })
})

describe('what is not worked out is refused with its place', () => {
  const BEGIN = ['G21 G90', 'G0 Z5']
  it.each([
    ['an arc', 'G2 X1 Y1 I1 J0', 1],
    ['a shifted zero', 'G92 X0', 1],
    ['a second work offset', 'G55', 1],
    ['turned axes', 'G68 R10', 1],
    ['tool radius compensation', 'G41 D1', 1],
    ['a variable', 'X#1', 1],
    ['an expression', 'X[1+2]', 1],
    ['a subprogram', 'M98 P100', 1],
    ['a repeat', 'G81 X1 Y1 Z0 R3 L5', 17],
    ['a repeat by K', 'G81 X1 Y1 Z0 R3 K5', 17],
    ['a block that may be skipped', '/G0 X1', 1],
    ['a word twice', 'G0 X1 X2', 7],
    ['two motions', 'G0 G1 X1', 4],
    ['a change of units', 'G20', 1],
    ['a fourth axis', 'G0 A90', 4],
    ['an exponent', 'G0 X1E3', 6],
    ['a number that is none', 'G0 X1.2.3', 8],
    ['two signs', 'G0 X--1', 4],
    ['a comment without an end', 'G0 X1 (one', 7],
    ['other text', '<svg/>', 1],
    ['a cycle without a depth', 'G81 X1 Y1 R3', 1],
    ['a cycle without a start', 'G81 X1 Y1 Z0', 1],
    ['a cycle that goes up', 'G81 X1 Y1 Z9 R3', 1],
  ])('%s', (_, line, column) => {
    const { type, errors } = refusal(...BEGIN, line, 'M30')
    expect(type).toBe('malformed-program')
    expect(errors).toMatchObject([{ line: 3, column }])
  })

  it('a cut: the tool goes sideways at its depth', () => {
    const { type, errors } = refusal(...BEGIN, 'G0 X1 Y-1', 'G1 Z0', 'G1 X9', 'G0 Z5')
    expect(type).toBe('malformed-program')
    expect(errors).toMatchObject([{ line: 5 }])
  })

  it('a rapid move as deep as a dot', () => {
    expect(refusal(...BEGIN, 'G0 X1 Y-1', 'G1 Z0.5', 'G0 Z5', 'X9', 'Z0.5', 'Z5').errors).toMatchObject([{ line: 7 }])
  })

  it('a first plunge from a height that the program has not said', () => {
    expect(refusal('G21 G90', 'G0 X1 Y1', 'G1 Z0').errors).toMatchObject([{ line: 3 }])
  })

  it('a plunge before the program has said where', () => {
    expect(refusal(...BEGIN, 'G1 Z0').errors).toMatchObject([{ line: 3 }])
  })

  it('lengths without a unit', () => {
    const { type, errors } = refusal('G90', 'G0 Z5')
    expect(type).toBe('scale-unknown')
    expect(errors).toMatchObject([{ line: 2, column: 4 }])
  })

  it('a program without dots', () => {
    expect(refusal('G21 G90', 'G0 X1 Y1 Z5', 'M30').type).toBe('no-tactile-elements')
    expect(refusal('').type).toBe('no-tactile-elements')
  })
})

describe('what is not said is told', () => {
  it('absolute places, and plunges of different depths', () => {
    expect(read('G21', 'G81 X1 Y1 Z0 R3').assumptions.map(({ text }) => text)).toEqual([
      'The program says neither G90 nor G91; its places are taken to be absolute.',
    ])
    expect(read('G21 G90', 'G81 X1 Y1 Z0 R3', 'X2 Z0.1').assumptions).toHaveLength(1)
    expect(read('G21 G90', 'G81 X1 Y1 Z0 R3', 'X2').assumptions).toEqual([])
  })
})

describe('any text', () => {
  it('is read as finite places or refused, never more', () => {
    const word = fc.constantFrom(
      'G0',
      'G1',
      'G21',
      'G20',
      'G90',
      'G91',
      'G81',
      'G83',
      'G80',
      'G98',
      'G99',
      'G28',
      'X1',
      'X-2.5',
      'Y3',
      'Y.5',
      'Z5',
      'Z0',
      'Z-1',
      'R3',
      'R0',
      'P1',
      'F9',
      'M30',
      'M0',
      '(a)',
      ';b',
      'N5',
      '%',
      'L2',
      'I1',
      '#1',
      '/',
      'x',
    )
    const line = fc.array(word, { maxLength: 6 }).map((words) => words.join(' '))
    fc.assert(
      fc.property(
        fc.array(fc.oneof({ weight: 9, arbitrary: line }, fc.string({ maxLength: 12 })), { maxLength: 12 }),
        (lines) => {
          try {
            for (const { x, y, line: at } of read('G21 G90 G0 X0 Y0 Z5', ...lines).dots) {
              expect([x, y].every(Number.isFinite)).toBe(true)
              expect(at).toBeGreaterThan(1)
            }
          } catch (error) {
            expect(error).toBeInstanceOf(Refusal)
          }
        },
      ),
      { numRuns: 1500 },
    )
  })
})

describe('limits', () => {
  it('of a line: just under and just over', () => {
    const begin = 'G21 G90 G81 X1 Y1 Z0 R3'
    expect(read(begin.padEnd(PROGRAM_LIMITS.lineLength)).dots).toHaveLength(1)
    expect(refusal(begin.padEnd(PROGRAM_LIMITS.lineLength + 1)).type).toBe('malformed-program')
  })

  it('of lines and bytes', () => {
    const lines = (count: number) => `G21 G90 G81 X1 Y1 Z0 R3${'\n'.repeat(count - 1)}`
    expect(read(lines(PROGRAM_LIMITS.lines)).dots).toHaveLength(1)
    expect(refusal(lines(PROGRAM_LIMITS.lines + 1))).toMatchObject({
      type: 'too-complex',
      excess: { limit: PROGRAM_LIMITS.lines, actual: PROGRAM_LIMITS.lines + 1 },
    })
    expect(refusal(' '.repeat(PROGRAM_LIMITS.bytes + 1)).type).toBe('too-large')
  })

  // Found by fuzzing: a dot at 8.9e37 mm was read, and no program that another reader takes could be written of it.
  it('of places, absolute or step by step', () => {
    const at = (place: number) => `G21 G90 G81 X${place} Y-${place} Z0 R3`
    expect(read(at(FARTHEST_PLACE)).dots).toHaveLength(1)
    expect(refusal(at(FARTHEST_PLACE + 1)).errors).toMatchObject([{ line: 1 }])
    const steps = ['G21 G91 G81 X1 Y1 Z-1 R3', `X${FARTHEST_PLACE - 1} Y0`]
    expect(read(...steps).dots).toHaveLength(2)
    expect(refusal(...steps, 'X1').errors).toMatchObject([{ line: 3 }])
    expect(refusal('G20 G90 G0 Z5', `Y${FARTHEST_PLACE / 25}`).errors).toMatchObject([{ line: 2 }])
  })
})
