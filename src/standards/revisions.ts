import type { Table } from './load.js'
import usAda2010At1 from './revisions/us-ada-2010@1.json' with { type: 'json' }

/**
 * Tables that were replaced, so that a check pinned to one is answered as before. When a table's revision is raised, the table as it was is
 * kept as `revisions/<id>@<revision>.json` and listed here.
 */
export const EARLIER: Table[] = [usAda2010At1]
