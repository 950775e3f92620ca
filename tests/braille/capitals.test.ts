import { describe, expect, it } from 'vitest'
import { judgeCapitals } from '../../src/braille/capitals.js'
import { translator } from './translator.js'

const judge = (cells: string, names?: string[]) => judgeCapitals(cells, translator(), names)
const braille = (text: string): string => translator().toCells(text, 'ueb-contracted')

/**
 * Outside source: 2010 ADA Standards, 703.3.1 (capital signs only before the first word of sentences, proper nouns and names, individual letters
 * of the alphabet, initials and acronyms). Where a single letter, a sentence and a name end are readings of ours, named in the source file.
 */
describe('703.3.1, capital signs', () => {
  it.each(['⠗⠕⠕⠍⠀⠼⠃⠁⠙', '⠮⠁⠞⠻⠀⠰⠃', '⠑⠭⠊⠞', '⠗⠕⠕⠍⠎⠀⠼⠁⠠⠤⠼⠓'])('%s has none', (cells) => {
    expect(judge(cells).verdict).toBe('none')
    expect(judge(cells, []).verdict).toBe('none')
  })

  // The Rules of Unified English Braille, 2nd edition 2013, 7.2: dash dots 6, 36; long dash dots 5, 6, 36
  it.each(['hall – east', 'hall — east', 'rooms 1–8', 'hall—east'])('the dot 6 of a dash is none: %s', (text) => {
    expect(judge(braille(text)).verdict).toBe('none')
    expect(judge(braille(text.replace('east', 'East')), ['East']).verdict).not.toBe('unreadable')
  })

  it('a capital sign beside a dash is one all the same', () => {
    expect(judge(braille('hall — East'), [])).toMatchObject({ verdict: 'wrong', words: ['East'] })
    expect(judge(braille('hall – EAST'), [])).toMatchObject({ verdict: 'wrong', words: ['EAST'] })
    expect(judge(braille('hall—East'), ['East']).verdict).toBe('allowed')
  })

  it.each(['theater B', 'room 204A', 'level B1', 'suite A-12', 'A', 'doors A/B'])(
    'single letters may have one: %s',
    (text) => {
      expect(judge(braille(text)).verdict).toBe('allowed')
      expect(judge(braille(text), []).verdict).toBe('allowed')
    },
  )

  it('single letters in uncontracted braille too', () => expect(judge('⠞⠓⠑⠁⠞⠑⠗⠀⠠⠃', []).verdict).toBe('allowed'))

  it('other words need the list of names', () => {
    expect(judge('⠠⠕⠗⠡⠊⠙⠀⠠⠓⠳⠎⠑')).toMatchObject({ verdict: 'needs-names', words: ['Orchid', 'House'] })
    expect(judge('⠠⠕⠗⠡⠊⠙⠀⠠⠓⠳⠎⠑', ['orchid house']).verdict).toBe('allowed')
    expect(judge('⠠⠕⠗⠡⠊⠙⠀⠠⠓⠳⠎⠑', ['Orchid'])).toMatchObject({ verdict: 'wrong', words: ['House'] })
    expect(judge(braille("O'Brien hall"), ["O'Brien"]).verdict).toBe('allowed')
    expect(judge(braille("Miller's room"), ['MILLER']).verdict).toBe('allowed')
    expect(judge(braille('Smith-Jones room'), ['Smith', 'Jones']).verdict).toBe('allowed')
    expect(judge(braille('RSVP desk'), ['RSVP']).verdict).toBe('allowed')
    expect(judge(braille('RSVP desk'), []).verdict).toBe('wrong')
  })

  it('an ordinary word in capitals is wrong, also as one of a passage or without the passage sign', () => {
    expect(judge('⠠⠠⠗⠕⠕⠍⠀⠼⠃⠁⠙')).toMatchObject({ verdict: 'needs-names', words: ['ROOM'] })
    expect(judge('⠠⠠⠗⠕⠕⠍⠀⠼⠃⠁⠙', [])).toMatchObject({ verdict: 'wrong', words: ['ROOM'] })
    expect(judge(braille('ROOM WEST WING'), ['West'])).toMatchObject({ verdict: 'wrong', words: ['ROOM', 'WING'] })
    expect(judge('⠠⠠⠗⠕⠕⠍⠀⠠⠠⠺⠑⠌⠀⠠⠠⠺⠬', [])).toMatchObject({ verdict: 'wrong', words: ['ROOM', 'WEST', 'WING'] })
  })

  it('the first word of a sentence may have one, and no other word of it', () => {
    expect(judge(braille('Please wait here.'), []).verdict).toBe('allowed')
    expect(judge(braille('Please wait. Ring the bell.')).verdict).toBe('allowed')
    expect(judge(braille('Please wait Here.'), [])).toMatchObject({ verdict: 'wrong', words: ['Here'] })
    expect(judge(braille('PLEASE wait here.'), [])).toMatchObject({ verdict: 'wrong', words: ['PLEASE'] })
    expect(judge(braille('Waiting room'), [])).toMatchObject({ verdict: 'wrong', words: ['Waiting'] })
  })

  it('says when it could not read the words', () => expect(judge('⠠⠈⠐⠘⠈', []).verdict).toBe('unreadable'))

  it('does not choose between two readings: But contracted, B uncontracted', () =>
    expect(judge('⠠⠃', []).verdict).toBe('unreadable'))

  it('always has a sentence for people', () => {
    for (const cells of ['⠗⠕⠕⠍', '⠠⠗⠕⠕⠍', '⠰⠠⠃', '⠠⠈⠐⠘⠈']) expect(judge(cells, []).remark).toMatch(/^[A-Z].*\.$/)
  })
})
