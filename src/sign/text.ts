import { z } from 'zod'

/** Texts and lists as a client writes them, with the bounds that hold throughout a description. */

export const LONGEST_NAME = 100
export const MOST_ITEMS = 100

/** Control characters (line breaks among them) and halves of surrogate pairs. */
const UNPRINTABLE = /[\p{Cc}\p{Cs}]/u

export const text = (longest: number) =>
  z
    .string()
    .max(longest)
    .refine((value) => value.trim() !== '', 'is empty')
    .refine((value) => !UNPRINTABLE.test(value), 'holds a control character; give lines of text as `lines`')
