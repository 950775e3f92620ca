import type { MessagePort } from 'node:worker_threads'
import { createTranslator } from '../braille/engine.js'
import { answerOrRefusal, refusedAnswer } from './answer.js'
import { uploadAnswer } from './submittals/upload-answer.js'
import type { Answer, RefusedAnswer, Task, UnreadTask, UploadTask } from './task.js'
import { warmUp } from './warm-up.js'

/** The module that worker threads run: one task at a time, each answered as plain data. */

const translator = createTranslator()
warmUp(translator)

/** The pool's clock starts when `begun` hears from here, so that waiting in the queue costs a task nothing. */
export default async function work({
  task,
  begun,
}: {
  task: Task | UnreadTask
  begun: MessagePort
}): Promise<Answer | RefusedAnswer> {
  begun.postMessage('begun')
  begun.close()
  return 'kind' in task && task.kind === 'upload' && 'files' in task
    ? readFiles(task)
    : answerOrRefusal(task, translator)
}

async function readFiles(task: UploadTask): Promise<Answer | RefusedAnswer> {
  try {
    return { body: '', upload: await uploadAnswer(task) }
  } catch (error) {
    return refusedAnswer(error)
  }
}
