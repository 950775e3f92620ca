import { DEFAULT_STANDARDS } from '../check-options.js'
import { STATUS } from './status.js'

/** The forms that a result can be written in; the first is the default. */
export const FORMATS = ['text', 'json', 'sarif', 'junit', 'csv', 'html'] as const
export type Format = (typeof FORMATS)[number]

export const USAGE = `Usage: fingertrue check [options] FILE...

Checks tactile signs against published accessibility standards. A FILE is a drawing (SVG), a
description (JSON), a sign schedule (CSV, XLSX) or a zip of these; together they are one set.

  --standard ID            the standard, perhaps pinned (us-ada-2010@1); may be given several
                           times. Without it: ${DEFAULT_STANDARDS.join(', ')}
  --sign FILE              a description (JSON) of the sign that the one drawing shows
  --use USE                what the signs are for, where nothing else says so
  --part NAME=PART         which part a layer, id or class of the drawings is; several times
  --panel NUMBER-OR-ID     of several panels on a sheet, the one that is the sign
  --scale MM               millimetres per user unit, for drawings without a scale
  --proper-names A,B       names that may keep their capital sign in braille; empty: none
  --decision-rule RULE     simple (default) or guarded
  --unit-system SYSTEM     printed (default) or both
  --name TEXT              what the set is called
  --format FORM            ${FORMATS.join(', ')}
  --results WHICH          of SARIF: all (default) or failing
  --output FILE            writes there; without it to the standard output
  --undetermined HOW       fail (default) or pass: what the exit status makes of a set in which
                           nothing fails but something is not decided
  --stage STAGE            the exit status is for drawing, product or site alone; the result
                           always tells of all three
  --help, --version

Exit status
  ${STATUS.pass}   every sign to which a requirement applies passes
  ${STATUS.fail}   a sign fails
  ${STATUS.undetermined}   nothing fails, and something is not decided or no requirement applies at all
  ${STATUS.unchecked}   nothing fails, and some of the input could not be checked
  ${STATUS.usage}  the arguments cannot be used
  ${STATUS.internal}  an error of the program
  ${STATUS.output}  the result could not be written
`
