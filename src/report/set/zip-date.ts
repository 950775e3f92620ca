/** Zips keep a local time without a zone. Noon is never skipped or doubled when clocks are changed. */
const NOON = 'T12:00:00'
const DAY = /^(19[89]\d|20\d\d)-\d{2}-\d{2}/
/** The first day that a zip can tell (APPNOTE.TXT, 4.4.6: years count from 1980). */
const FIRST_DAY = '1980-01-01'

/** What a zip says of all its files: noon of the day of the evidence, the same bytes wherever it is written. */
export const zipDate = (asOf: string): string => `${DAY.exec(asOf)?.[0] ?? FIRST_DAY}${NOON}`
