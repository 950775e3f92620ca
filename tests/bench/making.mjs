// What takes checks of its own: putting a drawing right, making one, and the page of a large set.
import { correctionRows } from './corrections.mjs'
import { madeRows } from './made.mjs'
import { setPageRows } from './set-page.mjs'

const TEXT = `Making a drawing, or putting one right, takes checks of its own; it is held against one check of that drawing. The page of a large set is
held against that of a set that fits on one page: a hundred signs are shown of each.`

export async function makingSection({ translator, standards, options, few }) {
  const rows = [
    ...(await correctionRows(translator, standards, options, few)),
    ...(await madeRows(translator, standards, options, few)),
    ...(await setPageRows(translator, few)),
  ]
  return { title: 'Making and correcting', text: TEXT, rows }
}
