// What it takes to make a drawing, its own check included, against the check of the same drawing. The texts are invented.
import { check } from '../../dist/check.js'
import { drawChecked } from '../../dist/service/drawing-answer.js'
import { ratioOf, row, timeInTurns } from './measure.mjs'

const room = (text, more) => ({ use: 'permanent-room', lettering: [{ text }], ...more })

const ORDERS = {
  'on a blank': room('Kiln Room 204'),
  'made to fit a panel': room('Ceramics Archive and Reading Room 204', { panel: { width: 190, height: 190 } }),
  'of a long text': room(
    'Association of Friends of the Botanical Garden, Museum of Natural History, Reading Room and Archive of Drawings',
  ),
}

export async function madeRows(translator, standards, options, turns) {
  const rows = []
  for (const [name, order] of Object.entries(ORDERS)) {
    const made = () => drawChecked({ standards, order, leaveToPerson: false }, translator)
    const { drawing, sign } = made()
    const question = { drawing: Buffer.from(drawing), sign, standards, options }
    const times = await timeInTurns({ made, checked: () => check(question, translator) }, turns)
    const note = `${times.made.median.toFixed(2)} ms / ${times.checked.median.toFixed(2)} ms`
    rows.push(row(`a drawing ${name} / its check`, ratioOf(times.made, times.checked), '<= 10', note))
  }
  return rows
}
