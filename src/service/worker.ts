import type { MessagePort } from 'node:worker_threads'
import { createTranslator } from '../braille/engine.js'
import { answerOrRefusal } from './answer.js'
import type { Answer, RefusedAnswer, Task, UnreadTask } from './task.js'
import { warmUp } from './warm-up.js'

/** The module that worker threads run: one task at a time, each answered as plain data. */

const translator = createTranslator()
warmUp(translator)

/** The pool's clock starts when `begun` hears from here, so that waiting in the queue costs a task nothing. */
export default function work({ task, begun }: { task: Task | UnreadTask; begun: MessagePort }): Answer | RefusedAnswer {
  begun.postMessage('begun')
  begun.close()
  return answerOrRefusal(task, translator)
}
