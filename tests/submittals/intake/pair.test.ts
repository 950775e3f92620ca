import { describe, expect, it } from 'vitest'
import { readUpload } from '../../../src/submittals/intake/read-upload.js'
import { described, file, json, read, schedule, SVG, zip } from './uploads.js'

/** What belongs together. No standard says it: the rules are those of docs/uploads.md, the sets are invented. */

const other = SVG.replace('210mm', '211mm')
const svg = (content: string) => new TextEncoder().encode(content)

/** The mark, the files and whether there are a drawing and a text, sign by sign. */
async function told(...files: Parameters<typeof read>) {
  const { signs, problems } = await read(...files)
  return {
    signs: signs.map(({ mark, files: from, drawing, sign }) => [
      mark,
      from.join(' + '),
      drawing ? 'drawn' : '-',
      sign?.lettering?.[0]?.text ?? '-',
    ]),
    problems: problems.map(({ file: name, row, detail }) => ({ file: name, row, detail })),
  }
}

describe('a row and a drawing', () => {
  it.each(['H-204.svg', 'h 204.SVG', 'level 1/H_204.svg', 'H204'])(
    'are one sign when the drawing %s is named after the mark',
    async (name) => {
      const { signs, problems } = await told(schedule('H-204,,KILN'), zip('set.zip', { [name]: SVG }))
      expect(signs).toEqual([['H-204', `schedule.csv + set.zip/${name}`, 'drawn', 'KILN']])
      expect(problems).toEqual([])
    },
  )

  it.each(['plate 7.svg', 'plate 7', 'PLATE 7.SVG', 'level 1/plate 7.svg', 'level 1\\plate 7'])(
    'are one sign when the row names it: %s',
    async (name) => {
      const { signs, problems } = await told(
        schedule(`H-204,${name},KILN`),
        zip('set.zip', { 'level 1/plate 7.svg': SVG }),
      )
      expect(signs).toEqual([['H-204', 'schedule.csv + set.zip/level 1/plate 7.svg', 'drawn', 'KILN']])
      expect(problems).toEqual([])
    },
  )

  it('are one by what the row names before what its mark says', async () => {
    const { signs } = await told(schedule('H-204,plate,KILN'), file('plate.svg', SVG), file('H-204.svg', other))
    expect(signs).toEqual([
      ['H-204', 'schedule.csv + plate.svg', 'drawn', 'KILN'],
      ['H-204', 'H-204.svg', 'drawn', '-'],
    ])
  })

  it('are one for each of several rows that name the same design', async () => {
    const { signs, problems } = await told(schedule('R-1,restroom,', 'R-2,restroom.svg,'), file('restroom.svg', SVG))
    expect(signs.map(([mark, , drawn]) => [mark, drawn])).toEqual([
      ['R-1', 'drawn'],
      ['R-2', 'drawn'],
    ])
    expect(problems).toEqual([])
  })

  it('without a mark is called after its drawing, or after its row', async () => {
    const { signs } = await told(schedule(',plate,', ',,KILN'), file('plate.svg', SVG))
    expect(signs.map(([mark]) => mark)).toEqual(['plate', 'schedule row 3'])
  })

  it('brings the drawing’s bytes as they are', async () => {
    const { signs } = await read(schedule('H-204,,KILN'), file('H-204.svg', other))
    expect(signs[0]?.drawing).toEqual(svg(other))
  })
})

