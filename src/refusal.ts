/** Why an input is refused. Each type has one page in docs/problems/ and one HTTP status in service/problems.ts. */
export type RefusalType =
  | 'malformed-drawing'
  | 'malformed-program'
  | 'entities-not-accepted'
  | 'too-large'
  | 'too-complex'
  | 'scale-unknown'
  | 'no-tactile-elements'
  | 'several-signs'
  | 'invalid-description'
  | 'unknown-standard'
  | 'untranslatable-text'
  | 'cannot-satisfy'

/** One thing that is wrong: where it stands (a JSON Pointer, or line and column of a drawing) and what to do about it. */
export interface Fault {
  detail: string
  pointer?: string
  line?: number
  column?: number
}

/** What keeps a wish from being fulfilled: requirements that exclude each other, or the text, or the panel. */
export interface Exclusion {
  quantity: string
  requirements: string[]
  /** The same for people. */
  text: string
}

/** Thrown by the core for input that cannot be judged at all; plain data inside, so that it crosses threads. */
export class Refusal extends Error {
  constructor(
    readonly type: RefusalType,
    readonly detail: string,
    readonly errors: Fault[] = [],
    readonly excess?: { limit: number; actual: number },
    readonly conflicts?: Exclusion[],
  ) {
    super(detail)
    this.name = 'Refusal'
  }
}
