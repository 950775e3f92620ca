// The words of each format, so that changes of single bytes need not spell them.
import { z } from 'zod'
import { CheckRequest } from '../../dist/service/check-request.js'
import { listStandards } from '../../dist/standards/catalogue.js'
import { COLUMNS } from '../../dist/submittals/schedule/columns.js'

const SVG = `
  <svg <g> <g </g> <path <rect <circle <ellipse <line <polyline <polygon <text> <text <tspan <textPath <use <symbol <defs> <style>
  <marker <pattern <clipPath <mask <linearGradient <stop <image <switch <a> <foreignObject <metadata> <title> <desc> </svg> />
  <!-- --> <![CDATA[ ]]> <!DOCTYPE <!ENTITY <?xml ?> &lt; &#x2802; &amp; xmlns=" xmlns:xlink=" xmlns:inkscape=" http://www.w3.org/2000/svg
  id=" class=" style=" transform=" viewBox=" width=" height=" x=" y=" cx=" cy=" r=" rx=" ry=" x1=" x2=" y1=" y2=" d=" points=" href=" xlink:href="#
  fill=" stroke=" stroke-width=" stroke-dasharray=" stroke-linecap=" stroke-linejoin=" stroke-miterlimit=" fill-rule=" clip-path=" clip-rule="
  mask=" filter=" opacity=" display=" visibility=" overflow=" marker-start=" marker-mid=" marker-end=" markerUnits=" markerWidth=" refX=" orient="
  patternUnits=" patternTransform=" clipPathUnits=" preserveAspectRatio=" font-size=" font-family=" font-weight=" text-anchor=" letter-spacing="
  textLength=" lengthAdjust=" dx=" dy=" rotate=" data-part=" inkscape:label=" xml:space=" vector-effect=" paint-order=" pathLength="
  matrix( translate( rotate( scale( skewX( url(# rgb( rgba( hsl( calc( var( currentColor none inherit initial evenodd nonzero auto 100% 1e9 1e-9
  1e400 -0 .5.5 0,0 M0,0 L H V C S Q T A Z a1,1,0,0,1 m l h v c z mm cm in pt pc px em ex % @media @import !important .a{ #a> * :not( raised braille visual`

const GCODE = `
  G0 G1 G4 G17 G20 G21 G28 G30 G40 G43 G49 G53 G54 G61.1 G64 G80 G81 G82 G83 G90 G91 G94 G98 G99 M0 M2 M3 M5 M6 M30 X Y Z R P Q F S T L K N10 O1
  % ( ) ; / - . 0.0001 99999 1e5 X1.Y-1. Z-.5`

const SHEET = `
  <worksheet <sheetData> <row <c <v> </v> </c> </row> <is><t> <f> r="A1" r="XFD1048576" t="s" t="str" t="inlineStr" t="b" t="d" t="e" s="1"`
const CELLS = `
  , ; "" =" sep=; mm cm in ft ' " × x / ½ ¾ 1-1/2 1,5 1.000,5 #fff latch yes no none permanent-room raised UEB 0101`

const apart = (text) => text.trim().split(/\s+/u)

/** Every key and every word of the schema. */
function wordsOfSchema(schema, found = new Set()) {
  if (Array.isArray(schema)) schema.forEach((inner) => wordsOfSchema(inner, found))
  else if (typeof schema === 'object' && schema !== null)
    for (const [key, inner] of Object.entries(schema)) {
      if (key === 'properties') for (const name of Object.keys(inner)) found.add(`"${name}":`)
      if (key === 'enum') for (const word of inner) found.add(`"${word}"`)
      if (!['description', 'examples'].includes(key)) wordsOfSchema(inner, found)
    }
  return found
}

const JSON_WORDS = () => [
  ...wordsOfSchema(z.toJSONSchema(CheckRequest, { io: 'input' })),
  ...listStandards().map(({ id }) => `"${id}"`),
  ...apart(
    '{ } [ ] , : "" null true false 0 -1 1e5 0.1 1e400 \\u0000 \\ud800 "__proto__" {"value":1,"unit":"in"} {"lrv":5} [{}]',
  ),
]

const HEADINGS = () => COLUMNS.flatMap(({ heading, also }) => [heading, ...also])

/** Words of a reader's format, as a dictionary that the engine reads. */
export function dictionaryOf(reader) {
  const words = {
    drawing: () => apart(SVG),
    description: JSON_WORDS,
    schedule: () => [...HEADINGS(), ...apart(CELLS), ...apart(SHEET)],
    program: () => apart(GCODE),
    service: () => [
      ...apart(SVG),
      ...JSON_WORDS(),
      ...apart(GCODE),
      'standards=',
      'use=',
      'part.a=',
      'ids=',
      'scale=',
      'head.lift=',
    ],
  }[reader]()
  return words.map((word) => `"${escaped(word)}"\n`).join('')
}

const escaped = (word) => [...Buffer.from(word)].map((byte) => `\\x${byte.toString(16).padStart(2, '0')}`).join('')