describe('nothing is guessed', () => {
  it('when two drawings are named after one mark: the row is checked from its text, each drawing by itself', async () => {
    const files = zip('set.zip', { 'a/H-204.svg': SVG, 'b/H-204.svg': other })
    const { signs, problems } = await told(schedule('H-204,,KILN'), files)
    expect(signs).toEqual([
      ['H-204', 'schedule.csv', '-', 'KILN'],
      ['H-204', 'set.zip/a/H-204.svg', 'drawn', '-'],
      ['H-204', 'set.zip/b/H-204.svg', 'drawn', '-'],
    ])
    expect(problems).toEqual([
      { file: 'schedule.csv', row: 2, detail: expect.stringMatching(/2 drawings are named after it/) as string },
    ])
  })

  it('when two rows have the mark that one drawing is named after', async () => {
    const { signs, problems } = await told(schedule('H-204,,KILN', 'h204,,GLAZE'), file('H-204.svg', SVG))
    expect(signs.map(([, from, drawn, text]) => [from, drawn, text])).toEqual([
      ['schedule.csv', '-', 'KILN'],
      ['schedule.csv', '-', 'GLAZE'],
      ['H-204.svg', 'drawn', '-'],
    ])
    expect(problems).toEqual([
      { file: 'H-204.svg', row: null, detail: expect.stringMatching(/2 signs have this mark/) as string },
    ])
  })

  it('when the name that a row gives fits two drawings', async () => {
    const files = zip('set.zip', { 'a/plate.svg': SVG, 'b/plate.svg': other })
    const { signs, problems } = await told(schedule('H-204,plate,KILN', 'H-205,b/plate,GLAZE'), files)
    expect(signs).toEqual([
      ['H-204', 'schedule.csv', '-', 'KILN'],
      ['H-205', 'schedule.csv + set.zip/b/plate.svg', 'drawn', 'GLAZE'],
      ['plate', 'set.zip/a/plate.svg', 'drawn', '-'],
    ])
    expect(problems).toEqual([
      { file: 'schedule.csv', row: 2, detail: expect.stringMatching(/may be any of 2/) as string },
    ])
  })

  it('when a row names a drawing that is not there, although one is named after its mark', async () => {
    const { signs, problems } = await told(
      schedule('H-204,H-204 rev 2,KILN', 'H-205,H-205.svg,'),
      file('H-204.svg', SVG),
    )
    expect(signs).toEqual([
      ['H-204', 'schedule.csv', '-', 'KILN'],
      ['H-204', 'H-204.svg', 'drawn', '-'],
    ])
    expect(problems.map(({ row, detail }) => [row, detail])).toEqual([
      [2, expect.stringMatching(/“H-204 rev 2”, which is not in the upload/)],
      [3, expect.stringMatching(/which is not in the upload/)],
      [3, expect.stringMatching(/is left out: it has no drawing/)],
      [null, expect.stringMatching(/“H-204.svg” belongs to no row of a schedule/)],
    ])
  })

  it('when no row names a drawing or has its name for a mark; without a schedule there is nothing to tell', async () => {
    const extra = file('stair-9.svg', SVG)
    const beside = await told(schedule('H-204,,KILN'), extra)
    expect(beside.signs.map(([mark]) => mark)).toEqual(['H-204', 'stair-9'])
    expect(beside.problems.map(({ detail }) => detail)).toEqual([
      '“stair-9.svg” belongs to no row of a schedule, and is checked as a sign of its own.',
    ])
    expect((await told(extra)).problems).toEqual([])
  })

  it('of a row that says nothing', async () => {
    const { signs, problems } = await told(schedule('H-204,,'))
    expect(signs).toEqual([])
    expect(problems).toEqual([
      { file: 'schedule.csv', row: 2, detail: expect.stringMatching(/^Row 2 .*left out/) as string },
    ])
  })
})

