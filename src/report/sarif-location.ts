import type { Location, LogicalLocation, PhysicalLocation } from 'sarif'
import { plain } from './markup.js'
import type { ReportPlace, ReportSource } from './place-schema.js'

/** Places and texts as SARIF writes them. */

/** What was sent, by a name of ours: a body has none. */
export interface Artifact {
  uri: string
  mimeType: string
  /** Its place among the artifacts of the run. */
  index: number
}

export const DRAWING: Artifact = { uri: 'drawing.svg', mimeType: 'image/svg+xml', index: 0 }
export const PROGRAM: Artifact = { uri: 'program.nc', mimeType: 'text/x-gcode', index: 0 }

/** Line and column in what was sent, both from 1. */
export const spotLocation = ({ line, column }: ReportSource, { uri, index }: Artifact): PhysicalLocation => ({
  artifactLocation: { uri, index },
  region: { startLine: line, startColumn: column },
})

/** A part of the sign: where it was drawn, what it is called, where it was described; its box in millimetres. */
export function sarifLocation({ element, box, source, pointer }: ReportPlace, artifact: Artifact): Location {
  const logicalLocations: LogicalLocation[] = [{ fullyQualifiedName: element, kind: 'element' }]
  if (pointer !== null) logicalLocations.push({ fullyQualifiedName: pointer, kind: 'value' })
  return {
    ...(source && { physicalLocation: spotLocation(source, artifact) }),
    logicalLocations,
    ...(box && { properties: { box } }),
  }
}

/**
 * A text that is only a text: SARIF takes braces for placeholders (2.1.0, 3.11.5) and brackets before parentheses for links
 * (3.11.6); a client's words are neither.
 */
export const messageText = (text: string): string =>
  plain(text)
    .replace(/[{}]/g, '$&$&')
    .replace(/[\\[\]]/g, '\\$&')
