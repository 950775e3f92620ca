// Where the time of a check goes: each stage on the finished result of the one before it, as shares of svgo's parse and write.
import { parse } from 'svg-parser'
import { optimize } from 'svgo'
import { Cascade } from '../../dist/drawing/cascade.js'
import { decode } from '../../dist/drawing/decode.js'
import { readDocument } from '../../dist/drawing/document.js'
import { gate } from '../../dist/drawing/gate.js'
import { readDrawing } from '../../dist/drawing/read.js'
import { loopOf } from '../../dist/geometry/loop.js'
import { judge } from '../../dist/judge/judge.js'
import { measurer } from '../../dist/measure/measurer.js'
import { findBraille } from '../../dist/recognise/findbraille.js'
import { labelParts } from '../../dist/recognise/labelling.js'
import { readLetters } from '../../dist/recognise/letters/read.js'
import { recognise } from '../../dist/recognise/recognise.js'
import { reportJson } from '../../dist/report/json.js'
import { makeReport } from '../../dist/report/make.js'
import { findStandards } from '../../dist/standards/catalogue.js'
import { lineOf, row, timeInTurns } from './measure.mjs'

/** Stages that are a part of the one named above them are set in. */
export async function stagesOf(name, svg, { translator, standards: ids, options }, turns) {
  const bytes = Buffer.from(svg)
  const text = decode(bytes)
  const { canonical } = gate(text)
  const document = readDocument(text)
  const elements = [...elementsOf(document.root)]
  const drawing = readDrawing(bytes)
  const labelled = labelParts(drawing, {})
  const sign = recognise(drawing, options, translator)
  const outlines = sign.lettering.flatMap((l) => l.lines.flatMap((line) => line.outlines))
  const letters = outlines.map((outline, path) => ({ corners: loopOf(outline), path, rule: 'evenodd' }))
  const standards = findStandards(ids)
  const judgeAll = () => {
    const measure = measurer(sign, translator)
    return standards.map((standard) => judge(standard, sign, measure, options))
  }
  const judgements = judgeAll()
  const input = { drawing: bytes, standards: ids, options }
  const make = () => makeReport({ input, sign, standards, judgements, translator })
  const report = make()

  const times = await timeInTurns(
    {
      svgo: () => optimize(svg, { plugins: [] }),
      'read the drawing': () => readDrawing(bytes),
      '  of it: decode, gate, svg-parser, tree': () => readDocument(decode(bytes)),
      '    of it: gate': () => gate(text),
      '    of it: svg-parser': () => parse(canonical),
      '  of it: cascade': () => {
        const cascade = new Cascade(document)
        for (const element of elements) cascade.of(element)
      },
      'recognise the sign': () => recognise(drawing, options, translator),
      '  of it: dots and braille': () => findBraille(labelled, [], [], translator),
      '  of it: letters': () => readLetters(letters),
      'measure and judge': judgeAll,
      'make the report': make,
      'write the report as JSON': () => reportJson(report),
    },
    turns,
  )
  const { svgo, ...stages } = times
  const head = `${name}: svgo parses and writes it in ${svgo.median.toFixed(2)} ms`
  const rows = Object.entries(stages).map(([stage, t]) =>
    lineOf(row(stage, t.median / svgo.median, '', `${t.median.toFixed(2)} ms`)),
  )
  return [head, ...rows]
}

function* elementsOf(element) {
  yield element
  for (const child of element.children) if (typeof child !== 'string') yield* elementsOf(child)
}
