import { describe, expect, it } from 'vitest'
import { confusion } from '../../../src/recognise/letters/confusion.js'
import { heldOutFaces, REFERENCE_FACES } from './faces.js'
import { readBack, setText, SIGN_LINES } from './setting.js'

/**
 * Outside check: the outlines of open typefaces that no reference was made from, set as on signs; what stands there is known
 * because it was set. The wording is invented.
 */

const TIMEOUT = 180_000
const heldOut = heldOutFaces()

const signsOf = (kind: 'sans' | 'serif') =>
  heldOut
    .filter((face) => face.kind === kind)
    .flatMap((face) => SIGN_LINES.map((lines) => ({ face, lines, ...readBack(setText(face, lines)) })))

it('holds out faces of which no weight is a reference', () => {
  for (const { name } of heldOut)
    for (const { folder } of REFERENCE_FACES) expect(name.toLowerCase()).not.toContain(folder.replaceAll('-', ''))
})

describe.each([
  { kind: 'sans' as const, atLeast: 5000, right: 0.985, wrong: 0.001 },
  // Old-style figures and unusual forms stay unread.
  { kind: 'serif' as const, atLeast: 1500, right: 0.88, wrong: 0.003 },
])('$kind faces that are not among the references', ({ kind, atLeast, right, wrong }) => {
  it(
    'nearly all characters are read, none as another, and no sign as a whole is read wrong',
    { timeout: TIMEOUT },
    () => {
      const signs = signsOf(kind)
      const counted = confusion(signs.flatMap((s) => s.pairs))
      expect(counted.characters).toBeGreaterThan(atLeast)
      expect(counted.right / counted.characters).toBeGreaterThan(right)
      expect(counted.wrong / counted.characters, JSON.stringify(counted.confused)).toBeLessThanOrEqual(wrong)
      for (const { face, lines, reading } of signs) {
        const texts = reading.lines.map(({ text }) => ('value' in text ? text.value : undefined))
        if (!texts.includes(undefined)) expect(texts, face.name).toEqual(lines)
      }
    },
  )
})

it('counts what was taken for what', () => {
  const pairs = [...'AAAB'].map((truth) => ({ truth, read: truth }))
  const counted = confusion([
    ...pairs,
    { truth: 'O', read: '0' },
    { truth: 'O', read: '0' },
    { truth: 'l', read: undefined },
  ])
  expect(counted).toEqual({
    characters: 7,
    right: 4,
    unreadable: 1,
    wrong: 2,
    confused: [{ truth: 'O', read: '0', count: 2 }],
    unread: [{ truth: 'l', count: 1 }],
  })
})
