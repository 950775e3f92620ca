import { LARGEST_BLANK } from '../make/draw/blank.js'
import { LONGEST_ORDERED_TEXT, MOST_ORDERED_LINES } from '../make/draw/order.js'
import { ENTITY_LIMITS, LARGEST_COORDINATE, LIMITS as DRAWING, SCALE_RANGE } from '../drawing/limits.js'
import { MOST_PAIRS } from '../make/dot-plan/precedence.js'
import { MOST_DOTS } from '../make/dot-plan/schema.js'
import { MOST_PROGRAM_DOTS } from '../make/gcode/read.js'
import { FARTHEST_PLACE } from '../make/gcode/tool.js'
import { PROGRAM_LIMITS } from '../make/gcode/words.js'
import type { RefusalType } from '../refusal.js'
import { MOST_DOTS_IN_BLOCK } from '../recognise/blocks.js'
import { MOST_CORNERS, MOST_OUTLINE_PARTS } from '../recognise/budget.js'
import { MOST_OUTLINES } from '../recognise/letters/read.js'
import {
  HIGHEST_RATIO,
  LARGEST_READING,
  LONGEST_NAME,
  LONGEST_TEXT,
  MOST_DOORS,
  MOST_ITEMS,
  MOST_LINES,
  MOST_NAMES,
  MOST_VALUES,
} from '../sign/description.js'
import { MOST_KEYS } from '../submittals/keys/keys.js'
import { UPLOAD_LIMITS } from '../submittals/intake/limits.js'
import { LONGEST } from '../sign/length.js'
import { problemAddress } from './problems.js'
import type { ProblemType } from './problem-table.js'
import { DEFAULT_SETTINGS, LIMITS as SERVICE } from './settings.js'

/** The page of all limits, from the constants that are kept. */

export interface LimitRow {
  name: string
  value: number
  /** What is counted, and in which unit. */
  counts: string
  /** The type of the problem that more is answered with, or in words what becomes of it. */
  beyond: string
}

const DRAWING_COUNTS: Record<keyof typeof DRAWING, string> = {
  bytes: 'bytes of the file',
  elements: 'elements in the file',
  depth: 'elements inside one another in the file; brackets inside one another in a style sheet',
  attributesPerElement: 'attributes of one element',
  attributeLength: 'UTF-16 units of one attribute',
  textLength: 'UTF-16 units of all text between tags',
  renderedDepth: 'elements inside one another after references are followed',
  references: 'references to other elements, as often as they are followed',
  rendered: 'elements that are painted, as often as references lead to them',
  pathSegments: 'lines and curves of all painted shapes',
  dashes: 'dashes of all dashed strokes',
  clipEdges: 'edges of clips, as often as a shape is held against them',
  styleSheetLength: 'UTF-16 units of all style sheets',
  styleSelectors: 'selectors of all style sheets',
  selectorSteps: 'elements that selectors look at',
  patterns: 'areas that are painted with a pattern, those inside patterns too',
  patternCopies: 'shapes that patterns repeat, as often as they do',
  textCharacters: 'characters of live text that are painted',
}

const ENTITY_COUNTS: Record<keyof typeof ENTITY_LIMITS, string> = {
  doctypeLength: 'UTF-16 units of the document type declaration',
  count: 'entities that are declared',
  length: 'UTF-16 units of one entity',
  expansion: 'UTF-16 units that all uses of entities add up to',
}

const PROGRAM_COUNTS: Record<keyof typeof PROGRAM_LIMITS, string> = {
  bytes: 'bytes of a drilling program',
  lines: 'lines of a drilling program',
  lineLength: 'UTF-16 units of one line of it',
}
const PROGRAM_BEYOND: Record<keyof typeof PROGRAM_LIMITS, ProblemType> = {
  bytes: 'too-large',
  lines: 'too-complex',
  lineLength: 'malformed-program',
}

const SERVICE_COUNTS: Record<keyof typeof SERVICE, [counts: string, beyond: string]> = {
  drawing: ['bytes of a drawing as a body or as a part of a form', 'too-large'],
  json: ['bytes of a JSON body', 'too-large'],
  formField: ['bytes of the description, the standards or the options as a part of a form', 'too-large'],
  formParts: ['parts of a form', 'too-large'],
  translation: ['bytes of the JSON body of a translation', 'too-large'],
  upload: ['bytes of everything that is sent to a submittal at once', 'too-large'],
  uploadFiles: ['files that are sent to a submittal at once; a zip is one', 'too-large'],
  evidenceSigns: ['signs of one piece of evidence; the others can be had with `from`', 'too-large'],
  streams: ['streams of progress that one process keeps open', '[busy](problems/busy.md)'],
  streamsOfOne: ['of these, streams of one organisation', '[busy](problems/busy.md)'],
  inlineJson: ['bytes of a JSON body that is checked at once', 'checked in a thread of its own'],
}

