import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { LARGEST_FILE, RATIO_HOLDS_FROM, UPLOAD_LIMITS } from '../../../src/submittals/intake/limits.js'
import { LONGEST_SHOWN_NAME } from '../../../src/submittals/intake/names.js'
import { file, read, SVG } from './uploads.js'

/** docs/uploads.md and the code say the same. */

const page = readFileSync(new URL('../../../docs/uploads.md', import.meta.url), 'utf8')
const spaced = (value: number) => value.toLocaleString('en-US').replaceAll(',', ' ')

/** Limits by name, as the page prints them. */
const printed = new Map(
  [...page.matchAll(/^\| `(\w+)` \| ([\d ]+) \|/gmu)].map(([, name = '', value = '']) => [name, value]),
)

describe('the page about uploads', () => {
  it('lists every limit with its value, and no other', () => {
    const limits = Object.entries(UPLOAD_LIMITS).map(([name, value]) => [name, spaced(value)])
    expect(Object.fromEntries(printed)).toEqual(Object.fromEntries(limits))
  })

  it('says from where on the ratio counts, and how long a name is', () => {
    expect(page).toContain(`from ${spaced(RATIO_HOLDS_FROM)} bytes on`)
    expect(page).toContain(`after ${LONGEST_SHOWN_NAME} characters`)
  })

  it('shows JSON that is read as it says', async () => {
    const blocks = [...page.matchAll(/```json\n(.*?)```/gsu)].map(([, block = '']) => block)
    expect(blocks).toHaveLength(2)
    for (const block of blocks) {
      const { signs, problems } = await read(file('signs.json', block), file('glaze-lab.svg', SVG))
      expect(problems).toEqual([])
      expect(signs.map(({ mark }) => mark)).toContain('H-204')
    }
  })
})

describe('the limits', () => {
  it('let every kind of file through the one that holds before its kind is known', () => {
    for (const kind of ['drawing', 'schedule', 'json'] as const)
      expect(UPLOAD_LIMITS[kind]).toBeLessThanOrEqual(LARGEST_FILE)
  })
})
