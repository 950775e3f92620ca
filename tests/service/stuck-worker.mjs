// Stands in for the worker: what it does is told by the text of the drawing, or by what a drawing is ordered to say.
let counted = 0

export default function work({ task, begun }) {
  begun.postMessage('begun')
  begun.close()
  if (task.kind === 'upload') for (;;);
  const order = Buffer.from(
    task.input.drawing ?? task.input.check?.drawing ?? task.input.order?.lettering[0].text ?? [],
  ).toString()
  if (order === 'count') return { body: String(++counted) }
  if (order === 'loop') for (;;);
  if (order === 'hoard') {
    const hoard = []
    for (;;) hoard.push(new Array(1000).fill(hoard.length))
  }
  if (order === 'throw') throw new Error('a fault of ours, with a secret')
  if (order === 'exit') process.exit(3)
  return { body: JSON.stringify({ environment: Object.keys(process.env), thread: order }), tag: 'a' }
}
