import { describe, expect, it } from 'vitest'
import { ENTITY_LIMITS, LIMITS } from '../../src/drawing/limits.js'
import { page, read, refusalOf, SVG } from './svg.js'

const utf16 = (text: string, order: 'le' | 'be', mark: boolean): Uint8Array => {
  const bytes = new Uint8Array(2 * text.length + (mark ? 2 : 0))
  const view = new DataView(bytes.buffer)
  const units = (mark ? '\ufeff' : '') + text
  for (let i = 0; i < units.length; i++) view.setUint16(2 * i, units.charCodeAt(i), order === 'le')
  return bytes
}

const decoded = (bytes: Uint8Array) => refusalOf(bytes)

describe('decoding', () => {
  const named = page('<g id="Tür"><rect width="5" height="5"/></g>')

  it('reads UTF-8, with and without a byte order mark', () => {
    for (const text of [named, `\ufeff${named}`]) expect(read(text).shapes[0].labels.names).toEqual(['Tür'])
  })

  it('reads UTF-16 in both orders, with and without a byte order mark (XML 1.0, appendix F)', async () => {
    const { readDrawing } = await import('../../src/drawing/read.js')
    for (const order of ['le', 'be'] as const)
      for (const mark of [true, false])
        expect(readDrawing(utf16(named, order, mark)).shapes[0].labels.names).toEqual(['Tür'])
  })

  it('reads the declared ISO-8859-1', async () => {
    const { readDrawing } = await import('../../src/drawing/read.js')
    const text = `<?xml version="1.0" encoding="ISO-8859-1"?>${named}`
    const bytes = Uint8Array.from(text, (c) => c.charCodeAt(0))
    expect(readDrawing(bytes).shapes[0].labels.names).toEqual(['Tür'])
  })

  it('refuses what is not text of the encoding, with the place', () => {
    const text = page('\n\n<g id="x"/>')
    const bytes = new TextEncoder().encode(text)
    bytes[text.indexOf('x"/>')] = 0xff
    const refusal = decoded(bytes)
    expect(refusal.type).toBe('malformed-drawing')
    expect(refusal.errors[0].line).toBe(3)
    expect(decoded(new TextEncoder().encode(`<?xml version="1.0" encoding="UTF-7"?>${named}`)).detail).toMatch(/utf-7/)
    expect(decoded(new TextEncoder().encode(page('a\0b'))).detail).toMatch(/NUL/)
    expect(decoded(Uint8Array.of(0xff, 0xfe, 0, 0, 0x3c, 0, 0, 0)).detail).toMatch(/UTF-32/)
  })

  it.each([
    ['gzip', [0x1f, 0x8b, 8, 0], /gzip/],
    ['PNG', [0x89, 0x50, 0x4e, 0x47, 13, 10], /PNG/],
    ['PDF', [0x25, 0x50, 0x44, 0x46, 0x2d], /PDF/],
    ['ZIP', [0x50, 0x4b, 3, 4], /ZIP/],
    ['nothing', [], /empty/],
  ])('names %s sent as a drawing', (_, bytes, message) => {
    const refusal = decoded(Uint8Array.from(bytes))
    expect(refusal.type).toBe('malformed-drawing')
    expect(refusal.detail).toMatch(message)
    expect(refusal.errors[0]).toMatchObject({ line: 1, column: 1 })
  })
})

describe('what is no drawing', () => {
  it.each([
    ['JSON', '{"a": 1}', 1],
    ['plain text', 'hello', 1],
    ['blanks', '  \n \n', 1],
    ['HTML', '<html xmlns="http://www.w3.org/1999/xhtml"/>', 1],
    ['a cut-off drawing', `<svg ${SVG} width="9mm">\n<g>`, 2],
    ['a repeated attribute', `<svg ${SVG}>\n\n<g id="a" id="b"/></svg>`, 3],
    ['an unknown prefix', `<svg ${SVG}>\n<x:g/></svg>`, 2],
    ['a named entity of HTML', `<svg ${SVG}>\n<text>&nbsp;</text></svg>`, 2],
    ['text after the end', `<svg ${SVG}/>\nmore`, 2],
    ['two roots', `<svg ${SVG}/>\n<svg/>`, 2],
  ])('refuses %s at its line', (_, text, line) => {
    const refusal = refusalOf(text)
    expect(refusal.type).toBe('malformed-drawing')
    expect(refusal.errors[0].line).toBeGreaterThanOrEqual(line)
    expect(refusal.errors[0].column).toBeGreaterThanOrEqual(1)
  })

  it('says what is wrong with the namespace of the root', () => {
    expect(refusalOf('<svg width="9mm" viewBox="0 0 9 9"/>').detail).toMatch(/no namespace.*xmlns=/)
    expect(refusalOf('<svg xmlns="http://example.com/" width="9mm"/>').detail).toMatch(
      /namespace "http:\/\/example.com\/"/,
    )
  })

  it('reads a prefixed drawing like any other', () => {
    const markup =
      '<s:svg xmlns:s="http://www.w3.org/2000/svg" width="9mm" viewBox="0 0 9 9"><s:rect width="3" height="3"/></s:svg>'
    expect(read(markup).shapes).toHaveLength(1)
  })

  it('knows where each element starts', () => {
    const markup = `<svg ${SVG} width="9mm" viewBox="0 0 9 9">\n  <g><rect\n width="3" height="3"/>\r\n\t<circle r="2"/></g>\n</svg>`
    expect(read(markup).shapes.map((s) => s.source)).toEqual([
      { line: 2, column: 6 },
      { line: 4, column: 2 },
    ])
  })

  it('keeps ids that look like numbers as they are written', () => {
    const markup = page('<defs><rect id="1e3" width="3" height="3"/></defs><use href="#1e3"/><use href="#1000"/>')
    expect(read(markup).shapes.map((s) => s.source.id)).toEqual(['1e3'])
  })
})

