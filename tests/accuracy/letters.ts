import { confusion, type Confusion } from '../../src/recognise/letters/confusion.js'
import { heldOutFaces, type Face } from '../recognise/letters/faces.js'
import { readBack, setText, SIGN_LINES } from '../recognise/letters/setting.js'

/** Outlined letters of faces that no reference was made from, set as on signs: what is read of them. */

export interface FaceReading {
  name: string
  kind: Face['kind']
  counted: Confusion
  /** Texts of one or two lines, each read alone. */
  texts: { right: number; open: number; wrong: number }
}

export interface LetterReading {
  faces: FaceReading[]
  classes: { kind: Face['kind']; counted: Confusion; texts: FaceReading['texts'] }[]
}

export function readFaces(): LetterReading {
  const read = heldOutFaces().map((face) => ({ face, signs: SIGN_LINES.map((lines) => readText(face, lines)) }))
  const faces = read.map(({ face: { name, kind }, signs }) => ({ name, kind, ...summed(signs) }))
  const classes = (['sans', 'serif'] as const).map((kind) => ({
    kind,
    ...summed(read.filter(({ face }) => face.kind === kind).flatMap(({ signs }) => signs)),
  }))
  return { faces, classes }
}

type Whole = keyof FaceReading['texts']
type ReadText = { pairs: Parameters<typeof confusion>[0]; whole: Whole }

function readText(face: Face, lines: readonly string[]): ReadText {
  const { pairs, reading } = readBack(setText(face, lines))
  const said = reading.lines.map(({ text }) => ('value' in text ? text.value : undefined))
  const right = said.join('\n') === lines.join('\n')
  const whole = said.length === 0 || said.includes(undefined) ? 'open' : right ? 'right' : 'wrong'
  return { pairs, whole }
}

function summed(signs: readonly ReadText[]): Pick<FaceReading, 'counted' | 'texts'> {
  const count = (whole: Whole) => signs.filter((s) => s.whole === whole).length
  return {
    counted: confusion(signs.flatMap(({ pairs }) => pairs)),
    texts: { right: count('right'), open: count('open'), wrong: count('wrong') },
  }
}
