import { expect, it } from 'vitest'
import { historyText } from '../../../src/service/submittals/history-resource.js'
import { HistoryResource } from '../../../src/service/submittals/resources.js'

/** The values are invented. */
const event = (number: number, data: string) => ({
  submittal: 's',
  number,
  at: '2026-01-02T03:04:05.000Z',
  actor: 'a person',
  kind: 'note-added' as const,
  data,
  previous: '0',
  hash: '1',
})

async function whole(data: readonly string[]) {
  const proved = { events: data.map((one, i) => event(i + 1, one)), intact: false, brokenAt: 2, head: '1' }
  let text = ''
  for await (const piece of historyText('s', proved)) text += piece
  return HistoryResource.parse(JSON.parse(text))
}

it('is JSON without any event', async () => {
  expect((await whole([])).events).toEqual([])
})

it('is whole when it is longer than what is written in one go', async () => {
  const texts = Array.from({ length: 1203 }, (_, n) => JSON.stringify({ text: `note “${n}”` }))
  const { events } = await whole(texts)
  expect(events.map(({ number, data }) => [number, JSON.stringify(data)])).toEqual(
    texts.map((text, n) => [n + 1, text]),
  )
})

it('shows what somebody has changed into no JSON as it lies there', async () => {
  const { brokenAt, events } = await whole(['{"text":"first"}', '{"text":', '{"text":"third"}'])
  expect(brokenAt).toBe(2)
  expect(events.map(({ data }) => data)).toEqual([{ text: 'first' }, { unreadable: '{"text":' }, { text: 'third' }])
})
