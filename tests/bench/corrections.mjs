// What it takes to put a drawing right, all its checks included, against one check of the same drawing.
import { readFileSync } from 'node:fs'
import { check, examine } from '../../dist/check.js'
import { correct } from '../../dist/make/correct/correct.js'
import { ratioOf, row, timeInTurns } from './measure.mjs'

const DRAWINGS = {
  'whose dots stand too far apart': '../drawings/svg/hand-x-pitch27-plain.svg',
  'whose letters are too pale': '../drawings/svg/hand-x-lowcontrast-plain.svg',
  'whose text has to make room': '../make/correct/svg/dvisvgm-eps-x-border5.svg',
}

export async function correctionRows(translator, standards, options, turns) {
  const rows = []
  for (const [name, file] of Object.entries(DRAWINGS)) {
    const question = { drawing: readFileSync(new URL(file, import.meta.url)), standards, options }
    const again = (drawing) => examine({ ...question, drawing }, translator)
    const times = await timeInTurns(
      { corrected: () => correct(question, again, translator), checked: () => check(question, translator) },
      turns,
    )
    const note = `${times.corrected.median.toFixed(2)} ms / ${times.checked.median.toFixed(2)} ms`
    rows.push(row(`a drawing ${name}, put right / its check`, ratioOf(times.corrected, times.checked), '<= 10', note))
  }
  return rows
}
