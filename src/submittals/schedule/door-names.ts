/** The doors that one cell names: “101A, 101B” are two. */
export const doorsIn = (door: string | null): string[] =>
  (door ?? '')
    .split(/[,;&\n]|\s+and\s+/u)
    .map((name) => name.trim())
    .filter((name) => name !== '')

/** The same for every spelling of a door’s number, a mark or a room: “101 a” and “101A” are one door. */
export const sameName = (name: string): string => name.normalize('NFKC').toUpperCase().replace(/\s+/gu, '')
