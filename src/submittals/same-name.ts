/** Names of doors, rooms and signs as people write them. */

/** The doors that one cell names: “101A, 101B” are two. */
export const doorsIn = (door: string | null): string[] =>
  (door ?? '')
    .split(/[,;&\n]|\s+and\s+/u)
    .map((name) => name.trim())
    .filter((name) => name !== '')

/** The same for every spelling of a name: “101 a” and “101A” are one door. */
export const sameName = (name: string): string => name.normalize('NFKC').toUpperCase().replace(/\s+/gu, '')
