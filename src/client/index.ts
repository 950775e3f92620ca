/** What a program needs to call the service. */

export { createClient, type Client, type ClientOptions } from './client.js'
export { ProblemError, type Problem } from './problem.js'
export type { Fetch, RetryOptions } from './retry.js'
export type { components, paths } from './schema.js'
export {
  signsOf,
  submit,
  waitUntilDone,
  type NamedFile,
  type SignOfSet,
  type Submittal,
  type SubmitOptions,
  type WaitOptions,
} from './submit.js'
