import { describe, expect, it } from 'vitest'
import { combine } from '../../src/sign/combine.js'
import { describe as describeSign } from '../../src/sign/describe.js'
import type { Sign } from '../../src/sign/sign.js'
import { described, plainTranslator } from './described.js'

// What a description may add to a drawing that shows no braille. All values are invented.

const signOf = (json: object): Sign => describeSign(described(json), plainTranslator)
const conflicts = ({ assumptions }: Sign) => assumptions.filter((a) => a.about === 'conflict').map((a) => a.text)
const FULL = { text: 'room', dotBaseDiameter: 1.55, dotSpacing: 2.4, cellSpacing: 6.9, origin: { x: 20, y: 70 } }

describe('a drawing without braille', () => {
  const bare = signOf({ lettering: [{ text: 'ROOM' }] })

  it('drops facts of the product that nothing holds, and says so', () => {
    const sign = combine(bare, signOf({ braille: [{ dotHeight: 0.7, dotShape: 'domed' }] }))
    expect(sign.braille).toEqual([])
    expect(conflicts(sign).join()).toContain('shows no braille, and nothing in it answers the description')
  })

  it('leaves open all that the drawing would show of described words, and keeps the rest', () => {
    const sign = combine(bare, signOf({ braille: [{ ...FULL, dotHeight: 0.7 }] }))
    const [block] = sign.braille
    expect(conflicts(sign).join()).toContain('shows no braille, the description says “room”')
    for (const fact of [block.dotBaseDiameter, block.dotSpacing, block.cellSpacing, block.lines[0].cells])
      expect(fact).toMatchObject({ unknown: 'needs-judgement' })
    expect(block.lines[0].dots).toEqual([])
    expect(block.dotHeight).toMatchObject({ value: 0.7 })
  })

  it('says nothing where nobody describes braille', () => {
    expect(conflicts(combine(bare, signOf({ lettering: [{ relief: 0.9 }] })))).toEqual([])
  })
})