describe('a description in JSON', () => {
  it('is one sign with the drawing and the row of its mark', async () => {
    const { signs, problems } = await read(
      json('anything.json', described('KILN', { mark: 'h 204', panel: { finish: 'matte' } })),
      schedule('H-204,,KILN,D-204'),
      file('H-204.svg', SVG),
    )
    expect(signs).toEqual([
      {
        mark: 'H-204',
        location: null,
        door: 'D-204',
        files: ['schedule.csv', 'anything.json', 'H-204.svg'],
        drawing: svg(SVG),
        options: {},
        sign: { use: 'permanent-room', mark: 'h 204', lettering: [{ text: 'KILN' }], panel: { finish: 'matte' } },
      },
    ])
    expect(problems).toEqual([])
  })

  it('without a mark belongs to the drawing of the same name', async () => {
    const { signs } = await told(json('glaze-lab.json', described('GLAZE')), file('glaze-lab.svg', SVG))
    expect(signs).toEqual([['glaze-lab', 'glaze-lab.json + glaze-lab.svg', 'drawn', 'GLAZE']])
  })

  it('with a mark of its own does so too, when no drawing is named after the mark', async () => {
    const { signs } = await told(
      json('glaze-lab.json', described('GLAZE', { mark: 'K-106' })),
      file('glaze-lab.svg', SVG),
    )
    expect(signs).toEqual([['K-106', 'glaze-lab.json + glaze-lab.svg', 'drawn', 'GLAZE']])
  })

  it('counts where the row says otherwise, and a problem says so', async () => {
    const { signs, problems } = await told(schedule('H-204,,KILN'), json('H-204.json', described('GLAZE')))
    expect(signs).toEqual([['H-204', 'schedule.csv + H-204.json', '-', 'GLAZE']])
    expect(problems).toEqual([
      {
        file: 'H-204.json',
        row: null,
        detail: expect.stringMatching(/row 2 of “schedule.csv”.*“lettering”/) as string,
      },
    ])
  })

  it('is not mixed with a row in other units', async () => {
    const { signs, problems } = await read(
      schedule('H-204,,KILN'),
      json('H-204.json', { ...described('KILN'), units: 'in' }),
    )
    expect(signs.map(({ sign }) => sign)).toEqual([{ ...described('KILN'), units: 'in' }])
    expect(problems.map(({ detail }) => detail)).toEqual([expect.stringMatching(/“units”/)])
  })

  it('says the use that a row only assumes', async () => {
    const assuming = async () => ({
      rows: [
        {
          row: 2,
          mark: 'A',
          location: null,
          door: null,
          drawing: null,
          sign: described('KILN'),
          useAssumed: true as const,
        },
        {
          row: 3,
          mark: 'B',
          location: null,
          door: null,
          drawing: null,
          sign: described('LAB'),
          useAssumed: true as const,
        },
      ],
      doors: [],
      problems: [],
    })
    const exit = json('A.json', { ...described('KILN'), use: 'exit-door' })
    const { signs, problems } = await readUpload([schedule(), exit], assuming)
    expect(signs.map(({ sign, options }) => [sign?.use, options?.useAssumed])).toEqual([
      ['exit-door', undefined],
      ['permanent-room', true],
    ])
    expect(problems).toEqual([])
  })

  it('is joined to none of two rows with its mark', async () => {
    const { signs, problems } = await told(
      schedule('H-204,,KILN', 'H-204,,GLAZE'),
      json('one.json', described('LAB', { mark: 'H-204' })),
    )
    expect(signs.map(([, , , text]) => text)).toEqual(['KILN', 'GLAZE', 'LAB'])
    expect(problems.map(({ file: name }) => name)).toEqual(['one.json'])
  })
})

describe('the order', () => {
  it('is that of the schedule, then of the descriptions, then of the drawings by name and number', async () => {
    const { signs } = await told(
      zip('set.zip', { 'H-10.svg': SVG, 'H-9.svg': SVG, 'h-2.svg': SVG, 'Z-1.svg': SVG }),
      json('more.json', [described('TWO', { mark: 'B' }), described('ONE', { mark: 'A' })]),
      schedule('Z-1,,', 'C-1,,KILN'),
    )
    expect(signs.map(([mark]) => mark)).toEqual(['Z-1', 'C-1', 'B', 'A', 'h-2', 'H-9', 'H-10'])
  })

  it('keeps two of the same mark', async () => {
    const { signs, problems } = await told(schedule('H-204,,KILN', 'H-204,,GLAZE'))
    expect(signs.map(([mark]) => mark)).toEqual(['H-204', 'H-204'])
    expect(problems).toEqual([])
  })
})
