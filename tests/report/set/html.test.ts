import { createHash } from 'node:crypto'
import { SaxesParser } from 'saxes'
import { describe, expect, it } from 'vitest'
import { setHtml } from '../../../src/report/set/html.js'
import { SET_STYLE_HASH } from '../../../src/report/set/html-page.js'
import { inspectionHtml } from '../../../src/report/set/inspection-sheet.js'
import { sampleSet, setSign, wordedSet } from './evidence-sample.js'
import { naughty } from './naughty.js'

/** All values of the set are invented. */

const pages = { set: setHtml, sheet: inspectionHtml }
const each = Object.entries(pages).map(([name, write]) => ({ name, write }))

/** A name of an element and the names of its attributes; the markup has to be well-formed. */
function shapeOf(html: string): Set<string> {
  const shape = new Set<string>()
  const parser = new SaxesParser()
  parser.on('error', (error) => {
    throw error
  })
  parser.on('opentag', ({ name, attributes }) => {
    for (const attribute of Object.keys(attributes)) shape.add(`${name} ${attribute}`)
    shape.add(name)
  })
  parser.write(html.replace('<!doctype html>', '')).close()
  return shape
}

const textOf = (html: string): string =>
  html
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/ ([.,;:])/g, '$1')

describe('the pages of a submittal', () => {
  it.each(each)('have one h1, headings in order, one main, ids that are one of a kind: $name', ({ write }) => {
    const html = write(sampleSet())
    expect(html.match(/<h1[ >]/g)).toHaveLength(1)
    expect(html.match(/<main>/g)).toHaveLength(1)
    const levels = [...html.matchAll(/<h([1-6])/g)].map((m) => Number(m[1]))
    levels.slice(1).forEach((level, i) => expect(level - (levels[i] ?? 0)).toBeLessThanOrEqual(1))
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map((m) => m[1])
    expect(new Set(ids).size).toBe(ids.length)
    for (const [, target] of html.matchAll(/href="#([^"]+)"/g)) expect(ids).toContain(target)
  })

  // Content Security Policy Level 3: a hash source is the base64 SHA-256 of the exact text of the element.
  it.each(each)('have one style, whose hash is the one exported, and no script: $name', ({ write }) => {
    const html = write(sampleSet())
    const styles = [...html.matchAll(/<style>([\s\S]*?)<\/style>/g)].map((m) => m[1] ?? '')
    expect(styles).toHaveLength(1)
    expect(
      `sha256-${createHash('sha256')
        .update(styles[0] ?? '')
        .digest('base64')}`,
    ).toBe(SET_STYLE_HASH)
    expect(html).not.toMatch(/<script|\sstyle=|\son[a-z]+=|javascript:|https?:/i)
  })

  it.each(each)('give every table a caption and every head a scope: $name', ({ write }) => {
    const html = write(sampleSet())
    expect(html.match(/<caption>/g)).toHaveLength(html.match(/<table>/g)?.length ?? -1)
    for (const [head] of html.matchAll(/<th[ >][^>]*/g)) expect(head).toContain('scope=')
  })

  it.each(each)('hold naughty strings as text alone: $name', ({ write }) => {
    const plain = shapeOf(write(wordedSet('plain')))
    for (const words of naughty()) {
      const html = write(wordedSet(words))
      expect([...shapeOf(html)].filter((one) => !plain.has(one))).toEqual([])
      expect(html).not.toMatch(/\p{Bidi_Control}|\p{Cc}(?<!\n)/u)
    }
  })

  it.each(each)('are the same for the same evidence: $name', ({ write }) => {
    expect(write(sampleSet())).toBe(write(sampleSet()))
  })
})

describe('the page of a submittal', () => {
  const text = textOf(setHtml(sampleSet()))

  it('begins with the verdict, then the schedule, then what is wrong with the set, then each sign', () => {
    const html = setHtml(sampleSet())
    const order = [
      'verdict',
      'schedule',
      'set-findings',
      'intake',
      'caveats',
      'sign-1',
      'sign-4',
      'inspection',
      'history',
    ]
    const places = order.map((id) => html.indexOf(` id="${id}"`))
    expect(places.every((at) => at > 0)).toBe(true)
    expect([...places].sort((a, b) => a - b)).toEqual(places)
    expect(text).toContain('✗ Fails 2 signs fail, 2 signs have no report.')
    expect(text).toContain('sha256-44')
  })

  it('shows a waiver at its finding, which fails all the same', () => {
    const html = setHtml(sampleSet())
    const finding = html.slice(html.indexOf('id="sign-1-finding-1"'), html.indexOf('id="sign-1-finding-2"'))
    expect(finding).toContain('✗ Fails')
    expect(textOf(finding)).toContain(
      'Waived The wall is listed; the old stroke may stay. Authority reference: Letter 44.',
    )
    expect(text).toContain('Waiver not used: A finding that the latest report does not have (nobody).')
    expect(text).toContain('Findings that were waived: 2. They count as they were found.')
  })

  it('shows an expired waiver as expired, and lists it', () => {
    const html = setHtml(sampleSet())
    const finding = html.slice(html.indexOf('id="sign-1-finding-2"'), html.indexOf('id="sign-1-finding-3"'))
    expect(textOf(finding)).toContain('Waiver expired')
    expect(text).toContain('Waiver expired: 703.3.1 Cell spacing, which fails.')
  })

  it('shows notes and readings that were added', () => {
    const sign = setSign('L-17', {
      notes: [{ text: 'Seen from the stair.', author: 'B. Clay', at: '2026-03-03T07:00:00.000Z' }],
      measurements: [
        {
          quantity: 'braille.dotHeight',
          values: [0.71, 0.74],
          unit: 'mm',
          expandedUncertainty: 0.02,
          instrument: 'dial gauge',
          author: 'B. Clay',
          at: '2026-03-03T07:05:00.000Z',
        },
      ],
    })
    const page = textOf(setHtml({ ...sampleSet(), signs: [sign] }))
    expect(page).toContain('Seen from the stair. ( B. Clay, 2026-03-03, 07:00 UTC)')
    expect(page).toContain('0.71, 0.74 mm, ± 0.02 mm (k = 2), dial gauge; entered by B. Clay, 2026-03-03, 07:05 UTC')
  })

  it('says why a sign has no report, and what of the upload was not used', () => {
    expect(text).toContain('The drawing cannot be read. Line 3, column 7: a tag is not closed.')
    expect(text).toContain('schedule.csv, row 6, column Height: “two” is not a number.')
    expect(text).toContain('Doors without a sign: Door D-21 is listed and has no sign.')
  })
})
