/** The day in UTC, YYYY-MM-DD: the form in which waivers end. */
export const today = (): string => new Date().toISOString().slice(0, 'YYYY-MM-DD'.length)
