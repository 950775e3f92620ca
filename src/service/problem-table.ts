import type { RefusalType } from '../refusal.js'

/** The problems that this service answers with (RFC 9457): one row each, one page each in docs/problems/. */

export interface ProblemKind {
  status: number
  title: string
  /** When it is answered, for people. */
  meaning: string
  /** What the client can do about it. */
  remedy: string
  /** A worked example of the detail. */
  example: string
}

export type ProblemType =
  | RefusalType
  | 'malformed-json'
  | 'malformed-request'
  | 'invalid-parameters'
  | 'not-found'
  | 'method-not-allowed'
  | 'not-acceptable'
  | 'unsupported-media-type'
  | 'unauthorized'
  | 'forbidden'
  | 'misdirected-request'
  | 'too-many-requests'
  | 'organisation-limit'
  | 'not-now'
  | 'request-in-progress'
  | 'idempotency-key-reused'
  | 'no-signs'
  | 'store-unavailable'
  | 'storage-full'
  | 'busy'
  | 'internal-error'

export const PROBLEMS: Record<ProblemType, ProblemKind> = {
  'malformed-json': {
    status: 400,
    title: 'The JSON cannot be read',
    meaning:
      'The body, or a JSON part of it, is not JSON (RFC 8259), or holds a key that no JSON from outside may hold.',
    remedy: 'Mend the JSON at the line and column that the errors name. NaN and Infinity are no JSON.',
    example: 'The body is not JSON.',
  },
  'malformed-request': {
    status: 400,
    title: 'The request cannot be read',
    meaning: 'The request breaks the rules of HTTP, of its address or of multipart forms.',
    remedy: 'Send the request with an HTTP library, and a form with the boundary that its header names.',
    example: 'The form has no part that is known here.',
  },
  'malformed-drawing': {
    status: 400,
    title: 'The drawing cannot be read',
    meaning:
      'The body is no SVG: not well-formed XML, another format under the name of SVG, or an unreadable encoding.',
    remedy: 'Export the drawing again as plain SVG. The errors name the line and the column.',
    example: 'The drawing is not well-formed XML.',
  },
  'malformed-program': {
    status: 400,
    title: 'The drilling program cannot be read',
    meaning:
      'The program holds a word that is none, or one that is not worked out here: arcs, variables, subprograms, repeats, a shifted zero. ' +
      'Nothing that could put a dot elsewhere is passed over.',
    remedy:
      'Write the dots with G0, G1 or G81 to G83, G20 or G21, G90 or G91. The errors name the line and the column.',
    example: 'The program cannot be read as drilling moves.',
  },
  'entities-not-accepted': {
    status: 400,
    title: 'The drawing declares entities that are not read',
    meaning:
      'External, parameter, nested or large entities are never read; the short flat ones of drawing programs are.',
    remedy: 'Export the drawing without a document type, or write the text out where the entity stands.',
    example: 'The drawing declares an external entity.',
  },
  'not-found': {
    status: 404,
    title: 'There is nothing at this address',
    meaning: 'The address, or the thing that it names, is not known.',
    remedy: 'See the reference at /docs for the addresses, and GET /v1/standards for the standards.',
    example: 'There is nothing at /v1/nowhere.',
  },
  'method-not-allowed': {
    status: 405,
    title: 'The address does not take this method',
    meaning: 'The address is known, but not for this method.',
    remedy: 'Use one of the methods that the Allow header names.',
    example: 'GET is not taken here; POST is.',
  },
  'not-acceptable': {
    status: 406,
    title: 'No form of the answer suits the Accept header',
    meaning: 'None of the media types that the request accepts can be made here.',
    remedy: 'Accept one of the media types that the detail names.',
    example:
      'This answer can be had as application/json, text/html, image/svg+xml, text/csv, application/sarif+json or application/pdf.',
  },
  'too-large': {
    status: 413,
    title: 'The request is too large',
    meaning: 'The body or one of its parts is larger than its limit; `limit` and `actual` say by how much, in bytes.',
    remedy: 'Send one sign at a time, and take embedded images out of the drawing.',
    example: 'The body is larger than is read here.',
  },
  'unsupported-media-type': {
    status: 415,
    title: 'The media type of the body is not read',
    meaning: 'The Content-Type header names a type that this address does not read, or the body is compressed.',
    remedy: 'Send application/json, image/svg+xml, text/x-gcode or multipart/form-data, without Content-Encoding.',
    example:
      'The media type of this body is not read here; application/json, image/svg+xml, text/x-gcode and multipart/form-data are.',
  },
  'invalid-description': {
    status: 422,
    title: 'The description does not fit its schema',
    meaning: 'The JSON was read, but a value is missing, of the wrong kind or out of bounds, or a key is not known.',
    remedy: 'Mend each place that the errors name by a JSON Pointer into the body.',
    example: 'The description has one error.',
  },
  'invalid-parameters': {
    status: 422,
    title: 'A query parameter cannot be used',
    meaning: 'A query parameter is not known, of the wrong kind, out of bounds, or does not go with this body.',
    remedy: 'Mend each parameter that the errors name.',
    example: 'The query has one error.',
  },
  'unknown-standard': {
    status: 422,
    title: 'A standard is not known',
    meaning: 'The request names a standard, or a revision of one, that this service does not have.',
    remedy: 'Take the ids from GET /v1/standards; leave the revision out for the newest.',
    example: 'There is no standard us-ada-1776.',
  },
  'scale-unknown': {
    status: 422,
    title: 'The scale of the drawing is not known',
    meaning: 'The drawing has no size in a unit of length, so no millimetre of it is known.',
    remedy: 'Give the drawing a width in mm, or send the option `scale` (millimetres per user unit).',
    example: 'The drawing has no width in a unit of length.',
  },
  'no-tactile-elements': {
    status: 422,
    title: 'The drawing holds nothing that could be touched or read',
    meaning: 'No part is named, and there is no text, no dot, and no outline that could be a character.',
    remedy: 'Send the drawing of the lettering and the braille, or name its parts with `data-part`.',
    example: 'The drawing holds no lettering and no braille.',
  },
  'several-signs': {
    status: 422,
    title: 'The drawing holds several signs',
    meaning:
      'Several panels on one sheet hold lettering or braille of their own, and a check is about one sign; or the option ' +
      '`panel` names none of them. The errors list the panels.',
    remedy:
      'Choose one with the option `panel`: its number or its id as listed. Or send each sign as a drawing of its own.',
    example: 'The drawing holds 2 panels, each with lettering or braille of its own, and a check is about one sign.',
  },
  'too-complex': {
    status: 422,
    title: 'The drawing is too complex',
    meaning: 'A limit on elements, nesting, references, time or memory was reached; `limit` and `actual` say which.',
    remedy: 'Simplify the drawing: one sign, no effects, no embedded pictures.',
    example: 'The check took longer than it may.',
  },
  'untranslatable-text': {
    status: 422,
    title: 'The text cannot be put into braille',
    meaning: 'The text holds a character that the braille tables do not know, or is too long.',
    remedy: 'Spell out the character that the detail names.',
    example: 'The character “☃” has no braille in this code.',
  },
  'cannot-satisfy': {
    status: 422,
    title: 'No sign satisfies all that is asked',
    meaning:
      'The standards exclude each other, or the text does not fit, or a wish of the order is against a standard. ' +
      '`conflicts` names the quantities and the requirements.',
    remedy:
      'Leave out one of the standards or the wish that the conflict names, take a larger panel or a shorter text.',
    example: 'The standards exclude each other: no drawing satisfies them all.',
  },
  unauthorized: {
    status: 401,
    title: 'An API key is needed',
    meaning: 'No API key was sent, or one that is not known, was revoked or has ended.',
    remedy:
      'Send `Authorization: Bearer` with a key that works. Whoever runs the service, or a key with the scope `admin`, makes one.',
    example: 'This needs an API key: Authorization: Bearer fingertrue_…',
  },
  forbidden: {
    status: 403,
    title: 'The key does not allow this',
    meaning:
      'The key works, but lacks the scope that is needed; or the request came from a page of another site; or keys are to be made where none are asked for.',
    remedy: 'Use a key with the scope that the detail names, or send the request from a client of your own.',
    example: 'This needs a key with the scope “write”; the key that was sent has “check”.',
  },
  'misdirected-request': {
    status: 421,
    title: 'The service does not go by this name',
    meaning:
      'The request names a host that this service was not told it goes by. Where no keys are asked for, that keeps a page of another site, whose name was made to lead to this machine, from asking in the name of whoever sits there.',
    remedy:
      'Ask by 127.0.0.1 or localhost, or have whoever runs the service add the name to the setting ALLOWED_HOSTS (see the page on serving).',
    example:
      'This service does not go by the name “signs.example”. The setting ALLOWED_HOSTS says by which names it may be asked.',
  },
  'too-many-requests': {
    status: 429,
    title: 'Too many requests came',
    meaning:
      'The key, or the address where no key was sent, has used up its requests of this minute; `limit` says how many there are.',
    remedy:
      'Ask again after the seconds that the Retry-After header names, and heed the RateLimit field before it comes to that.',
    example: 'More than 6000 requests came within 60 seconds; 12 seconds are left.',
  },
  'organisation-limit': {
    status: 409,
    title: 'The organisation has as much as it may',
    meaning:
      'With this, the organisation would have more signs that wait for their reports, more keys that work or more addresses that are told of what happens than it may; `limit` and `actual` say how many.',
    remedy:
      'Wait until signs have their reports and send the upload again; revoke keys and delete addresses that are not used any more.',
    example: 'With this upload more signs would wait for their reports than may.',
  },
  'not-now': {
    status: 409,
    title: 'What is asked does not go with the state of the thing',
    meaning: 'The submittal was cancelled, or has already been checked, so that this can no longer be done to it.',
    remedy: 'Read the submittal’s state and make a new submittal where one is needed.',
    example: 'The submittal was cancelled; make a new one for further signs.',
  },
  'request-in-progress': {
    status: 409,
    title: 'The same request is still being answered',
    meaning: 'A request with this Idempotency-Key arrived before and has not been answered yet.',
    remedy: 'Send the request again after the seconds that the Retry-After header names, with the same key and body.',
    example: 'The request with this Idempotency-Key is still being answered.',
  },
  'idempotency-key-reused': {
    status: 422,
    title: 'The Idempotency-Key belongs to another request',
    meaning: 'The key was sent before with another method, address or body. Nothing was done.',
    remedy: 'Make a new key for each new request, and keep it only for sending that request again.',
    example: 'The Idempotency-Key was sent before with another request.',
  },
  'no-signs': {
    status: 422,
    title: 'The upload holds no sign that can be kept',
    meaning:
      'None of the files, rows or entries could be used, so that nothing was kept. `errors` says why, one by one.',
    remedy: 'Put right what `errors` names and send the upload again.',
    example: 'Nothing of the upload could be used.',
  },
  'store-unavailable': {
    status: 503,
    title: 'What is kept cannot be reached',
    meaning:
      'The database does not answer. Nothing was changed by this request, or all of it was and only the answer is missing.',
    remedy:
      'Ask again after the seconds that the Retry-After header names, with the same Idempotency-Key where something is created.',
    example: 'The database does not answer.',
  },
  'storage-full': {
    status: 503,
    title: 'There is no room left to keep this',
    meaning: 'The disk or the database is full. Nothing of this request was kept; what was kept before is whole.',
    remedy: 'Tell whoever runs the service; then send the request again.',
    example: 'There is no room left to keep this.',
  },
  busy: {
    status: 503,
    title: 'The service is busy',
    meaning:
      'More is asked for than can be done soon, so that this would wait longer than is of use; or the service is about to stop. ' +
      'Nothing of the request was done. Each key has turns of its own: one that asks for much waits behind its own requests.',
    remedy: 'Ask again after the seconds that the Retry-After header names.',
    example: 'More is asked for than can be done soon.',
  },
  'internal-error': {
    status: 500,
    title: 'Something went wrong here',
    meaning: 'A fault of the service, not of the request. It is logged under the id in `instance`.',
    remedy: 'Report the fault with the id in `instance`.',
    example: 'The request could not be answered.',
  },
}

export const PROBLEM_TYPES = Object.keys(PROBLEMS) as ProblemType[]
