import { describe, expect, it } from 'vitest'
import { drawChecked } from '../../src/service/drawing-answer.js'
import { translator } from '../braille/translator.js'
import { refusalOf } from '../make/draw/made.js'

/** A drawing and its own check, without HTTP. Texts are invented; clauses are those of the 2010 ADA Standards. */

const answered = (text: string, standards = ['us-ada-2010']) =>
  drawChecked(
    { standards, order: { use: 'permanent-room', lettering: [{ text }] }, leaveToPerson: false },
    translator(),
  )

describe('a drawing that is checked before it is handed out', () => {
  it('has its lines at another distance where a mark over a letter of the next line could not be read', () => {
    const { report } = answered('Tom, Dick, Harry and the Rest of the People')
    expect(report.stages.drawing).toBe('pass')
    const spacing = report.findings.find(({ requirement }) => requirement === 'us-ada-2010/703.2.8/line-spacing')
    expect(spacing?.verdict).toBe('pass')
    // Not the middle of 135 to 170 percent, which was tried first.
    expect(spacing?.measured?.value).not.toBeCloseTo(1.525, 2)
  })

  it('is not handed out where its letters cannot be read, and each cause is told once', () => {
    const refusal = refusalOf(() => answered('Café'))
    expect(refusal.type).toBe('cannot-satisfy')
    const texts = refusal.conflicts?.map(({ text }) => text) ?? []
    expect(new Set(texts).size).toBe(texts.length)
    expect(texts.join()).toMatch(/not every character was recognised/u)
    expect(refusal.conflicts?.flatMap(({ requirements }) => requirements)).toContain(
      'us-ada-2010/703.2.7/character-spacing-min',
    )
  })

  it('satisfies three tables of the United States at once', () => {
    const { report } = answered('Kiln Room 204', ['us-ada-2010', 'us-ca-2019', 'us-a117.1-2003'])
    expect(report.stages.drawing).toBe('pass')
    expect(report.standards).toHaveLength(3)
  })

  it('describes nothing that its drawing shows otherwise', () => {
    const { report } = answered('Kiln Room 204')
    expect(report.assumptions.filter(({ about }) => about === 'conflict')).toEqual([])
  })
})
