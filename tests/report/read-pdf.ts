import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** A PDF read back by pdf.js, which we did not write. Tags: ISO 32000-1, 14.8. */

export const openPdf = (bytes: Uint8Array): Promise<PDFDocumentProxy> =>
  getDocument({ data: new Uint8Array(bytes), verbosity: 0, isEvalSupported: false }).promise

interface Node {
  role?: string
  alt?: string
  type?: string
  id?: string
  children?: Node[]
}

export interface Element {
  role: string
  text: string
  alt?: string
}

/** The elements of all pages in reading order, each with its text. */
export async function elementsOf(file: PDFDocumentProxy): Promise<Element[]> {
  const found: Element[] = []
  for (let number = 1; number <= file.numPages; number++) {
    const page = await file.getPage(number)
    const texts = new Map<string, string>()
    let id = ''
    const { items } = await page.getTextContent({ includeMarkedContent: true })
    for (const item of items) {
      if ('str' in item) texts.set(id, `${texts.get(id) ?? ''}${item.str}${item.hasEOL ? ' ' : ''}`)
      else id = item.type === 'endMarkedContent' ? '' : (item.id ?? '')
    }
    const textOf = (node: Node): string =>
      node.type === 'content' ? (texts.get(node.id ?? '') ?? '') : (node.children ?? []).map(textOf).join('')
    const walk = (node: Node) => {
      if (node.role !== undefined) found.push({ role: node.role, text: textOf(node).trim(), alt: node.alt })
      for (const child of node.children ?? []) walk(child)
    }
    walk(await page.getStructTree())
  }
  return found
}

export const textOf = (elements: readonly Element[]): string => elements.map(({ text }) => text).join('\n')
