import type { z } from 'zod'
import type { ProblemType } from './problem-table.js'

/** What the OpenAPI document says of one operation beyond its parameters. One object for each route, beside its handler. */
export interface Operation {
  id: string
  tag: Tag
  summary: string
  description: string
  /** Bodies that it takes, by media type. */
  requests?: Record<string, Media>
  /** What it answers when all is well: the status and the body by media type. */
  answer: { status: number; description: string; content: Record<string, Media> }
  problems: ProblemType[]
}

export interface Media {
  /** A registered schema, or undefined for a plain text of this media type. */
  schema?: z.ZodType
  /** Bytes instead of a text. */
  binary?: true
  /** Examples by name. An answer's example is what the request example of the same name is answered with. */
  examples?: Record<string, Example>
}

export interface Example {
  summary: string
  value: () => unknown
}

export const TAGS = {
  checks: 'Hold a sign against standards.',
  braille: 'Put print into braille and read it back.',
  making: 'From a verdict to what is made.',
  submittals: 'Sets of signs that are kept, with their history.',
  webhooks: 'Being told when a set is done.',
  standards: 'The standards as tables.',
  keys: 'Who may call, and what.',
  operations: 'For those who run the service.',
} as const
export type Tag = keyof typeof TAGS

declare module 'fastify' {
  interface FastifyContextConfig {
    operation?: Operation
  }
}
