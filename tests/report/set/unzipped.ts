import { buffer } from 'node:stream/consumers'
import { promisify } from 'node:util'
import * as yauzl from 'yauzl'

const open = promisify<Buffer, yauzl.Options, yauzl.ZipFile>(yauzl.fromBuffer)

/** Names and contents of a zip in its order, read by yauzl, which did not write it. Folders have no bytes and end with a slash. */
export async function unzipped(bytes: Uint8Array): Promise<Map<string, Buffer>> {
  const zip = await open(Buffer.from(bytes), { lazyEntries: true, strictFileNames: true, validateEntrySizes: true })
  const files = new Map<string, Buffer>()
  const read = promisify<yauzl.Entry, NodeJS.ReadableStream>(zip.openReadStream.bind(zip))
  return new Promise((resolve, reject) => {
    zip.on('error', reject)
    zip.on('end', () => resolve(files))
    zip.on('entry', (entry: yauzl.Entry) => {
      read(entry)
        .then((stream) => buffer(stream))
        .then((content) => {
          files.set(entry.fileName, content)
          zip.readEntry()
        }, reject)
    })
    zip.readEntry()
  })
}
