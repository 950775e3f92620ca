/**
 * What is read of one drawing at most. A sign is a small drawing: these are far above any real one and far below what could
 * hold a process up. Beyond a limit a drawing is refused with the limit and the number that was met; never read in part.
 */
export const LIMITS = {
  /** Size of the file. */
  bytes: 5_000_000,
  /** Elements in the file. */
  elements: 25_000,
  /** Elements inside one another, in the file. */
  depth: 256,
  attributesPerElement: 256,
  /** UTF-16 units in one attribute. */
  attributeLength: 1_000_000,
  /** UTF-16 units of text between tags, all together. */
  textLength: 1_000_000,
  /** Elements inside one another after references are resolved. */
  renderedDepth: 512,
  /** References to other elements, as often as they are followed. */
  references: 10_000,
  /** Elements that are visited to be painted, as often as references lead to them. */
  rendered: 100_000,
  /** Lines and curves of all painted shapes. */
  pathSegments: 500_000,
  /** Dashes of all dashed strokes. */
  dashes: 100_000,
  /** Edges of clips and of what is held against them, as often as one is looked at. */
  clipEdges: 1_000_000,
  /** UTF-16 units of all style sheets. */
  styleSheetLength: 256_000,
  /** Selectors of all style sheets. */
  styleSelectors: 2_000,
  /** Elements looked at to match selectors. */
  selectorSteps: 5_000_000,
  /** Characters of live text that are painted. */
  textCharacters: 100_000,
  /** Areas that are painted with a pattern, those inside patterns too. */
  patterns: 2_000,
  /** Shapes that patterns repeat, as often as they do. */
  patternCopies: 50_000,
} as const

/** Internal entities, as drawing programs write them for namespaces: few, short and flat. */
export const ENTITY_LIMITS = {
  /** UTF-16 units of the whole document type declaration. */
  doctypeLength: 100_000,
  count: 64,
  /** UTF-16 units in one value. */
  length: 2_048,
  /** UTF-16 units that all uses of all entities add up to. */
  expansion: 1_000_000,
} as const

/** The drawing's page may be this wide or high, and a shape this far from its corner, in millimetres: a hundred metres. */
export const LARGEST_COORDINATE = 100_000

/** Millimetres per user unit that can be a true scale. */
export const SCALE_RANGE = { least: 1e-6, most: 1e6 } as const

/** Ids, classes and layer names are cut off after so many UTF-16 units, and a shape carries so many of them. */
export const NAME_LENGTH = 200
export const NAMES_PER_SHAPE = 64

/** What was passed over is listed one by one up to this many; then one more entry says that there was more. */
export const IGNORED_LISTED = 1_000
