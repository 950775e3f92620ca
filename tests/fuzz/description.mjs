// Bytes as the JSON body of a check. Text is read as it stands; bytes that begin no text choose their way through the schema of the
// body, so that deep descriptions are met that no chance would spell.
import { z } from 'zod'
import { CheckRequest } from '../../dist/service/check-request.js'
import { readJson } from '../../dist/service/json.js'
import { fromJson } from '../../dist/service/read-request.js'
import { examined, foreseen } from './examined.mjs'
import { Maker } from './maker.mjs'

const schema = z.toJSONSchema(CheckRequest, { io: 'input' })

/** UTF-8 has no text that begins with such a byte. */
export const BEGINS_NO_TEXT = 0x80

export const fuzz = (bytes) => {
  const body =
    bytes.length > 0 && bytes[0] >= BEGINS_NO_TEXT ? new Maker(schema, bytes.subarray(1)).value() : read(bytes)
  const input = body === undefined ? undefined : foreseen(() => fromJson(body))
  if (input) examined(input)
}

const read = (bytes) => foreseen(() => readJson(bytes.toString('utf8')))
