import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { checkSet, MOST_SIGNS, type Asked } from '../../src/command/check-set.js'
import { MOST_BYTES } from '../../src/command/files.js'
import type { Checked, Task } from '../../src/command/worker.js'
import { LIMITS } from '../../src/service/settings.js'
import type { UploadedSign } from '../../src/submittals/upload.js'
import { sampleReport } from '../report/sample.js'

/** How a set is put together, without the checks themselves. All signs are invented. */

const asked: Asked = {
  name: 'Looms',
  standards: ['us-ada-2010@2'],
  options: { use: 'exit-door' },
  at: '2026-03-02T09:30:00.000Z',
  redraw: false,
}
const signs = (count: number, file = 'schedule.csv'): UploadedSign[] =>
  Array.from({ length: count }, (_, i) => ({
    mark: `L-${i}`,
    location: null,
    door: null,
    files: [file],
    sign: { units: 'mm', use: 'permanent-room', lettering: [{ text: `LOOM ${i}` }] },
  }))
const upload = (some: UploadedSign[]) => ({ signs: some, doors: [], problems: [] })
const report = sampleReport()
const checked = async (): Promise<Checked> => ({ report, drawing: null })

describe('a set of the command line', () => {
  it('asks as the service asks of a kept sign: what a description says comes before what is said of all', async () => {
    const tasks: Task[] = []
    const described = { ...signs(1)[0], mark: 'L-1' }
    const drawn: UploadedSign = {
      mark: 'L-2',
      location: null,
      door: null,
      files: ['a.svg'],
      drawing: new Uint8Array(1),
    }
    await checkSet(upload([described, drawn]), asked, async (task) => (tasks.push(task), checked()), 1)
    expect(tasks.map(({ input }) => input.options.use)).toEqual(['permanent-room', 'exit-door'])
    expect(tasks.map(({ input }) => input.sign?.mark)).toEqual(['L-1', 'L-2'])
  })

  it('keeps the answers in the order of the signs, with no more checks at once than told', async () => {
    let running = 0
    let most = 0
    const check = async ({ input }: Task): Promise<Checked> => {
      most = Math.max(most, ++running)
      // The first take longest, so that the last are done first.
      await new Promise((resolve) => setTimeout(resolve, input.sign?.mark === 'L-0' ? 20 : 1))
      running--
      return { problem: { title: 'No', detail: input.sign?.mark ?? '' } }
    }
    const set = await checkSet(upload(signs(12)), asked, check, 3)
    expect(set.signs.map(({ problem }) => problem?.detail)).toEqual(signs(12).map(({ mark }) => mark))
    expect(most).toBe(3)
  })

  it('knows a sign again by its file and mark, whatever else is in the run, and tells the same ones apart', async () => {
    const [first] = signs(1)
    if (!first) throw new Error('there is one')
    const alone = await checkSet(upload([first]), asked, checked, 1)
    const twice = await checkSet(upload([...signs(2, 'b.csv'), first, first]), asked, checked, 1)
    const ids = twice.signs.map(({ id }) => id)
    expect(ids[2]).toBe(alone.signs[0]?.id)
    expect(new Set(ids).size).toBe(4)
  })

  it('compares the signs, and names a listed door that has none', async () => {
    const door = { door: '108', location: 'Loft', file: 'schedule.csv', row: 9 }
    const set = await checkSet({ signs: [...signs(1), ...signs(1)], doors: [door], problems: [] }, asked, checked, 1)
    expect(set.setFindings.map(({ kind }) => kind)).toEqual(expect.arrayContaining(['same-mark', 'door-without-sign']))
    expect(set.history).toBeNull()
  })

  it('holds no more signs than it can, and says which are left out', async () => {
    const set = await checkSet(upload(signs(MOST_SIGNS + 2)), asked, checked, 2)
    expect(set.signs).toHaveLength(MOST_SIGNS)
    expect(set.intakeProblems).toHaveLength(1)
    expect(set.intakeProblems[0]?.detail).toContain(`“L-${MOST_SIGNS}”`)
  })

  it('has the limits of the service, as the documentation says', () => {
    expect({ bytes: MOST_BYTES, signs: MOST_SIGNS }).toEqual({ bytes: LIMITS.upload, signs: LIMITS.evidenceSigns })
    const page = readFileSync(new URL('../../docs/clients.md', import.meta.url), 'utf8').replace(/\s+/g, ' ')
    expect(page).toContain(
      `takes files of ${MOST_BYTES / 1024 ** 2} megabytes together and checks ${MOST_SIGNS.toLocaleString('en')} signs`,
    )
  })
})
