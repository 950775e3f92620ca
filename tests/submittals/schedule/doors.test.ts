import { describe, expect, it } from 'vitest'
import { problem, read } from './reading.js'

/** Doors that must have a sign. Door schedules and their headings are common practice, no source; these are invented. */

describe('a door schedule', () => {
  it('lists its doors, whose marks are no signs’', async () => {
    const { rows, doors, problems } = await read(
      'Mark,Room,Width (in),Height (in),Frame,Hardware set\n101A,101,36,84,HM,3\n102,102,36,84,HM,3\n',
    )
    expect(rows).toEqual([])
    expect(problems).toEqual([])
    expect(doors).toEqual([
      { door: '101A', location: '101', file: 'signs.csv', row: 2 },
      { door: '102', location: '102', file: 'signs.csv', row: 3 },
    ])
  })

  it('may be told by its title', async () => {
    const { rows, doors } = await read('DOOR SCHEDULE,,\nMark,Room,Remarks\n101A,101,\n')
    expect([rows, doors.map(({ door }) => door)]).toEqual([[], ['101A']])
  })

  it('names a row without a door', async () => {
    const { doors, problems } = await read('Door,Room,Frame\n101A,101,HM\n,102,HM\n')
    expect(doors).toHaveLength(1)
    expect(problems).toEqual([problem(/names no door/, 3)])
  })
})

describe('a sign schedule', () => {
  it('lists the door of each sign, and doors that have no sign in it', async () => {
    const { rows, doors, problems } = await read(
      'Mark,Room,Door,Use,Text\nW-1,101,101A,room,LOOMS\n,102,102,,\nW-3,103,,room,DYES\n',
    )
    expect(problems).toEqual([])
    expect(rows.map(({ mark, door }) => [mark, door])).toEqual([
      ['W-1', '101A'],
      ['W-3', null],
    ])
    expect(doors.map(({ door, location, row }) => [door, location, row])).toEqual([
      ['101A', '101', 2],
      ['102', '102', 3],
    ])
  })

  it('with hardware in it is a sign schedule all the same', async () => {
    const { rows } = await read('Mark,Door,Use,Text,Hardware set\nW-1,101A,room,LOOMS,3\n')
    expect(rows).toHaveLength(1)
  })

  it('may name several doors in one cell', async () => {
    const { doors, rows } = await read('Mark,Door,Use,Text\nW-1,"101A, 101B",room,LOOMS\n')
    expect(doors.map(({ door }) => door)).toEqual(['101A', '101B'])
    expect(rows[0]?.door).toBe('101A, 101B')
  })
})
