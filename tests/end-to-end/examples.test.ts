import { readFileSync, readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import { check } from '../../src/check.js'
import type { Report } from '../../src/report/schema.js'
import { SignDescription } from '../../src/sign/description.js'

/** The signs of docs/examples: an invented studio, each sign made with the fault named here and no other. */

const folder = new URL('../../docs/examples/', import.meta.url)
const translator = createTranslator()

function report(name: string): Report {
  const sign = SignDescription.parse(JSON.parse(readFileSync(new URL(`${name}.json`, folder), 'utf8')))
  const hasDrawing = readdirSync(folder).includes(`${name}.svg`)
  const drawing = hasDrawing ? readFileSync(new URL(`${name}.svg`, folder)) : undefined
  const options = { use: sign.use, decisionRule: 'simple', unitSystem: 'printed', language: 'en' } as const
  return check({ drawing, sign, standards: ['us-ada-2010'], options }, translator)
}

const MADE_WITH: Record<string, { verdict: string; fails: string[]; open?: 'product and site' }> = {
  'kiln-room': { verdict: 'pass', fails: [] },
  // Whether the number stands on both jambs and where a star belongs is for a person at the elevator to judge.
  'landing-2': { verdict: 'undetermined', fails: [] },
  restroom: { verdict: 'pass', fails: [] },
  exit: { verdict: 'undetermined', fails: [], open: 'product and site' },
  'glaze-lab': { verdict: 'fail', fails: ['703.3.1/cell-spacing', '703.3.1/dot-base-diameter'] },
  'wheel-room': { verdict: 'fail', fails: ['703.2/wording'] },
  stair: { verdict: 'fail', fails: ['703.3/contracted', '703.5.1/contrast'] },
  'herb-marker': {
    verdict: 'fail',
    fails: ['703.2.5/character-height', '703.2.7/character-spacing-min', '703.3.1/dot-base-diameter'],
  },
}

describe('the examples', () => {
  it('are all listed here', () => {
    const there = readdirSync(folder)
      .filter((f) => f.endsWith('.json'))
      .map((f) => f.replace('.json', ''))
    expect(there.sort()).toEqual(Object.keys(MADE_WITH).sort())
  })

  it.each(Object.entries(MADE_WITH))('%s', (name, made) => {
    const { verdict, stages, findings } = report(name)
    const failed = findings.filter((f) => f.verdict === 'fail' && f.force === 'shall').map((f) => f.requirement)
    expect(failed.sort()).toEqual(made.fails.map((slug) => `us-ada-2010/${slug}`).sort())
    expect(verdict).toBe(made.verdict)
    if (made.open) expect(stages).toMatchObject({ drawing: 'pass', product: 'undetermined', site: 'undetermined' })
  })
})
