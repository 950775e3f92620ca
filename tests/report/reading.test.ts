import { describe, expect, it } from 'vitest'
import { spokenCells } from '../../src/report/braille-words.js'
import { elementWords, placeWords } from '../../src/report/place-words.js'
import { dotsIn, readingOf } from '../../src/report/reading.js'
import { missing } from '../../src/sign/sign.js'
import { LINE, sampleSign } from './sample.js'

describe('the reading', () => {
  it('gives one entry for each line of lettering and what is not known as null', () => {
    const reading = readingOf(sampleSign())
    expect(reading.lettering).toEqual([
      { text: 'HILL', part: 'both', characterHeight: 20, box: { x: 30, y: 30, width: 62, height: 20 } },
    ])
    expect(reading.braille[0]).toMatchObject({ dots: 11, cellSpacing: 5.8, lineSpacing: null, mirrored: false })
    const { lettering } = sampleSign()
    const unread = lettering.map((l) => ({
      ...l,
      text: missing(),
      lines: l.lines.map((line) => ({ ...line, text: missing() })),
    }))
    expect(readingOf(sampleSign({ lettering: unread })).lettering[0]?.text).toBeNull()
  })

  // The Unicode Standard, Braille Patterns: the low six bits of a code point are dots 1 to 6.
  it('counts the dots of cells whose places are not known', () => {
    expect(dotsIn('⠿⠀⠁')).toBe(7)
    const { braille } = sampleSign()
    const nowhere = braille.map((b) => ({ ...b, lines: b.lines.map((line) => ({ ...line, dots: [] })) }))
    expect(readingOf(sampleSign({ braille: nowhere })).braille[0]?.dots).toBe(dotsIn('⠓⠊⠇⠇'))
  })

  it('says cells by their dots', () => {
    expect(spokenCells('⠗⠂⠀')).toBe('dots 1 2 3 5, dot 2, blank')
    expect(spokenCells('a')).toBe('a')
  })

  it('says places as people count', () => {
    expect(elementWords('braille/0/line/1/cell/3')).toBe('braille block 1, line 2, cell 4')
    expect(elementWords('panel')).toBe('panel')
    const place = {
      element: LINE.element,
      box: LINE.box ?? null,
      source: { id: 'dots', line: 41, column: 3 },
      pointer: null,
    }
    expect(placeWords(place)).toBe(
      'braille block 1, line 1; 30.0 mm from the left, 78.0 mm from the top, 19.5 × 6.4 mm; drawing line 41, column 3 (id dots)',
    )
  })
})