const UPLOAD_COUNTS: Record<keyof typeof UPLOAD_LIMITS, string> = {
  files: 'files, those in zips counted one by one',
  unpacked: 'bytes that all zips together unpack to',
  drawing: 'bytes of one drawing',
  schedule: 'bytes of one schedule',
  json: 'bytes of one JSON file',
  allJson: 'bytes of all JSON files together',
  ratio: 'times its own size that a zip may unpack to',
  signs: 'signs of one upload',
  entries: 'entries of all JSON files together',
}
const UPLOAD_BEYOND = 'left out, and listed in `problems`'

const rowsOf = <K extends string>(values: Record<K, number>, row: (name: K) => [counts: string, beyond: string]) =>
  (Object.keys(values) as K[]).map((name): LimitRow => {
    const [counts, beyond] = row(name)
    return { name, value: values[name], counts, beyond }
  })

const tooComplex: RefusalType = 'too-complex'
const invalid: RefusalType = 'invalid-description'
const undecided = 'undetermined, with the reason in the report'

/** Every limit, by heading. */
export const LIMIT_TABLES: Readonly<Record<string, LimitRow[]>> = {
  'A request': rowsOf(SERVICE, (name) => SERVICE_COUNTS[name]),
  'A check': [
    {
      name: 'timeLimit',
      value: DEFAULT_SETTINGS.timeLimit,
      counts: 'milliseconds of one check in a thread',
      beyond: tooComplex,
    },
    {
      name: 'pageTimeLimit',
      value: DEFAULT_SETTINGS.pageTimeLimit,
      counts: 'milliseconds of one check whose report is a PDF',
      beyond: tooComplex,
    },
    {
      name: 'planTimeLimit',
      value: DEFAULT_SETTINGS.planTimeLimit,
      counts: 'milliseconds of one plan of dots in a thread',
      beyond: tooComplex,
    },
    {
      name: 'heapLimit',
      value: DEFAULT_SETTINGS.heapLimit,
      counts: 'megabytes of memory of one thread',
      beyond: tooComplex,
    },
  ],
  'A drawing': rowsOf(DRAWING, (name) => [DRAWING_COUNTS[name], name === 'bytes' ? 'too-large' : tooComplex]),
  'Entities of a drawing': rowsOf(ENTITY_LIMITS, (name) => [ENTITY_COUNTS[name], 'entities-not-accepted']),
  'A drawing to be made': [
    {
      name: 'LONGEST_ORDERED_TEXT',
      value: LONGEST_ORDERED_TEXT,
      counts: 'UTF-16 units of a text or line',
      beyond: invalid,
    },
    { name: 'MOST_ORDERED_LINES', value: MOST_ORDERED_LINES, counts: 'lines of the text', beyond: invalid },
    {
      name: 'LARGEST_BLANK.width',
      value: LARGEST_BLANK.width,
      counts: 'millimetres that a panel is made wide when none is ordered',
      beyond: 'cannot-satisfy',
    },
    {
      name: 'LARGEST_BLANK.height',
      value: LARGEST_BLANK.height,
      counts: 'millimetres that it is made high',
      beyond: 'cannot-satisfy',
    },
  ],
  'A plan of dots': [
    { name: 'MOST_DOTS', value: MOST_DOTS, counts: 'dots of one plan', beyond: tooComplex },
    {
      name: 'MOST_PAIRS',
      value: MOST_PAIRS,
      counts: 'pairs of a dot and a dot that the head reaches over when it sets it',
      beyond: tooComplex,
    },
  ],
  'A drilling program': [
    ...rowsOf(PROGRAM_LIMITS, (name) => [PROGRAM_COUNTS[name], PROGRAM_BEYOND[name]]),
    { name: 'MOST_PROGRAM_DOTS', value: MOST_PROGRAM_DOTS, counts: 'dots that a program makes', beyond: tooComplex },
    {
      name: 'FARTHEST_PLACE',
      value: FARTHEST_PLACE,
      counts: 'millimetres from the zero of a drilling program',
      beyond: 'malformed-program',
    },
  ],
  'Lengths in a drawing': [
    {
      name: 'LARGEST_COORDINATE',
      value: LARGEST_COORDINATE,
      counts: 'millimetres from the corner of the page',
      beyond: 'passed over, and listed in `ignored`',
    },
    {
      name: 'SCALE_RANGE.least',
      value: SCALE_RANGE.least,
      counts: 'millimetres per user unit, at least',
      beyond: 'scale-unknown',
    },
    {
      name: 'SCALE_RANGE.most',
      value: SCALE_RANGE.most,
      counts: 'millimetres per user unit, at most',
      beyond: 'scale-unknown',
    },
  ],
  'What is recognised': [
    {
      name: 'MOST_DOTS_IN_BLOCK',
      value: MOST_DOTS_IN_BLOCK,
      counts: 'dots in one block of braille',
      beyond: undecided,
    },
    {
      name: 'MOST_OUTLINES',
      value: MOST_OUTLINES,
      counts: 'outlines that letters are looked for among',
      beyond: undecided,
    },
    {
      name: 'MOST_OUTLINE_PARTS',
      value: MOST_OUTLINE_PARTS,
      counts: 'lines and curves of all outlines that are not dots',
      beyond: undecided,
    },
    {
      name: 'MOST_CORNERS',
      value: MOST_CORNERS,
      counts: 'corners of these outlines once their curves are cut into straight edges',
      beyond: undecided,
    },
  ],
  'An organisation': [
    {
      name: 'MOST_KEYS',
      value: MOST_KEYS,
      counts: 'API keys that work at the same time',
      beyond: 'organisation-limit',
    },
  ],
  'An upload to a submittal': rowsOf(UPLOAD_LIMITS, (name) => [UPLOAD_COUNTS[name], UPLOAD_BEYOND]),
  'A description': [
    { name: 'LONGEST_TEXT', value: LONGEST_TEXT, counts: 'UTF-16 units of one text or line', beyond: invalid },
    {
      name: 'LONGEST_NAME',
      value: LONGEST_NAME,
      counts: 'UTF-16 units of a mark, a family, an instrument or a proper name',
      beyond: invalid,
    },
    {
      name: 'MOST_ITEMS',
      value: MOST_ITEMS,
      counts: 'sets of lettering, blocks of braille, pictograms, borders or measurements',
      beyond: invalid,
    },
    { name: 'MOST_LINES', value: MOST_LINES, counts: 'lines of one set or block', beyond: invalid },
    { name: 'MOST_DOORS', value: MOST_DOORS, counts: 'neighbouring doors of one sign', beyond: invalid },
    { name: 'MOST_NAMES', value: MOST_NAMES, counts: 'proper names', beyond: invalid },
    { name: 'MOST_VALUES', value: MOST_VALUES, counts: 'values of one measurement', beyond: invalid },
    { name: 'LARGEST_READING', value: LARGEST_READING, counts: 'a reading, in its unit', beyond: invalid },
    { name: 'HIGHEST_RATIO', value: HIGHEST_RATIO, counts: 'width of O over height of I', beyond: invalid },
    { name: 'LONGEST', value: LONGEST, counts: 'of any length, in its unit', beyond: invalid },
  ],
}

const isType = (beyond: string): boolean => /^[a-z]+(-[a-z]+)+$/.test(beyond)

const number = (value: number): string =>
  value >= 1 ? value.toLocaleString('en-US').replaceAll(',', ' ') : String(value)

const beyondMarkdown = (beyond: string): string =>
  isType(beyond) ? `[${beyond}](${problemAddress(beyond as ProblemType).replace('/docs/', '')}.md)` : beyond

/** The page in Markdown, for the docs folder. */
export function limitsMarkdown(): string {
  const tables = Object.entries(LIMIT_TABLES).map(([heading, rows]) => {
    const lines = rows.map(
      ({ name, value, counts, beyond }) => `| \`${name}\` | ${number(value)} | ${counts} | ${beyondMarkdown(beyond)} |`,
    )
    return `## ${heading}\n\n| limit | at most | counts | more than that |\n| --- | ---: | --- | --- |\n${lines.join('\n')}\n`
  })
  return `# Limits\n\nGenerated from the constants in the code: run \`npm run generate\` after changing one. A problem says the \`limit\` that was\nreached and the \`actual\` number that was met. Of entities and descriptions the place is named instead.\n\n${tables.join('\n')}`
}
