import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import { Report } from '../../src/report/schema.js'
import { answerOrRefusal } from '../../src/service/answer.js'
import { REPORT_TYPES, type ReportType } from '../../src/service/task.js'
import { ATTACKS } from './attacks/all.js'
import { bytesOf } from './attacks/make.js'

/** What an attack costs the core: processor time, counted with the garbage collector's threads, and what it is answered. */

/** The aim is one second of a processor that is not shared; here it may be shared, and time counts double and more. */
const MOST_CPU = 60_000

const translator = createTranslator()
const spent: { name: string; milliseconds: number }[] = []

function check(drawing: Uint8Array, type: ReportType) {
  const options = { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' } as const
  const input = { drawing, standards: ['us-ada-2010'], options }
  const before = process.cpuUsage()
  const answer = answerOrRefusal({ kind: 'check', type, input }, translator)
  const { user, system } = process.cpuUsage(before)
  return { answer, milliseconds: (user + system) / 1000 }
}

beforeAll(() => {
  // Fonts, braille tables and the compiler are warm in a service that runs.
  const sign = readFileSync(new URL('../drawings/svg/hand-text-tspans.svg', import.meta.url))
  for (const type of REPORT_TYPES) check(sign, type)
})

afterAll(() => {
  const worst = spent.sort((a, b) => b.milliseconds - a.milliseconds).slice(0, 3)
  console.log('most processor time:', worst.map((w) => `${w.name}: ${w.milliseconds.toFixed(0)} ms`).join('; '))
})

describe('an attack is answered as it should be, and costs little:', () => {
  it.each(Object.entries(ATTACKS))('%s', (name, attack) => {
    const { answer, milliseconds } = check(bytesOf(attack), 'application/json')
    spent.push({ name, milliseconds })
    expect('refused' in answer ? answer.refused.type : 'report').toBe(attack.then)
    if ('refused' in answer) expect(answer.refused.detail).toMatch(/^[A-Z].*\.$/s)
    // A number that is not finite becomes null in JSON, which the schema does not take for a number.
    else expect(Report.safeParse(JSON.parse(Buffer.from(answer.body).toString())).error?.issues).toBeUndefined()
    expect(milliseconds).toBeLessThan(MOST_CPU)
  })
})
