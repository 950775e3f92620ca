import { describe, expect, it } from 'vitest'
import { describe as describeSign } from '../../src/sign/describe.js'
import { described, plainTranslator } from './described.js'

const blockOf = (braille: object) => describeSign(described({ braille: [braille] }), plainTranslator).braille[0]

describe('described braille', () => {
  it('is the translation of its text', () => {
    expect(blockOf({ text: 'room' })?.lines[0]?.cells).toEqual({ value: '⠗⠕⠕⠍', basis: 'declared' })
  })

  it('takes a text of braille characters as the cells themselves', () => {
    const block = blockOf({ lines: ['⠗⠕⠕⠍ ⠼⠃'] })
    expect(block?.lines[0]?.cells).toEqual({ value: '⠗⠕⠕⠍⠀⠼⠃', basis: 'declared' })
    expect(block?.lines[0]?.text).toBeUndefined()
  })

  it('puts the dots where the contract says: origin is dot 1 of the first cell, x right, y down', () => {
    // The letter b is dots 1 and 2, the letter c dots 1 and 4 (World Braille Usage, third edition).
    const block = blockOf({
      text: 'bc',
      dotSpacing: 2.4,
      cellSpacing: 6.9,
      origin: { x: 20, y: 95 },
      dotBaseDiameter: 1.5,
    })
    expect(block?.lines[0]?.dots).toEqual([
      { x: 20, y: 95 },
      { x: 20, y: 97.4 },
      { x: 26.9, y: 95 },
      { x: 29.299999999999997, y: 95 },
    ])
    expect(block?.place.box?.x).toBeCloseTo(19.25, 12)
    expect(block?.place.box?.width).toBeCloseTo(9.3 + 1.5, 12)
  })

  it('has its baselines through dots 3 and 6, one line spacing apart', () => {
    const block = blockOf({
      lines: ['a', 'b'],
      dotSpacing: 2.5,
      cellSpacing: 6.9,
      lineSpacing: 10,
      origin: { x: 20, y: 90 },
    })
    expect(block?.lines.map(({ baseline }) => baseline)).toEqual(
      [95, 105].map((y) => ({ value: { x: 20, y }, basis: 'declared' })),
    )
    expect(block?.lines[1]?.dots[0]).toEqual({ x: 20, y: 100 })
  })

  it('has no dots and no baseline where a needed fact is missing', () => {
    const block = blockOf({ lines: ['a', 'b'], dotSpacing: 2.5, cellSpacing: 6.9, origin: { x: 20, y: 90 } })
    expect(block?.lines.map(({ dots }) => dots.length)).toEqual([1, 0])
    expect(block?.lines[1]?.baseline).toMatchObject({ unknown: 'missing-fact' })
  })

  it('has a line spacing only when there are lines to space', () => {
    expect(blockOf({ text: 'a', lineSpacing: 10 })?.lineSpacing).toBeUndefined()
    expect(blockOf({ lines: ['a', 'b'], lineSpacing: 10 })?.lineSpacing).toEqual({ value: 10, basis: 'declared' })
  })

  it('leaves cells unknown that cannot be translated, and says why', () => {
    expect(blockOf({ text: 'a☃' })?.lines[0]?.cells).toMatchObject({
      unknown: 'unreadable',
      why: expect.stringContaining('☃') as string,
    })
  })

  it('translates lines as one text, so that what spans a line end is kept', () => {
    // An engine that opens a passage before the first word and closes it after the last (UEB Rulebook, 8.5).
    const passages = {
      ...plainTranslator,
      toCells: (text: string) => `⠠⠠⠠${plainTranslator.toCells(text, 'ueb-contracted')}⠠⠄`,
    }
    const block = describeSign(described({ braille: [{ lines: ['a b', 'c'] }] }), passages).braille[0]
    expect(block?.lines.map(({ cells }) => ('value' in cells ? cells.value : undefined))).toEqual(['⠠⠠⠠⠁⠀⠃', '⠉⠠⠄'])
  })
})
