declare module 'gcode-parser' {
  /** A block as its words: a letter and a number each. */
  export function parseStringSync(program: string, options?: object): { words: [string, number][] }[]
}
