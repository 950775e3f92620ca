import { SaxesParser } from 'saxes'

/** An element as saxes reads it, which is strict: what is not well-formed throws. */
export interface Tree {
  name: string
  attributes: Record<string, string>
  children: Tree[]
  text: string
}

export function xmlTree(document: string): Tree {
  const root: Tree = { name: '', attributes: {}, children: [], text: '' }
  const open: Tree[] = [root]
  const parser = new SaxesParser({ xmlns: false })
  parser.on('error', (error) => {
    throw error
  })
  parser.on('opentag', ({ name, attributes }) => {
    const element: Tree = { name, attributes, children: [], text: '' }
    open.at(-1)?.children.push(element)
    open.push(element)
  })
  parser.on('closetag', () => void open.pop())
  parser.on('text', (text) => {
    const element = open.at(-1)
    if (element) element.text += text
  })
  parser.write(document).close()
  const [only] = root.children
  if (!only) throw new Error('There is no element.')
  return only
}

export const childrenOf = (tree: Tree | undefined, name: string): Tree[] =>
  tree?.children.filter((child) => child.name === name) ?? []

export const childOf = (tree: Tree | undefined, name: string): Tree | undefined => childrenOf(tree, name)[0]