describe('entities', () => {
  const withEntities = (subset: string, use: string) =>
    `<!DOCTYPE svg [${subset}]>\n<svg ${SVG} width="9mm" viewBox="0 0 9 9">${use}</svg>`

  it('reads the short ones that drawing programs write for namespaces', () => {
    const markup =
      '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd" [\n' +
      '  <!ENTITY ns_svg "http://www.w3.org/2000/svg">\n  <!-- <!ENTITY % no SYSTEM "x"> -->\n  <!ENTITY ns_x \'http://example.com/\'>\n]>\n' +
      '<svg xmlns="&ns_svg;" xmlns:x="&ns_x;" width="9mm" viewBox="0 0 9 9"><rect width="3" height="3"/></svg>'
    expect(read(markup).shapes).toHaveLength(1)
  })

  it.each([
    ['external', '<!ENTITY x SYSTEM "file:///etc/hostname">'],
    ['public', '<!ENTITY x PUBLIC "a" "http://example.com/">'],
    ['unparsed', '<!ENTITY x SYSTEM "a.png" NDATA png>'],
    ['parameter', '<!ENTITY % x "y">'],
    ['a use of a parameter', '%x;'],
    ['nested', '<!ENTITY a "b"><!ENTITY x "&a;&a;">'],
    ['markup', '<!ENTITY x "<g/>">'],
    ['long', `<!ENTITY x "${'y'.repeat(ENTITY_LIMITS.length + 1)}">`],
    ['many', Array.from({ length: ENTITY_LIMITS.count + 1 }, (_, i) => `<!ENTITY x${i} "y">`).join('')],
  ])('refuses %s ones', (_, subset) => {
    const refusal = refusalOf(withEntities(subset, ''))
    expect(refusal.type).toBe('entities-not-accepted')
    expect(refusal.errors[0].line).toBeGreaterThanOrEqual(1)
  })

  it('refuses many uses of a short one before they are expanded', () => {
    const value = 'y'.repeat(1000)
    const uses = '&x;'.repeat(ENTITY_LIMITS.expansion / 1000 + 1)
    expect(refusalOf(withEntities(`<!ENTITY x "${value}">`, `<text>${uses}</text>`)).type).toBe('entities-not-accepted')
  })
})

describe('limits, each met and passed by one', () => {
  const nested = (depth: number) =>
    `<svg ${SVG} width="9mm" viewBox="0 0 9 9">${'<g>'.repeat(depth - 1)}${'</g>'.repeat(depth - 1)}</svg>`
  const elements = (count: number) => `<svg ${SVG} width="9mm" viewBox="0 0 9 9">${'<g/>'.repeat(count - 1)}</svg>`
  const attributes = (count: number) => page(`<g ${Array.from({ length: count }, (_, i) => `a${i}=""`).join(' ')}/>`)
  const attribute = (length: number) => page(`<g id="${'a'.repeat(length)}"/>`)
  const text = (length: number) => page(`<desc>${'a'.repeat(length)}</desc>`)
  it.each([
    ['depth', nested, LIMITS.depth],
    ['elements', elements, LIMITS.elements],
    ['attributes', attributes, LIMITS.attributesPerElement],
    ['attribute length', attribute, LIMITS.attributeLength],
    ['text length', text, LIMITS.textLength],
  ])('%s', (_, make, limit) => {
    expect(read(make(limit)).shapes).toEqual([])
    const refusal = refusalOf(make(limit + 1))
    expect(refusal.type).toBe('too-complex')
    expect(refusal.excess?.limit).toBe(limit)
    expect(refusal.excess?.actual).toBeGreaterThan(limit)
  })

  it('bytes', () => {
    const fill = (size: number) => new TextEncoder().encode(page('').padEnd(size, ' '))
    expect(() => read(page('').padEnd(LIMITS.bytes, ' '))).not.toThrow()
    const refusal = refusalOf(fill(LIMITS.bytes + 1))
    expect(refusal.type).toBe('too-large')
    expect(refusal.excess).toEqual({ limit: LIMITS.bytes, actual: LIMITS.bytes + 1 })
  })

  it('stops at ten thousand nested elements at once, not after reading them all', () => {
    const { type, excess } = refusalOf(nested(100_000))
    expect(type).toBe('too-complex')
    // What was counted tells how far it was read.
    expect(excess?.actual).toBe(LIMITS.depth + 1)
  })
})
