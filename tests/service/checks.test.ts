import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { Report } from '../../src/report/schema.js'
import { POTTERY_ROOM } from '../../src/sign/examples.js'
import { runningService, THEATER, THEATER_CELLS } from './running.js'

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
})
afterAll(() => app.close())

const post = () => request(app.server).post('/v1/checks')
const reportOf = (response: { body: unknown }): Report => Report.parse(response.body)

describe('a check of a description', () => {
  it('answers 200 with a report of the documented shape, by ETag and by id the same twice', async () => {
    const first = await post()
      .send({ sign: POTTERY_ROOM })
      .expect(200)
      .expect('content-type', /^application\/json/)
    const second = await post().send({ sign: POTTERY_ROOM }).expect(200)
    const report = reportOf(first)
    expect(report.verdict).toBe('pass')
    expect(second.text).toBe(first.text)
    expect(first.headers.etag).toBe(`"${report.id}-json"`)
    expect(first.headers.vary).toContain('Accept')
  })

  it('holds the sign against us-ada-2010 when no standard is named', async () => {
    const report = reportOf(await post().send({ sign: POTTERY_ROOM }))
    expect(report.standards.map(({ id }) => id)).toEqual(['us-ada-2010'])
  })

  it('answers 200 when the sign fails', async () => {
    const sign = { ...POTTERY_ROOM, braille: [{ ...POTTERY_ROOM.braille[0], cellSpacing: 5.8 }] }
    // 5.8 mm is below the 0.241 in of the 2010 ADA Standards, table 703.3.1.
    const report = reportOf(await post().send({ sign }).expect(200))
    expect(report.verdict).toBe('fail')
    expect(
      report.findings.filter(({ verdict, force }) => verdict === 'fail' && force === 'shall').map((f) => f.requirement),
    ).toEqual(['us-ada-2010/703.3.1/cell-spacing'])
  })

  it('asks in the unit of the description, so that a bare number at the pointer is right', async () => {
    // Values are invented.
    const sign = { units: 'in', use: 'permanent-room', lettering: [{ text: 'KILN', characterHeight: 0.75 }] }
    const asked = reportOf(await post().send({ sign })).questions.find(({ pointer }) => pointer.endsWith('/relief'))
    expect(asked).toMatchObject({ pointer: '/sign/lettering/0/relief', unit: 'in' })
    const added = { ...sign, lettering: [{ ...sign.lettering[0], relief: 0.035 }] }
    const row = reportOf(await post().send({ sign: added })).findings.find((f) => f.clause === '703.2.1')
    // 2010 ADA Standards 703.2.1: 1/32 inch.
    expect(row).toMatchObject({ verdict: 'pass', measured: { inches: 0.035 } })
  })

  it('reads a byte order mark before the JSON', async () => {
    await post()
      .type('json')
      .send(`\ufeff${JSON.stringify({ sign: POTTERY_ROOM })}`)
      .expect(200)
  })

  it('gives the page to a browser and our own drawing to who asks for SVG', async () => {
    const page = await post().set('accept', 'text/html').send({ sign: POTTERY_ROOM }).expect(200)
    expect(page.headers['content-type']).toBe('text/html; charset=utf-8')
    expect(page.headers['content-security-policy']).toMatch(/^default-src 'none'; style-src 'sha256-/)
    expect(page.text).toMatch(/^<!doctype html>/)
    const drawing = await post().set('accept', 'image/svg+xml').buffer(true).send({ sign: POTTERY_ROOM }).expect(200)
    expect(drawing.headers['content-security-policy']).toContain("default-src 'none'")
    expect(String(drawing.text ?? drawing.body)).toContain('<svg')
    expect(new Set([page.headers.etag, drawing.headers.etag]).size).toBe(2)
  })

  it('gives the findings to spreadsheets and to readers of analysis results', async () => {
    const report = reportOf(await post().send({ sign: POTTERY_ROOM }))
    const csv = await post().set('accept', 'text/csv').send({ sign: POTTERY_ROOM }).expect(200)
    expect(csv.headers['content-type']).toBe('text/csv; charset=utf-8')
    expect(csv.headers.etag).toBe(`"${report.id}-csv"`)
    // RFC 4180: a row of heads and one line a finding, the last line ended too.
    expect(csv.text.split('\r\n')).toHaveLength(report.findings.length + 2)
    const sarif = await post().set('accept', 'application/sarif+json').buffer(true).send({ sign: POTTERY_ROOM })
    expect(sarif.status).toBe(200)
    expect(sarif.headers['content-type']).toBe('application/sarif+json; charset=utf-8')
    expect(sarif.body).toMatchObject({ version: '2.1.0', runs: [{ results: { length: report.findings.length } }] })
  })

  it('gives pages to print, as bytes, of a description and of a drawing', async () => {
    const ofDescription = post().set('accept', 'application/pdf').send({ sign: POTTERY_ROOM })
    const ofDrawing = post().set('accept', 'application/pdf').type('image/svg+xml')
    for (const response of [await ofDescription, await ofDrawing.send(THEATER)]) {
      expect([response.status, response.headers['content-type']]).toEqual([200, 'application/pdf'])
      expect(response.headers.etag).toMatch(/-pdf"$/)
      // ISO 32000-1, 7.5.2 and 7.5.5: the first and the last line of a file.
      expect(String(response.body)).toMatch(/^%PDF-1\.7[^]*%%EOF\s*$/)
    }
  })

  it('gives them of a drawing too, from a thread', async () => {
    const sarif = await post().set('accept', 'application/sarif+json').type('image/svg+xml').send(THEATER).expect(200)
    expect(JSON.stringify(sarif.body)).toContain('"startLine":')
  })

  it('checks a large description in a worker, with the same report', async () => {
    const sign = { ...POTTERY_ROOM, properNames: Array.from({ length: 400 }, (_, i) => `Name${i}`.padEnd(60, 'x')) }
    const report = reportOf(await post().send({ sign }).expect(200))
    expect(report.verdict).toBe('pass')
  })
})

describe('a check of a drawing', () => {
  it('reads a bare drawing, for a permanent room when no use is named', async () => {
    const report = reportOf(await post().type('image/svg+xml').send(THEATER).expect(200))
    expect(report.reading.braille[0]?.lines[0]?.cells).toBe(THEATER_CELLS)
    expect(report.use).toBe('permanent-room')
    expect(report.assumptions.map(({ about }) => about)).toContain('use')
  })

  it('takes the options of a bare drawing from the query', async () => {
    const query = {
      standards: 'us-ada-2010@1',
      use: 'gift',
      properNames: '',
      decisionRule: 'guarded',
      unitSystem: 'both',
      part: '{"nothing":"ignore"}',
      'part.nobody': 'ignore',
    }
    const report = reportOf(await post().query(query).type('image/svg+xml').send(THEATER).expect(200))
    expect([report.use, report.decisionRule, report.unitSystem]).toEqual(['gift', 'guarded', 'both'])
    expect(report.assumptions.map(({ about }) => about)).not.toContain('use')
  })

  it('reads the same from a body, a form and a JSON text', async () => {
    const body = reportOf(await post().type('image/svg+xml').send(THEATER).expect(200))
    const form = reportOf(await post().attach('drawing', THEATER, 'theater.svg').expect(200))
    const json = reportOf(
      await post()
        .send({ drawing: THEATER.toString('utf8') })
        .expect(200),
    )
    expect(form.reading).toEqual(body.reading)
    expect(json.reading).toEqual(body.reading)
    expect(form.id).toBe(body.id)
  })

  it('believes no declared encoding of a drawing that came as JSON text', async () => {
    const declared = THEATER.toString('utf8')
      .replace('UTF-8', 'ISO-8859-1')
      .replace('id="panel"', 'id="Türschild panel"')
    const report = reportOf(await post().send({ drawing: declared }).expect(200))
    expect(JSON.stringify(report)).not.toContain('Ã')
  })

  it('adds a description from a form and lists where the two differ', async () => {
    const report = reportOf(
      await post()
        .attach('drawing', THEATER, 'theater.svg')
        .field('sign', JSON.stringify({ use: 'permanent-room', braille: [{ dotHeight: 0.7, cellSpacing: 9 }] }))
        .field('standards', 'us-ada-2010')
        .field('options', JSON.stringify({ unitSystem: 'both' }))
        .expect(200),
    )
    expect(report.assumptions.filter(({ about }) => about === 'conflict')).toHaveLength(1)
    expect(report.findings.find(({ quantity }) => quantity === 'braille.dotHeight')?.verdict).toBe('pass')
    expect(report.unitSystem).toBe('both')
  })

  it('takes the parts of a form as files too, and standards as a JSON array', async () => {
    const sign = Buffer.from(JSON.stringify({ sign: undefined, use: 'gift' }))
    const report = reportOf(
      await post()
        .attach('sign', sign, { filename: 'blob', contentType: 'application/json' })
        .attach('drawing', THEATER, 'theater.svg')
        .attach('standards', Buffer.from('["us-ada-2010"]'), { filename: 'blob', contentType: 'application/json' })
        .expect(200),
    )
    expect(report.use).toBe('gift')
  })
})
