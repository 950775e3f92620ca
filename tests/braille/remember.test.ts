import { describe, expect, it } from 'vitest'
import { remember, rememberByCode } from '../../src/braille/remember.js'

/** Our own cache, held against plain counting. */

function counted() {
  const asked: string[] = []
  const answer = (text: string): number | undefined => {
    asked.push(text)
    if (text === 'bad') throw new Error('bad')
    return text === 'none' ? undefined : text.length
  }
  return { asked, kept: remember(answer) }
}

describe('what is remembered', () => {
  it('is asked for once, an empty answer too', () => {
    const { asked, kept } = counted()
    for (const text of ['room', 'none', 'room', 'none']) expect(kept(text)).toBe(text === 'none' ? undefined : 4)
    expect(asked).toEqual(['room', 'none'])
  })

  it('is no error and no long text', () => {
    const { asked, kept } = counted()
    const long = 'x'.repeat(1000)
    for (let i = 0; i < 2; i++) {
      expect(() => kept('bad')).toThrow('bad')
      expect(kept(long)).toBe(1000)
    }
    expect(asked).toEqual(['bad', long, 'bad', long])
  })

  it('is bounded: the oldest goes first', () => {
    const { asked, kept } = counted()
    for (let i = 0; i < 20_000; i++) kept(`text ${i}`)
    kept('text 19999')
    expect(asked).toHaveLength(20_000)
    kept('text 0')
    expect(asked).toHaveLength(20_001)
  })

  it('is kept apart for each code', () => {
    const kept = rememberByCode((text, code) => `${text} ${code}`)
    for (let i = 0; i < 2; i++) {
      expect(kept('a', 'ueb-contracted')).toBe('a ueb-contracted')
      expect(kept('a', 'ueb-uncontracted')).toBe('a ueb-uncontracted')
    }
  })
})
