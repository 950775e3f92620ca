import { describe, expect, it } from 'vitest'
import { attributeOf, attributeSet, beforeEnd, removal, rewritten } from '../../src/drawing/rewrite.js'
import { readWritten, type Written } from '../../src/drawing/source-text.js'

const SVG = `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd" [<!ENTITY ns "http://www.w3.org/2000/svg"><!-- a > in a note -->]>
<!-- <circle r="9"/> -->
<s:svg xmlns:s="&ns;" width="40mm" height="20mm" viewBox="0 0 40 20">
  <s:title>a &lt; b</s:title>
  <s:g transform='translate(1,2)'>
    <s:circle id='a' cx="1" cy="1" r="1" data-note="1 > 0"/>
    <s:rect id="b" x="5" y="5" width="2" height="2"></s:rect><s:rect id="c" x="9" y="5" width="2" height="2"/>
  </s:g>
  <![CDATA[ <s:circle r="1"/> ]]>
</s:svg>`

const written = readWritten(new TextEncoder().encode(SVG), {})
const byId = (id: string): Written => {
  const shape = written.drawing.shapes.find(({ source }) => source.id === id)
  const found = shape && written.at(shape.source)
  if (!found) throw new Error(`no element ${id}`)
  return found
}
const slice = ({ start, end }: Written): string => SVG.slice(start, end)

describe('where elements stand in the text', () => {
  it('is told by the characters that they take up', () => {
    expect(slice(byId('a'))).toBe(`<s:circle id='a' cx="1" cy="1" r="1" data-note="1 > 0"/>`)
    expect(slice(byId('b'))).toBe('<s:rect id="b" x="5" y="5" width="2" height="2"></s:rect>')
    expect(SVG.slice(beforeEnd(SVG, written.root))).toBe('</s:svg>')
    expect(written.root.name).toBe('s:svg')
  })

  it('goes with the user space of each', () => {
    expect(written.spaceOf(byId('a').element)).toMatchObject({
      e: expect.closeTo(1, 9) as number,
      f: expect.closeTo(2, 9) as number,
    })
    expect(written.spaceOf(written.root.element)).toMatchObject({ e: 0, f: 0 })
  })
})

describe('changes of the text', () => {
  it('take out an element with its line where it stands alone, and by itself where it does not', () => {
    const without = rewritten(SVG, [removal(SVG, byId('a'))])
    expect(without).toBe(SVG.replace(/\n {4}<s:circle id='a'.*\/>/, ''))
    expect(rewritten(SVG, [removal(SVG, byId('b'))])).toBe(SVG.replace(/<s:rect id="b".*?<\/s:rect>/, ''))
  })

  it('set an attribute, old or new, and nothing else', () => {
    expect(attributeOf(SVG, byId('a'), 'id')).toBe('a')
    expect(attributeOf(SVG, byId('a'), 'x')).toBeUndefined()
    expect(rewritten(SVG, [attributeSet(SVG, byId('a'), 'r', '2')])).toBe(SVG.replace('cy="1" r="1"', 'cy="1" r="2"'))
    expect(rewritten(SVG, [attributeSet(SVG, byId('c'), 'fill', 'red')])).toBe(
      SVG.replace('<s:rect id="c"', '<s:rect fill="red" id="c"'),
    )
  })

  it('never overlap', () => {
    const one = removal(SVG, byId('a'))
    expect(() => rewritten(SVG, [one, { ...one, from: one.from + 1 }])).toThrow('two changes')
  })
})
