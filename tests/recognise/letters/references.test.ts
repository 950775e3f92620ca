import { expect, it } from 'vitest'
import { referenceFaces } from './faces.js'
import { makeReferences } from './make.js'

/**
 * The references are what the open typefaces of the registry make them. After a change of the faces, the features or the
 * training, write them anew with `npx vitest run tests/recognise/letters/references.test.ts -u`.
 */
it('the references are made from the typefaces as they are', { timeout: 120_000 }, async () => {
  const made = `${JSON.stringify(makeReferences(referenceFaces()), null, 1)}\n`
  await expect(made).toMatchFileSnapshot('../../../src/recognise/letters/references.json')
})
