import { createRequire } from 'node:module'
import type * as Cephes from 'cephes'
import type * as CssTree from 'css-tree'
import type * as Fontkit from 'fontkit'
import type PDFDocument from 'pdfkit'

/** Large libraries that most questions do without: each is loaded when it is first asked for, in the same step. */

const require = createRequire(import.meta.url)

function late<T>(name: string): () => T {
  let loaded: T | undefined
  return () => (loaded ??= require(name) as T)
}

export const cssTree = late<typeof CssTree>('css-tree')
export const cephes = late<typeof Cephes>('cephes')
export const fontkit = late<typeof Fontkit>('fontkit')
export const pdfkit = late<typeof PDFDocument>('pdfkit')
